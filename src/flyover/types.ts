/** Where a flyover's camera is, and when. */
import type { Point } from "../geo/position.ts";

/** One moment of a flight, in the course's plane. */
export interface Pose {
  readonly point: Point;
  /** In the height model's own datum. */
  readonly heightMetres: number;
  /** Compass direction the camera looks in, degrees; unwrapped, so that 359 to 361 is a turn of 2. */
  readonly bearingDegrees: number;
  /** Below the horizon, degrees, positive down. */
  readonly downDegrees: number;
}

/** What is bounded so that nobody feels ill; common practice, no source. */
export interface Comfort {
  readonly turnDegreesPerSecond: number;
  readonly turnDegreesPerSecondSquared: number;
  readonly nodDegreesPerSecond: number;
  readonly speedMetresPerSecond: number;
  readonly accelerationMetresPerSecondSquared: number;
  /** Least height of the camera above the ground below it. */
  readonly clearanceMetres: number;
}

export const COMFORT: Comfort = {
  turnDegreesPerSecond: 20,
  turnDegreesPerSecondSquared: 20,
  nodDegreesPerSecond: 12,
  speedMetresPerSecond: 26,
  accelerationMetresPerSecondSquared: 6,
  clearanceMetres: 8,
};

/** A flight as a function of time. */
export interface Flight {
  readonly seconds: number;
  /** The pose at a time; before the start and after the end it stands still. */
  poseAt(seconds: number): Pose;
}

export interface Chapter {
  readonly kind: "tee" | "landing" | "approach" | "green";
  readonly seconds: number;
  /** Station along the line of play that the camera looks at then. */
  readonly stationMetres: number;
}
