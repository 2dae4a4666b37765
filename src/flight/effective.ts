import { radians } from "../geo/units.ts";
import { flyAimed } from "./aimed.ts";
import type { AimedConditions, AimedFlight } from "./aimed.ts";
import type { Air } from "./air.ts";
import { COEFFICIENT_SETS } from "./coefficients/sets.ts";
import type { CoefficientSet, CoefficientSetId } from "./coefficients/types.ts";
import { guessSpeed, launchAtSpeed, LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "./family.ts";
import { flyStandard, launchForCarry } from "./launch.ts";
import { firstRefusal, refuse, refuseOutside } from "./result.ts";
import type { FlightRefusal, FlightResult } from "./result.ts";
import { runMetres } from "./run.ts";
import { findSpeed } from "./search.ts";
import type { Flight, Launch } from "./trajectory.ts";
import { refuseWind, STILL, windOnShot } from "./wind.ts";
import type { ShotWind, Wind } from "./wind.ts";

/** Air and wind of the day. */
export interface DayConditions {
  readonly air: Air;
  /** Left out: none. */
  readonly wind?: Wind;
}

/** What the shot is to come down on. */
export interface ShotTarget {
  /** Horizontal distance from the ball. */
  readonly distanceMetres: number;
  /** Height of the target above the ball; negative: below. */
  readonly riseMetres: number;
  /** Direction of the target, degrees clockwise from true north. Matters only in wind. */
  readonly bearingDegrees: number;
}

/** One coefficient set's answer. */
export interface SetEffectiveLength {
  readonly lengthMetres: number;
  readonly launch: Launch;
  /** The flight in the day's conditions. */
  readonly flight: Flight;
  /** How far the wind moves the ball, metres at the target; positive: to the right, so aim left. */
  readonly driftMetres: number;
  readonly runMetres: number;
}

/** A figure and how far the two coefficient sets stand from it. */
export interface Spread {
  /** Half way between the two sets. */
  readonly metres: number;
  /** Either set is this far away. */
  readonly plusMinusMetres: number;
}

/** Level carry in still standard air of the shot that just reaches a target. */
export interface EffectiveLength {
  /** The figure to show, half way between the two coefficient sets. */
  readonly lengthMetres: number;
  /** Its stated uncertainty: each set's answer is this far from it. */
  readonly plusMinusMetres: number;
  /** Sideways movement by the wind, positive to the right. */
  readonly drift: Spread;
  /** Run on a level fairway after the first touch. Not in the length, and not to be added to it. */
  readonly run: Spread;
  /** Mean of the two sets. */
  readonly landingAngleDegrees: number;
  readonly bySet: { readonly [Id in CoefficientSetId]: SetEffectiveLength };
}

/** Greatest height difference answered for, up or down, metres. */
export const GREATEST_RISE_METRES = 100;

/** Furthest target looked at, metres: no stroke of the family goes that far in any weather answered for. */
export const FURTHEST_TARGET_METRES = 600;

/** For checks and benchmarks; the guide leaves them out. */
export interface SolveOptions {
  readonly stepSeconds?: number;
}

function refuseDay(riseMetres: number, bearingDegrees: number, day: DayConditions): FlightRefusal | null {
  return firstRefusal(
    refuseOutside("The rise to the target", riseMetres, -GREATEST_RISE_METRES, GREATEST_RISE_METRES, "m"),
    Number.isFinite(bearingDegrees)
      ? null
      : refuse("not-a-number", `The bearing of the shot is not a finite number (${String(bearingDegrees)}). Give degrees clockwise from north.`),
    refuseOutside("The air density", day.air.densityKilogramsPerCubicMetre, 0.5, 2, "kg/m3"),
    refuseOutside("The kinematic viscosity", day.air.kinematicViscositySquareMetresPerSecond, 1e-6, 1e-4, "m2/s"),
    day.wind === undefined ? null : refuseWind(day.wind),
  );
}

/** How far the wind moves the ball aside: what the aim off makes up for. */
function driftOf(distanceMetres: number, aimDegrees: number): number {
  return aimDegrees === 0 ? 0 : -distanceMetres * Math.tan(radians(aimDegrees));
}

function solveSet(
  target: ShotTarget,
  wind: ShotWind,
  air: Air,
  coefficients: CoefficientSet,
  options: SolveOptions,
): FlightResult<SetEffectiveLength> {
  const { distanceMetres, riseMetres } = target;
  const conditions: AimedConditions = { coefficients, air, wind, riseMetres, ...options };
  // Starts near most answers, so that few flights are flown: about 2 % of the distance and a degree of aim per m/s.
  const blown = 1 - Math.max(-0.5, Math.min(0.3, (wind.alongMetresPerSecond > 0 ? 0.014 : 0.024) * wind.alongMetresPerSecond));
  let aim = -0.0165 * wind.rightMetresPerSecond;
  const answer = findSpeed(guessSpeed((distanceMetres + riseMetres) * blown), (speed) => {
    const flown: FlightResult<AimedFlight> = flyAimed(launchAtSpeed(speed), conditions, distanceMetres, aim);
    if (flown.ok) aim = radians(flown.aimDegrees);
    // A ball that never gets up to the target is short of it by the whole distance.
    return { missMetres: flown.ok ? flown.distanceMetres - distanceMetres : -distanceMetres, flown };
  });
  const asked = `${distanceMetres.toFixed(1)} m away and ${Math.abs(riseMetres).toFixed(1)} m ${riseMetres < 0 ? "down" : "up"}`;
  const tooLong = refuse("too-long", `No stroke up to ${LONGEST_CARRY_METRES.toFixed(0)} m of level carry reaches a target ${asked} in this air and wind. Give a nearer target, such as a place to lay up.`);
  const tooShort = refuse("too-short", `Even a stroke of ${SHORTEST_CARRY_METRES.toFixed(0)} m of level carry flies past a target ${asked} in this air and wind. Give a target further away.`);
  if (!answer.found) return answer.side === "short" ? tooLong : tooShort;
  const { flown } = answer.trial;
  if (!flown.ok || Math.abs(answer.trial.missMetres) > 0.1) {
    return refuse("unreachable", `No stroke of the family comes down on a target ${asked}: it is too steep. Give a target further away or less high.`);
  }
  const launch = launchAtSpeed(answer.speedMetresPerSecond);
  const level = flyStandard(launch, coefficients, options.stepSeconds);
  if (!level.ok) return level;
  if (level.carryMetres > LONGEST_CARRY_METRES) return tooLong;
  if (level.carryMetres < SHORTEST_CARRY_METRES) return tooShort;
  return {
    ok: true,
    lengthMetres: level.carryMetres,
    launch,
    flight: flown.flight,
    driftMetres: driftOf(distanceMetres, flown.aimDegrees),
    runMetres: runMetres(flown.flight),
  };
}

function spreadOf(one: number, other: number): Spread {
  return { metres: (one + other) / 2, plusMinusMetres: Math.abs(one - other) / 2 };
}

/**
 * Effective length of a shot: the level carry, in still standard air at sea level, of the stroke
 * that just comes down on the target in the day's air and wind. By both coefficient sets, each with
 * its own stroke of the family; the figure is half way between, its uncertainty half their
 * difference. The ball is aimed off so that the wind brings it onto the target.
 *
 * To first order a rise of h adds h / tan(landing angle): one yard per yard of rise, the common
 * practice, holds where the ball comes down at 45 degrees, as a mid-iron does. A drive comes down
 * flatter, near 37 degrees, and a rise costs it more than its height.
 *
 * Refuses what is not finite, a rise beyond 100 m up or down, wind beyond 28 m/s, and targets no
 * stroke between 40 and 340 yd of level carry comes down on.
 */
export function effectiveLength(target: ShotTarget, day: DayConditions, options: SolveOptions = {}): FlightResult<EffectiveLength> {
  const refusal = firstRefusal(
    refuseOutside("The distance to the target", target.distanceMetres, 1, FURTHEST_TARGET_METRES, "m"),
    refuseDay(target.riseMetres, target.bearingDegrees, day),
  );
  if (refusal) return refusal;
  const wind = day.wind ? windOnShot(day.wind, target.bearingDegrees) : STILL;
  const smitsSmith1994 = solveSet(target, wind, day.air, COEFFICIENT_SETS.smitsSmith1994, options);
  if (!smitsSmith1994.ok) return smitsSmith1994;
  const bearmanHarvey1976 = solveSet(target, wind, day.air, COEFFICIENT_SETS.bearmanHarvey1976, options);
  if (!bearmanHarvey1976.ok) return bearmanHarvey1976;
  const length = spreadOf(smitsSmith1994.lengthMetres, bearmanHarvey1976.lengthMetres);
  return {
    ok: true,
    lengthMetres: length.metres,
    plusMinusMetres: length.plusMinusMetres,
    drift: spreadOf(smitsSmith1994.driftMetres, bearmanHarvey1976.driftMetres),
    run: spreadOf(smitsSmith1994.runMetres, bearmanHarvey1976.runMetres),
    landingAngleDegrees: (smitsSmith1994.flight.landingAngleDegrees + bearmanHarvey1976.flight.landingAngleDegrees) / 2,
    bySet: { smitsSmith1994, bearmanHarvey1976 },
  };
}

/** How far a stroke of known level carry goes today. */
export interface CarryToday {
  readonly carry: Spread;
  /** Sideways movement by the wind, positive to the right. */
  readonly drift: Spread;
  /** Run on a level fairway after the first touch; not in the carry. */
  readonly run: Spread;
  /** Each set's carry. */
  readonly carryMetresBySet: { readonly [Id in CoefficientSetId]: number };
}

/**
 * The other way about: how far a stroke carries in the day's air and wind, to ground so much higher
 * or lower, when its level carry in still standard air is known ("my driver carries 200").
 * `effectiveLength` of a set's carry gives the level carry back by that set.
 */
export function carryToday(
  stroke: { readonly levelCarryMetres: number; readonly riseMetres: number; readonly bearingDegrees: number },
  day: DayConditions,
  options: SolveOptions = {},
): FlightResult<CarryToday> {
  const refusal = refuseDay(stroke.riseMetres, stroke.bearingDegrees, day);
  if (refusal) return refusal;
  const wind = day.wind ? windOnShot(day.wind, stroke.bearingDegrees) : STILL;
  const smitsSmith1994 = carryBySet(stroke.levelCarryMetres, stroke.riseMetres, wind, day.air, COEFFICIENT_SETS.smitsSmith1994, options);
  if (!smitsSmith1994.ok) return smitsSmith1994;
  const bearmanHarvey1976 = carryBySet(stroke.levelCarryMetres, stroke.riseMetres, wind, day.air, COEFFICIENT_SETS.bearmanHarvey1976, options);
  if (!bearmanHarvey1976.ok) return bearmanHarvey1976;
  return {
    ok: true,
    carry: spreadOf(smitsSmith1994.distanceMetres, bearmanHarvey1976.distanceMetres),
    drift: spreadOf(
      driftOf(smitsSmith1994.distanceMetres, smitsSmith1994.aimDegrees),
      driftOf(bearmanHarvey1976.distanceMetres, bearmanHarvey1976.aimDegrees),
    ),
    run: spreadOf(runMetres(smitsSmith1994.flight), runMetres(bearmanHarvey1976.flight)),
    carryMetresBySet: { smitsSmith1994: smitsSmith1994.distanceMetres, bearmanHarvey1976: bearmanHarvey1976.distanceMetres },
  };
}

/** Slope of the ground under the wind and the aim need the distance, which needs them: this near is near enough. */
const SETTLED_METRES = 0.01;

function carryBySet(
  levelCarryMetres: number,
  riseMetres: number,
  wind: ShotWind,
  air: Air,
  coefficients: CoefficientSet,
  options: SolveOptions,
): FlightResult<AimedFlight> {
  const stroke = launchForCarry(levelCarryMetres, coefficients, options.stepSeconds);
  if (!stroke.ok) return stroke;
  const conditions: AimedConditions = { coefficients, air, wind, riseMetres, ...options };
  let distance = levelCarryMetres;
  for (let n = 0; ; n += 1) {
    const flown = flyAimed(stroke.launch, conditions, distance);
    if (!flown.ok || n >= 8 || Math.abs(flown.distanceMetres - distance) < SETTLED_METRES) return flown;
    distance = flown.distanceMetres;
  }
}
