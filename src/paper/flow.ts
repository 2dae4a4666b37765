/**
 * Running text cut into pages of the book. Where a line ends is the browser's business;
 * how many lines a paragraph takes is estimated here, generously, so that the same text
 * falls on the same pages wherever it is printed.
 */
import { textWidth } from "../draw/text-width.ts";
import { PX_PER_MM } from "../draw/paper-composition.ts";

/**
 * Source Sans is narrower than the lettering that widths are known of (ratio of mean letter widths over
 * English text; from memory).
 */
const TEXT_RATIO = 0.86;

export interface Block {
  readonly html: string;
  /** As read, for its length. */
  readonly text: string;
  /** Held together with the block after it: a heading. */
  readonly heading?: boolean;
  /** What its text is indented by. */
  readonly indentMm?: number;
}

export interface FlowStyle {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly fontMm: number;
  readonly lineMm: number;
  readonly gapMm: number;
  readonly headingMm: number;
}

/** Lines a text takes in a measure, never too few. */
export function linesOf(text: string, widthMm: number, fontMm: number): number {
  const width = textWidth(text, fontMm * PX_PER_MM) * TEXT_RATIO;
  // The end of a line is lost to the next word: half a word on the mean.
  const measure = widthMm * PX_PER_MM - 2.5 * fontMm * PX_PER_MM * 0.5;
  return Math.max(1, Math.ceil(width / Math.max(measure, fontMm * PX_PER_MM)));
}

export const blockHeight = (block: Block, style: FlowStyle): number =>
  block.heading
    ? style.headingMm
    : linesOf(block.text, style.widthMm - (block.indentMm ?? 0), style.fontMm) * style.lineMm + style.gapMm;

/** Blocks by page. A block taller than a page has one of its own. */
export function paginate(blocks: readonly Block[], style: FlowStyle): Block[][] {
  const pages: Block[][] = [];
  let page: Block[] = [];
  let used = 0;
  const turn = (): void => {
    if (page.length > 0) pages.push(page);
    [page, used] = [[], 0];
  };
  blocks.forEach((block, i) => {
    const height = blockHeight(block, style);
    const next = blocks[i + 1];
    const needed = height + (block.heading && next ? blockHeight(next, style) : 0);
    if (used > 0 && used + needed > style.heightMm) turn();
    page.push(block);
    used += height;
  });
  turn();
  return pages;
}
