import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { pointsInside } from "../../src/terrain/region.ts";
import { coverFrom, lineOfSight, visibleShare } from "../../src/terrain/sight.ts";
import { FIELD, cone, gridOfField, plane, rectangle } from "./surfaces.ts";

/** Level at 5 m with a ridge across it, straight-sided, `top` metres above at x = 0, 10 m to its foot each side. */
const ridge =
  (top: number) =>
  ([x]: Point): number =>
    5 + Math.max(0, top * (1 - Math.abs(x) / 10));

describe("lineOfSight", () => {
  it("sees along a plane from eye height, and clears it by the eye's share", () => {
    const sight = lineOfSight(gridOfField(plane), [-50, -50], [50, 50], { eyeMetres: 1.6 })!;
    expect(sight.visible).toBe(true);
    // Half a step short of the target the room is 1.6 m times what is left of the way.
    expect(sight.clearanceMetres).toBeGreaterThan(0);
    expect(sight.clearanceMetres).toBeLessThan(1.6 * 0.01);
    expect(sight.partlyUnknown).toBe(false);
  });

  it("is blocked by a ridge from when similar triangles say", () => {
    // Eye 1.6 m up at -40, turf at +40: over the crest the line is 0.8 m above the level.
    expect(lineOfSight(gridOfField(ridge(0.75)), [-40, 0], [40, 0], { eyeMetres: 1.6 })!.visible).toBe(true);
    const blocked = lineOfSight(gridOfField(ridge(0.85)), [-40, 0], [40, 0], { eyeMetres: 1.6 })!;
    expect(blocked.visible).toBe(false);
    expect(blocked.tightest[0]).toBeCloseTo(0, 6);
    expect(blocked.clearanceMetres).toBeCloseTo(0.8 - 0.85, 5);
  });

  it("sees a flagstick over what hides the turf", () => {
    const grid = gridOfField(ridge(1.7));
    expect(lineOfSight(grid, [-40, 0], [40, 0])!.visible).toBe(false);
    expect(lineOfSight(grid, [-40, 0], [40, 0], { targetMetres: 2.1 })!.visible).toBe(true);
  });

  it("is the same both ways when eye and target are as high", () => {
    const grid = gridOfField((point) => cone(point) + ridge(2)(point));
    for (let k = 0; k < 40; k++) {
      const a: Point = [-55 + ((k * 0.754877) % 1) * 110, -55 + ((k * 0.56984) % 1) * 110];
      const b: Point = [-55 + ((k * 0.3183) % 1) * 110, -55 + ((k * 0.2087) % 1) * 110];
      const there = lineOfSight(grid, a, b, { eyeMetres: 1.6, targetMetres: 1.6 })!;
      const back = lineOfSight(grid, b, a, { eyeMetres: 1.6, targetMetres: 1.6 })!;
      expect(there.visible).toBe(back.visible);
      expect(there.clearanceMetres).toBeCloseTo(back.clearanceMetres, 6);
    }
  });

  it("counts what stands on the ground", () => {
    const wood = coverFrom([
      { area: rectangle(-5, -20, 5, 20), heightMetres: 8 },
      { area: rectangle(-2, -20, 2, 20), heightMetres: 3 },
    ]);
    expect(wood([0, 0])).toBe(8);
    expect(wood([6, 0])).toBe(0);
    const grid = gridOfField(() => 5);
    expect(lineOfSight(grid, [-40, 0], [40, 0])!.visible).toBe(true);
    expect(lineOfSight(grid, [-40, 0], [40, 0], { coverMetres: wood })!.visible).toBe(false);
    expect(lineOfSight(grid, [-40, 30], [40, 30], { coverMetres: wood })!.visible).toBe(true);
  });

  it("needs ground at both ends and says when some between is unknown", () => {
    const grid = gridOf(FIELD, 1, ([x]) => (Math.abs(x) < 3 ? undefined : 5));
    expect(lineOfSight(grid, [0, 0], [40, 0])).toBeUndefined();
    expect(lineOfSight(grid, [-40, 0], [99, 0])).toBeUndefined();
    expect(lineOfSight(grid, [-40, 0], [40, 0])).toMatchObject({ visible: true, partlyUnknown: true });
  });

  it("sees the ground it stands on", () => {
    expect(lineOfSight(gridOfField(plane), [1, 1], [1, 1])!.visible).toBe(true);
  });
});

describe("visibleShare", () => {
  it("is the part of an area beyond the shadow of a ridge", () => {
    // Eye 2 m up at -40, crest 1.5 m high at 0: the line over the crest falls 0.5 m in 40 and meets the level 120 m
    // beyond.
    const long = gridOf({ west: -50, south: -20, east: 250, north: 20 }, 1, ridge(1.5));
    const seen = visibleShare(long, [-40, 0], rectangle(20, -1, 220, 1), { eyeMetres: 2 })!;
    expect(seen.points).toBeGreaterThan(100);
    expect(Math.abs(seen.share - 0.5)).toBeLessThan(0.02);
  });

  it("is all of open ground and none behind a wall", () => {
    const open = gridOfField(() => 5);
    expect(visibleShare(open, [-50, 0], rectangle(10, -10, 30, 10))!.share).toBe(1);
    expect(visibleShare(gridOfField(ridge(9)), [-50, 0], rectangle(12, -10, 30, 10))!.share).toBe(0);
    expect(visibleShare(open, [-50, 0], rectangle(70, -10, 90, 10))).toBeUndefined();
  });
});

describe("visibleShare and lines of sight", () => {
  it("count the same points as seen, woods and all, though the share stops at what hides a point", () => {
    const grid = gridOfField(ridge(0.4));
    const area = rectangle(8, -20, 45, 20);
    const options = { coverMetres: coverFrom([{ area: rectangle(-14, -30, -6, 2), heightMetres: 1.2 }]) };
    const points = pointsInside(area, 2, 400);
    const seen = points.filter((point) => lineOfSight(grid, [-45, 3], point, options)!.visible).length;
    expect(seen).toBeGreaterThan(0);
    expect(seen).toBeLessThan(points.length);
    expect(visibleShare(grid, [-45, 3], area, { ...options, spacingMetres: 2 })).toEqual({
      share: seen / points.length,
      points: points.length,
    });
  });
});
