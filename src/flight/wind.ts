import { firstRefusal, refuse, refuseOutside } from "./result.ts";
import type { FlightRefusal } from "./result.ts";

/** Wind as a forecast gives it. */
export interface Wind {
  /** Speed 10 m above open ground, m/s. */
  readonly speedMetresPerSecond: number;
  /** Where it blows from, degrees clockwise from true north. */
  readonly fromDegrees: number;
}

/** How the wind changes with height. */
export type WindProfile =
  /** Logarithmic over open short grass: what the guide uses. */
  | "log"
  /** The same at every height: for comparing with published or independent figures. */
  | "uniform";

/** Wind as one shot meets it, 10 m above the ground. */
export interface ShotWind {
  /** Along the shot, m/s; positive helps (tail wind), negative hurts (head wind). */
  readonly alongMetresPerSecond: number;
  /** Across the shot, m/s; positive pushes the ball to the right. */
  readonly rightMetresPerSecond: number;
  readonly profile: WindProfile;
}

/** No wind at all. */
export const STILL: ShotWind = { alongMetresPerSecond: 0, rightMetresPerSecond: 0, profile: "log" };

/** Height above ground a forecast's wind speed is for, metres (from memory: the meteorological standard). */
export const WIND_REFERENCE_HEIGHT_METRES = 10;

/** Roughness length of open short grass, metres (from memory). */
export const ROUGHNESS_LENGTH_METRES = 0.03;

/** Strongest wind answered for, m/s at 10 m: Beaufort 10, storm. Nobody should be out in it. */
export const MAXIMUM_WIND_METRES_PER_SECOND = 28;

const LOG_REFERENCE = Math.log(WIND_REFERENCE_HEIGHT_METRES / ROUGHNESS_LENGTH_METRES);

/**
 * Wind speed at a height as a share of the speed at 10 m: ln(z / z0) / ln(10 m / z0), and none at
 * all at or below the roughness length z0 = 0.03 m (logarithmic wind profile; z0 from memory).
 */
export function windShare(profile: WindProfile, heightAboveGroundMetres: number): number {
  if (profile === "uniform") return 1;
  if (heightAboveGroundMetres <= ROUGHNESS_LENGTH_METRES) return 0;
  return Math.log(heightAboveGroundMetres / ROUGHNESS_LENGTH_METRES) / LOG_REFERENCE;
}

/**
 * The part of a wind along and across a shot.
 *
 * @param bearingDegrees direction of the shot, degrees clockwise from true north
 */
export function windOnShot(wind: Wind, bearingDegrees: number, profile: WindProfile = "log"): ShotWind {
  // The wind blows towards fromDegrees + 180.
  const angle = ((wind.fromDegrees + 180 - bearingDegrees) * Math.PI) / 180;
  return {
    alongMetresPerSecond: wind.speedMetresPerSecond * Math.cos(angle),
    rightMetresPerSecond: wind.speedMetresPerSecond * Math.sin(angle),
    profile,
  };
}

/** The same wind on a shot aimed `radians` further to the right. */
export function turnShotWind(wind: ShotWind, radians: number): ShotWind {
  const cosine = Math.cos(radians);
  const sine = Math.sin(radians);
  return {
    alongMetresPerSecond: wind.alongMetresPerSecond * cosine + wind.rightMetresPerSecond * sine,
    rightMetresPerSecond: wind.rightMetresPerSecond * cosine - wind.alongMetresPerSecond * sine,
    profile: wind.profile,
  };
}

/** Refuses a wind that is not finite, negative in speed, or stronger than the model answers for. */
export function refuseWind(wind: Wind): FlightRefusal | null {
  return firstRefusal(
    refuseOutside("The wind speed", wind.speedMetresPerSecond, 0, MAXIMUM_WIND_METRES_PER_SECOND, "m/s"),
    Number.isFinite(wind.fromDegrees)
      ? null
      : refuse(
          "not-a-number",
          `The wind direction is not a finite number (${String(wind.fromDegrees)}). Give the degrees from north it blows from.`,
        ),
  );
}
