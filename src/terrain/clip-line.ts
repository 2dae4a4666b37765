/** The parts of a polyline that lie inside an area, holes left out. */
import { boxOf, contains } from "../geo/area.ts";
import type { Area, Point } from "../geo/position.ts";

/**
 * Parts of a line inside an area, in the line's order and direction. A closed line (first
 * and last point the same) that runs over its own start stays in one piece there.
 */
export function clipLine(points: readonly Point[], area: Area): Point[][] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  const finish = (): void => {
    if (part.length > 1) parts.push(part);
    part = [];
  };
  const [west, south, east, north] = boxOf(area);
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!;
    const b = points[i]!;
    // Most of a long line runs far from the area.
    if (
      (a[0] < west && b[0] < west) ||
      (a[0] > east && b[0] > east) ||
      (a[1] < south && b[1] < south) ||
      (a[1] > north && b[1] > north)
    ) {
      finish();
      continue;
    }
    const cuts = [0, ...crossings(a, b, area), 1];
    for (let k = 1; k < cuts.length; k++) {
      const [t0, t1] = [cuts[k - 1]!, cuts[k]!];
      if (t1 - t0 <= 1e-12) continue;
      if (!contains(area, between(a, b, (t0 + t1) / 2))) {
        finish();
        continue;
      }
      if (part.length === 0) part.push(between(a, b, t0));
      part.push(between(a, b, t1));
    }
  }
  finish();
  const [first, last] = [parts[0], parts[parts.length - 1]];
  if (
    first &&
    last &&
    first !== last &&
    same(points[0]!, points[points.length - 1]!) &&
    same(last[last.length - 1]!, first[0]!)
  ) {
    parts.pop();
    parts[0] = [...last, ...first.slice(1)];
  }
  return parts;
}

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

const between = (a: Point, b: Point, t: number): Point =>
  t === 0 ? a : t === 1 ? b : [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** Shares of the segment at which it crosses the area's rings, in order. */
function crossings([ax, ay]: Point, [bx, by]: Point, area: Area): number[] {
  const [dx, dy] = [bx - ax, by - ay];
  const shares: number[] = [];
  for (const ring of area) {
    for (let i = 1; i < ring.length; i++) {
      const [px, py] = ring[i - 1]!;
      const [qx, qy] = ring[i]!;
      const [ex, ey] = [qx - px, qy - py];
      const denominator = dx * ey - dy * ex;
      if (denominator === 0) continue;
      const t = ((px - ax) * ey - (py - ay) * ex) / denominator;
      const u = ((px - ax) * dy - (py - ay) * dx) / denominator;
      if (t > 0 && t < 1 && u >= 0 && u <= 1) shares.push(t);
    }
  }
  return shares.sort((p, q) => p - q);
}
