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
import { along, directionTo, distanceMetres } from "../geo/vector.ts";
import { isHazard, kindFacts } from "../course/kinds.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { heightAt } from "../terrain/sample.ts";
import { areasOf } from "./place.ts";
import { riseBetween } from "./landing.ts";
import { REFERENCE_PLAYERS, type PlayerId } from "./players.ts";
import type { Bend, MeasuredHole, TeeFigures } from "./types.ts";

/** How far beyond the turning point the corner line comes back to the line of play. */
export const CORNER_BEYOND_METRES = 45;

/** Less of a turn than this is no corner to cut. */
const LEAST_BEND_DEGREES = 12;

export interface Obstacle {
  readonly id: string;
  /** From the tee along the corner line, to its near and far edge. */
  readonly fromMetres: number;
  readonly toMetres: number;
  /** Height of its top above the tee, where the ground and its own height are known. */
  readonly topMetres: number | undefined;
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
  /** Shorter than going round by this much. */
  readonly savesMetres: number;
  /** Reference players whose drive is long enough to clear the obstacles. */
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
      const carryMetres = Math.max(0, ...obstacles.map(({ toMetres }) => toMetres));
      return {
        bend,
        target,
        lengthMetres,
        carryMetres,
        riseMetres: grid && riseBetween(grid, tee.marker, target),
        obstacles,
        savesMetres: station - lengthMetres,
        reachableFor: REFERENCE_PLAYERS.filter(({ driveMetres }) => driveMetres >= Math.max(carryMetres, 0)).map(({ id }) => id),
      };
    });
}

function obstaclesOn(hole: MeasuredHole, from: Point, to: Point, grid: HeightGrid | undefined): Obstacle[] {
  const direction = directionTo(from, to);
  const length = distanceMetres(from, to);
  const teeHeight = grid && heightAt(grid, from);
  const obstacles: Obstacle[] = [];
  for (const one of hole.placed.values()) {
    if (!isHazard(one.feature.kind) && !kindFacts(one.feature.kind).inTheWay) continue;
    for (const [enter, exit] of chords(areasOf(one), from, direction)) {
      if (exit <= 0 || enter >= length) continue;
      const ground = grid && heightAt(grid, along(from, direction, (Math.max(0, enter) + Math.min(length, exit)) / 2));
      const stands = one.feature.heightMetres;
      obstacles.push({
        id: one.feature.id,
        fromMetres: Math.max(0, enter),
        toMetres: Math.min(length, exit),
        topMetres: teeHeight === undefined || ground === undefined ? undefined : ground + (stands ?? 0) - teeHeight,
      });
    }
  }
  return obstacles.sort((a, b) => a.fromMetres - b.fromMetres);
}
