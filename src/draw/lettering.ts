/** Lines of lettering as the label placer and the sheet see them. */
import type { Point } from "../geo/position.ts";
import type { Mark, Painter } from "./palette.ts";
import { attributes, escapeXml } from "./svg.ts";
import { textWidth, type Weight } from "./text-width.ts";

export interface TextLine {
  readonly text: string;
  readonly mark: Mark;
  readonly size: number;
  readonly weight: Weight;
  readonly italic?: boolean;
  /** Letter spacing in ems. */
  readonly spacing?: number;
}

const LEADING = 1.1;
/** Room kept clear around lettering. */
const PAD = 1.5;

/** Outer size of lines set one above the other. */
export function blockSize(lines: readonly TextLine[]): { width: number; height: number } {
  return {
    width:
      Math.max(...lines.map(({ text, size, weight, spacing }) => textWidth(text, size, weight, spacing))) + 2 * PAD,
    height: lines.reduce((sum, { size }, i) => sum + (i === 0 ? size * 0.86 : size * LEADING), 0) + 2 * PAD,
  };
}

/** Text attributes other than its place. */
export function textAttributes(line: TextLine, paint: Painter, halo: number): Record<string, string | number> {
  const { mark, size, weight, italic, spacing } = line;
  const painted = paint(mark);
  return {
    ...painted,
    "font-size": size,
    ...(weight === "heavy" ? { "font-weight": "600" } : {}),
    ...(italic ? { "font-style": "italic" } : {}),
    ...(spacing ? { "letter-spacing": Math.round(spacing * size * 100) / 100 } : {}),
    ...("stroke" in painted ? { "stroke-width": halo, "paint-order": "stroke", "stroke-linejoin": "round" } : {}),
  };
}

const place = (value: number): string => String(Math.round(value * 10) / 10);

/** Lettering as it is gathered: lines of one style share their attributes on one group. */
export class Lettering {
  private readonly styles = new Map<string, string[]>();
  private readonly paint: Painter;
  private readonly halo: number;

  constructor(paint: Painter, halo: number) {
    this.paint = paint;
    this.halo = halo;
  }

  /** Lines set one above the other about a middle. */
  set(lines: readonly TextLine[], [x, y]: Point): void {
    const { height } = blockSize(lines);
    let top = y - height / 2 + PAD;
    lines.forEach((line, i) => {
      const baseline = top + (i === 0 ? line.size * 0.76 : line.size * (LEADING - 0.1));
      top += i === 0 ? line.size * 0.86 : line.size * LEADING;
      // Spacing follows the last letter too; half of it is taken back to keep the line centred.
      const centre = x + ((line.spacing ?? 0) * line.size) / 2;
      const style = attributes({ ...textAttributes(line, this.paint, this.halo), "text-anchor": "middle" });
      const text = `<text x="${place(centre)}" y="${place(baseline)}">${escapeXml(line.text)}</text>`;
      const known = this.styles.get(style);
      if (known) known.push(text);
      else this.styles.set(style, [text]);
    });
  }

  toString(): string {
    return [...this.styles].map(([style, texts]) => `<g${style}>${texts.join("")}</g>`).join("");
  }
}
