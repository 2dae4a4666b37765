/** Two things a player wants to know of a green's ground: a false front, and which side is below the hole. */
import { chords } from "../geo/area.ts";
import type { Area, Point } from "../geo/position.ts";
import { along, dot, rightOf } from "../geo/vector.ts";
import type { HeightGrid } from "./grid.ts";
import { fitPlane } from "./plane-fit.ts";
import { pointsInside } from "./region.ts";
import { heightAt } from "./sample.ts";
import { type Slope, risePercentToward, slopeOf } from "./slope.ts";

export interface FalseFrontThresholds {
  /** The front is false when it falls toward the player by at least this. */
  readonly percent: number;
  /** Over at least this depth from the front edge. */
  readonly depthMetres: number;
}

/** Common practice, no source: a ball landing on a bank this steep rolls back off the green. */
export const FALSE_FRONT_THRESHOLDS: FalseFrontThresholds = { percent: 8, depthMetres: 2 };

export interface FalseFront {
  /** How far it reaches into the green, along the line of approach. */
  readonly depthMetres: number;
  /** Its mean fall toward the player. */
  readonly percent: number;
}

const STRIDE = 0.5;

/**
 * The false front of a green met along a unit direction of approach, or undefined where it
 * has none or the ground is unknown. Heights are followed in from the front edge on lines a
 * metre apart over the middle half of the width; at each depth the lines' median rise counts.
 * A green that is that steep all the way to its back is a steep green, not a false front.
 */
export function falseFrontOf(
  grid: HeightGrid,
  green: Area,
  approach: Point,
  thresholds: FalseFrontThresholds = FALSE_FRONT_THRESHOLDS,
): FalseFront | undefined {
  const right = rightOf(approach);
  const reach = green[0]!.map((point) => dot(point, right));
  const [left, width] = [Math.min(...reach), Math.max(...reach) - Math.min(...reach)];
  const rises: number[][] = [];
  let deepest = 0;
  let lines = 0;
  for (let offset = left + width / 4; offset <= left + (3 * width) / 4; offset += 1) {
    const origin: Point = [right[0] * offset, right[1] * offset];
    const [chord] = chords([green], origin, approach);
    if (!chord) continue;
    lines++;
    const [enter, exit] = chord;
    deepest = Math.max(deepest, exit - enter);
    for (let k = 0; enter + (k + 1) * STRIDE <= exit; k++) {
      const near = heightAt(grid, along(origin, approach, enter + k * STRIDE));
      const far = heightAt(grid, along(origin, approach, enter + (k + 1) * STRIDE));
      if (near !== undefined && far !== undefined) (rises[k] ??= []).push(far - near);
    }
  }
  let strides = 0;
  let rise = 0;
  for (const across of rises) {
    // A depth that only a few lines reach says nothing of the front.
    if (!across || across.length < lines / 2) break;
    const median = medianOf(across);
    if ((100 * median) / STRIDE < thresholds.percent) break;
    rise += median;
    strides++;
  }
  const depthMetres = strides * STRIDE;
  if (strides === 0 || depthMetres < thresholds.depthMetres || depthMetres > deepest * 0.6) return undefined;
  return { depthMetres, percent: (100 * rise) / depthMetres };
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

export type GreenSide = "short" | "long" | "left" | "right";

export interface BelowTheHole extends Slope {
  /** Where a ball lies below the hole, as the player coming in sees it. */
  readonly side: GreenSide;
}

/** Below this a putt is as good as level; common practice, no source. */
export const LEVEL_PERCENT = 1;

/**
 * The side of a hole from which a putt runs uphill: the fall of a plane through the ground
 * within the radius about it, told along a unit direction of approach. Undefined where that
 * ground is unknown or level.
 */
export function belowTheHole(
  grid: HeightGrid,
  hole: Point,
  approach: Point,
  radiusMetres = 4,
): BelowTheHole | undefined {
  const spots = pointsInside(squareAbout(hole, radiusMetres), radiusMetres / 6, 400)
    .filter(([x, y]) => Math.hypot(x - hole[0], y - hole[1]) <= radiusMetres)
    .flatMap((point) => {
      const heightMetres = heightAt(grid, point);
      return heightMetres === undefined ? [] : [{ point, heightMetres }];
    });
  const plane = fitPlane(spots);
  if (!plane) return undefined;
  const slope = slopeOf(plane.gradient);
  if (slope.percent < LEVEL_PERCENT) return undefined;
  const away = -risePercentToward(plane.gradient, approach);
  const right = -risePercentToward(plane.gradient, rightOf(approach));
  const side = Math.abs(away) >= Math.abs(right) ? (away > 0 ? "long" : "short") : right > 0 ? "right" : "left";
  return { ...slope, side };
}

const squareAbout = ([x, y]: Point, half: number): Area => [
  [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
    [x - half, y - half],
  ],
];
