import { airFrom, STANDARD_AIR } from "../../src/flight/air.ts";
import { COEFFICIENT_SETS } from "../../src/flight/coefficients/sets.ts";
import { effectiveLength } from "../../src/flight/effective.ts";
import type { DayConditions, ShotTarget } from "../../src/flight/effective.ts";
import { STEP_SECONDS } from "../../src/flight/trajectory.ts";
import { heldTo } from "../flight/held-to.ts";
import { MEN, WOMEN } from "../flight/tour-means.ts";

/** One line of the benchmark. */
export interface FlightBenchLine {
  name: string;
  value: number;
  unit: string;
  note: string;
}

const TIMED_HOLES = 41;

/** A dozen targets as a hole has them: tee to hazards, lay-ups and green, up and down, some way round. */
function holeTargets(): ShotTarget[] {
  return Array.from({ length: 12 }, (_, n) => ({
    distanceMetres: 70 + n * 15,
    riseMetres: (n % 5) * 3 - 6,
    bearingDegrees: 20 + n * 7,
  }));
}

function worstErrorMetres(day: DayConditions): { worst: number; compared: number } {
  let worst = 0;
  let compared = 0;
  for (let n = 0; n < 40; n += 1) {
    const target = { distanceMetres: 65 + n * 4, riseMetres: (n % 9) * 3 - 12, bearingDegrees: n * 29 };
    const answer = effectiveLength(target, day);
    const reference = effectiveLength(target, day, { stepSeconds: STEP_SECONDS / 10 });
    if (!answer.ok || !reference.ok) continue;
    compared += 1;
    for (const id of ["smitsSmith1994", "bearmanHarvey1976"] as const) {
      worst = Math.max(worst, Math.abs(answer.bySet[id].lengthMetres - reference.bySet[id].lengthMetres));
    }
  }
  return { worst, compared };
}

function medianHoleMilliseconds(day: DayConditions): { median: number; first: number } {
  const targets = holeTargets();
  const times: number[] = [];
  for (let n = 0; n < TIMED_HOLES; n += 1) {
    const start = performance.now();
    for (const target of targets) {
      const answer = effectiveLength(target, day);
      if (!answer.ok) throw new Error(answer.message);
    }
    times.push(performance.now() - start);
  }
  const first = times[0] ?? NaN;
  times.sort((a, b) => a - b);
  return { median: times[(TIMED_HOLES - 1) / 2] ?? NaN, first };
}

/**
 * Effective length: error against the same model flown at a tenth of the step, and time for a whole
 * hole's 12 by both coefficient sets; and both sets against the means of two tours.
 */
export async function flightBench(): Promise<FlightBenchLine[]> {
  const cold = airFrom({ heightMetres: 20, temperatureCelsius: 8, relativeHumidity: 0.8 });
  if (!cold.ok) throw new Error(cold.message);
  const windy: DayConditions = { air: cold.air, wind: { speedMetresPerSecond: 7, fromDegrees: 250 } };
  const stormy: DayConditions = { air: cold.air, wind: { speedMetresPerSecond: 14, fromDegrees: 250 } };
  const still: DayConditions = { air: STANDARD_AIR };

  const lines: FlightBenchLine[] = [];
  // Times first, so that the first hole is one a browser meets unprepared.
  for (const [name, day] of [
    ["7 m/s of wind", windy],
    ["still air", still],
  ] as const) {
    const { median, first } = medianHoleMilliseconds(day);
    lines.push({
      name: `12 effective lengths, ${name}`,
      value: median,
      unit: "ms",
      note: `median of ${TIMED_HOLES} holes; the first took ${first.toFixed(1)} ms; limit 10 ms`,
    });
  }
  for (const [name, day] of [
    ["still air", still],
    ["7 m/s of wind", windy],
    ["14 m/s of wind", stormy],
  ] as const) {
    const { worst, compared } = worstErrorMetres(day);
    lines.push({
      name: `effective length error, ${name}`,
      value: worst * 1000,
      unit: "mm",
      note: `worst of ${compared} targets by both sets, against a tenth of the step`,
    });
  }
  for (const [tour, means] of [
    ["men's tour", MEN],
    ["women's tour", WOMEN],
  ] as const) {
    for (const coefficients of Object.values(COEFFICIENT_SETS)) {
      const held = heldTo(means, coefficients);
      for (const [what, unit] of [
        ["carry", "%"],
        ["height", "%"],
        ["descent", "deg"],
      ] as const) {
        lines.push({
          name: `${what} against a ${tour}'s means`,
          value: held[what].mean,
          unit,
          note: `mean of ${means.length} clubs by ${coefficients.id}; worst ${held[what].worst.toFixed(1)}`,
        });
      }
    }
  }
  return lines;
}
