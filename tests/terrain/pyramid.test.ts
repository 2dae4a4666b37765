import { describe, expect, it } from "vitest";
import { gridOf } from "../../src/terrain/grid.ts";
import { halved, heldHeight, withoutUnknowns } from "../../src/terrain/pyramid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { FIELD, gridOfField, plane } from "./surfaces.ts";

describe("halved", () => {
  it("keeps a plane a plane, at twice the step", () => {
    const even = gridOf({ west: 0, south: 0, east: 19, north: 9 }, 1, plane);
    const half = halved(even)!;
    expect([half.columns, half.rows, half.stepMetres]).toEqual([10, 5, 2]);
    for (const point of [
      [0.5, 0.5],
      [7.7, 3.1],
      [18.5, 8.5],
    ] as const) {
      expect(heightAt(half, point)).toBeCloseTo(plane(point), 5);
    }
  });

  it("means over what is known and ends at two columns", () => {
    const grid = gridOf({ west: 0, south: 0, east: 3, north: 3 }, 1, ([x, y]) =>
      y > 1 ? (x === 0 ? 4 : undefined) : x,
    );
    expect([...halved(grid)!.heights]).toEqual([4, NaN, 0.5, 2.5]);
    expect(halved(halved(grid)!)).toBeUndefined();
  });
});

describe("withoutUnknowns", () => {
  it("leaves known heights alone and makes up the rest between what lies about", () => {
    const grid = gridOf(FIELD, 1, (point) => (Math.hypot(point[0] - 10, point[1]) < 12 ? undefined : plane(point)));
    const whole = withoutUnknowns(grid);
    grid.heights.forEach((height, i) => {
      const filled = whole.heights[i]!;
      if (Number.isNaN(height)) expect(Math.abs(filled - 20.4)).toBeLessThan(1.2);
      else expect(filled).toBe(height);
    });
  });

  it("gives the only height it knows to all, and the stated one where it knows none", () => {
    const one = gridOf(FIELD, 1, ([x, y]) => (x === 17 && y === -23 ? 42 : undefined));
    expect(new Set(withoutUnknowns(one).heights)).toEqual(new Set([42]));
    expect(
      new Set(
        withoutUnknowns(
          gridOfField(() => undefined),
          3,
        ).heights,
      ),
    ).toEqual(new Set([3]));
    const whole = gridOfField(plane);
    expect(withoutUnknowns(whole)).toBe(whole);
  });
});

describe("heldHeight", () => {
  it("runs on at the edge's height beyond the grid", () => {
    const grid = gridOf({ west: 0, south: 0, east: 2, north: 2 }, 1, ([x]) => x);
    expect(heldHeight(grid, -50, 1)).toBe(0);
    expect(heldHeight(grid, 50, 99)).toBe(2);
    expect(heldHeight(grid, 0.5, -3)).toBe(0.5);
  });
});
