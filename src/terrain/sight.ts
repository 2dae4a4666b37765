/**
 * What can be seen from where.
 *
 * The earth's curvature is left out: over 500 m it drops the ground by d²/2R = 20 mm at the
 * far end and hides 5 mm in the middle, and refraction gives back about an eighth of that.
 * A survey's heights are not that good.
 */
import { boxOf, contains } from "../geo/area.ts";
import type { Area, Point } from "../geo/position.ts";
import { type HeightGrid, columnRowOf } from "./grid.ts";
import { pointsInside } from "./region.ts";
import { heightAt } from "./sample.ts";

/** Eyes of a standing golfer above the ground; common practice, no source. */
export const EYE_HEIGHT_METRES = 1.6;

export interface SightOptions {
  /** Above the ground at the standing point; {@link EYE_HEIGHT_METRES} when left out. */
  readonly eyeMetres?: number;
  /** Above the ground at the point looked at: 0 for the turf itself, 2 for a flagstick. */
  readonly targetMetres?: number;
  /** What stands on the ground there, metres above it: trees, a wall. */
  readonly coverMetres?: (point: Point) => number;
}

export interface Sight {
  readonly visible: boolean;
  /** The least room between the line of sight and what lies under it; negative where it is blocked. */
  readonly clearanceMetres: number;
  /** Where that is. */
  readonly tightest: Point;
  /** Whether part of the ground between is unknown; it is taken not to block. */
  readonly partlyUnknown: boolean;
}

/** Ground that the line of sight touches by less than this does not hide the target: grazing, within rounding. */
const GRAZING_METRES = 1e-3;

/**
 * Whether one point is seen from another. Ground is tried wherever the line crosses the
 * grid's own lines, where a crest of the grid stands highest; the two ends do not block.
 * Undefined where the ground at either end is unknown.
 */
export const lineOfSight = (grid: HeightGrid, from: Point, to: Point, options: SightOptions = {}): Sight | undefined =>
  follow(grid, from, to, options, false);

/** @param stopWhenHidden for who only asks whether the target is seen: the tightest place may be another */
function follow(
  grid: HeightGrid,
  from: Point,
  to: Point,
  options: SightOptions,
  stopWhenHidden: boolean,
): Sight | undefined {
  const groundFrom = heightAt(grid, from);
  const groundTo = heightAt(grid, to);
  if (groundFrom === undefined || groundTo === undefined) return undefined;
  const eye = groundFrom + (options.eyeMetres ?? EYE_HEIGHT_METRES);
  const target = groundTo + (options.targetMetres ?? 0);
  let clearanceMetres = Infinity;
  let tightest = to;
  let partlyUnknown = false;
  for (const share of crossingShares(grid, from, to)) {
    const point: Point = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    const ground = heightAt(grid, point);
    if (ground === undefined) {
      partlyUnknown = true;
      continue;
    }
    const room = eye + (target - eye) * share - ground - (options.coverMetres?.(point) ?? 0);
    if (room < clearanceMetres) {
      clearanceMetres = room;
      tightest = point;
      if (stopWhenHidden && room < -GRAZING_METRES) break;
    }
  }
  return { visible: clearanceMetres >= -GRAZING_METRES, clearanceMetres, tightest, partlyUnknown };
}

/** Shares of the way from one point to another at which it crosses the grid's columns, then its rows. */
function* crossingShares(grid: HeightGrid, from: Point, to: Point): Generator<number> {
  const [column0, row0] = columnRowOf(grid, from);
  const [column1, row1] = columnRowOf(grid, to);
  for (const [start, end] of [
    [column0, column1],
    [row0, row1],
  ] as const) {
    const last = Math.max(start, end);
    for (let line = Math.floor(Math.min(start, end)) + 1; line < last; line++) {
      yield (line - start) / (end - start);
    }
  }
}

export interface AreaSight {
  /** Share of the area's known ground that is seen, 0 to 1. */
  readonly share: number;
  /** How many points of it were tried. */
  readonly points: number;
}

/**
 * How much of an area is seen from a point, by trying points over it at the given spacing
 * (at most about 400 of them). Undefined where its ground, or the eye's, is unknown.
 */
export function visibleShare(
  grid: HeightGrid,
  from: Point,
  area: Area,
  options: SightOptions & { readonly spacingMetres?: number } = {},
): AreaSight | undefined {
  let points = 0;
  let seen = 0;
  for (const point of pointsInside(area, options.spacingMetres ?? grid.stepMetres, 400)) {
    const sight = follow(grid, from, point, options, true);
    if (!sight) continue;
    points++;
    if (sight.visible) seen++;
  }
  return points === 0 ? undefined : { share: seen / points, points };
}

/** Cover from areas of one height each, such as woods, for {@link SightOptions.coverMetres}. */
export function coverFrom(
  stands: readonly { readonly area: Area; readonly heightMetres: number }[],
): (point: Point) => number {
  const boxed = stands.map((stand) => ({ ...stand, box: boxOf(stand.area) }));
  return (point) => {
    let most = 0;
    for (const {
      area,
      heightMetres,
      box: [west, south, east, north],
    } of boxed) {
      // Most of a line of sight runs far from every wood.
      if (heightMetres <= most || point[0] < west || point[0] > east || point[1] < south || point[1] > north) continue;
      if (contains(area, point)) most = heightMetres;
    }
    return most;
  };
}
