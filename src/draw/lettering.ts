/** Lines of lettering as the label placer and the sheet see them. */
import type { Point } from "../geo/position.ts";
import type { Mark, Painter } from "./palette.ts";
import { element, escapeXml } from "./svg.ts";
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
    width: Math.max(...lines.map(({ text, size, weight, spacing }) => textWidth(text, size, weight, spacing))) + 2 * PAD,
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

/** Lines set about a middle. */
export function setBlock(lines: readonly TextLine[], [x, y]: Point, paint: Painter, halo: number): string {
  const { height } = blockSize(lines);
  let top = y - height / 2 + PAD;
  return lines
    .map((line, i) => {
      const baseline = top + (i === 0 ? line.size * 0.76 : line.size * (LEADING - 0.1));
      top += i === 0 ? line.size * 0.86 : line.size * LEADING;
      // Spacing follows the last letter too; half of it is taken back to keep the line centred.
      const centre = x + ((line.spacing ?? 0) * line.size) / 2;
      return element("text", { x: place(centre), y: place(baseline), "text-anchor": "middle", ...textAttributes(line, paint, halo) }, escapeXml(line.text));
    })
    .join("");
}
