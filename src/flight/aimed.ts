import { degrees } from "../geo/units.ts";
import type { Air } from "./air.ts";
import type { CoefficientSet } from "./coefficients/types.ts";
import type { FlightResult } from "./result.ts";
import { fly } from "./trajectory.ts";
import type { Flight, Launch } from "./trajectory.ts";
import { turnShotWind } from "./wind.ts";
import type { ShotWind } from "./wind.ts";

/** What an aimed flight takes place in. */
export interface AimedConditions {
  readonly coefficients: CoefficientSet;
  readonly air: Air;
  /** Wind relative to the line to the target. */
  readonly wind: ShotWind;
  /** Height of the landing ground above the ball's start, metres. */
  readonly riseMetres: number;
  readonly stepSeconds?: number;
  /** How often the aim is put right at most; left out: until the ball comes down on the line. */
  readonly mostTurns?: number;
}

/** A flight that starts off the line so that the wind brings it back to it. */
export interface AimedFlight {
  /** Straight from the start to the first touch, which is on the line. */
  readonly distanceMetres: number;
  /** Aim, degrees to the right of the line; negative: left. */
  readonly aimDegrees: number;
  readonly flight: Flight;
}

/** Off the line by less than this, radians, is on it: 20 mm at 200 m, and the aim told is put right by it. */
const ON_LINE_RADIANS = 1e-4;
const MOST_TURNS = 12;
/**
 * A flight that misses its distance will be flown again anyway, so its aim need only be this good per share
 * missed.
 */
const OFF_PER_SHARE_MISSED = 0.05;

/**
 * Flies the launch with its aim turned until the ball comes down on the line; nearly so when it comes
 * down well short of or past the distance expected.
 *
 * @param distanceMetres how far it is expected to go; also gives the slope of the ground under the wind
 * @param startAimRadians aim to try first, to the right of the line
 */
export function flyAimed(
  launch: Launch,
  conditions: AimedConditions,
  distanceMetres: number,
  startAimRadians = 0,
): FlightResult<AimedFlight> {
  const { coefficients, air, wind, riseMetres, stepSeconds, mostTurns = MOST_TURNS } = conditions;
  let aim = wind.rightMetresPerSecond === 0 ? 0 : startAimRadians;
  for (let n = 0; ; n += 1) {
    const flight = fly(launch, {
      coefficients,
      air,
      wind: aim === 0 ? wind : turnShotWind(wind, aim),
      riseMetres,
      groundSlope: riseMetres / distanceMetres,
      ...(stepSeconds === undefined ? {} : { stepSeconds }),
    });
    if (!flight.ok) return flight;
    const off = aim + Math.atan2(flight.driftMetres, flight.carryMetres);
    const flownMetres = Math.hypot(flight.carryMetres, flight.driftMetres);
    const missedShare = Math.abs(flownMetres - distanceMetres) / distanceMetres;
    if (Math.abs(off) <= Math.max(ON_LINE_RADIANS, OFF_PER_SHARE_MISSED * missedShare) || n >= mostTurns) {
      return { ok: true, distanceMetres: flownMetres, aimDegrees: degrees(aim - off), flight };
    }
    aim -= off;
  }
}
