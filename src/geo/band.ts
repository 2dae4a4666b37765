/** A line given a width: a burn, a road, a wall. */
import type { Area, Point } from "./position.ts";
import { along, directionTo, rightOf } from "./vector.ts";

/**
 * The band of a width around a path, as one area. Corners are mitred, and limited to the
 * width so that a hairpin does not grow a spike.
 *
 * @throws RangeError with fewer than two points.
 */
export function bandAround(path: readonly Point[], widthMetres: number): Area {
  if (path.length < 2) throw new RangeError(`A band needs at least two points, not ${path.length}.`);
  const half = widthMetres / 2;
  const edge = (side: 1 | -1): Point[] =>
    path.map((point, i) => {
      const before = rightOf(directionTo(path[Math.max(0, i - 1)]!, path[Math.max(1, i)]!));
      const after = rightOf(directionTo(path[Math.min(path.length - 2, i)]!, path[Math.min(path.length - 1, i + 1)]!));
      const sum: Point = [before[0] + after[0], before[1] + after[1]];
      const square = sum[0] ** 2 + sum[1] ** 2;
      // |sum| = 2 cos(half the turn); the mitre reaches half / cos(half the turn).
      const reach = square < 1 ? half * 2 : half * (2 / Math.sqrt(square));
      const length = Math.sqrt(square);
      const direction: Point = length === 0 ? after : [sum[0] / length, sum[1] / length];
      return along(point, direction, side * Math.min(reach, half * 2));
    });
  const right = edge(1);
  return [[...right, ...edge(-1).reverse(), right[0]!]];
}
