/**
 * Fewer points for the same line: D. H. Douglas and T. K. Peucker, "Algorithms for the
 * reduction of the number of points required to represent a digitized line or its
 * caricature", Cartographica 10, 1973. No point left out lies further from the result than
 * the tolerance. The ends stay; a closed line is halved at its point furthest from the
 * start, so that it cannot collapse.
 */
import type { Point } from "../geo/position.ts";

export function simplifyLine(points: readonly Point[], toleranceMetres: number): Point[] {
  if (points.length < 3 || !(toleranceMetres > 0)) return [...points];
  const last = points.length - 1;
  const keep = new Uint8Array(points.length);
  keep[0] = keep[last] = 1;
  const spans: [number, number][] = [];
  const [first, end] = [points[0]!, points[last]!];
  if (first[0] === end[0] && first[1] === end[1]) {
    let furthest = 0;
    let most = -1;
    points.forEach(([x, y], i) => {
      const squared = (x - first[0]) ** 2 + (y - first[1]) ** 2;
      if (squared > most) [most, furthest] = [squared, i];
    });
    keep[furthest] = 1;
    spans.push([0, furthest], [furthest, last]);
  } else {
    spans.push([0, last]);
  }
  const limit = toleranceMetres ** 2;
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    let furthest = -1;
    let most = limit;
    for (let i = from + 1; i < to; i++) {
      const squared = squaredDistanceToSegment(points[i]!, points[from]!, points[to]!);
      if (squared > most) [most, furthest] = [squared, i];
    }
    if (furthest < 0) continue;
    keep[furthest] = 1;
    spans.push([from, furthest], [furthest, to]);
  }
  return points.filter((_, i) => keep[i] === 1);
}

/** To the segment, not to the endless line through it: a spike past an end must not count as near. */
export function squaredDistanceToSegment([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const dx = bx - ax;
  const dy = by - ay;
  const squared = dx * dx + dy * dy;
  const t = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
  return (x - ax - t * dx) ** 2 + (y - ay - t * dy) ** 2;
}
