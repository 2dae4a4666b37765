/** Axis-parallel boxes in the plane, for leaving out what is far away. */
import type { Point } from "./position.ts";

export type Box = readonly [minX: number, minY: number, maxX: number, maxY: number];

/** The box around points; empty (inverted) without any. */
export function boxAround(points: Iterable<Point>): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return [minX, minY, maxX, maxY];
}

export const grow = ([minX, minY, maxX, maxY]: Box, metres: number): Box => [
  minX - metres,
  minY - metres,
  maxX + metres,
  maxY + metres,
];

export const overlaps = (a: Box, b: Box): boolean => a[0] <= b[2] && b[0] <= a[2] && a[1] <= b[3] && b[1] <= a[3];
