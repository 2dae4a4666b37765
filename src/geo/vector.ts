/** Small vector helpers on plane points; metres. */
import type { Point } from "./position.ts";
import { degrees, radians } from "./units.ts";

export const distanceMetres = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

export const midpoint = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/** The point a distance from another in a unit direction. */
export const along = (from: Point, direction: Point, metres: number): Point => [
  from[0] + direction[0] * metres,
  from[1] + direction[1] * metres,
];

/** Unit vector from a to b; east when they coincide. */
export function directionTo(a: Point, b: Point): Point {
  const length = distanceMetres(a, b);
  return length === 0 ? [1, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/** Unit vector a quarter turn to the right of a direction. */
export const rightOf = ([x, y]: Point): Point => [y, -x];

export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];

/** Positive when b lies to the left of a. */
export const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];

/** Compass bearing of a direction, degrees clockwise from grid north, 0 up to 360. */
export const bearingDegrees = ([x, y]: Point): number => (degrees(Math.atan2(x, y)) + 360) % 360;

/** Unit direction of a compass bearing. */
export const directionOfBearing = (bearing: number): Point => [Math.sin(radians(bearing)), Math.cos(radians(bearing))];

/** Turn from direction a to direction b, degrees, right positive, within ±180. */
export const turnDegrees = (a: Point, b: Point): number => -degrees(Math.atan2(cross(a, b), dot(a, b)));
