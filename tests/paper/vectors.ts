/** Shapes read out of a page that poppler wrote as SVG. */
import type { Point } from "../../src/geo/position.ts";

/** Steps along a curve: a thousandth of a millimetre is plenty at these sizes. */
const STEPS = 24;

/** Points along a path of poppler's: absolute M, L, C and Z, each followed by its numbers. */
function along(d: string): Point[] {
  const points: Point[] = [];
  for (const [, command, rest] of d.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const n = rest!
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number);
    if (command === "M" || command === "L") for (let i = 0; i + 1 < n.length; i += 2) points.push([n[i]!, n[i + 1]!]);
    if (command !== "C") continue;
    for (let i = 0; i + 5 < n.length; i += 6) {
      const [x0, y0] = points[points.length - 1]!;
      const [x1, y1, x2, y2, x3, y3] = n.slice(i, i + 6) as [number, number, number, number, number, number];
      for (let s = 1; s <= STEPS; s++) {
        const t = s / STEPS;
        const u = 1 - t;
        points.push([
          u ** 3 * x0 + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t ** 3 * x3,
          u ** 3 * y0 + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t ** 3 * y3,
        ]);
      }
    }
  }
  return points;
}

/** Points of every path that is filled with a colour (within rounding), in the page's points. */
export function filledWith(svg: string, hex: string): Point[][] {
  const wanted = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 2.55);
  return [...svg.matchAll(/<path [^>]*>/g)].flatMap(([path]) => {
    const fill = /\bfill(?:=":?|:)\s*rgb\(([^)]*)\)/
      .exec(path)?.[1]
      ?.split(",")
      .map((part) => Number.parseFloat(part));
    const d = /\sd="([^"]*)"/.exec(path)?.[1];
    if (!d || !fill || fill.some((value, i) => Math.abs(value - wanted[i]!) > 0.2)) return [];
    const [a, b, c, e, x, y] = (/transform="matrix\(([^)]*)\)"/.exec(path)?.[1]?.split(",").map(Number) ?? [
      1, 0, 0, 1, 0, 0,
    ]) as [number, number, number, number, number, number];
    return [along(d).map(([px, py]): Point => [a * px + c * py + x, b * px + e * py + y])];
  });
}

/** Extent across and up of some points. */
export function extent(points: readonly Point[]): readonly [number, number] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
