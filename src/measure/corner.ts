/**
 * The corner line: the straight way over the inside of a dogleg.
 *
 *        o green
 *        |
 *   *----o  past the turning point          * = where the corner line lands
 *    \   |
 *     \  | bend
 *   ~~~\~/   gorse, trees, water to clear
 *       o  tee
 */
import { chords } from "../geo/area.ts";
import { pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { along, cross, directionTo, distanceMetres, dot } from "../geo/vector.ts";
import { isBoundary, isHazard, kindFacts } from "../course/kinds.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { heightAt } from "../terrain/sample.ts";
import { areasOf, boundariesOf } from "./place.ts";
import { riseBetween } from "./landing.ts";
import { REFERENCE_PLAYERS, type PlayerId } from "./players.ts";
import type { Bend, MeasuredHole, TeeFigures } from "./types.ts";

/** How far beyond the turning point the corner line comes back to the line of play. */
export const CORNER_BEYOND_METRES = 45;

/** Less of a turn than this is no corner to cut. */
const LEAST_BEND_DEGREES = 12;

export interface Obstacle {
  readonly id: string;
  /** From the tee along the corner line, to its near and far edge; the far one may lie beyond the target. */
  readonly fromMetres: number;
  readonly toMetres: number;
  /** Height of its top above the tee, where the ground and its own height are known. */
  readonly topMetres: number | undefined;
}

/**
 * A stay of the corner line beyond a boundary: no carry, a ball at rest there is out of bounds (Rules of
 * Golf, 18.2).
 */
export interface OutOfBounds {
  /** The boundary it goes out over. */
  readonly id: string;
  /**
   * From the tee along the corner line, to where it goes out and where it is back; undefined where it does
   * not come back.
   */
  readonly outMetres: number;
  readonly backMetres: number | undefined;
}

export interface CornerLine {
  readonly bend: Bend;
  readonly target: Point;
  /** Straight from the tee to the target. */
  readonly lengthMetres: number;
  /** To be past the last obstacle; 0 where there is none. */
  readonly carryMetres: number;
  /** Target above (+) or below (-) the tee. */
  readonly riseMetres: number | undefined;
  readonly obstacles: readonly Obstacle[];
  /** In order from the tee. */
  readonly outOfBounds: readonly OutOfBounds[];
  /** Shorter than going round by this much. */
  readonly savesMetres: number;
  /** Reference players whose drive is long enough to clear the obstacles; nobody where it goes over a boundary. */
  readonly reachableFor: readonly PlayerId[];
}

/** The corner line of each real bend that a tee shot can meet, in order. */
export function cornerLines(hole: MeasuredHole, tee: TeeFigures, grid?: HeightGrid): CornerLine[] {
  return tee.bends
    .filter(({ angleDegrees }, i) => i === 0 && angleDegrees >= LEAST_BEND_DEGREES)
    .map((bend) => {
      const nextStop = tee.line.stations.find((station) => station > bend.stationMetres + 1) ?? tee.lengthMetres;
      const station = Math.min(bend.stationMetres + CORNER_BEYOND_METRES, nextStop);
      const target = pointAt(tee.line, station);
      const lengthMetres = distanceMetres(tee.marker, target);
      const obstacles = obstaclesOn(hole, tee.marker, target, grid);
      const outOfBounds = outOfBoundsOn(hole, tee.marker, target);
      const carryMetres = Math.max(0, ...obstacles.map(({ toMetres }) => toMetres));
      const reachableFor =
        outOfBounds.length > 0 ? [] : REFERENCE_PLAYERS.filter(({ driveMetres }) => driveMetres >= carryMetres);
      return {
        bend,
        target,
        lengthMetres,
        carryMetres,
        riseMetres: grid && riseBetween(grid, tee.marker, target),
        obstacles,
        outOfBounds,
        savesMetres: station - lengthMetres,
        reachableFor: reachableFor.map(({ id }) => id),
      };
    });
}

function obstaclesOn(hole: MeasuredHole, from: Point, to: Point, grid: HeightGrid | undefined): Obstacle[] {
  const direction = directionTo(from, to);
  const length = distanceMetres(from, to);
  const teeHeight = grid && heightAt(grid, from);
  const obstacles: Obstacle[] = [];
  for (const one of hole.placed.values()) {
    const { kind } = one.feature;
    if (isBoundary(kind) || (!isHazard(kind) && !kindFacts(kind).inTheWay)) continue;
    for (const [enter, exit] of chords(areasOf(one), from, direction)) {
      if (exit <= 0 || enter >= length) continue;
      const ground = grid && heightAt(grid, along(from, direction, (Math.max(0, enter) + Math.min(length, exit)) / 2));
      const stands = one.feature.heightMetres;
      obstacles.push({
        id: one.feature.id,
        fromMetres: Math.max(0, enter),
        toMetres: exit,
        topMetres: teeHeight === undefined || ground === undefined ? undefined : ground + (stands ?? 0) - teeHeight,
      });
    }
  }
  return obstacles.sort((a, b) => a.fromMetres - b.fromMetres);
}

/**
 * Where the line runs beyond a boundary: within ground that is out, or past a boundary line until it meets
 * one again.
 */
function outOfBoundsOn(hole: MeasuredHole, from: Point, to: Point): OutOfBounds[] {
  const direction = directionTo(from, to);
  const length = distanceMetres(from, to);
  const stays: OutOfBounds[] = [];
  const crossed: { readonly id: string; readonly metres: number }[] = [];
  for (const one of hole.placed.values()) {
    const { id, kind } = one.feature;
    if (!isBoundary(kind)) continue;
    const areas = areasOf(one);
    for (const [enter, exit] of chords(areas, from, direction)) {
      if (exit > 0 && enter < length)
        stays.push({ id, outMetres: Math.max(0, enter), backMetres: exit < length ? exit : undefined });
    }
    if (areas.length > 0) continue;
    for (const path of boundariesOf(one))
      crossed.push(...crossingsOf(path, from, direction).map((metres) => ({ id, metres })));
  }
  const ahead = crossed.filter(({ metres }) => metres > 0 && metres < length).sort((a, b) => a.metres - b.metres);
  for (let i = 0; i < ahead.length; i += 2)
    stays.push({ id: ahead[i]!.id, outMetres: ahead[i]!.metres, backMetres: ahead[i + 1]?.metres });
  return stays.sort((a, b) => a.outMetres - b.outMetres);
}

/**
 * How far along a ray a path changes sides of it; a vertex on the ray counts once, a path that only touches
 * it not at all or twice.
 */
function crossingsOf(path: readonly Point[], origin: Point, direction: Point): number[] {
  const places = path.map(([x, y]): { readonly side: number; readonly along: number } => {
    const to: Point = [x - origin[0], y - origin[1]];
    return { side: cross(direction, to), along: dot(direction, to) };
  });
  return places.slice(1).flatMap((b, i) => {
    const a = places[i]!;
    return a.side > 0 === b.side > 0 ? [] : [a.along + (a.side / (a.side - b.side)) * (b.along - a.along)];
  });
}
