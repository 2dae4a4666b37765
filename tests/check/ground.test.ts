/** The ground's facts on surfaces given by a formula, worked out by hand. */
import { describe, expect, test } from "vitest";
import { groundFrom } from "../../src/check/facts.ts";
import type { GroundFacts } from "../../src/check/ground.ts";
import type { Point } from "../../src/geo/position.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { FRAME } from "../support/flat-course.ts";
import { plainCourse } from "./support.ts";

/** Facts of a plain 380 m hole over a surface; [0, 0] is the back marker and the hole plays north. */
function factsOver(surface: (point: Point) => number, lengthMetres = 380, par = 4): GroundFacts {
  const one = plainCourse({ lengthMetres, rest: { par: { men: par, women: par } } });
  const flat = measureCourse(one);
  // The course's frame is not the tests': its origin is rounded, so the surface is laid by where the marker came to
  // lie.
  const [x0, y0] = flat.holes[0]!.tees[0]!.marker;
  const ground = gridOf(
    { west: x0 - 100, east: x0 + 100, south: y0 - 100, north: y0 + lengthMetres + 100 },
    2,
    ([x, y]) => surface([x - x0, y - y0]),
  );
  const measured = measureCourse(one, ground);
  const facts = groundFrom(measured)(measured.holes[0]!);
  if (!facts) throw new Error("No ground.");
  return facts;
}

test("a course without heights has no ground", () => {
  const measured = measureCourse(plainCourse());
  expect(groundFrom(measured)(measured.holes[0]!)).toBeUndefined();
  expect(FRAME.origin).toEqual([-9, 56.5]);
});

describe("a plane that rises 3% to the north and 2% to the east", () => {
  const facts = factsOver(([x, y]) => 10 + 0.03 * y + 0.02 * x);
  test("rises: 228.6 m of drive and what is left of 380 m", () => {
    expect(facts.teeShot!.riseMetres).toBeCloseTo(0.03 * 228.6, 1);
    expect(facts.approach!.riseMetres).toBeCloseTo(0.03 * 151.4, 1);
    expect(facts.approach!.extraMetres!).toBeGreaterThan(3);
    expect(facts.approach!.extraMetres!).toBeLessThan(7);
  });
  test("side slope and tilt of the green", () => {
    expect(facts.fairwayRightPercent!).toBeCloseTo(2, 1);
    expect(facts.green!.awayPercent).toBeCloseTo(3, 1);
    expect(facts.green!.rightPercent).toBeCloseTo(2, 1);
    expect(facts.green!.tiers).toBe(1);
    expect(facts.green!.falseFront).toBe(false);
  });
  test("nothing stands out and all is seen", () => {
    expect(facts.greenAboveMetres!).toBeCloseTo(0, 1);
    // The mean of stations 30 to 120 is 75 m on, 2.25 m up.
    expect(facts.teeAboveMetres!).toBeCloseTo(-2.25, 1);
    expect(facts.seen).toMatchObject({ landing: 1, greenFromLanding: true, flagFromLanding: true });
  });
});

test("a ridge across the fairway hides the landing ground, one before the green the green", () => {
  const ridge =
    (at: number) =>
    ([, y]: Point): number =>
      10 + 8 * Math.exp(-(((y - at) / 15) ** 2));
  expect(factsOver(ridge(120)).seen.landing).toBe(0);
  expect(factsOver(ridge(120)).seen.greenFromLanding).toBe(true);
  expect(factsOver(ridge(310)).seen).toMatchObject({ landing: 1, greenFromLanding: false, flagFromLanding: false });
});

test("a green on a knoll stands above, one in a bowl below", () => {
  const knoll =
    (height: number) =>
    ([x, y]: Point): number =>
      10 + height * Math.exp(-((Math.hypot(x, y - 380) / 18) ** 4));
  expect(factsOver(knoll(4)).greenAboveMetres!).toBeGreaterThan(2.5);
  expect(factsOver(knoll(-4)).greenAboveMetres!).toBeLessThan(-2.5);
});

test("a high tee stands above the ground before it", () => {
  expect(factsOver(([, y]) => (y < 10 ? 20 : 12)).teeAboveMetres!).toBeCloseTo(8, 1);
});

test("a step across the green makes two tiers", () => {
  const step = ([, y]: Point): number => 10 + 0.8 * Math.min(1, Math.max(0, (y - 378) / 3));
  expect(factsOver(step).green!.tiers).toBe(2);
});

test("a par 3 has one stroke: tee shot and approach are the same, and there is no landing ground", () => {
  const facts = factsOver(([, y]) => 30 - 0.05 * y, 150, 3);
  expect(facts.teeShot!.riseMetres).toBeCloseTo(-7.5, 1);
  expect(facts.approach).toEqual(facts.teeShot);
  expect(facts.approach!.extraMetres!).toBeLessThan(-4);
  expect(facts.seen.landing).toBeUndefined();
  expect(facts.seen.greenFromTee).toBe(1);
  expect(facts.fairwayRightPercent).toBeUndefined();
});
