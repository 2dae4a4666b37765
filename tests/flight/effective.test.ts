import { describe, expect, it } from "vitest";
import { airFrom, STANDARD_AIR } from "../../src/flight/air.ts";
import type { Air, AirStatement } from "../../src/flight/air.ts";
import { COEFFICIENT_SETS } from "../../src/flight/coefficients/sets.ts";
import type { CoefficientSetId } from "../../src/flight/coefficients/types.ts";
import { carryToday, effectiveLength } from "../../src/flight/effective.ts";
import type { DayConditions, EffectiveLength, ShotTarget } from "../../src/flight/effective.ts";
import { INDICATION_RISE_SHARE, INDICATION_WIND_METRES_PER_SECOND } from "../../src/flight/indication.ts";
import { launchOf, USUAL_DRIVER_METRES } from "../../src/flight/family.ts";
import { fittingOf } from "../../src/flight/launch.ts";
import { fly } from "../../src/flight/trajectory.ts";

const YARD = 0.9144;
const STILL_DAY: DayConditions = { air: STANDARD_AIR };
const IDS: CoefficientSetId[] = ["smitsSmith1994", "bearmanHarvey1976"];

const at = (distanceYards: number, riseYards = 0, bearingDegrees = 0): ShotTarget => ({
  distanceMetres: distanceYards * YARD,
  riseMetres: riseYards * YARD,
  bearingDegrees,
});

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
const windFrom = (fromDegrees: number, speedMetresPerSecond: number): DayConditions => ({
  air: STANDARD_AIR,
  wind: { speedMetresPerSecond, fromDegrees },
});

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

// A set's flight is stretched to the carry the stroke is known to have.
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
      const { lengthMetres } = answer.bySet[id];
      const { stretch, riseShare } = fittingOf(lengthMetres, USUAL_DRIVER_METRES, coefficients, 0.01);
      // Head or tail wind only, so the aim is straight; its height counts from the slope to the target.
      const along = day.wind ? -day.wind.speedMetresPerSecond * Math.cos((day.wind.fromDegrees * Math.PI) / 180) : 0;
      const flight = fly(launchOf(lengthMetres, USUAL_DRIVER_METRES), {
        coefficients,
        air: day.air,
        wind: { alongMetresPerSecond: along, rightMetresPerSecond: 0, profile: "log" },
        riseMetres: target.riseMetres * riseShare,
        groundSlope: (target.riseMetres / target.distanceMetres) * stretch * riseShare,
        stepSeconds: 0.01,
      });
      expect(Math.abs((flight.ok ? flight.carryMetres * stretch : NaN) - target.distanceMetres)).toBeLessThan(0.01);
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
        const firstOrder = rise / Math.tan((level.landingAngleDegrees * Math.PI) / 180);
        expect(Math.abs((raised.lengthMetres - level.lengthMetres) / firstOrder - 1)).toBeLessThan(0.03);
      }
    }
  });

  it.each([
    [120, undefined],
    [135, undefined],
    [150, undefined],
    [210, 275],
    [220, 275],
  ])("of a yard adds about a yard to a mid-iron of %d yd, driver %s yd", (yards, driver) => {
    // Common practice, no source: one yard per yard. Held over a step of 6 yd, up and down together, where the ball
    // comes
    // down near 45 degrees: at these lengths for the usual golfer's irons, longer ones for a tour's.
    const plays = (rise: number): number => {
      const answer = effectiveLength(at(yards, rise), STILL_DAY, { driverMetres: driver && driver * YARD });
      return answer.ok ? answer.lengthMetres / YARD : NaN;
    };
    const [up, down] = [plays(6) - yards, yards - plays(-6)];
    expect(up).toBeGreaterThan(0);
    expect(down).toBeGreaterThan(0);
    expect(Math.abs((up + down) / 12 - 1)).toBeLessThan(0.1);
  });

  it("of a yard adds more than a yard to a drive, which comes down flatter", () => {
    expect(effective(at(220, 6)).lengthMetres / YARD - 220).toBeGreaterThan(6 * 1.2);
  });

  it("is never surer than the spread of the two sets, nor than a quarter of what the rise makes", () => {
    for (const yards of [90, 150, 220]) {
      const answer = effective(at(yards, 10));
      const [one, other] = IDS.map((id) => answer.bySet[id].lengthMetres) as [number, number];
      expect(answer.plusMinusMetres).toBeGreaterThanOrEqual(Math.abs(one - other) / 2);
      expect(answer.plusMinusMetres).toBeGreaterThanOrEqual(0.25 * (answer.lengthMetres - yards * YARD) - 1e-9);
      expect(answer.lengthMetres).toBeCloseTo((one + other) / 2, 9);
    }
  });
});

describe("air", () => {
  it("plays longer when cold and shorter when warm or high", () => {
    for (const yards of [100, 150, 200, 250]) {
      expect(added(yards, { air: air({ heightMetres: 0, temperatureCelsius: 5 }) })).toBeGreaterThan(0.5);
      expect(added(yards, { air: air({ heightMetres: 0, temperatureCelsius: 30 }) })).toBeLessThan(-0.5);
      expect(added(yards, { air: air({ heightMetres: 610 }) })).toBeLessThan(-0.5);
      expect(added(yards, { air: air({ heightMetres: 1609 }) })).toBeLessThan(
        added(yards, { air: air({ heightMetres: 610 }) }),
      );
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

describe("properties", () => {
  const DRIVERS = [undefined, 100, 150, 200, 240, 275, 330];
  const LENGTHS = [45, 70, 100, 130, 160, 190, 220, 250, 290];
  const plays = (yards: number, day: DayConditions, driver?: number): EffectiveLength | undefined => {
    const answer = effectiveLength(at(yards), day, { driverMetres: driver && driver * YARD });
    return answer.ok ? answer : undefined;
  };
  const carries = (yards: number, day: DayConditions, driver?: number): number => {
    const answer = carryToday({ levelCarryMetres: yards * YARD, riseMetres: 0, bearingDegrees: 0 }, day, {
      driverMetres: driver && driver * YARD,
    });
    return answer.ok ? answer.carry.metres : NaN;
  };

  it.each(DRIVERS)("more head wind never flies further, driver %s yd", (driver) => {
    for (const yards of LENGTHS) {
      let [length, carry] = [0, Infinity];
      for (let speed = 0; speed <= 14; speed += 2) {
        const answer = plays(yards, windFrom(0, speed), driver);
        if (answer === undefined) break;
        expect(answer.lengthMetres).toBeGreaterThan(length);
        length = answer.lengthMetres;
        const flown = carries(yards, windFrom(0, speed), driver);
        expect(flown).toBeLessThan(carry);
        carry = flown;
      }
    }
  });

  it("a longer driver goes further, in any wind", () => {
    for (const day of [STILL_DAY, windFrom(0, 5), windFrom(0, 12), windFrom(180, 10), windFrom(70, 9)]) {
      let last = 0;
      for (let yards = 40; yards <= 340; yards += 4) {
        const carry = carries(yards, day, yards);
        expect(carry).toBeGreaterThan(last);
        last = carry;
      }
    }
  });

  it("a target further away plays longer, by no jump, where the family changes too", () => {
    for (const day of [windFrom(0, 6), windFrom(180, 6), windFrom(45, 9)]) {
      for (const driver of [undefined, 150, 250]) {
        let last: number | undefined;
        for (let yards = 60; yards <= 230; yards += 1) {
          const answer = plays(yards, day, driver);
          if (answer === undefined) throw new Error("it can be reached");
          if (last !== undefined) {
            expect(answer.lengthMetres - last).toBeGreaterThan(0.2);
            expect(answer.lengthMetres - last).toBeLessThan(2.2);
          }
          last = answer.lengthMetres;
        }
      }
    }
  });

  it("a cross-wind is the same from both sides", () => {
    for (const driver of DRIVERS) {
      for (const yards of LENGTHS) {
        const [left, right] = [plays(yards, windFrom(-70, 7), driver), plays(yards, windFrom(70, 7), driver)];
        if (left === undefined || right === undefined) continue;
        expect(right.lengthMetres).toBeCloseTo(left.lengthMetres, 2);
        expect(right.plusMinusMetres).toBeCloseTo(left.plusMinusMetres, 2);
        expect(right.drift.metres).toBeCloseTo(-left.drift.metres, 2);
      }
    }
  });

  it("a figure is surer in less wind, and never surer than the two sets are of each other", () => {
    for (const driver of DRIVERS) {
      for (const yards of LENGTHS) {
        for (const from of [0, 180]) {
          let last = -1;
          // A breeze, a fresh one, as much as the model is to be trusted with.
          for (const speed of [0, 2, 4.5, INDICATION_WIND_METRES_PER_SECOND]) {
            const answer = plays(yards, windFrom(from, speed), driver);
            if (answer === undefined) continue;
            const { smitsSmith1994, bearmanHarvey1976 } = answer.bySet;
            expect(answer.plusMinusMetres).toBeGreaterThanOrEqual(
              Math.abs(smitsSmith1994.lengthMetres - bearmanHarvey1976.lengthMetres) / 2,
            );
            // A hand's breadth aside, by which short part strokes are surer downwind.
            expect(answer.plusMinusMetres).toBeGreaterThan(last - 0.1);
            last = answer.plusMinusMetres;
          }
        }
      }
    }
  });

  it("a golfer who has said what his driver carries is told surer figures than nobody in particular", () => {
    for (const yards of [90, 120, 150, 180]) {
      expect(plays(yards, windFrom(0, 6), 210)!.plusMinusMetres).toBeLessThan(
        plays(yards, windFrom(0, 6))!.plusMinusMetres,
      );
    }
  });

  it("per cent for each mph of head wind are much the same at all lengths, and rise slowly with the wind", () => {
    // Common practice, no source: one per cent for each mph. Before the family stood on the tour's means it was 1.7
    // into
    // 20 mph at 100 yd, 1.2 at 150 and 1.5 at 250.
    const perMph = (yards: number, mph: number): number => {
      const answer = plays(yards, windFrom(0, mph * 0.44704));
      return answer === undefined ? NaN : (100 * (answer.lengthMetres / YARD / yards - 1)) / mph;
    };
    for (const [mph, least, most] of [
      [5, 0.55, 1.0],
      [10, 0.7, 1.1],
      [20, 1.0, 1.6],
    ] as const) {
      let last: number | undefined;
      for (let yards = 80; yards <= 250; yards += 5) {
        const now = perMph(yards, mph);
        expect(now).toBeGreaterThan(least);
        expect(now).toBeLessThan(most);
        if (last !== undefined) expect(Math.abs(now - last)).toBeLessThan(0.09);
        last = now;
      }
    }
  });
});

describe("only an indication", () => {
  const indicated = (yards: number, riseYards: number, day: DayConditions): boolean =>
    effective(at(yards, riseYards), day).indication;

  it("in more wind, or up or down more steeply, than the model is trusted with", () => {
    expect(indicated(150, 0, STILL_DAY)).toBe(false);
    expect(indicated(150, 0, windFrom(0, INDICATION_WIND_METRES_PER_SECOND))).toBe(false);
    expect(indicated(150, 0, windFrom(0, INDICATION_WIND_METRES_PER_SECOND + 0.1))).toBe(true);
    expect(indicated(150, 150 * INDICATION_RISE_SHARE - 0.1, STILL_DAY)).toBe(false);
    expect(indicated(150, -150 * INDICATION_RISE_SHARE - 0.1, STILL_DAY)).toBe(true);
  });

  it("because there a twentieth of the length is no longer sure", () => {
    // For a golfer who has given his driver; of nobody in particular it is so from about 10 mph.
    const share = (speed: number): number => {
      const answer = effectiveLength(at(150), windFrom(0, speed), { driverMetres: 200 * YARD });
      return answer.ok ? answer.plusMinusMetres / (150 * YARD) : NaN;
    };
    expect(share(INDICATION_WIND_METRES_PER_SECOND)).toBeGreaterThan(0.04);
    expect(share(INDICATION_WIND_METRES_PER_SECOND)).toBeLessThan(0.07);
  });
});

describe("carry today", () => {
  const day: DayConditions = {
    air: air({ heightMetres: 30, temperatureCelsius: 9, relativeHumidity: 0.8 }),
    wind: { speedMetresPerSecond: 8, fromDegrees: 60 },
  };

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
    [
      "no air to speak of",
      at(150),
      { air: { densityKilogramsPerCubicMetre: NaN, kinematicViscositySquareMetresPerSecond: 1.46e-5 } },
      "not-a-number",
    ],
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
    expect(carryToday({ levelCarryMetres: -5, riseMetres: 0, bearingDegrees: 0 }, STILL_DAY)).toMatchObject({
      ok: false,
      reason: "out-of-range",
    });
    expect(carryToday({ levelCarryMetres: 200, riseMetres: 0, bearingDegrees: 0 }, windFrom(0, 200))).toMatchObject({
      ok: false,
      reason: "out-of-range",
    });
  });

  it("say what is wrong, then what to give", () => {
    const message = (target: ShotTarget, day = STILL_DAY) => {
      const answer = effectiveLength(target, day);
      return answer.ok ? "" : answer.message;
    };
    expect(message(at(-150))).toMatchInlineSnapshot(
      `"The distance to the target is -137.16 m. Give a number from 1 to 600 m."`,
    );
    expect(message(at(380))).toMatchInlineSnapshot(
      `"No stroke up to 311 m of level carry reaches a target 347.5 m away and 0.0 m up in this air and wind. Give a nearer target, such as a place to lay up."`,
    );
    expect(message(at(20))).toMatchInlineSnapshot(
      `"Even a stroke of 37 m of level carry flies past a target 18.3 m away and 0.0 m up in this air and wind. Give a target further away."`,
    );
    expect(message({ distanceMetres: 60, riseMetres: 50, bearingDegrees: 0 })).toMatchInlineSnapshot(
      `"No stroke of the family comes down on a target 60.0 m away and 50.0 m up: it is too steep. Give a target further away or less high."`,
    );
    expect(message(at(150), windFrom(0, 200))).toMatchInlineSnapshot(
      `"The wind speed is 200 m/s. Give a number from 0 to 28 m/s."`,
    );
  });

  it("never hides a NaN: every number of a wide sweep is finite or refused", () => {
    let answered = 0;
    for (const distanceMetres of [1, 40, 90, 200, 310, 599]) {
      for (const riseMetres of [-100, -20, 0, 20, 100]) {
        for (const speed of [0, 3, 28]) {
          for (const fromDegrees of [0, 100, 180]) {
            const answer = effectiveLength(
              { distanceMetres, riseMetres, bearingDegrees: 0 },
              windFrom(fromDegrees, speed),
            );
            if (!answer.ok) continue;
            answered += 1;
            const { lengthMetres, plusMinusMetres, drift, run, landingAngleDegrees } = answer;
            for (const value of [
              lengthMetres,
              plusMinusMetres,
              drift.metres,
              drift.plusMinusMetres,
              run.metres,
              run.plusMinusMetres,
              landingAngleDegrees,
            ]) {
              expect(Number.isFinite(value)).toBe(true);
            }
          }
        }
      }
    }
    expect(answered).toBeGreaterThan(50);
  });
});
