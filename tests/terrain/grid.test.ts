import { describe, expect, it } from "vitest";
import { boundsOf, columnRowOf, cropTo, gridOf, heightGrid, nodeAt } from "../../src/terrain/grid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { FIELD, gridOfField, plane } from "./surfaces.ts";

describe("heightGrid", () => {
  const good = { columns: 2, rows: 2, stepMetres: 1, westMetres: 0, northMetres: 0, heights: new Float32Array(4) };
  it.each([
    [{ columns: 1, heights: new Float32Array(2) }, "at least 2 columns and 2 rows"],
    [{ rows: 2.5 }, "at least 2 columns and 2 rows"],
    [{ stepMetres: 0 }, "a step above 0"],
    [{ westMetres: NaN }, "a finite corner"],
    [{ heights: new Float32Array(5) }, "needs 4 heights, not 5"],
  ])("refuses %o", (change, message) => {
    expect(() => heightGrid({ ...good, ...change })).toThrow(message);
    expect(() => heightGrid(good)).not.toThrow();
  });
});

describe("gridOf", () => {
  it("spans the bounds it is given and stands row 0 in the north", () => {
    const grid = gridOfField(plane);
    expect(boundsOf(grid)).toEqual(FIELD);
    expect([grid.columns, grid.rows]).toEqual([121, 121]);
    expect(nodeAt(grid, 0, 0)).toEqual([-60, 60]);
    expect(columnRowOf(grid, [60, -60])).toEqual([120, 120]);
    expect(grid.heights[0]).toBeCloseTo(plane([-60, 60]), 5);
  });

  it("grows no column by rounding", () => {
    expect(gridOf({ west: 0, south: 0, east: 10, north: 1 }, 0.1, () => 0).columns).toBe(101);
  });
});

describe("cropTo", () => {
  const grid = gridOfField(plane);

  it("keeps every height where it stood", () => {
    const part = cropTo(grid, { west: 3.2, south: -9.5, east: 20.7, north: 4.1 });
    expect(boundsOf(part)).toEqual({ west: 3, south: -10, east: 21, north: 5 });
    for (const point of [
      [3, 5],
      [10.4, 0.3],
      [21, -10],
    ] as const) {
      expect(heightAt(part, point)).toBeCloseTo(plane(point), 4);
    }
  });

  it("stops at the grid's own edges", () => {
    expect(boundsOf(cropTo(grid, { west: 55, south: -99, east: 99, north: 99 }))).toEqual({ ...FIELD, west: 55 });
    expect(boundsOf(cropTo(grid, { west: 60, south: -60, east: 60, north: -60 }))).toEqual({
      west: 59,
      south: -60,
      east: 60,
      north: -59,
    });
  });

  it("refuses a rectangle off the grid", () => {
    expect(() => cropTo(grid, { west: 61, south: 0, east: 70, north: 10 })).toThrow("lies off the height grid");
  });
});
