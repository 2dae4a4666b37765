import { degrees, radians } from "../geo/units.ts";
import { flyAimed } from "./aimed.ts";
import type { AimedConditions, AimedFlight } from "./aimed.ts";
import type { Air } from "./air.ts";
import { COEFFICIENT_SETS } from "./coefficients/sets.ts";
import type { CoefficientSet, CoefficientSetId } from "./coefficients/types.ts";
import { launchOf, LONGEST_CARRY_METRES, otherDrivers, SHORTEST_CARRY_METRES, USUAL_DRIVER_METRES } from "./family.ts";
import { fittingOf, roughFittingOf } from "./launch.ts";
import type { Fitting } from "./launch.ts";
import { firstRefusal, refuse, refuseOutside } from "./result.ts";
import { isIndication } from "./indication.ts";
import type { FlightRefusal, FlightResult } from "./result.ts";
import { runMetres } from "./run.ts";
import { findCarry } from "./search.ts";
import { STEP_SECONDS } from "./trajectory.ts";
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

/** One coefficient set's answer for the golfer asked about. */
export interface SetEffectiveLength {
  readonly lengthMetres: number;
  readonly launch: Launch;
  /** The flight in the day's conditions, as the set flies it, before it is fitted to the stroke. */
  readonly flight: Flight;
  readonly fitting: Fitting;
  /** How far the wind moves the ball, metres at the target; positive: to the right, so aim left. */
  readonly driftMetres: number;
  readonly runMetres: number;
  /** Brought to the stroke's known descent, and flatter or steeper than that as the day makes the flight. */
  readonly landingAngleDegrees: number;
}

/** A figure and how far sensible answers stand from it. */
export interface Spread {
  /** Half way between the two coefficient sets. */
  readonly metres: number;
  /** Neither set, nor a golfer who strikes it otherwise, is further away. */
  readonly plusMinusMetres: number;
}

/** Level carry in still standard air of the shot that just reaches a target. */
export interface EffectiveLength {
  /** The figure to show, half way between the two coefficient sets. */
  readonly lengthMetres: number;
  /** Its stated uncertainty: the furthest from it of both sets and of golfers who strike the ball otherwise. */
  readonly plusMinusMetres: number;
  /**
   * Whether the day or the ground is beyond what the model may be trusted with: told, it must be told with
   * its figure.
   */
  readonly indication: boolean;
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

/** Who strikes the ball, and how finely it is flown. */
export interface StrokeOptions {
  /** Level carry of the golfer's driver; left out: nobody in particular, and so with a wider spread. */
  readonly driverMetres?: number | undefined;
  /** For checks and benchmarks; the guide leaves it out. */
  readonly stepSeconds?: number;
}

/**
 * Step the other golfers' flights are flown with, as many times the figure's: a spread need not be known to
 * the millimetre.
 */
const COARSER = 2;

function refuseDay(
  riseMetres: number,
  bearingDegrees: number,
  day: DayConditions,
  { driverMetres }: StrokeOptions,
): FlightRefusal | null {
  return firstRefusal(
    refuseOutside("The rise to the target", riseMetres, -GREATEST_RISE_METRES, GREATEST_RISE_METRES, "m"),
    Number.isFinite(bearingDegrees)
      ? null
      : refuse(
          "not-a-number",
          `The bearing of the shot is not a finite number (${String(bearingDegrees)}). Give degrees clockwise from north.`,
        ),
    refuseOutside("The air density", day.air.densityKilogramsPerCubicMetre, 0.5, 2, "kg/m3"),
    refuseOutside("The kinematic viscosity", day.air.kinematicViscositySquareMetresPerSecond, 1e-6, 1e-4, "m2/s"),
    day.wind === undefined ? null : refuseWind(day.wind),
    driverMetres === undefined
      ? null
      : refuseOutside("The driver's level carry", driverMetres, SHORTEST_CARRY_METRES, LONGEST_CARRY_METRES, "m"),
  );
}

/** How far the wind moves the ball aside: what the aim off makes up for. */
function driftOf(distanceMetres: number, aimDegrees: number): number {
  return aimDegrees === 0 ? 0 : -distanceMetres * Math.tan(radians(aimDegrees));
}

/** A stroke flown in the day's conditions. */
interface Flown {
  readonly launch: Launch;
  readonly aimed: AimedFlight;
  readonly fitting: Fitting;
  /** Stretched, as is the drift. */
  readonly distanceMetres: number;
  readonly driftMetres: number;
}

interface Day {
  readonly wind: ShotWind;
  readonly air: Air;
  readonly riseMetres: number;
}

/** One golfer's stroke, and one coefficient set. */
interface Stroke {
  readonly carryMetres: number;
  readonly driverMetres: number;
  readonly coefficients: CoefficientSet;
}

/** How a stroke is looked for: where it is expected, how it is aimed first, how finely it is flown. */
interface Look {
  readonly expectedMetres: number;
  readonly aimRadians: number;
  readonly stepSeconds: number | undefined;
  readonly mostTurns?: number;
}

function flyStroke(
  { carryMetres, driverMetres, coefficients }: Stroke,
  fitting: Fitting,
  { wind, air, riseMetres }: Day,
  look: Look,
): FlightResult<Flown> {
  const launch = launchOf(carryMetres, driverMetres);
  const { expectedMetres, aimRadians, stepSeconds, mostTurns } = look;
  const conditions: AimedConditions = {
    coefficients,
    air,
    wind,
    riseMetres: riseMetres * fitting.riseShare,
    ...(stepSeconds === undefined ? {} : { stepSeconds }),
    ...(mostTurns === undefined ? {} : { mostTurns }),
  };
  // The slope of the ground under the wind is met at the unstretched distance.
  const aimed = flyAimed(launch, conditions, expectedMetres / fitting.stretch, aimRadians);
  if (!aimed.ok) return aimed;
  const distanceMetres = aimed.distanceMetres * fitting.stretch;
  return { ok: true, launch, aimed, fitting, distanceMetres, driftMetres: driftOf(distanceMetres, aimed.aimDegrees) };
}

/** What one set, or one other golfer, makes of a shot. */
interface Variant {
  readonly metres: number;
  readonly driftMetres: number;
  readonly runMetres: number;
}

/** The set the other golfers are flown by: nearer the tour's means of the two, in carry, height and descent. */
const NEARER_SET = COEFFICIENT_SETS.bearmanHarvey1976;

/**
 * How other golfers stand to the one asked about, both by one set: the differences, at the place where his stroke
 * comes down.
 *
 * @param ownMetres where his comes down
 * @param slope metres won today per metre of level carry
 * @param wanted what is told of them: the level carry that comes down there, or where a level carry comes down
 */
function otherGolfers(
  carryMetres: number,
  ownMetres: number,
  own: Flown,
  slope: number,
  day: Day,
  { driverMetres, stepSeconds }: StrokeOptions,
  wanted: "length" | "carry",
): readonly Variant[] {
  const coarse = (stepSeconds ?? STEP_SECONDS) * COARSER;
  const look: Look = {
    expectedMetres: ownMetres,
    aimRadians: radians(own.aimed.aimDegrees),
    stepSeconds: coarse,
    mostTurns: 0,
  };
  const coefficients = NEARER_SET;
  return otherDrivers(driverMetres).flatMap((other): Variant[] => {
    const flown = flyStroke(
      { carryMetres, driverMetres: other, coefficients },
      fittingOf(carryMetres, other, coefficients, coarse),
      day,
      look,
    );
    if (!flown.ok) return [];
    const further = flown.distanceMetres - ownMetres;
    return [
      {
        metres: wanted === "carry" ? further : -further / slope,
        driftMetres: flown.driftMetres - own.driftMetres,
        runMetres: runMetres(flown.aimed.flight) - runMetres(own.aimed.flight),
      },
    ];
  });
}

const asked = ({ distanceMetres, riseMetres }: ShotTarget): string =>
  `${distanceMetres.toFixed(1)} m away and ${Math.abs(riseMetres).toFixed(1)} m ${riseMetres < 0 ? "down" : "up"}`;

/** The table's fitting was out by more than this at the target, metres: the stroke is flown once more. */
const FLOWN_AGAIN_METRES = 0.1;

type Solved = SetEffectiveLength & { readonly flown: Flown; readonly slope: number };

function solveSet(
  target: ShotTarget,
  day: Day,
  coefficients: CoefficientSet,
  { driverMetres = USUAL_DRIVER_METRES, stepSeconds }: StrokeOptions,
): FlightResult<Solved> {
  const { distanceMetres, riseMetres } = target;
  const { wind } = day;
  // Starts near most answers, so that few flights are flown: about 2 % of the distance and a degree of aim per m/s.
  const blown =
    1 - Math.max(-0.5, Math.min(0.3, (wind.alongMetresPerSecond > 0 ? 0.012 : 0.024) * wind.alongMetresPerSecond));
  let aimRadians = -0.0165 * wind.rightMetresPerSecond;
  let comesDown = true;
  const answer = findCarry(
    [SHORTEST_CARRY_METRES, LONGEST_CARRY_METRES],
    (distanceMetres + riseMetres) * blown,
    (carryMetres) => {
      const fitting = roughFittingOf(carryMetres, driverMetres, coefficients);
      const flown = flyStroke({ carryMetres, driverMetres, coefficients }, fitting, day, {
        expectedMetres: distanceMetres,
        aimRadians,
        stepSeconds,
      });
      comesDown = flown.ok;
      if (flown.ok) aimRadians = radians(flown.aimed.aimDegrees);
      // A ball that never gets up to the target is short of it by the whole distance.
      return { carryMetres, missMetres: flown.ok ? flown.distanceMetres - distanceMetres : -distanceMetres, flown };
    },
  );
  const tooSteep = refuse(
    "unreachable",
    `No stroke of the family comes down on a target ${asked(target)}: it is too steep. Give a target further away or less high.`,
  );
  if (!answer.found) {
    if (!comesDown) return tooSteep;
    return answer.side === "short"
      ? refuse(
          "too-long",
          `No stroke up to ${LONGEST_CARRY_METRES.toFixed(0)} m of level carry reaches a target ${asked(target)} in this air and wind. Give a nearer target, such as a place to lay up.`,
        )
      : refuse(
          "too-short",
          `Even a stroke of ${SHORTEST_CARRY_METRES.toFixed(0)} m of level carry flies past a target ${asked(target)} in this air and wind. Give a target further away.`,
        );
  }
  const { slope } = answer;
  let { flown, carryMetres } = answer.trial;
  if (!flown.ok || Math.abs(answer.trial.missMetres) > 0.1) return tooSteep;
  // The search took its fittings from a table; the answer's is flown.
  let fitting = fittingOf(carryMetres, driverMetres, coefficients, stepSeconds);
  let missMetres = flown.aimed.distanceMetres * fitting.stretch - distanceMetres;
  if (Math.abs(missMetres) > FLOWN_AGAIN_METRES) {
    carryMetres -= missMetres / slope;
    fitting = fittingOf(carryMetres, driverMetres, coefficients, stepSeconds);
    flown = flyStroke({ carryMetres, driverMetres, coefficients }, fitting, day, {
      expectedMetres: distanceMetres,
      aimRadians,
      stepSeconds,
    });
    if (!flown.ok) return tooSteep;
    missMetres = flown.distanceMetres - distanceMetres;
  }
  const {
    launch,
    aimed: { flight },
    driftMetres,
  } = flown;
  return {
    ok: true,
    lengthMetres: carryMetres - missMetres / slope,
    launch,
    flight,
    fitting,
    driftMetres,
    runMetres: runMetres(flight),
    landingAngleDegrees: fittedAngle(flight, fitting),
    flown,
    slope,
  };
}

const fittedAngle = ({ landingAngleDegrees }: Flight, { stretch, riseShare }: Fitting): number =>
  degrees(Math.atan(Math.tan(radians(landingAngleDegrees)) / stretch / riseShare));

/**
 * Where all agree, a figure is still no surer than to this share of what the day and the rise make of it: golfers'
 * descents
 * lie five degrees and more about the means (common practice, no source), which alone is a fifth of what a rise
 * costs, and
 * a forecast's wind is not the wind on the hole.
 */
const UNSURE_SHARE_OF_CHANGE = 0.25;

/**
 * Half way between the sets; as far as half their difference and the furthest of the other golfers together.
 *
 * @param others how other golfers stand to the one asked about
 * @param unchanged what it would be on the level in still standard air
 */
function spreadOf(one: number, other: number, others: readonly number[], unchanged: number): Spread {
  const metres = (one + other) / 2;
  const apart = Math.abs(one - other) / 2 + Math.max(0, ...others.map(Math.abs));
  return { metres, plusMinusMetres: Math.max(UNSURE_SHARE_OF_CHANGE * Math.abs(metres - unchanged), apart) };
}

/** The three figures a shot has, each with its spread. */
function spreads(
  one: Variant,
  other: Variant,
  golfers: readonly Variant[],
  unchangedMetres: number,
): { readonly figure: Spread; readonly drift: Spread; readonly run: Spread } {
  const run = (one.runMetres + other.runMetres) / 2;
  return {
    figure: spreadOf(
      one.metres,
      other.metres,
      golfers.map(({ metres }) => metres),
      unchangedMetres,
    ),
    drift: spreadOf(
      one.driftMetres,
      other.driftMetres,
      golfers.map(({ driftMetres }) => driftMetres),
      0,
    ),
    run: spreadOf(
      one.runMetres,
      other.runMetres,
      golfers.map((golfer) => golfer.runMetres),
      run,
    ),
  };
}

/**
 * Effective length of a shot: the level carry, in still standard air at sea level, of the stroke
 * that just comes down on the target in the day's air and wind. By both coefficient sets; the figure
 * is half way between. Its uncertainty reaches as far as either set and as golfers who would strike a
 * ball of that carry otherwise. The ball is aimed off so that the wind brings it onto the target.
 *
 * To first order a rise of h adds h / tan(landing angle): one yard per yard of rise, the common
 * practice, holds where the ball comes down at 45 degrees, as a mid-iron does. A drive comes down
 * flatter, and a rise costs it more than its height.
 *
 * Refuses what is not finite, a rise beyond 100 m up or down, wind beyond 28 m/s, and targets no
 * stroke between 40 and 340 yd of level carry comes down on.
 */
export function effectiveLength(
  target: ShotTarget,
  day: DayConditions,
  options: StrokeOptions = {},
): FlightResult<EffectiveLength> {
  const refusal = firstRefusal(
    refuseOutside("The distance to the target", target.distanceMetres, 1, FURTHEST_TARGET_METRES, "m"),
    refuseDay(target.riseMetres, target.bearingDegrees, day, options),
  );
  if (refusal) return refusal;
  const wind = day.wind ? windOnShot(day.wind, target.bearingDegrees) : STILL;
  const conditions: Day = { wind, air: day.air, riseMetres: target.riseMetres };
  const smits = solveSet(target, conditions, COEFFICIENT_SETS.smitsSmith1994, options);
  if (!smits.ok) return smits;
  const bearman = solveSet(target, conditions, COEFFICIENT_SETS.bearmanHarvey1976, options);
  if (!bearman.ok) return bearman;
  const { figure, drift, run } = spreads(
    { ...smits, metres: smits.lengthMetres },
    { ...bearman, metres: bearman.lengthMetres },
    otherGolfers(
      bearman.lengthMetres,
      target.distanceMetres,
      bearman.flown,
      bearman.slope,
      conditions,
      options,
      "length",
    ),
    target.distanceMetres,
  );
  return {
    ok: true,
    lengthMetres: figure.metres,
    plusMinusMetres: figure.plusMinusMetres,
    indication: isIndication({ wind: day.wind, riseMetres: target.riseMetres, distanceMetres: target.distanceMetres }),
    drift,
    run,
    landingAngleDegrees: (smits.landingAngleDegrees + bearman.landingAngleDegrees) / 2,
    bySet: { smitsSmith1994: answerOf(smits), bearmanHarvey1976: answerOf(bearman) },
  };
}

const answerOf = ({ flown: _flown, slope: _slope, ...answer }: Solved): SetEffectiveLength => answer;

/** How far a stroke of known level carry goes today. */
export interface CarryToday {
  readonly carry: Spread;
  /** As for an effective length. */
  readonly indication: boolean;
  /** Sideways movement by the wind, positive to the right. */
  readonly drift: Spread;
  /** Run on a level fairway after the first touch; not in the carry. */
  readonly run: Spread;
  /** Each set's carry. */
  readonly carryMetresBySet: { readonly [Id in CoefficientSetId]: number };
}

/**
 * The other way about: how far a stroke carries in the day's air and wind, to ground so much higher
 * or lower, when its level carry in still standard air is known ("my driver carries 200"). The one
 * place a driven distance comes from. `effectiveLength` of a set's carry gives the level carry back by that set.
 */
export function carryToday(
  stroke: { readonly levelCarryMetres: number; readonly riseMetres: number; readonly bearingDegrees: number },
  day: DayConditions,
  options: StrokeOptions = {},
): FlightResult<CarryToday> {
  const { levelCarryMetres, riseMetres, bearingDegrees } = stroke;
  const refusal = firstRefusal(
    refuseDay(riseMetres, bearingDegrees, day, options),
    refuseOutside("The level carry", levelCarryMetres, SHORTEST_CARRY_METRES, LONGEST_CARRY_METRES, "m"),
  );
  if (refusal) return refusal;
  const conditions: Day = { wind: day.wind ? windOnShot(day.wind, bearingDegrees) : STILL, air: day.air, riseMetres };
  const { driverMetres = USUAL_DRIVER_METRES, stepSeconds } = options;
  const by = (coefficients: CoefficientSet): FlightResult<Flown> =>
    flyKnown({ carryMetres: levelCarryMetres, driverMetres, coefficients }, conditions, stepSeconds);
  const smits = by(COEFFICIENT_SETS.smitsSmith1994);
  if (!smits.ok) return smits;
  const bearman = by(COEFFICIENT_SETS.bearmanHarvey1976);
  if (!bearman.ok) return bearman;
  const { figure, drift, run } = spreads(
    variantOf(smits),
    variantOf(bearman),
    otherGolfers(levelCarryMetres, bearman.distanceMetres, bearman, 1, conditions, options, "carry"),
    levelCarryMetres,
  );
  return {
    ok: true,
    carry: figure,
    indication: isIndication({ wind: day.wind, riseMetres, distanceMetres: figure.metres }),
    drift,
    run,
    carryMetresBySet: { smitsSmith1994: smits.distanceMetres, bearmanHarvey1976: bearman.distanceMetres },
  };
}

const variantOf = ({ distanceMetres, driftMetres, aimed }: Flown): Variant => ({
  metres: distanceMetres,
  driftMetres,
  runMetres: runMetres(aimed.flight),
});

/** Slope of the ground under the wind and the aim need the distance, which needs them: this near is near enough. */
const SETTLED_METRES = 0.01;

/** Where a stroke of known level carry comes down. */
function flyKnown(stroke: Stroke, day: Day, stepSeconds: number | undefined): FlightResult<Flown> {
  const fitting = fittingOf(stroke.carryMetres, stroke.driverMetres, stroke.coefficients, stepSeconds);
  let expectedMetres = stroke.carryMetres;
  let aimRadians = 0;
  for (let n = 0; ; n += 1) {
    const flown = flyStroke(stroke, fitting, day, { expectedMetres, aimRadians, stepSeconds });
    if (!flown.ok || n >= 8 || Math.abs(flown.distanceMetres - expectedMetres) < SETTLED_METRES) return flown;
    expectedMetres = flown.distanceMetres;
    aimRadians = radians(flown.aimed.aimDegrees);
  }
}
