import { describe, expect, it } from "vitest";
import { airFrom, STANDARD_AIR } from "../../src/flight/air.ts";
import {
  BALL_AREA_SQUARE_METRES,
  BALL_DIAMETER_METRES,
  BALL_MASS_KILOGRAMS,
  STANDARD_GRAVITY,
} from "../../src/flight/ball.ts";
import { BEARMAN_HARVEY_1976 } from "../../src/flight/coefficients/bearmanHarvey.ts";
import { SMITS_SMITH_1994 } from "../../src/flight/coefficients/smitsSmith.ts";
import type { CoefficientSet } from "../../src/flight/coefficients/types.ts";
import { fly } from "../../src/flight/trajectory.ts";
import type { Flight, FlightConditions, FlightPoint, Launch } from "../../src/flight/trajectory.ts";

const YARD = 0.9144;
const MPH = 0.44704;
const SETS = { SS: SMITS_SMITH_1994, BH: BEARMAN_HARVEY_1976 } as const;

const launchOf = (speedMetresPerSecond: number, angleDegrees: number, spinRpm: number): Launch => ({
  speedMetresPerSecond,
  angleDegrees,
  spinRpm,
});

/** Drag of one coefficient whatever the speed, no lift. */
const constantDrag = (coefficient: number): CoefficientSet => ({
  id: "constant",
  source: "made up for a closed form",
  drag: () => coefficient,
  lift: () => 0,
  spinRate: () => 0,
});

function flown(launch: Launch, conditions: FlightConditions, visit?: (point: FlightPoint) => void): Flight {
  const flight = fly(launch, conditions, visit);
  if (!flight.ok) throw new Error(flight.message);
  return flight;
}

it("flies the ball of the Equipment Rules", () => {
  // Published: Rules of Golf 2016, Appendix III: at most 1.620 oz avoirdupois (28.349523125 g), at least 1.680 in.
  expect(Math.abs(BALL_MASS_KILOGRAMS - 1.62 * 0.028349523125)).toBeLessThan(0.000005);
  expect(Math.abs(BALL_DIAMETER_METRES - 1.68 * 0.0254)).toBeLessThan(0.000005);
  expect(BALL_AREA_SQUARE_METRES).toBeCloseTo(1.42999e-3, 7);
});

describe("without air", () => {
  const vacuum: FlightConditions = { coefficients: constantDrag(0), air: STANDARD_AIR };
  const launch = launchOf(65, 12, 2700);

  it("is the parabola", () => {
    // Closed form: v^2 sin(2a)/g = 175.234 m, (v sin a)^2/2g = 9.312 m, 2 v sin a/g = 2.756 s.
    const flight = flown(launch, vacuum);
    expect(flight.carryMetres).toBeCloseTo((65 ** 2 * Math.sin((24 * Math.PI) / 180)) / STANDARD_GRAVITY, 6);
    expect(flight.carryMetres).toBeCloseTo(175.234, 3);
    expect(flight.apexMetres).toBeCloseTo(9.312, 3);
    expect(flight.timeSeconds).toBeCloseTo(2.756, 3);
    expect(flight.landingAngleDegrees).toBeCloseTo(12, 4);
    expect(flight.landingSpeedMetresPerSecond).toBeCloseTo(65, 5);
  });

  it.each([8, -30])("meets ground %d m higher where the parabola does", (rise) => {
    const climb = 65 * Math.sin((12 * Math.PI) / 180);
    const time = (climb + Math.sqrt(climb ** 2 - 2 * STANDARD_GRAVITY * rise)) / STANDARD_GRAVITY;
    const flight = flown(launch, { ...vacuum, riseMetres: rise });
    expect(flight.timeSeconds).toBeCloseTo(time, 6);
    expect(flight.carryMetres).toBeCloseTo(65 * Math.cos((12 * Math.PI) / 180) * time, 5);
  });

  it("feels no wind", () => {
    const windy = flown(launch, {
      ...vacuum,
      wind: { alongMetresPerSecond: -10, rightMetresPerSecond: 10, profile: "uniform" },
    });
    expect(windy.carryMetres).toBeCloseTo(flown(launch, vacuum).carryMetres, 8);
    expect(windy.driftMetres).toBe(0);
  });
});

it.each([
  [0.5, 32.07],
  [0.25, 45.35],
])("falls in the end at the terminal speed, drag coefficient %d", (coefficient, published) => {
  // Closed form: sqrt(2 m g / (density * area * coefficient)).
  const flight = flown(launchOf(20, 45, 0), {
    coefficients: constantDrag(coefficient),
    air: STANDARD_AIR,
    riseMetres: -2000,
  });
  expect(flight.landingSpeedMetresPerSecond).toBeCloseTo(published, 2);
  expect(flight.landingAngleDegrees).toBeGreaterThan(89.9);
});

// Launch m/s, degrees, rpm; set; carry m, apex m, time s, landing degrees. Computed, regression: another
// integrator (RK4, 0.5 ms), still standard air, level ground; no published trajectory was found. SS with its lift held
// at
// spin ratio 0.20; without that the same integrator gives 152.69, 183.60, 199.17 and 236.67 m.
const TRAJECTORIES = [
  [50, 15, 3500, "SS", 148.859, 19.531, 5.202, 35.147],
  [50, 15, 3500, "BH", 147.24, 18.73, 5.264, 36.48],
  [60, 12, 3000, "SS", 182.349, 23.019, 5.863, 35.926],
  [60, 12, 3000, "BH", 186.22, 21.22, 5.883, 35.65],
  [65, 12, 2700, "SS", 198.989, 26.51, 6.267, 37.581],
  [65, 12, 2700, "BH", 205.09, 24.28, 6.209, 37.08],
  [78.679, 10, 2520, "SS", 236.67, 33.84, 7.074, 40.92],
  [78.679, 10, 2520, "BH", 249.81, 30.43, 7.015, 39.72],
] as const;

describe("still standard air", () => {
  it.each(TRAJECTORIES)("%d m/s, %d degrees, %d rpm, %s", (speed, angle, spin, set, carry, apex, time, landing) => {
    const flight = flown(launchOf(speed, angle, spin), { coefficients: SETS[set], air: STANDARD_AIR });
    expect(Math.abs(flight.carryMetres / carry - 1)).toBeLessThan(0.001);
    expect(Math.abs(flight.apexMetres / apex - 1)).toBeLessThan(0.001);
    expect(Math.abs(flight.timeSeconds / time - 1)).toBeLessThan(0.001);
    expect(Math.abs(flight.landingAngleDegrees / landing - 1)).toBeLessThan(0.001);
  });

  it.each(["SS", "BH"] as const)("never gains energy, %s", (set) => {
    for (const launch of [launchOf(26, 33, 6800), launchOf(50, 18, 5000), launchOf(90, 11, 2200)]) {
      const energies: number[] = [];
      flown(launch, { coefficients: SETS[set], air: STANDARD_AIR, riseMetres: -20 }, (point) => {
        energies.push(0.5 * point.speedMetresPerSecond ** 2 + STANDARD_GRAVITY * point.upMetres);
      });
      expect(energies.length).toBeGreaterThan(30);
      energies.forEach((energy, n) => expect(energy).toBeLessThan(energies[n - 1] ?? Infinity));
    }
  });

  it("settles as a fourth-order method does when the step is halved", () => {
    // Its spin ratio stays below 0.20, where the formula has a bend.
    const carry = (stepSeconds: number) =>
      flown(launchOf(78.679, 10, 2520), { coefficients: SMITS_SMITH_1994, air: STANDARD_AIR, stepSeconds })
        .carryMetres;
    const coarse = Math.abs(carry(0.2) - carry(0.1));
    const fine = Math.abs(carry(0.1) - carry(0.05));
    expect(coarse).toBeGreaterThan(0);
    expect(fine).toBeLessThan(coarse / 8);
    expect(Math.abs(carry(0.1) - carry(0.01))).toBeLessThan(0.001);
  });

  it("settles by less than 1 mm from the table, linear between and so of a lower order", () => {
    const carry = (stepSeconds: number) =>
      flown(launchOf(65, 12, 2700), { coefficients: BEARMAN_HARVEY_1976, air: STANDARD_AIR, stepSeconds }).carryMetres;
    expect(Math.abs(carry(0.1) - carry(0.01))).toBeLessThan(0.001);
  });

  it("loses spin by one set and keeps it by the other", () => {
    expect(
      flown(launchOf(65, 12, 2700), { coefficients: SMITS_SMITH_1994, air: STANDARD_AIR }).landingSpinRpm,
    ).toBeLessThan(2400);
    expect(
      flown(launchOf(65, 12, 2700), { coefficients: BEARMAN_HARVEY_1976, air: STANDARD_AIR }).landingSpinRpm,
    ).toBeCloseTo(2700, 9);
  });
});

it.each(["SS", "BH"] as const)("stays under the overall distance limit in its test conditions, %s", (set) => {
  // Published: Equipment Rules, test since 2004: 176 mph, 10 degrees, 2,520 rpm, carry plus roll at most
  // 317 yd. Air from memory: 75 F, 30 inHg, 50 % humidity, no wind. An upper bound: carry alone is less.
  const air = airFrom({
    heightMetres: 0,
    temperatureCelsius: ((75 - 32) * 5) / 9,
    relativeHumidity: 0.5,
    seaLevelPressurePascals: 30 * 3386.389,
  });
  if (!air.ok) throw new Error(air.message);
  const carryYards =
    flown(launchOf(176 * MPH, 10, 2520), { coefficients: SETS[set], air: air.air }).carryMetres / YARD;
  expect(carryYards).toBeLessThan(317);
  expect(carryYards).toBeGreaterThan(240);
});

describe("effects on the 65 m/s shot", () => {
  const launch = launchOf(65, 12, 2700);
  const change = (set: "SS" | "BH", conditions: Partial<FlightConditions>) => {
    const level = { coefficients: SETS[set], air: STANDARD_AIR };
    return flown(launch, { ...level, ...conditions }).carryMetres - flown(launch, level).carryMetres;
  };
  const along = (alongMetresPerSecond: number) => ({
    wind: { alongMetresPerSecond, rightMetresPerSecond: 0, profile: "uniform" } as const,
  });

  // Metres. Computed elsewhere, regression.
  it.each([
    ["target 10 m up", { riseMetres: 10 }, -14.49, -15.1],
    ["target 10 m down", { riseMetres: -10 }, 12.03, 12.1],
    ["head wind 5 m/s", along(-5), -18.69, -16.0],
    ["tail wind 5 m/s", along(5), 14.55, 11.7],
  ] as const)("%s", (_name, conditions, smitsSmith, bearmanHarvey) => {
    expect(Math.abs(change("SS", conditions) - smitsSmith)).toBeLessThan(0.06);
    expect(Math.abs(change("BH", conditions) - bearmanHarvey)).toBeLessThan(0.06);
  });

  // Per cent. Computed elsewhere, regression; air by ISO 2533.
  it.each([
    [610, 2.78, 2.2],
    [1609, 7.03, 5.1],
  ])("%d m up", (heightMetres, smitsSmith, bearmanHarvey) => {
    const air = airFrom({ heightMetres });
    if (!air.ok) throw new Error(air.message);
    expect(Math.abs((change("SS", { air: air.air }) / 198.989) * 100 - smitsSmith)).toBeLessThan(0.06);
    expect(Math.abs((change("BH", { air: air.air }) / 205.09) * 100 - bearmanHarvey)).toBeLessThan(0.06);
  });
});

describe("wind, held to the same flight seen from the moving air", () => {
  // In a uniform wind the ball's motion relative to the air is a flight in still air; the air then
  // moves all of it along. Exact, so the tolerance is the integrator's.
  it.each([-8, 6])("along, %d m/s", (wind) => {
    const launch = launchOf(60, 13, 3200);
    const level = 60 * Math.cos((13 * Math.PI) / 180) - wind;
    const climb = 60 * Math.sin((13 * Math.PI) / 180);
    for (const coefficients of Object.values(SETS)) {
      const seen = flown(launchOf(Math.hypot(level, climb), (Math.atan2(climb, level) * 180) / Math.PI, 3200), {
        coefficients,
        air: STANDARD_AIR,
      });
      const flight = flown(launch, {
        coefficients,
        air: STANDARD_AIR,
        wind: { alongMetresPerSecond: wind, rightMetresPerSecond: 0, profile: "uniform" },
      });
      expect(flight.timeSeconds).toBeCloseTo(seen.timeSeconds, 4);
      expect(flight.carryMetres).toBeCloseTo(seen.carryMetres + wind * seen.timeSeconds, 2);
    }
  });

  it("across, for a ball without lift", () => {
    const wind = 7;
    const level = 60 * Math.cos((20 * Math.PI) / 180);
    const climb = 60 * Math.sin((20 * Math.PI) / 180);
    const coefficients = constantDrag(0.3);
    const seen = flown(
      launchOf(Math.hypot(level, wind, climb), (Math.atan2(climb, Math.hypot(level, wind)) * 180) / Math.PI, 0),
      { coefficients, air: STANDARD_AIR },
    );
    const bearing = Math.atan2(-wind, level);
    const flight = flown(launchOf(60, 20, 0), {
      coefficients,
      air: STANDARD_AIR,
      wind: { alongMetresPerSecond: 0, rightMetresPerSecond: wind, profile: "uniform" },
    });
    expect(flight.carryMetres).toBeCloseTo(seen.carryMetres * Math.cos(bearing), 2);
    expect(flight.driftMetres).toBeCloseTo(seen.carryMetres * Math.sin(bearing) + wind * seen.timeSeconds, 2);
    expect(flight.driftMetres).toBeGreaterThan(5);
  });

  it("pushes as far left as right", () => {
    const drift = (rightMetresPerSecond: number) =>
      flown(launchOf(60, 13, 3200), {
        coefficients: SMITS_SMITH_1994,
        air: STANDARD_AIR,
        wind: { alongMetresPerSecond: 0, rightMetresPerSecond, profile: "log" },
      }).driftMetres;
    expect(drift(6)).toBeGreaterThan(5);
    expect(drift(-6)).toBeCloseTo(-drift(6), 9);
  });
});

describe("log wind", () => {
  const drift = (launch: Launch, profile: "log" | "uniform") =>
    flown(launch, {
      coefficients: SMITS_SMITH_1994,
      air: STANDARD_AIR,
      wind: { alongMetresPerSecond: 0, rightMetresPerSecond: 8, profile },
    }).driftMetres;

  it("moves a ball under 10 m less, and one mostly above it more, than the same wind at every height", () => {
    const punched = launchOf(35, 10, 2500);
    const high = launchOf(65, 16, 3500);
    expect(flown(punched, { coefficients: SMITS_SMITH_1994, air: STANDARD_AIR }).apexMetres).toBeLessThan(8);
    expect(drift(punched, "log")).toBeLessThan(0.95 * drift(punched, "uniform"));
    expect(drift(high, "log")).toBeGreaterThan(1.03 * drift(high, "uniform"));
  });

  it("is counted from the ground beneath, so a ball played down a slope feels it to the end", () => {
    const down = (groundSlope: number) =>
      flown(launchOf(55, 16, 4500), {
        coefficients: SMITS_SMITH_1994,
        air: STANDARD_AIR,
        wind: { alongMetresPerSecond: -8, rightMetresPerSecond: 0, profile: "log" },
        riseMetres: -30,
        groundSlope,
      }).carryMetres;
    expect(down(-30 / 165)).toBeLessThan(down(0) - 0.5);
  });

  it("is flown within 5 mm of a tenth of the step", () => {
    const carry = (stepSeconds: number) =>
      flown(launchOf(50, 18, 4600), {
        coefficients: SMITS_SMITH_1994,
        air: STANDARD_AIR,
        wind: { alongMetresPerSecond: -10, rightMetresPerSecond: 0, profile: "log" },
        stepSeconds,
      }).carryMetres;
    expect(Math.abs(carry(0.1) - carry(0.01))).toBeLessThan(0.005);
  });
});

describe("refusals", () => {
  const level: FlightConditions = { coefficients: SMITS_SMITH_1994, air: STANDARD_AIR };
  it.each([
    [launchOf(NaN, 12, 2700), level, "not-a-number"],
    [launchOf(65, Infinity, 2700), level, "not-a-number"],
    [launchOf(-65, 12, 2700), level, "out-of-range"],
    [launchOf(65, 120, 2700), level, "out-of-range"],
    [launchOf(65, 12, -1), level, "out-of-range"],
    [launchOf(65, 12, 2700), { ...level, riseMetres: NaN }, "not-a-number"],
    [launchOf(65, 12, 2700), { ...level, stepSeconds: 0 }, "out-of-range"],
    [
      launchOf(65, 12, 2700),
      { ...level, wind: { alongMetresPerSecond: 200, rightMetresPerSecond: 0, profile: "log" } },
      "out-of-range",
    ],
    [launchOf(65, 12, 2700), { ...level, riseMetres: 60 }, "unreachable"],
    [launchOf(65, 12, 2700), { ...level, riseMetres: -9999 }, "unreachable"],
  ] as [Launch, FlightConditions, string][])("%o in %o", (launch, conditions, reason) => {
    expect(fly(launch, conditions)).toMatchObject({ ok: false, reason });
  });

  it("say how high the ball gets", () => {
    expect(fly(launchOf(65, 12, 2700), { ...level, riseMetres: 60 })).toMatchInlineSnapshot(`
      {
        "message": "The ball rises 26.5 m and never comes down on ground 60 m higher. Give a lower target or a longer shot.",
        "ok": false,
        "reason": "unreachable",
      }
    `);
  });
});
