import { BALL_AREA_SQUARE_METRES, BALL_MASS_KILOGRAMS, RADIANS_PER_SECOND_PER_RPM, STANDARD_GRAVITY } from "./ball.ts";
import type { Air } from "./air.ts";
import type { CoefficientSet } from "./coefficients/types.ts";
import { firstRefusal, refuse, refuseOutside } from "./result.ts";
import type { FlightRefusal, FlightResult } from "./result.ts";
import { windShare } from "./wind.ts";
import type { ShotWind } from "./wind.ts";

/** How the ball leaves the club: straight ahead, spinning about a level axis square to the aim. */
export interface Launch {
  readonly speedMetresPerSecond: number;
  /** Above the horizontal. */
  readonly angleDegrees: number;
  /** Backspin. */
  readonly spinRpm: number;
}

/** What the ball flies in, and the ground it comes down on. */
export interface FlightConditions {
  readonly coefficients: CoefficientSet;
  readonly air: Air;
  /** Wind relative to the aim; left out: none. */
  readonly wind?: ShotWind;
  /** Height of the landing ground above the ball's start, metres; left out: level. */
  readonly riseMetres?: number;
  /**
   * Rise per metre along the aim of the ground the wind's height is counted from; left out: level.
   * So a ball played down to a low green still feels the wind over the slope beneath it.
   */
  readonly groundSlope?: number;
  /** Step of the integration, seconds; left out: `STEP_SECONDS`. */
  readonly stepSeconds?: number;
}

/** A point of a flight. Axes: along the aim, to the right of it, up; from the ball's start. */
export interface FlightPoint {
  readonly timeSeconds: number;
  readonly alongMetres: number;
  readonly rightMetres: number;
  readonly upMetres: number;
  readonly speedMetresPerSecond: number;
  readonly spinRpm: number;
}

/** A whole flight, up to first touching the landing ground. */
export interface Flight {
  /** Along the aim to the first touch. */
  readonly carryMetres: number;
  /** To the right of the aim at the first touch; negative: to the left. */
  readonly driftMetres: number;
  /** Highest point above the start. */
  readonly apexMetres: number;
  readonly timeSeconds: number;
  /** Steepness of the descent below the horizontal. */
  readonly landingAngleDegrees: number;
  readonly landingSpeedMetresPerSecond: number;
  readonly landingSpinRpm: number;
}

/** Step of the integration when none is asked for, seconds. */
export const STEP_SECONDS = 0.1;

// The log wind profile bends sharply near the ground, so there the step is cut.
const NEAR_GROUND_METRES = 3;
const NEAR_GROUND_PARTS = 8;

const LONGEST_FLIGHT_SECONDS = 120;

// Places in the state: position along, right, up; velocity along, right, up; spin.
const SIZE = 7;

/**
 * Flies the ball: a point mass under gravity, drag along the air's motion past it and lift square
 * to that motion and to the spin axis, by fourth-order Runge-Kutta at a fixed step (an eighth of it
 * within 3 m of the ground in a log wind). The landing is found between steps on the cubic that has both ends'
 * heights and climb rates.
 *
 * Refuses numbers that make no flight, and a landing height the ball never comes down through.
 *
 * @param visit called with the start, each step's end above the landing ground, and the landing
 */
export function fly(
  launch: Launch,
  conditions: FlightConditions,
  visit?: (point: FlightPoint) => void,
): FlightResult<Flight> {
  const refusal = refuseFlight(launch, conditions);
  if (refusal) return refusal;

  const {
    coefficients,
    air,
    wind,
    riseMetres: rise = 0,
    groundSlope: slope = 0,
    stepSeconds = STEP_SECONDS,
  } = conditions;
  const viscosity = air.kinematicViscositySquareMetresPerSecond;
  const forcePerMass = (0.5 * air.densityKilogramsPerCubicMetre * BALL_AREA_SQUARE_METRES) / BALL_MASS_KILOGRAMS;
  const windy = wind !== undefined && (wind.alongMetresPerSecond !== 0 || wind.rightMetresPerSecond !== 0);

  const rateOf = (state: Float64Array, rate: Float64Array): void => {
    const vx = state[3]!,
      vy = state[4]!,
      vz = state[5]!,
      spin = state[6]!;
    let ax = vx,
      ay = vy;
    if (windy) {
      const share = windShare(wind.profile, state[2]! - slope * state[0]!);
      ax -= wind.alongMetresPerSecond * share;
      ay -= wind.rightMetresPerSecond * share;
    }
    const speed = Math.sqrt(ax * ax + ay * ay + vz * vz);
    rate[0] = vx;
    rate[1] = vy;
    rate[2] = vz;
    if (speed < 1e-9) {
      // At rest in the air: no force, and the spin ratio would be 0/0.
      rate[3] = 0;
      rate[4] = 0;
      rate[5] = -STANDARD_GRAVITY;
      rate[6] = 0;
      return;
    }
    const drag = forcePerMass * coefficients.drag(speed, spin, viscosity) * speed;
    const lift = forcePerMass * coefficients.lift(speed, spin, viscosity) * speed;
    rate[3] = -drag * ax - lift * vz;
    rate[4] = -drag * ay;
    rate[5] = -drag * vz + lift * ax - STANDARD_GRAVITY;
    rate[6] = coefficients.spinRate(speed, spin);
  };

  const angle = (launch.angleDegrees * Math.PI) / 180;
  const state = new Float64Array(SIZE);
  state[3] = launch.speedMetresPerSecond * Math.cos(angle);
  state[5] = launch.speedMetresPerSecond * Math.sin(angle);
  state[6] = launch.spinRpm * RADIANS_PER_SECOND_PER_RPM;
  const before = new Float64Array(SIZE);
  const trial = new Float64Array(SIZE);
  const k1 = new Float64Array(SIZE),
    k2 = new Float64Array(SIZE),
    k3 = new Float64Array(SIZE),
    k4 = new Float64Array(SIZE);

  let apex = 0;
  let time = 0;
  visit?.(pointOf(0, state));
  while (time < LONGEST_FLIGHT_SECONDS) {
    const nearGround = windy && wind.profile === "log" && state[2]! - slope * state[0]! < NEAR_GROUND_METRES;
    const step = nearGround ? stepSeconds / NEAR_GROUND_PARTS : stepSeconds;
    before.set(state);
    rateOf(state, k1);
    for (let i = 0; i < SIZE; i += 1) trial[i] = before[i]! + 0.5 * step * k1[i]!;
    rateOf(trial, k2);
    for (let i = 0; i < SIZE; i += 1) trial[i] = before[i]! + 0.5 * step * k2[i]!;
    rateOf(trial, k3);
    for (let i = 0; i < SIZE; i += 1) trial[i] = before[i]! + step * k3[i]!;
    rateOf(trial, k4);
    for (let i = 0; i < SIZE; i += 1) state[i] = before[i]! + (step / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!);

    if (before[5]! > 0 && state[5] <= 0) apex = apexBetween(before, state, step);
    if (state[5] < 0 && state[2]! <= rise) {
      if (before[2]! < rise) {
        return refuse(
          "unreachable",
          `The ball rises ${apex.toFixed(1)} m and never comes down on ground ${rise} m higher. Give a lower target or a longer shot.`,
        );
      }
      const share = shareAtHeight(before, state, step, rise);
      const landed = between(before, state, step, share);
      time += share * step;
      visit?.(pointOf(time, landed));
      const level = Math.hypot(landed[3]!, landed[4]!);
      return {
        ok: true,
        carryMetres: landed[0]!,
        driftMetres: landed[1]!,
        apexMetres: apex,
        timeSeconds: time,
        landingAngleDegrees: (Math.atan2(-landed[5]!, level) * 180) / Math.PI,
        landingSpeedMetresPerSecond: Math.hypot(level, landed[5]!),
        landingSpinRpm: landed[6]! / RADIANS_PER_SECOND_PER_RPM,
      };
    }
    time += step;
    visit?.(pointOf(time, state));
  }
  return refuse(
    "unreachable",
    `The ball is still in the air after ${LONGEST_FLIGHT_SECONDS} s. Give a landing height nearer the start.`,
  );
}

function refuseFlight(launch: Launch, conditions: FlightConditions): FlightRefusal | null {
  const { air, wind, riseMetres = 0, groundSlope = 0, stepSeconds = STEP_SECONDS } = conditions;
  return firstRefusal(
    refuseOutside("The launch speed", launch.speedMetresPerSecond, 1, 120, "m/s"),
    refuseOutside("The launch angle", launch.angleDegrees, 0.1, 89.9, "degrees"),
    refuseOutside("The spin", launch.spinRpm, 0, 15_000, "rpm"),
    refuseOutside("The air density", air.densityKilogramsPerCubicMetre, 0, 2, "kg/m3"),
    refuseOutside("The kinematic viscosity", air.kinematicViscositySquareMetresPerSecond, 1e-6, 1e-3, "m2/s"),
    wind === undefined ? null : refuseOutside("The wind along the shot", wind.alongMetresPerSecond, -50, 50, "m/s"),
    wind === undefined ? null : refuseOutside("The wind across the shot", wind.rightMetresPerSecond, -50, 50, "m/s"),
    refuseOutside("The rise", riseMetres, -10_000, 1000, "m"),
    refuseOutside("The slope of the ground", groundSlope, -10, 10, "(rise per length)"),
    refuseOutside("The step", stepSeconds, 1e-5, 0.2, "s"),
  );
}

function pointOf(timeSeconds: number, state: Float64Array): FlightPoint {
  return {
    timeSeconds,
    alongMetres: state[0]!,
    rightMetres: state[1]!,
    upMetres: state[2]!,
    speedMetresPerSecond: Math.hypot(state[3]!, state[4]!, state[5]!),
    spinRpm: state[6]! / RADIANS_PER_SECOND_PER_RPM,
  };
}

/** Cubic through both ends with both ends' rates, at a share of the step. */
function hermite(from: number, fromRate: number, to: number, toRate: number, step: number, share: number): number {
  const rest = 1 - share;
  return (
    rest * rest * (1 + 2 * share) * from +
    share * share * (3 - 2 * share) * to +
    step * share * rest * (rest * fromRate - share * toRate)
  );
}

/** State within a step: positions by the cubic, velocity and spin straight. */
function between(before: Float64Array, after: Float64Array, step: number, share: number): Float64Array {
  const state = new Float64Array(SIZE);
  for (let i = 0; i < SIZE; i += 1) state[i] = before[i]! + share * (after[i]! - before[i]!);
  for (let i = 0; i < 3; i += 1) state[i] = hermite(before[i]!, before[i + 3]!, after[i]!, after[i + 3]!, step, share);
  return state;
}

/** Where within the step the ball comes down to the height, by bisection: it is above at 0 and not at 1. */
function shareAtHeight(before: Float64Array, after: Float64Array, step: number, height: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (hermite(before[2]!, before[5]!, after[2]!, after[5]!, step, middle) > height) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Highest point within the step the climb ends in. */
function apexBetween(before: Float64Array, after: Float64Array, step: number): number {
  const climb = before[5]! - after[5]!;
  const share = climb > 0 ? before[5]! / climb : 1;
  return hermite(before[2]!, before[5]!, after[2]!, after[5]!, step, share);
}
