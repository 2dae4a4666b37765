import { RADIANS_PER_SECOND_PER_RPM } from "../ball.ts";
import type { CoefficientSet } from "./types.ts";

// Bearman and Harvey 1976, "Golf ball aerodynamics", Aeronautical Quarterly 27, 112-122, figures 7 and 8,
// ball with hexagonal dimples, as digitised in a university course's code. Rows rpm, columns m/s.
const SPEEDS = [13.7, 21.6, 29.9, 38.4, 46.9, 55.2, 63.1, 71.9, 80.2, 88.1];
const LOWEST_RPM = 2000;
const RPM_BETWEEN_ROWS = 1000;
const ROWS = 5;
const COLUMNS = SPEEDS.length;

const DRAG = Float64Array.of(
  0.3624,
  0.2885,
  0.2765,
  0.2529,
  0.2472,
  0.2481,
  0.2467,
  0.247,
  0.247,
  0.247,
  0.4203,
  0.3658,
  0.3169,
  0.2822,
  0.2655,
  0.2578,
  0.256,
  0.255,
  0.2538,
  0.2538,
  0.4288,
  0.4003,
  0.349,
  0.3084,
  0.2852,
  0.271,
  0.2659,
  0.263,
  0.2605,
  0.2605,
  0.4848,
  0.4314,
  0.3728,
  0.3316,
  0.3062,
  0.2876,
  0.2765,
  0.271,
  0.2673,
  0.2673,
  0.518,
  0.4406,
  0.3882,
  0.3517,
  0.3285,
  0.3076,
  0.2877,
  0.279,
  0.274,
  0.274,
);

const LIFT = Float64Array.of(
  0.104,
  0.1846,
  0.246,
  0.1984,
  0.1762,
  0.1538,
  0.1418,
  0.136,
  0.128,
  0.1276,
  0.3624,
  0.3362,
  0.3049,
  0.2475,
  0.2073,
  0.1856,
  0.1702,
  0.1584,
  0.1485,
  0.1464,
  0.4005,
  0.364,
  0.3347,
  0.2862,
  0.2384,
  0.2149,
  0.1977,
  0.1807,
  0.169,
  0.1582,
  0.413,
  0.3894,
  0.3496,
  0.3119,
  0.2695,
  0.2418,
  0.2246,
  0.2031,
  0.1895,
  0.1791,
  0.4644,
  0.4227,
  0.3724,
  0.3393,
  0.3005,
  0.2662,
  0.2507,
  0.2254,
  0.21,
  0.2,
);

/** Linear between the table's values both ways; at its edge value beyond the edge. */
function between(table: Float64Array, speed: number, spin: number): number {
  let column = 0;
  while (column < COLUMNS - 2 && speed > (SPEEDS[column + 1] ?? Infinity)) column += 1;
  const low = SPEEDS[column] ?? 0;
  const high = SPEEDS[column + 1] ?? 1;
  const across = Math.min(1, Math.max(0, (speed - low) / (high - low)));

  const rows = (spin / RADIANS_PER_SECOND_PER_RPM - LOWEST_RPM) / RPM_BETWEEN_ROWS;
  const row = Math.min(ROWS - 2, Math.max(0, Math.floor(rows)));
  const down = Math.min(1, Math.max(0, rows - row));

  const at = row * COLUMNS + column;
  const upper = (table[at] ?? 0) * (1 - across) + (table[at + 1] ?? 0) * across;
  const lower = (table[at + COLUMNS] ?? 0) * (1 - across) + (table[at + COLUMNS + 1] ?? 0) * across;
  return upper * (1 - down) + lower * down;
}

/**
 * Bearman and Harvey 1976: measured coefficients by speed and spin, linear between, spin constant.
 * The table ends at 13.7 and 88.1 m/s, 2,000 and 6,000 rpm; beyond, its edge value is held, so a
 * wedge's spin above 6,000 rpm adds no more lift. Taken by speed and not by Reynolds number, so air
 * of another viscosity changes the density of the force only.
 */
export const BEARMAN_HARVEY_1976: CoefficientSet<"bearmanHarvey1976"> = {
  id: "bearmanHarvey1976",
  source: "Bearman and Harvey 1976, Aeronautical Quarterly 27, 112-122, figures 7 and 8, digitised",
  drag: (speed, spin) => between(DRAG, speed, spin),
  lift: (speed, spin) => between(LIFT, speed, spin),
  spinRate: () => 0,
};
