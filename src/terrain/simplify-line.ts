/**
 * Fewer points for the same line: D. H. Douglas and T. K. Peucker, "Algorithms for the
 * reduction of the number of points required to represent a digitized line or its
 * caricature", Cartographica 10, 1973. No point left out lies further from the result than
 * the tolerance. The ends stay; a closed line is halved at its point furthest from the
 * start, so that it cannot collapse.
 */
import type { Point } from "../geo/position.ts";
import { nearestShare } from "../geo/segment.ts";

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
      // To the piece, not to the endless line through it: a spike past an end must not count as near.
      const [a, b, [x, y]] = [points[from]!, points[to]!, points[i]!];
      const share = nearestShare(a, b, x, y);
      const squared = (x - a[0] - share * (b[0] - a[0])) ** 2 + (y - a[1] - share * (b[1] - a[1])) ** 2;
      if (squared > most) [most, furthest] = [squared, i];
    }
    if (furthest < 0) continue;
    keep[furthest] = 1;
    spans.push([from, furthest], [furthest, to]);
  }
  return points.filter((_, i) => keep[i] === 1);
}
