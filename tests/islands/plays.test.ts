import { describe, expect, test } from "vitest";
import { airFrom } from "../../src/flight/air.ts";
import { effectiveLength } from "../../src/flight/effective.ts";
import { NO_CONDITIONS } from "../../src/islands/conditions-store.ts";
import { playsOf } from "../../src/islands/map/plays.ts";

const stop = (x: number, y: number, heightMetres: number) => ({ point: [x, y] as const, heightMetres });

describe("how the legs of a reading play", () => {
  test("level, in still standard air at sea level, each plays its distance", () => {
    const { legs, wind } = playsOf([stop(0, 0, 0), stop(0, 150, 0), stop(0, 270, 0)], NO_CONDITIONS)!;
    expect(legs.map(({ plays }) => plays!.lengthMetres)).toEqual([expect.closeTo(150, 0), expect.closeTo(120, 0)]);
    expect(wind).toBe(false);
  });

  test("a rise plays longer, a fall shorter, and the rise is told", () => {
    const [up, down] = playsOf([stop(0, 0, 5), stop(0, 150, 15), stop(0, 300, 5)], NO_CONDITIONS)!.legs;
    expect(up!.riseMetres).toBe(10);
    expect(down!.riseMetres).toBe(-10);
    expect(up!.plays!.lengthMetres).toBeGreaterThan(155);
    expect(down!.plays!.lengthMetres).toBeLessThan(145);
  });

  test("in the golfer's wind and temperature they are the flight code's own", () => {
    const conditions = {
      wind: { speedMetresPerSecond: 7, fromDegrees: 60 },
      temperatureCelsius: 8,
      carryMetres: undefined,
    };
    const [leg] = playsOf([stop(0, 0, 12), stop(90, 120, 9)], conditions)!.legs;
    const air = airFrom({ heightMetres: 12, temperatureCelsius: 8 });
    if (!air.ok) throw new Error(air.message);
    const direct = effectiveLength(
      // East by 90 and north by 120: a 3, 4, 5 triangle.
      { distanceMetres: 150, riseMetres: -3, bearingDegrees: (Math.atan2(90, 120) * 180) / Math.PI },
      { air: air.air, wind: conditions.wind },
    );
    if (!direct.ok) throw new Error(direct.message);
    expect(leg!.plays!.lengthMetres).toBeCloseTo(direct.lengthMetres, 6);
    expect(leg!.plays!.driftMetres).toBeCloseTo(direct.drift.metres, 6);
  });

  test("a leg longer than any stroke plays nothing, and its fellow still does", () => {
    const { legs } = playsOf([stop(0, 0, 0), stop(0, 400, 4), stop(0, 500, 0)], NO_CONDITIONS)!;
    expect(legs[0]).toEqual({ riseMetres: 4, plays: undefined });
    expect(legs[1]!.plays).toBeDefined();
  });

  test("conditions that make no sense play nothing", () => {
    expect(playsOf([stop(0, 0, 0), stop(0, 100, 0)], { ...NO_CONDITIONS, temperatureCelsius: 500 })).toBeUndefined();
    expect(playsOf([], NO_CONDITIONS)).toBeUndefined();
  });
});
