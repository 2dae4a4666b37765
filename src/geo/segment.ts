/** Straight pieces in the plane. */
import type { Point } from "./position.ts";
import { distanceMetres } from "./vector.ts";

/** The point a share of the way from a to b. */
export const between = (a: Point, b: Point, share: number): Point => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/**
 * How far along the piece from a to b the place nearest to (x, y) lies: 0 at a, 1 at b.
 * Takes and gives numbers, since grids ask it for every cell.
 */
export function nearestShare(a: Point, b: Point, x: number, y: number): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / square));
}

/** Distance of (x, y) from the piece from a to b, not from the endless line through it. */
export function distanceToPiece(a: Point, b: Point, x: number, y: number): number {
  const share = nearestShare(a, b, x, y);
  return Math.hypot(x - a[0] - (b[0] - a[0]) * share, y - a[1] - (b[1] - a[1]) * share);
}

/** The point of the piece from a to b that is nearest to another. */
export const nearestOn = (a: Point, b: Point, point: Point): Point =>
  between(a, b, nearestShare(a, b, point[0], point[1]));

/** The place on a path that is nearest to a point, and how far it is. */
export function nearestOnPath(
  path: readonly Point[],
  point: Point,
): { readonly point: Point; readonly distance: number } {
  let best = { point: path[0]!, distance: Infinity };
  for (let i = 1; i < path.length; i++) {
    const place = nearestOn(path[i - 1]!, path[i]!, point);
    const distance = distanceMetres(place, point);
    if (distance < best.distance) best = { point: place, distance };
  }
  return best;
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
