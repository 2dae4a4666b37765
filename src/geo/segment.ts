/** Straight pieces in the plane. */
import type { Point } from "./position.ts";
import { distanceMetres } from "./vector.ts";

/** The point a share of the way from a to b. */
export const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** The point of the piece from a to b that is nearest to another. */
export function nearestOn(a: Point, b: Point, point: Point): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  if (square === 0) return a;
  const share = ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / square;
  return between(a, b, Math.min(1, Math.max(0, share)));
}

/** A path with extra points so that no piece is longer than `stepMetres`; keeps every vertex. */
export function densify(path: readonly Point[], stepMetres: number): Point[] {
  const dense: Point[] = [];
  path.forEach((point, i) => {
    const previous = path[i - 1];
    if (previous) {
      const pieces = Math.ceil(distanceMetres(previous, point) / stepMetres);
      for (let k = 1; k < pieces; k++) dense.push(between(previous, point, k / pieces));
    }
    dense.push(point);
  });
  return dense;
}

/** Where two pieces cross, or undefined; touching ends count. Parallel pieces do not cross. */
export function crossing(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const denominator = rx * sy - ry * sx;
  if (denominator === 0) return undefined;
  const t = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / denominator;
  const u = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / denominator;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? between(a, b, t) : undefined;
}
