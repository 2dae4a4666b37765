/**
 * The day as a golfer states it, and what it makes of a hole's shots. Pure: no page, no
 * storage. The flight code is the build's own, so still air gives the page's own figures.
 */
import { airFrom } from "../flight/air.ts";
import { effectiveLength, type DayConditions } from "../flight/effective.ts";
import { LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "../flight/family.ts";
import type { FlightResult } from "../flight/result.ts";
import { MAXIMUM_WIND_METRES_PER_SECOND, type Wind } from "../flight/wind.ts";
import { inUnit, type LengthUnit } from "../geo/units.ts";
import type { ConditionsField } from "../contract/dataset.ts";
import type { GreenShots, GroundData, NextHazard, OwnDrive, ShotNumbers } from "../contract/ground-data.ts";
import type { Conditions } from "./conditions-store.ts";

/** The international mile per hour in metres per second, exact. */
export const METRES_PER_SECOND_PER_MPH = 0.44704;

/** Air temperature where a golfer gives none: the one the page's own figures are stated at. */
export const STATED_TEMPERATURE_CELSIUS = 15;

/** Beside yards wind is in miles per hour, beside metres in metres per second. */
export const speedIn = (metresPerSecond: number, unit: LengthUnit): number =>
  unit === "yards" ? metresPerSecond / METRES_PER_SECOND_PER_MPH : metresPerSecond;
export const speedFrom = (value: number, unit: LengthUnit): number =>
  unit === "yards" ? value * METRES_PER_SECOND_PER_MPH : value;

/** What a field may hold, in the unit it is typed in. */
export function limitsOf(field: ConditionsField, unit: LengthUnit): { readonly least: number; readonly most: number } {
  switch (field) {
    case "speed":
      return { least: 0, most: Math.floor(speedIn(MAXIMUM_WIND_METRES_PER_SECOND, unit)) };
    case "from":
      return { least: 0, most: 360 };
    case "temperature":
      return { least: -20, most: 45 };
    case "carry":
      return {
        least: Math.ceil(inUnit(SHORTEST_CARRY_METRES, unit)),
        most: Math.floor(inUnit(LONGEST_CARRY_METRES, unit)),
      };
  }
}

export type Reading =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly reason: "not-a-number" | "outside" };

/** Reads a field as typed; an empty one says nothing, a comma serves for the decimal point. */
export function readField(text: string, field: ConditionsField, unit: LengthUnit): Reading {
  const trimmed = text.trim().replace("\u2212", "-").replace(",", ".");
  if (trimmed === "") return { ok: true, value: undefined };
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(trimmed)) return { ok: false, reason: "not-a-number" };
  const value = Number(trimmed);
  const { least, most } = limitsOf(field, unit);
  return value >= least && value <= most ? { ok: true, value } : { ok: false, reason: "outside" };
}

/** The air and wind of a day at a height; a refusal when a number in it makes no sense. */
export function dayOf(
  { wind, temperatureCelsius }: Conditions,
  heightMetres: number,
): FlightResult<{ readonly day: DayConditions }> {
  const answer = airFrom({ heightMetres, temperatureCelsius: temperatureCelsius ?? STATED_TEMPERATURE_CELSIUS });
  return answer.ok ? { ok: true, day: { air: answer.air, ...(wind ? { wind } : {}) } } : answer;
}

export interface Today {
  readonly lengthMetres: number;
  readonly plusMinusMetres: number;
  /** By the wind, positive to the right. */
  readonly driftMetres: number;
  /** On a level fairway after the first touch; in no other figure. */
  readonly runMetres: number;
  /** Whether the wind or the rise is more than the model is to be trusted with. */
  readonly indication: boolean;
}

/**
 * How long a shot plays on a day.
 *
 * @param driverMetres level carry of the golfer's driver; undefined for nobody in particular
 */
export function todayOf(
  [distanceMetres, riseMetres, bearingDegrees]: ShotNumbers,
  day: DayConditions,
  driverMetres?: number,
): FlightResult<Today> {
  const answer = effectiveLength({ distanceMetres, riseMetres, bearingDegrees }, day, { driverMetres });
  return answer.ok
    ? {
        ok: true,
        lengthMetres: answer.lengthMetres,
        plusMinusMetres: answer.plusMinusMetres,
        driftMetres: answer.drift.metres,
        runMetres: answer.run.metres,
        indication: answer.indication,
      }
    : answer;
}

/** Index of the worked-out drive length nearest to a golfer's own. */
export const nearestDrive = (drivesMetres: readonly number[], carryMetres: number): number =>
  drivesMetres.reduce(
    (best, drive, i) => (Math.abs(drive - carryMetres) < Math.abs(drivesMetres[best]! - carryMetres) ? i : best),
    0,
  );

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

/** A shot part of the way from one to another; bearings by the shorter turn. */
export const shotBetween = (
  [distance, rise, bearing]: ShotNumbers,
  [toDistance, toRise, toBearing]: ShotNumbers,
  share: number,
): ShotNumbers => [
  between(distance, toDistance, share),
  between(rise, toRise, share),
  (bearing + (((((toBearing - bearing) % 360) + 540) % 360) - 180) * share + 360) % 360,
];

/**
 * A golfer's own drive from a tee set: what is left and the shots to the green between the
 * two lengths worked out about it, the ground underfoot at the nearer of them. Beyond the
 * lengths worked out, the last of them. Undefined where that drive is as long as the hole.
 */
export function driveOf(
  { drivesMetres, tees }: Pick<GroundData, "drivesMetres" | "tees">,
  tee: string,
  carryMetres: number,
): { readonly metres: number; readonly own: OwnDrive } | undefined {
  const drives = tees[tee] ?? [];
  const near = nearestDrive(drivesMetres, carryMetres);
  const nearest = drives[near];
  if (!nearest) return undefined;
  const nearMetres = drivesMetres[near]!;
  const other = near + Math.sign(carryMetres - nearMetres);
  const [next, nextMetres] = [drives[other], drivesMetres[other]];
  if (!next || nextMetres === undefined || other === near) return { metres: nearMetres, own: nearest };
  const share = (carryMetres - nearMetres) / (nextMetres - nearMetres);
  const part = (a: ShotNumbers, b: ShotNumbers): ShotNumbers => shotBetween(a, b, share);
  const [from, to] = [nearest.green, next.green];
  const green: GreenShots | undefined = from &&
    to && [part(from[0], to[0]), part(from[1], to[1]), part(from[2], to[2])];
  return {
    metres: carryMetres,
    own: {
      ...nearest,
      leavesMetres: between(nearest.leavesMetres, next.leavesMetres, share),
      ...(green ? { green } : {}),
      next: nextMetAfter(carryMetres, [
        [nearMetres, nearest],
        [nextMetres, next],
      ]),
    },
  };
}

/**
 * Hazards met after a drive that comes down between two worked out, on the safe side. The
 * furthest distance of a shape from points along a straight way lies below the chord
 * between two of them; where the corridor is another one from the longer drive on, because
 * a turning point is left behind, it is at most the step back to there more. Edges come at
 * most the step nearer.
 */
function nextMetAfter(metres: number, drives: readonly (readonly [metres: number, own: OwnDrive])[]): NextHazard[] {
  const [[shortMetres, short], [longMetres, long]] = [...drives].sort((a, b) => a[0] - b[0]) as [
    (typeof drives)[0],
    (typeof drives)[0],
  ];
  const [before, after] = [metres - shortMetres, longMetres - metres];
  const longer = long.next ?? [];
  const met = (short.next ?? []).map(([name, reach, carry, leaves]): NextHazard => {
    const least = Math.max(0, reach - before);
    const other = longer.find(([same]) => same === name);
    if (!other) return [name, least, carry, leaves];
    const chord =
      carry === null || other[2] === null
        ? null
        : Math.max(between(carry, other[2], before / (before + after)), other[2] + after);
    return [name, Math.min(least, other[1]), chord, leaves];
  });
  const onlyLonger = longer
    .filter(([name]) => !met.some(([same]) => same === name))
    .map(([name, reach, carry, leaves]): NextHazard => [name, reach, carry === null ? null : carry + after, leaves]);
  return [...met, ...onlyLonger].sort((a, b) => a[1] - b[1]);
}

const COMPASS_POINTS = ["n", "ne", "e", "se", "s", "sw", "w", "nw"] as const;

/** The point of the compass a bearing is nearest to. */
export const compassPoint = (degrees: number): (typeof COMPASS_POINTS)[number] =>
  COMPASS_POINTS[Math.round((((degrees % 360) + 360) % 360) / 45) % 8]!;

/** Whether a wind is anything to speak of. */
export const isWind = (wind: Wind | undefined): wind is Wind => wind !== undefined && wind.speedMetresPerSecond > 0;
