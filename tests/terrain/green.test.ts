import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { directionOfBearing, dot } from "../../src/geo/vector.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { belowTheHole, falseFrontOf } from "../../src/terrain/green-ground.ts";
import { alongApproach, fitPlane, tiltOf } from "../../src/terrain/plane-fit.ts";
import { pointsInside, spotsIn } from "../../src/terrain/region.ts";
import { tiersOf } from "../../src/terrain/tiers.ts";
import { FIELD, cone, disc, gridOfField, hill, plane, rectangle } from "./surfaces.ts";

const green = disc([0, 0], 14);

describe("pointsInside", () => {
  it("spreads evenly, respects holes and keeps to the most it may give", () => {
    const holed = [...rectangle(0, 0, 20, 10), ...rectangle(5, 2, 15, 8)];
    const points = pointsInside(holed, 1, 10_000);
    expect(points).toHaveLength(200 - 60);
    for (const [x, y] of points) expect(x > 5 && x < 15 && y > 2 && y < 8).toBe(false);
    const few = pointsInside(rectangle(0, 0, 1000, 1000), 0.1, 400);
    expect(few).toHaveLength(400);
  });
});

describe("fitPlane and tiltOf", () => {
  it("finds the plane it is given and leaves nothing over", () => {
    const tilt = tiltOf(gridOfField(plane), green)!;
    expect(tilt.percent).toBeCloseTo(5, 3);
    expect(tilt.downhillDegrees).toBeCloseTo(180 + (Math.atan2(4, 3) * 180) / Math.PI, 2);
    expect(tilt.residualMetres).toBeLessThan(1e-5);
  });

  it("leaves over what is no plane: a cone under its apex is level on the whole", () => {
    const tilt = tiltOf(gridOfField(cone), green)!;
    expect(tilt.percent).toBeLessThan(0.05);
    // Heights fall by 0.2 r; the spread of r over a disc of radius R is R / sqrt(18).
    expect(tilt.residualMetres).toBeCloseTo((0.2 * 14) / Math.sqrt(18), 2);
  });

  it("needs three spots that are not in one line, and known ground", () => {
    const spot = (x: number, y: number, heightMetres: number) => ({ point: [x, y] as const, heightMetres });
    expect(fitPlane([spot(0, 0, 1), spot(1, 0, 2)])).toBeUndefined();
    expect(fitPlane([spot(0, 0, 1), spot(1, 1, 2), spot(3, 3, 5)])).toBeUndefined();
    expect(fitPlane([spot(0, 0, 1), spot(1, 0, 2), spot(0, 1, 4)])!.gradient).toEqual({
      east: expect.closeTo(1),
      north: expect.closeTo(3),
    });
    expect(
      tiltOf(
        gridOfField(() => undefined),
        green,
      ),
    ).toBeUndefined();
    expect(spotsIn(gridOfField(plane), disc([500, 0], 5))).toEqual([]);
  });

  it("is told along the approach: played to the north-east the plane rises away and falls to the right", () => {
    const slope = alongApproach({ east: 0.04, north: 0.03 }, directionOfBearing(0));
    expect(slope.awayPercent).toBeCloseTo(3);
    expect(slope.rightPercent).toBeCloseTo(4);
    const turned = alongApproach({ east: 0.04, north: 0.03 }, directionOfBearing(180));
    expect(turned.awayPercent).toBeCloseTo(-3);
    expect(turned.rightPercent).toBeCloseTo(-4);
  });
});

describe("tiersOf", () => {
  /** A step of some height across a line of some bearing, smooth over a breadth, on a tilted plane. */
  const stepped =
    (step: number, upBearing: number, at = 0, breadth = 3, tilt = 0.015) =>
    (point: Point): number => {
      const along = dot(point, directionOfBearing(upBearing)) - at;
      const t = Math.min(1, Math.max(0, along / breadth + 0.5));
      return 10 + step * t * t * (3 - 2 * t) + tilt * point[0] - 0.5 * tilt * point[1];
    };

  it.each([
    [0.6, 0, 0],
    [0.9, 65, 3],
    [0.5, 190, -2],
    [1.2, 300, 4],
  ])("finds a step of %f m rising toward %f, %f m off the middle", (step, bearing, at) => {
    const tiers = tiersOf(gridOfField(stepped(step, bearing, at)), green)!;
    expect(Math.abs(tiers.stepMetres - step)).toBeLessThan(0.12 * step + 0.02);
    expect(Math.abs(((tiers.upDegrees - bearing + 540) % 360) - 180)).toBeLessThanOrEqual(8);
    expect(Math.abs(dot(tiers.bank.point, directionOfBearing(bearing)) - at)).toBeLessThan(1);
    expect(tiers.upper.share + tiers.lower.share).toBeCloseTo(1);
    expect(
      dot(
        [tiers.upper.centre[0] - tiers.lower.centre[0], tiers.upper.centre[1] - tiers.lower.centre[1]],
        directionOfBearing(bearing),
      ),
    ).toBeGreaterThan(8);
  });

  it.each([
    ["a plane", plane],
    ["a steep plane", (point: Point) => 3 * plane(point)],
    ["a dome", hill],
    ["a cone", cone],
    ["a bowl", ([x, y]: Point) => 0.004 * (x * x + y * y)],
    ["a saddle", ([x, y]: Point) => 0.003 * x * y],
    ["a ridge down the middle", ([x]: Point) => 0.25 * Math.cos(x / 4)],
    ["a step of 0.2 m", stepped(0.2, 40)],
    ["a step at the very edge", stepped(0.8, 40, 12)],
  ])("finds none on %s", (_, surface) => {
    expect(tiersOf(gridOfField(surface), green)).toBeUndefined();
  });

  it("finds them through a survey's noise of 3 cm", () => {
    let seed = 7;
    const noise = (): number => ((seed = (seed * 16807) % 2147483647) / 2147483647 - 0.5) * 0.1;
    const grid = gridOfField((point) => stepped(0.6, 120)(point) + noise());
    expect(Math.abs(tiersOf(grid, green)!.stepMetres - 0.6)).toBeLessThan(0.12);
    expect(
      tiersOf(
        gridOfField((point) => plane(point) + noise()),
        green,
      ),
    ).toBeUndefined();
  });

  it("is silent where the ground is unknown", () => {
    expect(
      tiersOf(
        gridOfField(() => undefined),
        green,
      ),
    ).toBeUndefined();
  });
});

describe("falseFrontOf", () => {
  const north: Point = [0, 1];
  /** Rises `front` % over the first `depth` metres from y = -14, then `back` %. */
  const fronted =
    (front: number, depth: number, back: number) =>
    ([, y]: Point): number => {
      const into = Math.max(0, y + 14);
      return 5 + (front / 100) * Math.min(into, depth) + (back / 100) * Math.max(0, into - depth);
    };

  it("measures how far it reaches and how steep it is", () => {
    const front = falseFrontOf(gridOfField(fronted(12, 5, 1), 0.5), rectangle(-10, -14, 10, 14), north)!;
    expect(front.depthMetres).toBe(5);
    expect(front.percent).toBeCloseTo(12, 1);
  });

  it("is found on a round green too, from any side", () => {
    for (const bearing of [0, 77, 200, 315]) {
      const approach = directionOfBearing(bearing);
      const surface = (point: Point): number => fronted(15, 6, 0)([0, dot(point, approach)]);
      const front = falseFrontOf(gridOfField(surface, 0.5), green, approach)!;
      expect(front.depthMetres).toBeGreaterThan(3);
      expect(front.percent).toBeGreaterThan(12);
    }
  });

  it.each([
    ["a gentle front", fronted(5, 6, 1)],
    ["a bank shorter than 2 m", fronted(20, 1, 0)],
    ["a green as steep to its back", fronted(9, 28, 9)],
    ["a front that falls away", fronted(-12, 6, 0)],
    ["unknown ground", () => undefined],
  ])("finds none on %s", (_, surface) => {
    expect(falseFrontOf(gridOfField(surface, 0.5), rectangle(-10, -14, 10, 14), north)).toBeUndefined();
  });
});

describe("belowTheHole", () => {
  it.each([
    [0, "short"],
    [180, "long"],
    [90, "left"],
    [270, "right"],
  ] as const)("played toward %d on ground that falls south is %s", (bearing, side) => {
    const below = belowTheHole(
      gridOfField(([, y]) => 5 + 0.03 * y),
      [2, 3],
      directionOfBearing(bearing),
    )!;
    expect(below.percent).toBeCloseTo(3, 3);
    expect(below.downhillDegrees).toBeCloseTo(180, 2);
    // South is behind a player going north, ahead of one going south, right of one going east.
    expect(below.side).toBe(bearing === 90 ? "right" : bearing === 270 ? "left" : side);
  });

  it("follows the ground about the hole, not the green's: round a hill it always points outward", () => {
    const grid = gridOfField(cone);
    for (const bearing of [10, 100, 190, 280]) {
      const [x, y] = directionOfBearing(bearing);
      const below = belowTheHole(grid, [20 * x, 20 * y], [x, y])!;
      expect(below.side).toBe("long");
      expect(Math.abs(below.downhillDegrees! - bearing)).toBeLessThan(0.5);
    }
  });

  it("says nothing on level or unknown ground", () => {
    expect(
      belowTheHole(
        gridOfField(([x]) => 0.009 * x),
        [0, 0],
        [0, 1],
      ),
    ).toBeUndefined();
    expect(
      belowTheHole(
        gridOf(FIELD, 1, () => undefined),
        [0, 0],
        [0, 1],
      ),
    ).toBeUndefined();
  });
});
