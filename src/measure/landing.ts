/** Landing ground: what waits where a drive of a given length comes to rest on the line of play. */
import { boxOf, chords } from "../geo/area.ts";
import { boxAround, overlaps } from "../geo/box.ts";
import { directionAt, pointAt } from "../geo/line.ts";
import { metresFromYards } from "../geo/units.ts";
import type { Area, Point } from "../geo/position.ts";
import { crossing } from "../geo/segment.ts";
import { along, distanceMetres, rightOf } from "../geo/vector.ts";
import { kindFacts } from "../course/kinds.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { alongApproach, fitPlane, type ApproachSlope } from "../terrain/plane-fit.ts";
import { spotsIn } from "../terrain/region.ts";
import { heightAt } from "../terrain/sample.ts";
import { fairwayAt } from "./fairway.ts";
import { areasOf, areasOfKind, boundariesOf } from "./place.ts";
import { seenFrom } from "./seen.ts";
import type { FairwayFigures, MeasuredHole, PlacedFeature, TeeFigures } from "./types.ts";

/** Drive lengths a guide answers for: 120 to 320 yards, every 10. */
export const DRIVE_LENGTHS_METRES: readonly number[] = Array.from({ length: 21 }, (_, i) =>
  metresFromYards(120 + 10 * i),
);

/** How far to each side trouble is looked for. */
export const TROUBLE_REACH_METRES = 60;

/** Half the side of the square whose plane is the lie: about the spread of one drive's bounce. */
const LIE_HALF_METRES = 8;

export interface Trouble {
  readonly id: string;
  readonly metres: number;
}

export interface Lie extends ApproachSlope {
  /** Steepest slope of the fitted plane. */
  readonly percent: number;
}

export interface LandingFigures {
  readonly driveMetres: number;
  readonly point: Point;
  readonly fairway: FairwayFigures;
  /** First trouble to each side, square to the line of play; undefined within {@link TROUBLE_REACH_METRES}. */
  readonly left: Trouble | undefined;
  readonly right: Trouble | undefined;
  /** Ground slope as the player stands: away is up along the line, right is up to the right. */
  readonly lie: Lie | undefined;
  /** To the middle of the green along the line of play, and straight. */
  readonly leavesMetres: number;
  readonly leavesStraightMetres: number;
  /** Landing ground above (+) or below (-) the tee. */
  readonly riseMetres: number | undefined;
  /** Whether the landing ground is seen from the tee, and the green's surface from the landing ground. */
  readonly seenFromTee: boolean | undefined;
  readonly seesGreen: boolean | undefined;
}

/** What ends a good lie: hazards, and ground one cannot play from as it is. */
const isTrouble = ({ feature }: PlacedFeature): boolean => kindFacts(feature.kind).ball !== "played";

/** First trouble to the right of a point (to the left with a reversed direction). */
function firstTrouble(placed: Iterable<PlacedFeature>, from: Point, direction: Point): Trouble | undefined {
  let first: Trouble | undefined;
  const offer = (id: string, metres: number): void => {
    if (metres <= TROUBLE_REACH_METRES && (!first || metres < first.metres)) first = { id, metres };
  };
  const end = along(from, direction, TROUBLE_REACH_METRES);
  const reach = boxAround([from, end]);
  for (const one of placed) {
    if (!isTrouble(one)) continue;
    const areas = areasOf(one);
    if (areas.length > 0) {
      for (const [enter, exit] of chords(
        areas.filter((area) => overlaps(boxOf(area), reach)),
        from,
        direction,
      ))
        if (exit > 0) offer(one.feature.id, Math.max(0, enter));
      continue;
    }
    for (const path of boundariesOf(one)) {
      for (let i = 1; i < path.length; i++) {
        const hit = crossing(from, end, path[i - 1]!, path[i]!);
        if (hit) offer(one.feature.id, distanceMetres(from, hit));
      }
    }
  }
  return first;
}

/** The lie at a point, as met by a player facing a unit direction. */
export function lieAt(grid: HeightGrid, [x, y]: Point, facing: Point): Lie | undefined {
  const h = LIE_HALF_METRES;
  const square: Area = [
    [
      [x - h, y - h],
      [x + h, y - h],
      [x + h, y + h],
      [x - h, y + h],
      [x - h, y - h],
    ],
  ];
  const plane = fitPlane(spotsIn(grid, square));
  return (
    plane && {
      ...alongApproach(plane.gradient, facing),
      percent: 100 * Math.hypot(plane.gradient.east, plane.gradient.north),
    }
  );
}

/** Landing ground of a drive along the line of play; undefined when the drive is as long as the hole. */
export function landingAt(
  hole: MeasuredHole,
  tee: TeeFigures,
  driveMetres: number,
  grid?: HeightGrid,
): LandingFigures | undefined {
  if (!(driveMetres > 0) || driveMetres >= tee.lengthMetres) return undefined;
  const point = pointAt(tee.line, driveMetres);
  const facing = directionAt(tee.line, driveMetres);
  const right = rightOf(facing);
  const placed = [...hole.placed.values()];
  return {
    driveMetres,
    point,
    fairway: fairwayAt(tee.line, driveMetres, areasOfKind(placed, "fairway")),
    left: firstTrouble(placed, point, [-right[0], -right[1]]),
    right: firstTrouble(placed, point, right),
    lie: grid && lieAt(grid, point, facing),
    leavesMetres: tee.lengthMetres - driveMetres,
    leavesStraightMetres: distanceMetres(point, tee.green.middle),
    riseMetres: grid && riseBetween(grid, tee.marker, point),
    seenFromTee: grid && seenFrom(hole, grid, tee.marker, point),
    seesGreen: grid && seenFrom(hole, grid, point, tee.green.middle),
  };
}

/** Height of one point above another, where both are known. */
export function riseBetween(grid: HeightGrid, from: Point, to: Point): number | undefined {
  const [low, high] = [heightAt(grid, from), heightAt(grid, to)];
  return low === undefined || high === undefined ? undefined : high - low;
}
