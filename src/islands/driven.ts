/**
 * Where the golfer's strokes along the line of play come down: from what they carry on the level, the day's air
 * and wind
 * along the stroke, and the rise of the ground. Pure; every driven distance of the pages is worked out here.
 */
import type { FromTee, GroundData } from "../contract/ground-data.ts";
import { carryToday, type DayConditions } from "../flight/effective.ts";
import { MEASURED_DRIVERS_METRES } from "../flight/family.ts";
import { lineThrough, pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { bearingDegrees, directionTo } from "../geo/vector.ts";
import { isCarryLength } from "../measure/ladder.ts";

/** What of a hole's data it takes. */
export type DrivenGround = Pick<GroundData, "drivesMetres" | "tees" | "from">;

/** A stroke along the line of play. */
export interface DrivenStroke {
  /** Where it is struck, along the line; 0 on the tee. */
  readonly fromMetres: number;
  readonly levelMetres: number;
  /** Level carry of the golfer's driver. */
  readonly driverMetres: number | undefined;
}

/** Comes down there: nearer than this the rise and the bearing are those of the place. */
const SETTLED_METRES = 0.25;
const MOST_ROUNDS = 6;

/** A driver's carry as the flight code takes it; undefined for one no golfer has. */
export const golferOf = (carryMetres: number | undefined): number | undefined =>
  carryMetres !== undefined && isCarryLength(carryMetres) ? carryMetres : undefined;

/** Whether a driver is shorter or longer than those whose launches were measured. */
export const isUnmeasuredDriver = (carryMetres: number): boolean =>
  carryMetres < MEASURED_DRIVERS_METRES.least || carryMetres > MEASURED_DRIVERS_METRES.most;

/**
 * Height over the tee of the line of play, between the lengths worked out; beyond them that of the nearest,
 * 0 where none is known.
 */
export function riseAlong(
  { drivesMetres, tees }: Pick<GroundData, "drivesMetres" | "tees">,
  tee: string,
  metres: number,
): number {
  const known = [
    [0, 0] as const,
    ...drivesMetres.flatMap((drive, i) => {
      const rise = tees[tee]?.[i]?.rise;
      return rise === undefined ? [] : [[drive, rise] as const];
    }),
  ];
  const after = known.findIndex(([drive]) => drive >= metres);
  if (after < 0) return known[known.length - 1]![1];
  if (after === 0) return known[0]![1];
  const [[from, low], [to, high]] = [known[after - 1]!, known[after]!];
  return low + ((high - low) * (metres - from)) / (to - from);
}

const placeAt = ({ marker, line }: FromTee, metres: number): Point =>
  metres <= 0 ? marker : pointAt(lineThrough(line), metres);

/**
 * How far along the line it carries.
 *
 * @param day undefined with plain figures, and without a day: the level carry itself
 */
export function drivenMetres(
  ground: DrivenGround,
  tee: string,
  { fromMetres, levelMetres, driverMetres }: DrivenStroke,
  day: DayConditions | undefined,
): number {
  const from = ground.from[tee];
  if (day === undefined || from === undefined) return levelMetres;
  const start = placeAt(from, fromMetres);
  const low = riseAlong(ground, tee, fromMetres);
  let metres = levelMetres;
  for (let n = 0; n < MOST_ROUNDS; n += 1) {
    const answer = carryToday(
      {
        levelCarryMetres: levelMetres,
        riseMetres: riseAlong(ground, tee, fromMetres + metres) - low,
        bearingDegrees: bearingDegrees(directionTo(start, placeAt(from, fromMetres + metres))),
      },
      day,
      { driverMetres: golferOf(driverMetres) },
    );
    if (!answer.ok) return metres;
    const moved = Math.abs(answer.carry.metres - metres);
    metres = answer.carry.metres;
    if (moved < SETTLED_METRES) break;
  }
  return metres;
}
