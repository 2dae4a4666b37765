import { describe, expect, it } from "vitest";
import { airFrom, STANDARD_AIR } from "../../src/flight/air.ts";
import type { Air, AirStatement } from "../../src/flight/air.ts";
import { COEFFICIENT_SETS } from "../../src/flight/coefficients/sets.ts";
import type { CoefficientSetId } from "../../src/flight/coefficients/types.ts";
import { carryToday, effectiveLength } from "../../src/flight/effective.ts";
import type { DayConditions, EffectiveLength, ShotTarget } from "../../src/flight/effective.ts";
import { launchForCarry } from "../../src/flight/launch.ts";
import { fly } from "../../src/flight/trajectory.ts";

const YARD = 0.9144;
const STILL_DAY: DayConditions = { air: STANDARD_AIR };
const IDS: CoefficientSetId[] = ["smitsSmith1994", "bearmanHarvey1976"];

const at = (distanceYards: number, riseYards = 0, bearingDegrees = 0): ShotTarget => ({ distanceMetres: distanceYards * YARD, riseMetres: riseYards * YARD, bearingDegrees });

function effective(target: ShotTarget, day: DayConditions = STILL_DAY): EffectiveLength {
  const answer = effectiveLength(target, day);
  if (!answer.ok) throw new Error(answer.message);
  return answer;
}

function air(statement: AirStatement): Air {
  const answer = airFrom(statement);
  if (!answer.ok) throw new Error(answer.message);
  return answer.air;
}

/** Yards added to a level 165 yd, say, by a day. */
const added = (yards: number, day: DayConditions) => effective(at(yards), day).lengthMetres / YARD - yards;
const windFrom = (fromDegrees: number, speedMetresPerSecond: number): DayConditions => ({ air: STANDARD_AIR, wind: { speedMetresPerSecond, fromDegrees } });

describe("on level ground in still standard air", () => {
  it("is the distance itself, without spread, drift or run in it", () => {
    for (let yards = 60; yards <= 300; yards += 15) {
      const answer = effective(at(yards));
      expect(answer.lengthMetres).toBeCloseTo(yards * YARD, 3);
      expect(answer.plusMinusMetres).toBeLessThan(0.001);
      expect(answer.drift.metres).toBe(0);
      expect(answer.run.metres).toBeGreaterThan(0);
    }
  });
});

describe("each set's answer, flown anew", () => {
  // The stroke with that level carry, flown in the same conditions, must come down on the target.
  it.each([
    [at(120, 6), STILL_DAY],
    [at(165, -8), { air: air({ heightMetres: 900, temperatureCelsius: 28, relativeHumidity: 0.4 }) }],
    [at(240, 4), { air: air({ heightMetres: 10, temperatureCelsius: 3 }) }],
    [at(150, -25), windFrom(0, 8)],
    [at(170, 12), windFrom(180, 8)],
  ] as [ShotTarget, DayConditions][])("%o", (target, day) => {
    const answer = effective(target, day);
    for (const id of IDS) {
      const coefficients = COEFFICIENT_SETS[id];
      const stroke = launchForCarry(answer.bySet[id].lengthMetres, coefficients, 0.01);
      if (!stroke.ok) throw new Error(stroke.message);
      // Head or tail wind only, so the aim is straight; its height counts from the slope to the target.
      const along = day.wind ? -day.wind.speedMetresPerSecond * Math.cos((day.wind.fromDegrees * Math.PI) / 180) : 0;
      const flight = fly(stroke.launch, {
        coefficients,
        air: day.air,
        wind: { alongMetresPerSecond: along, rightMetresPerSecond: 0, profile: "log" },
        riseMetres: target.riseMetres,
        groundSlope: target.riseMetres / target.distanceMetres,
        stepSeconds: 0.01,
      });
      expect(Math.abs((flight.ok ? flight.carryMetres : NaN) - target.distanceMetres)).toBeLessThan(0.01);
    }
  });
});

describe("rise", () => {
  it("adds to first order rise / tan(landing angle)", () => {
    for (const yards of [90, 150, 220, 280]) {
      const rise = 0.5;
      for (const id of IDS) {
        const level = effective({ distanceMetres: yards * YARD, riseMetres: 0, bearingDegrees: 0 }).bySet[id];
        const raised = effective({ distanceMetres: yards * YARD, riseMetres: rise, bearingDegrees: 0 }).bySet[id];
        const firstOrder = rise / Math.tan((level.flight.landingAngleDegrees * Math.PI) / 180);
        expect(Math.abs((raised.lengthMetres - level.lengthMetres) / firstOrder - 1)).toBeLessThan(0.03);
      }
    }
  });

  it.each([130, 140, 150])("of a yard adds about a yard to a mid-iron of %d yd", (yards) => {
    // Common practice, no source: one yard per yard. Held over a step of 6 yd, up and down together.
    const up = effective(at(yards, 6)).lengthMetres / YARD - yards;
    const down = yards - effective(at(yards, -6)).lengthMetres / YARD;
    expect(up).toBeGreaterThan(0);
    expect(down).toBeGreaterThan(0);
    expect(Math.abs((up + down) / 12 - 1)).toBeLessThan(0.1);
  });

  it("of a yard adds more than a yard to a drive, which comes down flatter", () => {
    expect(effective(at(220, 6)).lengthMetres / YARD - 220).toBeGreaterThan(6 * 1.2);
  });

  it("carries the spread of the two sets", () => {
    const answer = effective(at(220, 10));
    const [one, other] = IDS.map((id) => answer.bySet[id].lengthMetres) as [number, number];
    expect(answer.plusMinusMetres).toBeGreaterThan(0.01);
    expect(answer.plusMinusMetres).toBeCloseTo(Math.abs(one - other) / 2, 9);
    expect(answer.lengthMetres).toBeCloseTo((one + other) / 2, 9);
  });
});

describe("air", () => {
  it("plays longer when cold and shorter when warm or high", () => {
    for (const yards of [100, 150, 200, 250]) {
      expect(added(yards, { air: air({ heightMetres: 0, temperatureCelsius: 5 }) })).toBeGreaterThan(0.5);
      expect(added(yards, { air: air({ heightMetres: 0, temperatureCelsius: 30 }) })).toBeLessThan(-0.5);
      expect(added(yards, { air: air({ heightMetres: 610 }) })).toBeLessThan(-0.5);
      expect(added(yards, { air: air({ heightMetres: 1609 }) })).toBeLessThan(added(yards, { air: air({ heightMetres: 610 }) }));
    }
  });

  it("at 610 m is worth what the two sets say of a 65 m/s shot, a little either way", () => {
    // Computed elsewhere, regression: +2.2 % and +2.7 % of carry for a 65 m/s shot of 218 to 224 yd; other
    // strokes of that length differ a little, so the band is widened by half a per cent.
    const share = -added(220, { air: air({ heightMetres: 610 }) }) / 220;
    expect(share).toBeGreaterThan(0.017);
    expect(share).toBeLessThan(0.032);
  });
});

describe("wind", () => {
  it("from ahead adds more than the same from behind takes off", () => {
    // Common practice, no source: a head wind hurts more than a tail wind helps. Both sets agree.
    for (const yards of [100, 150, 200, 250]) {
      const head = effective(at(yards), windFrom(0, 5));
      const tail = effective(at(yards), windFrom(180, 5));
      for (const id of IDS) {
        const hurt = head.bySet[id].lengthMetres - yards * YARD;
        const help = yards * YARD - tail.bySet[id].lengthMetres;
        expect(help).toBeGreaterThan(0);
        expect(hurt).toBeGreaterThan(help);
      }
    }
  });

  it("of 5 m/s is worth what the two sets say of a 65 m/s shot, a little either way", () => {
    // Computed elsewhere, regression: a uniform head wind of 5 m/s takes 16.0 to 18.8 m off a 65 m/s
    // shot, a tail wind adds 11.7 to 14.7. The log wind is stronger at the apex (26 m: 1.16 times) and
    // the stroke differs, so the band is a quarter wider and reaches 1.5 times for the launch into it.
    const head = added(220, windFrom(0, 5)) * YARD;
    const tail = -added(220, windFrom(180, 5)) * YARD;
    expect(head).toBeGreaterThan(16.0 * 0.75);
    expect(head).toBeLessThan(18.8 * 1.5);
    expect(tail).toBeGreaterThan(11.7 * 0.75);
    expect(tail).toBeLessThan(14.7 * 1.5);
  });

  it("across drifts the ball its own way, the same both ways, and costs little length", () => {
    const fromLeft = effective(at(165), windFrom(270, 5));
    const fromRight = effective(at(165), windFrom(90, 5));
    expect(fromLeft.drift.metres).toBeGreaterThan(5);
    expect(fromRight.drift.metres).toBeCloseTo(-fromLeft.drift.metres, 3);
    expect(fromRight.lengthMetres).toBeCloseTo(fromLeft.lengthMetres, 3);
    expect(Math.abs(fromLeft.lengthMetres / YARD - 165)).toBeLessThan(4);
  });

  it("depends on its angle to the shot, not on the compass", () => {
    const north = effective(at(180, 3, 0), windFrom(40, 6));
    const southWest = effective(at(180, 3, 230), windFrom(270, 6));
    expect(southWest.lengthMetres).toBeCloseTo(north.lengthMetres, 6);
    expect(southWest.drift.metres).toBeCloseTo(north.drift.metres, 6);
  });

  it("grows steadily with its speed", () => {
    const lengths = [0, 2, 4, 6, 8, 10].map((speed) => effective(at(150), windFrom(0, speed)).lengthMetres);
    lengths.slice(1).forEach((length, n) => expect(length).toBeGreaterThan(lengths[n] ?? Infinity));
  });
});

describe("carry today", () => {
  const day: DayConditions = { air: air({ heightMetres: 30, temperatureCelsius: 9, relativeHumidity: 0.8 }), wind: { speedMetresPerSecond: 8, fromDegrees: 60 } };

  it.each([
    [90, -4],
    [150, 5],
    [230, -10],
  ])("of a stroke of %d yd to ground %d m higher is undone by the effective length", (yards, riseMetres) => {
    const today = carryToday({ levelCarryMetres: yards * YARD, riseMetres, bearingDegrees: 10 }, day);
    if (!today.ok) throw new Error(today.message);
    for (const id of IDS) {
      const back = effective({ distanceMetres: today.carryMetresBySet[id], riseMetres, bearingDegrees: 10 }, day);
      expect(Math.abs(back.bySet[id].lengthMetres - yards * YARD)).toBeLessThan(0.03);
    }
  });

  it("is the level carry in still standard air", () => {
    const today = carryToday({ levelCarryMetres: 200, riseMetres: 0, bearingDegrees: 0 }, STILL_DAY);
    expect(today.ok && today.carry.metres).toBeCloseTo(200, 2);
    expect(today.ok && today.drift.metres).toBe(0);
  });
});

describe("refusals", () => {
  it.each([
    ["NaN distance", { ...at(150), distanceMetres: NaN }, STILL_DAY, "not-a-number"],
    ["negative distance", at(-150), STILL_DAY, "out-of-range"],
    ["endless distance", { ...at(150), distanceMetres: Infinity }, STILL_DAY, "not-a-number"],
    ["target 200 m below", { ...at(150), riseMetres: -200 }, STILL_DAY, "out-of-range"],
    ["NaN rise", { ...at(150), riseMetres: NaN }, STILL_DAY, "not-a-number"],
    ["NaN bearing", at(150, 0, NaN), STILL_DAY, "not-a-number"],
    ["wind of 200 m/s", at(150), windFrom(0, 200), "out-of-range"],
    ["negative wind", at(150), windFrom(0, -3), "out-of-range"],
    ["NaN wind", at(150), windFrom(NaN, 3), "not-a-number"],
    ["no air to speak of", at(150), { air: { densityKilogramsPerCubicMetre: NaN, kinematicViscositySquareMetresPerSecond: 1.46e-5 } }, "not-a-number"],
    ["out of everyone's reach", at(380), STILL_DAY, "too-long"],
    ["just past the longest stroke", at(345), STILL_DAY, "too-long"],
    ["just under the shortest stroke", at(38), STILL_DAY, "too-short"],
    ["under the shortest stroke", at(20), STILL_DAY, "too-short"],
    ["up a cliff", { distanceMetres: 60, riseMetres: 50, bearingDegrees: 0 }, STILL_DAY, "unreachable"],
    ["into a storm", at(250), windFrom(0, 25), "too-long"],
  ] as [string, ShotTarget, DayConditions, string][])("%s", (_name, target, day, reason) => {
    expect(effectiveLength(target, day)).toMatchObject({ ok: false, reason });
  });

  it("of a stroke nobody has", () => {
    expect(carryToday({ levelCarryMetres: -5, riseMetres: 0, bearingDegrees: 0 }, STILL_DAY)).toMatchObject({ ok: false, reason: "out-of-range" });
    expect(carryToday({ levelCarryMetres: 200, riseMetres: 0, bearingDegrees: 0 }, windFrom(0, 200))).toMatchObject({ ok: false, reason: "out-of-range" });
  });

  it("say what is wrong, then what to give", () => {
    const message = (target: ShotTarget, day = STILL_DAY) => {
      const answer = effectiveLength(target, day);
      return answer.ok ? "" : answer.message;
    };
    expect(message(at(-150))).toMatchInlineSnapshot(`"The distance to the target is -137.16 m. Give a number from 1 to 600 m."`);
    expect(message(at(380))).toMatchInlineSnapshot(`"No stroke up to 311 m of level carry reaches a target 347.5 m away and 0.0 m up in this air and wind. Give a nearer target, such as a place to lay up."`);
    expect(message(at(20))).toMatchInlineSnapshot(`"Even a stroke of 37 m of level carry flies past a target 18.3 m away and 0.0 m up in this air and wind. Give a target further away."`);
    expect(message({ distanceMetres: 60, riseMetres: 50, bearingDegrees: 0 })).toMatchInlineSnapshot(`"No stroke of the family comes down on a target 60.0 m away and 50.0 m up: it is too steep. Give a target further away or less high."`);
    expect(message(at(150), windFrom(0, 200))).toMatchInlineSnapshot(`"The wind speed is 200 m/s. Give a number from 0 to 28 m/s."`);
  });

  it("never hides a NaN: every number of a wide sweep is finite or refused", () => {
    let answered = 0;
    for (const distanceMetres of [1, 40, 90, 200, 310, 599]) {
      for (const riseMetres of [-100, -20, 0, 20, 100]) {
        for (const speed of [0, 3, 28]) {
          for (const fromDegrees of [0, 100, 180]) {
            const answer = effectiveLength({ distanceMetres, riseMetres, bearingDegrees: 0 }, windFrom(fromDegrees, speed));
            if (!answer.ok) continue;
            answered += 1;
            const { lengthMetres, plusMinusMetres, drift, run, landingAngleDegrees } = answer;
            for (const value of [lengthMetres, plusMinusMetres, drift.metres, drift.plusMinusMetres, run.metres, run.plusMinusMetres, landingAngleDegrees]) {
              expect(Number.isFinite(value)).toBe(true);
            }
          }
        }
      }
    }
    expect(answered).toBeGreaterThan(50);
  });
});
