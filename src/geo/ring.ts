/** Rings: GeoJSON closes them by their first point again (RFC 7946, 3.1.6); a pen is led round without it. */
import type { Point } from "./position.ts";

/** Nearer than this two ends are one point; metres, or whatever is drawn in. */
const SAME = 1e-9;

/** A ring without its repeated last point. */
export function openRing(ring: readonly Point[]): Point[] {
  const points = ring.slice();
  while (points.length > 1) {
    const [first, last] = [points[0]!, points[points.length - 1]!];
    if (Math.abs(first[0] - last[0]) > SAME || Math.abs(first[1] - last[1]) > SAME) break;
    points.pop();
  }
  return points;
}

/** An open ring with its first point again at the end. */
export const closedRing = <P>(ring: readonly P[]): P[] => [...ring, ring[0]!];
