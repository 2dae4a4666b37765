import { describe, expect, it } from "vitest";
import { COEFFICIENT_SETS } from "../../src/flight/coefficients/sets.ts";
import { FASTEST_LAUNCH_METRES_PER_SECOND, launchAtSpeed, LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES, SLOWEST_LAUNCH_METRES_PER_SECOND } from "../../src/flight/family.ts";
import { flyStandard, launchForCarry } from "../../src/flight/launch.ts";
import type { CoefficientSet } from "../../src/flight/coefficients/types.ts";
import { findSpeed } from "../../src/flight/search.ts";

const YARD = 0.9144;
const sets: [string, CoefficientSet][] = Object.entries(COEFFICIENT_SETS);

function carryAt(speed: number, coefficients: CoefficientSet): number {
  const flight = flyStandard(launchAtSpeed(speed), coefficients);
  if (!flight.ok) throw new Error(flight.message);
  return flight.carryMetres;
}

function launchOf(carryYards: number, coefficients: CoefficientSet) {
  const answer = launchForCarry(carryYards * YARD, coefficients);
  if (!answer.ok) throw new Error(answer.message);
  return answer;
}

describe.each(sets)("family of launches, %s", (_id, coefficients) => {
  it("carries further with every bit of ball speed, so a carry has one launch", () => {
    let last = 0;
    for (let speed = SLOWEST_LAUNCH_METRES_PER_SECOND; speed <= FASTEST_LAUNCH_METRES_PER_SECOND; speed += 0.25) {
      const carry = carryAt(speed, coefficients);
      // Never flat: at least 1 m of carry per m/s.
      if (last > 0) expect(carry - last).toBeGreaterThan(0.25);
      last = carry;
    }
  });

  it("spans more than it is asked for at both ends", () => {
    expect(carryAt(SLOWEST_LAUNCH_METRES_PER_SECOND, coefficients)).toBeLessThan(SHORTEST_CARRY_METRES);
    expect(carryAt(FASTEST_LAUNCH_METRES_PER_SECOND, coefficients)).toBeGreaterThan(LONGEST_CARRY_METRES);
    expect(SHORTEST_CARRY_METRES / YARD).toBeLessThanOrEqual(60);
    expect(LONGEST_CARRY_METRES / YARD).toBeGreaterThanOrEqual(300);
  });

  it("gives each carry from 60 to 300 yd back when flown", () => {
    for (let yards = 60; yards <= 300; yards += 1) {
      const { launch } = launchOf(yards, coefficients);
      const flight = flyStandard(launch, coefficients);
      expect(flight.ok && flight.carryMetres).toBeCloseTo(yards * YARD, 3);
    }
  });

  it("goes from a high, spinning wedge to a low, running driver", () => {
    const wedge = launchOf(80, coefficients);
    const iron = launchOf(150, coefficients);
    const driver = launchOf(240, coefficients);
    expect(wedge.launch.angleDegrees).toBeGreaterThan(iron.launch.angleDegrees);
    expect(iron.launch.angleDegrees).toBeGreaterThan(driver.launch.angleDegrees);
    expect(wedge.launch.spinRpm).toBeGreaterThan(iron.launch.spinRpm);
    expect(iron.launch.spinRpm).toBeGreaterThan(driver.launch.spinRpm);
    // Common practice, no source: a mid-iron comes down near 45 degrees, a drive flatter, below 42.
    expect(Math.abs(iron.flight.landingAngleDegrees - 45)).toBeLessThan(3);
    expect(driver.flight.landingAngleDegrees).toBeLessThan(42);
  });
});

it.each([
  [NaN, "not-a-number"],
  [-100, "out-of-range"],
  [20, "out-of-range"],
  [400, "out-of-range"],
])("refuses a level carry of %d m", (carry, reason) => {
  expect(launchForCarry(carry, COEFFICIENT_SETS.smitsSmith1994)).toMatchObject({ ok: false, reason });
});

describe("search for a ball speed", () => {
  it.each([20, 61.3, 117])("finds %d m/s from any start", (wanted) => {
    for (const guess of [-5, 18, 40, 118, 500]) {
      // Bent both ways, so a straight line through two trials overshoots.
      const answer = findSpeed(guess, (speed) => ({ missMetres: (speed - wanted) ** 3 / 50 + 2 * (speed - wanted) }));
      expect(answer.found && answer.speedMetresPerSecond).toBeCloseTo(wanted, 3);
    }
  });

  it("says which side everything is on when there is none", () => {
    expect(findSpeed(60, (speed) => ({ missMetres: speed - 500 }))).toEqual({ found: false, side: "short" });
    expect(findSpeed(60, (speed) => ({ missMetres: speed + 500 }))).toEqual({ found: false, side: "long" });
  });

  it("ends at a jump, and its trial shows the miss", () => {
    const answer = findSpeed(60, (speed) => ({ missMetres: speed < 50 ? -90 : 40 }));
    expect(answer).toMatchObject({ found: true });
    expect(answer.found && Math.abs(answer.trial.missMetres)).toBeGreaterThanOrEqual(40);
  });
});
