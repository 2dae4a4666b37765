/**
 * A tip's Markdown as the words that are read, each with its place in the source, in
 * segments: stretches between full stops, colons, semicolons, dashes and brackets, within
 * which words can belong together.
 */

export interface Segment {
  /** Normalised words and commas, one space between. */
  readonly text: string;
  /** What ends it: `?`, `.`, `:` and so on; empty at the end of a paragraph. */
  readonly ends: string;
  /** Source offset of the character at an index of `text`: of the word that holds it. */
  sourceAt(index: number): number;
  /** Source offset behind the word that ends at or holds an index. */
  sourceEndAt(index: number): number;
}

export interface Naming {
  /** The source with what only looks like the end of a sentence put away; as long as it was. */
  prepare(markdown: string): string;
  /** A word, as written but for its apostrophe, as it is spelled for matching: lower case, short forms written out. */
  spell(word: string): readonly string[];
  /** What a figure in the tip reads as. */
  figure(name: string, target: string | undefined): readonly string[];
  /** Names of the hole's features, lower-case words, and the word that stands for each. */
  readonly names: readonly { readonly words: readonly string[]; readonly standsFor: string }[];
}

interface Word {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const FIGURE = /(?<![\p{L}\p{N}:]):([a-z]+)(?:\[([^\]\n]*)\])?(?:\{[^}\n]*\})?/gu;
/** Letters may be written with marks of their own (NFD); `º` is an ordinal's full stop put away. */
const TOKEN = /\d+(?:[.]\d+)?(?:st|nd|rd|th|º)?|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)*|[,.;:!?()—–\u0001]/gu;

const blank = (text: string): string => " ".repeat(text.length);

/** The source with what is not read blanked out, so that offsets stay. */
function bare(markdown: string): string {
  return markdown
    .replace(/`[^`\n]*`/g, blank)
    .replace(/\]\([^)\n]*\)/g, blank)
    .replace(/\n[ \t]*(?=\n)/g, (gap) => `\u0001${blank(gap.slice(1))}`)
    .replace(/^[ \t]*(?:[-+*]|\d+[.)])[ \t]/gm, (mark) => `\u0001${blank(mark.slice(1))}`)
    .replace(/[ \t]-+[ \t]/g, (dash) => `\u0001${blank(dash.slice(1))}`)
    .replace(/[*_#>|[\]]/g, " ");
}

function wordsOf(markdown: string, naming: Naming): Word[] {
  const words: Word[] = [];
  const figures = [...markdown.matchAll(FIGURE)].filter(
    (match) => match[2] !== undefined || match[0].includes("{") || match[1] !== "",
  );
  let text = markdown;
  for (const match of figures)
    text = text.slice(0, match.index) + blank(match[0]) + text.slice(match.index + match[0].length);
  const plain = bare(naming.prepare(text));
  const found: { start: number; end: number; as: readonly string[] }[] = figures.map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    as: naming.figure(match[1]!, match[2]?.trim()),
  }));
  for (const match of plain.matchAll(TOKEN)) {
    const token = match[0];
    const as = /^[\p{L}\d]/u.test(token) ? naming.spell(token.replaceAll("’", "'")) : [token];
    found.push({ start: match.index, end: match.index + token.length, as });
  }
  found.sort((a, b) => a.start - b.start);
  for (const { start, end, as } of found) for (const one of as) words.push({ text: one, start, end });
  return words;
}

function withNames(words: readonly Word[], names: Naming["names"]): Word[] {
  const named: Word[] = [];
  for (let i = 0; i < words.length;) {
    const hit = names.find((name) => name.words.every((word, k) => words[i + k]?.text === word));
    if (hit) {
      named.push({ text: hit.standsFor, start: words[i]!.start, end: words[i + hit.words.length - 1]!.end });
      i += hit.words.length;
    } else named.push(words[i++]!);
  }
  return named;
}

function segment(words: readonly Word[], ends: string): Segment {
  const starts: number[] = [];
  let text = "";
  for (const word of words) {
    if (text !== "") text += " ";
    starts.push(text.length);
    text += word.text;
  }
  const wordAt = (index: number): Word => {
    let at = 0;
    while (at + 1 < starts.length && starts[at + 1]! <= index) at++;
    return words[at]!;
  };
  return {
    text,
    ends,
    sourceAt: (index) => wordAt(index).start,
    sourceEndAt: (index) => wordAt(Math.max(0, index - 1)).end,
  };
}

export function segmentsOf(markdown: string, naming: Naming): Segment[] {
  const segments: Segment[] = [];
  let open: Word[] = [];
  const close = (ends: string): void => {
    if (open.length > 0) segments.push(segment(open, ends));
    open = [];
  };
  for (const word of withNames(wordsOf(markdown, naming), naming.names)) {
    if (/^[.;:!?()—–\u0001]$/.test(word.text)) close(word.text);
    else open.push(word);
  }
  close("");
  return segments;
}
