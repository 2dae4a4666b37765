/** The plane that fits an area's ground best, and its tilt as golf speaks of it. */
import type { Area, Point } from "../geo/position.ts";
import { rightOf } from "../geo/vector.ts";
import type { HeightGrid } from "./grid.ts";
import { type Spot, spotsIn } from "./region.ts";
import { type Gradient, risePercentToward, slopeOf } from "./slope.ts";

export interface PlaneFit {
  readonly gradient: Gradient;
  /** Middle of the spots; the plane passes through the mean height there. */
  readonly centre: Point;
  readonly heightMetres: number;
  /** Root mean square of what the plane leaves over. */
  readonly residualMetres: number;
}

/** Height of a fitted plane at a point. */
export const planeHeightAt = ({ gradient, centre, heightMetres }: PlaneFit, [x, y]: Point): number =>
  heightMetres + gradient.east * (x - centre[0]) + gradient.north * (y - centre[1]);

/** Least-squares plane; undefined when the spots are fewer than three or stand in one line. */
export function fitPlane(spots: readonly Spot[]): PlaneFit | undefined {
  const count = spots.length;
  if (count < 3) return undefined;
  let [x0, y0, h0] = [0, 0, 0];
  for (const { point, heightMetres } of spots) {
    x0 += point[0] / count;
    y0 += point[1] / count;
    h0 += heightMetres / count;
  }
  // About the middle the sums with a single coordinate vanish and a 2 by 2 system is left.
  let [xx, xy, yy, xh, yh] = [0, 0, 0, 0, 0];
  for (const { point, heightMetres } of spots) {
    const [x, y, h] = [point[0] - x0, point[1] - y0, heightMetres - h0];
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xh += x * h;
    yh += y * h;
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-9 * (xx + yy) ** 2)) return undefined;
  const gradient = { east: (xh * yy - yh * xy) / determinant, north: (yh * xx - xh * xy) / determinant };
  const plane = { gradient, centre: [x0, y0] as const, heightMetres: h0, residualMetres: 0 };
  let squares = 0;
  for (const { point, heightMetres } of spots) squares += (heightMetres - planeHeightAt(plane, point)) ** 2;
  return { ...plane, residualMetres: Math.sqrt(squares / count) };
}

export interface Tilt {
  /** Rise over run of the fitted plane, times 100. */
  readonly percent: number;
  /** Compass direction it falls in; undefined when level. */
  readonly downhillDegrees: number | undefined;
  /** Root mean square of the ground about the plane: how much of a plane it is. */
  readonly residualMetres: number;
  readonly gradient: Gradient;
}

/** Tilt of an area; undefined where too little of its ground is known. */
export function tiltOf(grid: HeightGrid, area: Area): Tilt | undefined {
  const plane = fitPlane(spotsIn(grid, area));
  if (!plane) return undefined;
  const { percent, downhillDegrees } = slopeOf(plane.gradient);
  return { percent, downhillDegrees, residualMetres: plane.residualMetres, gradient: plane.gradient };
}

/** A slope as met by a player going in one direction. */
export interface ApproachSlope {
  /** Rise in percent from front to back: positive when the ground rises away from the player. */
  readonly awayPercent: number;
  /** Rise in percent from left to right: positive when the right is higher. */
  readonly rightPercent: number;
}

/** A gradient seen along a unit direction of approach. */
export const alongApproach = (gradient: Gradient, approach: Point): ApproachSlope => ({
  awayPercent: risePercentToward(gradient, approach),
  rightPercent: risePercentToward(gradient, rightOf(approach)),
});
