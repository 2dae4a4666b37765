/**
 * The shots a hole asks for, each as distance, rise and bearing: all that the flight model
 * needs, so the browser can work out a day's effective lengths without the height model.
 */
import { bearingDegrees, directionTo, distanceMetres } from "../geo/vector.ts";
import type { Point } from "../geo/position.ts";
import { effectiveLength, type DayConditions, type EffectiveLength } from "../flight/effective.ts";
import type { FlightResult } from "../flight/result.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { landingAt, riseBetween } from "./landing.ts";
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

const shot = (purpose: ShotPurpose, feature: string | undefined, driveMetres: number, from: Point, to: Point, grid: HeightGrid): Shot[] => {
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

/** Longest stroke a carry from the tee is asked about. */
const LONGEST_CARRY_ASKED_METRES = 300;

/**
 * Shots from a tee: carries over hazards across the line, and to the green where one
 * stroke can reach it; after a drive of the given length, to the green from there.
 * Shots over unknown ground are left out.
 */
export function shotsOf(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid, driveMetres: number): Shot[] {
  const carries = tee.hazards
    .filter(({ position, inCorridor, carryMetres }) => position === "across" && inCorridor && carryMetres < LONGEST_CARRY_ASKED_METRES)
    .flatMap((hazard) => shot("carry", hazard.id, 0, tee.marker, hazard.carryPoint, grid));
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
export const effectiveOf = ({ distanceMetres, riseMetres, bearingDegrees }: Shot, day: DayConditions): FlightResult<EffectiveLength> =>
  effectiveLength({ distanceMetres, riseMetres, bearingDegrees }, day);
