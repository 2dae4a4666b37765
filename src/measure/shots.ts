/**
 * The shots a hole asks for, each as distance, rise and bearing: all that the flight model
 * needs, so the browser can work out a day's effective lengths without the height model.
 */
import { along, bearingDegrees, directionOfBearing, directionTo, distanceMetres } from "../geo/vector.ts";
import type { Point } from "../geo/position.ts";
import { effectiveLength, type DayConditions, type EffectiveLength } from "../flight/effective.ts";
import type { FlightResult } from "../flight/result.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { landingAt, riseBetween } from "./landing.ts";
import { carriedOver } from "./carried.ts";
import type { MeasuredHole, TeeFigures } from "./types.ts";

export type ShotPurpose = "green-front" | "green-middle" | "green-back" | "carry";

export interface Shot {
  readonly purpose: ShotPurpose;
  /** Feature carried, for a carry. */
  readonly feature: string | undefined;
  /** Played from the tee, or from where a drive of this length lies. */
  readonly driveMetres: number;
  readonly distanceMetres: number;
  readonly riseMetres: number;
  readonly bearingDegrees: number;
}

const shot = (
  purpose: ShotPurpose,
  feature: string | undefined,
  driveMetres: number,
  from: Point,
  to: Point,
  grid: HeightGrid,
): Shot[] => {
  const riseMetres = riseBetween(grid, from, to);
  if (riseMetres === undefined) return [];
  return [
    {
      purpose,
      feature,
      driveMetres,
      distanceMetres: distanceMetres(from, to),
      riseMetres,
      bearingDegrees: bearingDegrees(directionTo(from, to)),
    },
  ];
};

/** How far past a hazard's edge the ground is looked at for the height a carry must come down on. */
const PAST_THE_EDGE_METRES = [0, 3, 6, 9];

/**
 * Height over a standing point of the ground a carry must come down on: the highest just
 * past the hazard, not its edge. The edge of an inlet is the foot of its cliff, and a
 * stroke that only reached that height would not be over. Undefined on unknown ground.
 */
export function risePast(grid: HeightGrid, from: Point, bearing: number, farMetres: number): number | undefined {
  const rises = PAST_THE_EDGE_METRES.flatMap(
    (more) => riseBetween(grid, from, along(from, directionOfBearing(bearing), farMetres + more)) ?? [],
  );
  return rises.length === 0 ? undefined : Math.max(...rises);
}

/** Longest stroke a carry from the tee is asked about. */
const LONGEST_CARRY_ASKED_METRES = 300;

/**
 * Shots from a tee: carries over hazards across the line, and to the green where one
 * stroke can reach it; after a drive of the given length, to the green from there.
 * Shots over unknown ground are left out.
 */
export function shotsOf(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid, driveMetres: number): Shot[] {
  const carries = tee.hazards
    .flatMap((hazard) => {
      const carried = hazard.position === "across" && hazard.inCorridor ? carriedOver(hazard) : undefined;
      if (!carried || carried.metres >= LONGEST_CARRY_ASKED_METRES) return [];
      return shot("carry", hazard.id, 0, tee.marker, carried.point, grid);
    })
    .map((carry) => ({
      ...carry,
      riseMetres: risePast(grid, tee.marker, carry.bearingDegrees, carry.distanceMetres) ?? carry.riseMetres,
    }));
  const oneStroke = hole.hole.par.men === 3;
  const landing = oneStroke ? undefined : landingAt(hole, tee, driveMetres);
  const from = landing ? landing.point : tee.marker;
  const drive = landing ? driveMetres : 0;
  if (!oneStroke && !landing) return carries;
  const { front, middle, back } = tee.green;
  return [
    ...carries,
    ...shot("green-front", undefined, drive, from, front, grid),
    ...shot("green-middle", undefined, drive, from, middle, grid),
    ...shot("green-back", undefined, drive, from, back, grid),
  ];
}

/** Effective length of a shot; a refusal where no stroke of the family reaches it. */
export const effectiveOf = (
  { distanceMetres, riseMetres, bearingDegrees }: Shot,
  day: DayConditions,
): FlightResult<EffectiveLength> => effectiveLength({ distanceMetres, riseMetres, bearingDegrees }, day);
