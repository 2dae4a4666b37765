import { STANDARD_AIR } from "../../src/flight/air.ts";
import type { CoefficientSet } from "../../src/flight/coefficients/types.ts";
import { fly } from "../../src/flight/trajectory.ts";
import type { ClubMeans } from "./tour-means.ts";

export interface Differences {
  readonly mean: number;
  readonly worst: number;
}

/**
 * What a coefficient set gives less what was measured, over all clubs: carry and height in per cent, descent
 * in degrees.
 */
export function heldTo(
  means: readonly ClubMeans[],
  coefficients: CoefficientSet,
): { readonly carry: Differences; readonly height: Differences; readonly descent: Differences } {
  const flown = means.map((club) => {
    const launch = {
      speedMetresPerSecond: club.ballSpeedMph * 0.44704,
      angleDegrees: club.angleDegrees,
      spinRpm: club.spinRpm,
    };
    const flight = fly(launch, { coefficients, air: STANDARD_AIR });
    if (!flight.ok) throw new Error(flight.message);
    return { club, flight };
  });
  const differences = (of: (one: (typeof flown)[number]) => number): Differences => {
    const values = flown.map(of);
    return {
      mean: values.reduce((sum, one) => sum + one, 0) / values.length,
      worst: Math.max(...values.map(Math.abs)),
    };
  };
  return {
    carry: differences(({ club, flight }) => 100 * (flight.carryMetres / 0.9144 / club.carryYards - 1)),
    height: differences(({ club, flight }) => 100 * (flight.apexMetres / 0.9144 / club.heightYards - 1)),
    descent: differences(({ club, flight }) => flight.landingAngleDegrees - club.descentDegrees),
  };
}
