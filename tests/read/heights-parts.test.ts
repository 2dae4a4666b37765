import { describe, expect, it } from "vitest";
import { frameAt } from "../../src/geo/frame.ts";
import type { Point } from "../../src/geo/position.ts";
import { crsOf, parseCrsSetting } from "../../src/read/heights-crs.ts";
import { fillSmallGaps } from "../../src/read/heights-gaps.ts";
import { resample } from "../../src/read/heights-resample.ts";
import type { Raster } from "../../src/terrain/sample.ts";

const raster = (columns: number, rows: number, height: (column: number, row: number) => number): Raster => ({
  columns,
  rows,
  heights: Float32Array.from({ length: columns * rows }, (_, i) => height(i % columns, Math.floor(i / columns))),
});

describe("fillSmallGaps", () => {
  const plane = (column: number, row: number): number => 10 + 0.3 * column - 0.2 * row;
  const holed = raster(30, 20, (column, row) => (Math.hypot(column - 12, row - 9) < 4 ? NaN : plane(column, row)));

  it("carries a plane across, to a millimetre or two, and touches nothing else", () => {
    const { heights, gaps, filled } = fillSmallGaps(holed, 9);
    expect([gaps, filled]).toEqual([1, holed.heights.filter(Number.isNaN).length]);
    heights.forEach((height, i) => {
      if (Number.isNaN(holed.heights[i]))
        expect(Math.abs(height - plane(i % 30, Math.floor(i / 30)))).toBeLessThan(0.002);
      else expect(height).toBe(holed.heights[i]);
    });
    expect(holed.heights.some(Number.isNaN)).toBe(true);
  });

  it("makes no peak or pit that the rim does not have", () => {
    const rough = raster(20, 20, (column, row) =>
      column > 5 && column < 13 && row > 5 && row < 13 ? NaN : 10 + ((column * 7919 + row * 104729) % 100) / 20,
    );
    const { heights } = fillSmallGaps(rough, 7);
    for (const height of heights) {
      expect(height).toBeGreaterThanOrEqual(10);
      expect(height).toBeLessThanOrEqual(15);
    }
  });

  it("counts a gap's width and height, corners joined, and leaves one at the edge", () => {
    expect(fillSmallGaps(holed, 6).gaps).toBe(0);
    expect(fillSmallGaps(holed, 7).gaps).toBe(1);
    const stairs = raster(20, 20, (column, row) => (column === row && column > 2 && column < 12 ? NaN : 5));
    expect(fillSmallGaps(stairs, 8).gaps).toBe(0);
    expect(fillSmallGaps(stairs, 9)).toMatchObject({ gaps: 1, filled: 9 });
    expect(
      fillSmallGaps(
        raster(10, 10, (column) => (column === 0 ? NaN : 5)),
        10,
      ).gaps,
    ).toBe(0);
    expect(
      fillSmallGaps(
        raster(3, 3, () => NaN),
        10,
      ).gaps,
    ).toBe(0);
  });
});

describe("resample", () => {
  it.each(["EPSG:32629", "EPSG:32631", "EPSG:4326"])(
    "places each height within 1 mm of its own computed place in %s",
    (code) => {
      const frame = frameAt([-6.2, 56.5]);
      const crs = crsOf("height.tif", { horizontal: code, metresPerHeightUnit: undefined }, null);
      const [x0, y0] = crs.toFile([-6.2, 56.5]);
      const step = code === "EPSG:4326" ? 1e-5 : 1;
      const toSource = (point: Point): readonly [number, number] => {
        const [x, y] = crs.toFile(frame.toPosition(point));
        return [400 + (x - x0) / step, 400 - (y - y0) / step];
      };
      const bounds = { west: -120, south: -120, east: 120, north: 120 };
      // A source whose height is its own column, or row, tells where it was read, to single precision.
      for (const axis of [0, 1] as const) {
        const source = raster(801, 801, (column, row) => (axis === 0 ? column : row) - 400);
        const grid = resample(source, toSource, bounds, 1, "bilinear");
        let worst = 0;
        grid.heights.forEach((height, i) => {
          const place = toSource([-120 + (i % grid.columns), 120 - Math.floor(i / grid.columns)]);
          worst = Math.max(worst, Math.abs(height - (place[axis] - 400)));
        });
        const metresToSample = code === "EPSG:4326" ? (axis === 0 ? 0.62 : 1.12) : 1;
        expect(worst * metresToSample).toBeLessThan(0.001);
      }
    },
  );
});

describe("parseCrsSetting", () => {
  it.each([
    [undefined, { horizontal: undefined, metresPerHeightUnit: undefined }],
    ["  ", { horizontal: undefined, metresPerHeightUnit: undefined }],
    ["EPSG:32629", { horizontal: "EPSG:32629", metresPerHeightUnit: undefined }],
    ["+vunits=ft", { horizontal: undefined, metresPerHeightUnit: 0.3048 }],
    [
      "+proj=utm +zone=29 +vunits=us-ft +datum=WGS84",
      { horizontal: "+proj=utm +zone=29  +datum=WGS84", metresPerHeightUnit: 1200 / 3937 },
    ],
    ["+vto_meter=0.5", { horizontal: undefined, metresPerHeightUnit: 0.5 }],
  ])("takes %s apart", (setting, parts) => expect(parseCrsSetting("height.tif", setting)).toEqual(parts));

  it.each(["+vunits=yards", "+vto_meter=0", "+vto_meter=x"])("refuses %s", (setting) => {
    expect(() => parseCrsSetting("height.tif", setting)).toThrow("no unit of height");
  });
});
