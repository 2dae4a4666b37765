import { describe, expect, it } from "vitest";
import { refuseWind, turnShotWind, windOnShot, windShare } from "../../src/flight/wind.ts";

describe("log profile", () => {
  it("is the stated wind at 10 m and none at the ground", () => {
    expect(windShare("log", 10)).toBeCloseTo(1, 12);
    expect(windShare("log", 0.03)).toBe(0);
    expect(windShare("log", 0)).toBe(0);
    expect(windShare("log", -2)).toBe(0);
  });

  it("grows by the same amount each time the height doubles", () => {
    // Definition of a logarithmic profile; ln 2 / ln(10 / 0.03), roughness from memory.
    const perDoubling = Math.log(2) / Math.log(10 / 0.03);
    expect(windShare("log", 20) - windShare("log", 10)).toBeCloseTo(perDoubling, 12);
    expect(windShare("log", 40) - windShare("log", 20)).toBeCloseTo(perDoubling, 12);
    expect(windShare("log", 30)).toBeCloseTo(1.1891, 4);
  });

  it("is the same everywhere when uniform", () => {
    expect([0, 1, 30].map((height) => windShare("uniform", height))).toEqual([1, 1, 1]);
  });
});

describe("wind on a shot", () => {
  // A shot north; the wind is named by where it comes from.
  it.each([
    ["head", 0, -5, 0],
    ["from the right", 90, 0, -5],
    ["tail", 180, 5, 0],
    ["from the left", 270, 0, 5],
  ])("%s wind", (_name, fromDegrees, along, right) => {
    const wind = windOnShot({ speedMetresPerSecond: 5, fromDegrees }, 0);
    expect(wind.alongMetresPerSecond).toBeCloseTo(along, 12);
    expect(wind.rightMetresPerSecond).toBeCloseTo(right, 12);
  });

  it("depends only on the angle between wind and shot", () => {
    const one = windOnShot({ speedMetresPerSecond: 7, fromDegrees: 350 }, 300);
    const other = windOnShot({ speedMetresPerSecond: 7, fromDegrees: 50 }, 0);
    expect(one.alongMetresPerSecond).toBeCloseTo(other.alongMetresPerSecond, 12);
    expect(one.rightMetresPerSecond).toBeCloseTo(other.rightMetresPerSecond, 12);
  });

  it("turned with the aim is the wind on the turned bearing", () => {
    const wind = { speedMetresPerSecond: 6, fromDegrees: 200 };
    const turned = turnShotWind(windOnShot(wind, 30), (12 * Math.PI) / 180);
    const direct = windOnShot(wind, 42);
    expect(turned.alongMetresPerSecond).toBeCloseTo(direct.alongMetresPerSecond, 12);
    expect(turned.rightMetresPerSecond).toBeCloseTo(direct.rightMetresPerSecond, 12);
  });
});

it("refuses a wind nobody plays in", () => {
  expect(refuseWind({ speedMetresPerSecond: 12, fromDegrees: 720 })).toBeNull();
  expect(refuseWind({ speedMetresPerSecond: 200, fromDegrees: 0 })).toMatchInlineSnapshot(`
    {
      "message": "The wind speed is 200 m/s. Give a number from 0 to 28 m/s.",
      "ok": false,
      "reason": "out-of-range",
    }
  `);
  expect(refuseWind({ speedMetresPerSecond: -1, fromDegrees: 0 })).toMatchObject({ reason: "out-of-range" });
  expect(refuseWind({ speedMetresPerSecond: 5, fromDegrees: NaN })).toMatchInlineSnapshot(`
    {
      "message": "The wind direction is not a finite number (NaN). Give the degrees from north it blows from.",
      "ok": false,
      "reason": "not-a-number",
    }
  `);
});
