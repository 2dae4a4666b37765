import { describe, expect, it } from "vitest";
import { COEFFICIENT_SETS } from "../../src/flight/coefficients/sets.ts";
import { launchOf, USUAL_DRIVER_METRES } from "../../src/flight/family.ts";
import { flyStandard } from "../../src/flight/launch.ts";
import { FAIRWAY, rollMetres, runMetres } from "../../src/flight/run.ts";

const YARD = 0.9144;

function runOf(carryYards: number): number {
  const flight = flyStandard(launchOf(carryYards * YARD, USUAL_DRIVER_METRES), COEFFICIENT_SETS.bearmanHarvey1976);
  if (!flight.ok) throw new Error(flight.message);
  return runMetres(flight) / YARD;
}

describe("run", () => {
  it("of a rolling ball is that of a green of known speed", () => {
    // Closed form and a published definition: the ramp of a green-speed meter lets the ball go at 1.83 m/s
    // (6.00 ft/s, from memory); with Penner's resistance 0.131 it rolls 1.82 m: 6 ft, a slow green.
    expect(rollMetres(1.83, { friction: 0.4, rollingResistance: 0.131 })).toBeCloseTo(1.825, 2);
  });

  it("of a ball falling straight down without spin is none", () => {
    expect(runMetres({ landingAngleDegrees: 90, landingSpeedMetresPerSecond: 20, landingSpinRpm: 0 })).toBeCloseTo(
      0,
      9,
    );
  });

  it("is long for a drive and short for a wedge", () => {
    // Common practice, no source: a drive of 230 yd runs 15 to 40 yd on a fairway, a full wedge under 10.
    expect(runOf(230)).toBeGreaterThan(15);
    expect(runOf(230)).toBeLessThan(40);
    expect(runOf(100)).toBeLessThan(10);
  });

  it("is less from a steeper or more spinning landing, and on slower turf", () => {
    const landing = { landingAngleDegrees: 38, landingSpeedMetresPerSecond: 27, landingSpinRpm: 2500 };
    const plain = runMetres(landing);
    expect(runMetres({ ...landing, landingAngleDegrees: 48 })).toBeLessThan(plain);
    expect(runMetres({ ...landing, landingSpinRpm: 6000 })).toBeLessThan(plain);
    expect(runMetres(landing, { ...FAIRWAY, rollingResistance: 0.5 })).toBeLessThan(plain);
  });

  it("turns back for much spin on a firm landing", () => {
    // Published, seen in later works only: Penner 2002, figure 8, a nine-iron's ball ends going backwards at 159 and
    // 191 rev/s of spin.
    expect(
      runMetres(
        { landingAngleDegrees: 50, landingSpeedMetresPerSecond: 22, landingSpinRpm: 191 * 60 },
        { friction: 0.4, rollingResistance: 0.131 },
      ),
    ).toBeLessThan(0);
  });

  it("is a number for any landing the model can make", () => {
    for (const landingAngleDegrees of [1, 30, 60, 90]) {
      for (const landingSpeedMetresPerSecond of [0.1, 5, 20, 45]) {
        for (const landingSpinRpm of [0, 3000, 12_000]) {
          expect(
            Number.isFinite(runMetres({ landingAngleDegrees, landingSpeedMetresPerSecond, landingSpinRpm })),
          ).toBe(true);
        }
      }
    }
  });
});
