import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { FIELD, gridOfField, hill, plane } from "./surfaces.ts";

/** Spread over the field without a pattern that could agree with the grid. */
const somePoints: Point[] = Array.from({ length: 400 }, (_, k) => [
  -57 + ((k * 0.7548776662) % 1) * 114,
  -57 + ((k * 0.569840291) % 1) * 114,
]);

describe("heightAt", () => {
  it.each(["bilinear", "bicubic"] as const)("is exact on a plane by %s", (sampling) => {
    const grid = gridOfField(plane, 3);
    for (const point of somePoints) expect(heightAt(grid, point, sampling)).toBeCloseTo(plane(point), 5);
  });

  it("is exact on a quadratic by bicubic, which cubic convolution promises (Keys 1981)", () => {
    const bowl = ([x, y]: Point): number => 0.01 * x * x - 0.02 * x * y + 0.005 * y * y;
    const grid = gridOfField(bowl, 2);
    for (const point of somePoints) expect(heightAt(grid, point, "bicubic")).toBeCloseTo(bowl(point), 4);
    const worst = Math.max(...somePoints.map((point) => Math.abs(heightAt(grid, point)! - bowl(point))));
    // Bilinear misses it by up to step² / 8 times the two second derivatives: 0.5 * (0.02 + 0.01).
    expect(worst).toBeGreaterThan(0.008);
    expect(worst).toBeLessThan(0.0151);
  });

  it("keeps to the Gaussian hill within 7 mm bilinear and 0.6 mm bicubic at a 1 m step", () => {
    const grid = gridOfField(hill);
    const worst = (sampling: "bilinear" | "bicubic"): number =>
      Math.max(...somePoints.map((point) => Math.abs(heightAt(grid, point, sampling)! - hill(point))));
    expect(worst("bilinear")).toBeLessThan(0.007);
    expect(worst("bicubic")).toBeLessThan(0.0006);
  });

  it("gives the heights themselves at the grid's points, to the corners", () => {
    const grid = gridOfField(hill, 4);
    for (const point of [
      [-60, 60],
      [60, 60],
      [60, -60],
      [-60, -60],
      [0, 0],
      [4, -8],
    ] as const) {
      expect(heightAt(grid, point)).toBe(Math.fround(hill(point)));
      expect(heightAt(grid, point, "bicubic")).toBe(Math.fround(hill(point)));
    }
  });

  it("knows nothing off the grid", () => {
    const grid = gridOfField(hill, 4);
    for (const point of [
      [-60.1, 0],
      [0, 60.1],
      [1e9, 0],
      [NaN, 0],
    ] as const) {
      expect(heightAt(grid, point)).toBeUndefined();
      expect(heightAt(grid, point, "bicubic")).toBeUndefined();
    }
  });

  it("leaves ground unknown exactly where an unknown height bears on it", () => {
    const grid = gridOf(FIELD, 1, (point) => (point[0] === 10 && point[1] === 5 ? undefined : plane(point)));
    for (const sampling of ["bilinear", "bicubic"] as const) {
      expect(heightAt(grid, [10, 5], sampling)).toBeUndefined();
      expect(heightAt(grid, [10.4, 5.9], sampling)).toBeUndefined();
      expect(heightAt(grid, [10, 5.5], sampling)).toBeUndefined();
      // On the next grid line the unknown height has no weight.
      expect(heightAt(grid, [11, 5.5], sampling)).toBeCloseTo(plane([11, 5.5]), 5);
      expect(heightAt(grid, [10.5, 6], sampling)).toBeCloseTo(plane([10.5, 6]), 5);
      expect(heightAt(grid, [11.5, 5.5], sampling)).toBeCloseTo(plane([11.5, 5.5]), 5);
    }
  });
});
