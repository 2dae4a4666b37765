import { METRES_PER_YARD } from "../geo/units.ts";
import type { Launch } from "./trajectory.ts";

// The family is our own choice: plausible full strokes from a wedge to a driver, smooth in ball speed,
// with figures as club players see them (common practice, no source). Only how a launch *changes* its
// carry with air, wind and slope rests on the published coefficients; its carry in still standard air
// is what it is chosen by, so a model that flies short simply gets a faster ball.

/** Slowest ball of the family, m/s: under 40 yd of carry. */
export const SLOWEST_LAUNCH_METRES_PER_SECOND = 18;

/** Fastest ball of the family, m/s: over 340 yd of carry. Faster than any player's: both coefficient sets give short drives. */
export const FASTEST_LAUNCH_METRES_PER_SECOND = 118;

/** Shortest level carry the family is asked for, metres. */
export const SHORTEST_CARRY_METRES = 40 * METRES_PER_YARD;

/** Longest level carry the family is asked for, metres. */
export const LONGEST_CARRY_METRES = 340 * METRES_PER_YARD;

/** Falls smoothly from 1 to 0 about a middle. */
function fall(speed: number, middle: number, width: number): number {
  return 1 / (1 + Math.exp((speed - middle) / width));
}

/**
 * The family's launch at a ball speed, m/s: a wedge's high start and much spin for a slow ball, a
 * driver's low start and little spin for a fast one.
 */
export function launchAtSpeed(speedMetresPerSecond: number): Launch {
  return {
    speedMetresPerSecond,
    angleDegrees: 10.5 + 23 * fall(speedMetresPerSecond, 46, 6),
    spinRpm: 2100 + 5000 * fall(speedMetresPerSecond, 50, 8),
  };
}

/** A speed near the one that carries this far in still air; a start for `findSpeed`. */
export function guessSpeed(carryMetres: number): number {
  return 10 + 0.27 * carryMetres + 0.07 * Math.max(0, carryMetres - 165);
}
