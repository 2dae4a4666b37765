/**
 * The terrain held against GDAL, an independent implementation, on two grounds:
 *
 * - Maunga Whau, a real hill: the `volcano` matrix of R's datasets, 87 by 61 heights at
 *   10 m, digitised from a topographic map by Ross Ihaka; here as data/volcano.json of the
 *   npm package vega-datasets.
 * - invented dunes: rolling ground with a gap in it, 1 m step.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { contoursOf } from "../../src/terrain/contours.ts";
import { type HeightGrid, columnRowOf, gridOf, heightGrid, nodeAt } from "../../src/terrain/grid.ts";
import { hillshade } from "../../src/terrain/hillshade.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { distanceToPiece } from "../../src/geo/segment.ts";
import { slopePercents } from "../../src/terrain/slope.ts";
import { slopeAt } from "../support/slope.ts";
import { gdal, readBand, scratch, writeGrid } from "../support/gdal.ts";

function maungaWhau(): HeightGrid {
  const path = new URL("../../node_modules/vega-datasets/data/volcano.json", import.meta.url);
  const { width, height, values } = JSON.parse(readFileSync(path, "utf8")) as {
    width: number;
    height: number;
    values: number[];
  };
  return heightGrid({
    columns: width,
    rows: height,
    stepMetres: 10,
    westMetres: 500_000,
    northMetres: 6_000_000,
    heights: Float32Array.from(values),
  });
}

const dunes = gridOf({ west: 500_000, south: 6_000_000, east: 500_160, north: 6_000_120 }, 1, ([x, y]) => {
  const [u, v] = [x - 500_000, y - 6_000_000];
  if (Math.hypot(u - 100, v - 60) < 9) return undefined;
  return 8 + 3 * Math.sin(u / 11) * Math.cos(v / 17) + 0.02 * u + Math.sin((u + v) / 5) * 0.4;
});

const [folder, remove] = scratch();
afterAll(remove);

describe.each([
  ["Maunga Whau", maungaWhau()],
  ["dunes", dunes],
] as const)("%s against GDAL", (name, grid) => {
  const tiff = join(folder, `${name.replace(" ", "-")}.tif`);
  beforeAll(() => writeGrid(tiff, grid));

  /** Spread over the grid, off its lines. */
  const points: Point[] = Array.from({ length: 150 }, (_, k) => [
    grid.westMetres + ((k * 0.7548776662 + 0.013) % 1) * (grid.columns - 1) * grid.stepMetres,
    grid.northMetres - ((k * 0.569840291 + 0.017) % 1) * (grid.rows - 1) * grid.stepMetres,
  ]);

  it("gives at each of the grid's own points what gdallocationinfo reads there", () => {
    const nodes = points.map(([x, y]) => nearestNode(grid, [x, y]));
    const printed = gdal(
      "gdallocationinfo",
      ["-valonly", "-geoloc", tiff],
      nodes.map(([x, y]) => `${x} ${y}`).join("\n"),
    );
    const theirs = printed.trim().split("\n").map(Number);
    expect(theirs).toHaveLength(nodes.length);
    nodes.forEach((node, k) => expect(heightAt(grid, node) ?? -9999).toBeCloseTo(theirs[k]!, 4));
  });

  it.each([
    ["bilinear", "bilinear"],
    ["bicubic", "cubic"],
  ] as const)("samples %s between them as gdalwarp does, within 1 mm", (sampling, method) => {
    const [shiftX, shiftY] = [0.37 * grid.stepMetres, 0.21 * grid.stepMetres];
    const out = `${tiff}.${method}.tif`;
    const west = grid.westMetres + shiftX;
    const north = grid.northMetres - shiftY;
    const half = grid.stepMetres / 2;
    gdal("gdalwarp", [
      ...["-q", "-overwrite", "-et", "0", "-r", method, "-tr", `${grid.stepMetres}`, `${grid.stepMetres}`, "-te"],
      ...[
        west - half,
        north - (grid.rows - 1) * grid.stepMetres - half,
        west + (grid.columns - 1) * grid.stepMetres + half,
        north + half,
      ].map(String),
      ...[tiff, out],
    ]);
    const theirs = readBand(out);
    expect(theirs).toHaveLength(grid.heights.length);
    let compared = 0;
    for (let row = 2; row < grid.rows - 3; row++) {
      for (let column = 2; column < grid.columns - 3; column++) {
        const point: Point = [west + column * grid.stepMetres, north - row * grid.stepMetres];
        // Beside unknown ground each has its own way of doing without; here is what both know.
        if (slopeAt(grid, point) === undefined) continue;
        compared++;
        expect(Math.abs(heightAt(grid, point, sampling)! - theirs[row * grid.columns + column]!)).toBeLessThan(0.001);
      }
    }
    expect(compared).toBeGreaterThan(0.8 * theirs.length);
  });

  it("has the slopes of gdaldem (Horn), within 0.01 points of a percent, and its unknowns", () => {
    const out = `${tiff}.slope.tif`;
    gdal("gdaldem", ["slope", "-q", "-p", "-alg", "Horn", tiff, out]);
    const theirs = readBand(out);
    const ours = slopePercents(grid);
    let worst = 0;
    ours.forEach((slope, i) => {
      expect(Number.isNaN(slope)).toBe(theirs[i] === -9999);
      if (!Number.isNaN(slope)) worst = Math.max(worst, Math.abs(slope - theirs[i]!));
    });
    expect(worst).toBeLessThan(0.01);
  });

  it("has the aspects of gdaldem, within 0.05 degrees", () => {
    const out = `${tiff}.aspect.tif`;
    gdal("gdaldem", ["aspect", "-q", "-zero_for_flat", tiff, out]);
    const theirs = readBand(out);
    for (let row = 1; row < grid.rows - 1; row += 3) {
      for (let column = 1; column < grid.columns - 1; column += 3) {
        const slope = slopeAt(grid, [
          grid.westMetres + column * grid.stepMetres,
          grid.northMetres - row * grid.stepMetres,
        ]);
        if (slope?.downhillDegrees === undefined) continue;
        const off = ((slope.downhillDegrees - theirs[row * grid.columns + column]! + 540) % 360) - 180;
        expect(Math.abs(off)).toBeLessThan(0.05);
      }
    }
  });

  it.each([
    [315, 45, 1, ["-az", "315", "-alt", "45"]],
    [40, 25, 3, ["-az", "40", "-alt", "25", "-z", "3"]],
  ])(
    "has the relief of gdaldem with the lamp at %d, %d and heights times %d, within 1 of 255",
    (azimuth, altitude, exaggeration, lamp) => {
      const out = `${tiff}.shade.tif`;
      gdal("gdaldem", ["hillshade", "-q", ...lamp, tiff, out]);
      const theirs = readBand(out);
      const ours = hillshade(grid, { fromSheetDegrees: azimuth, altitudeDegrees: altitude, exaggeration });
      let differing = 0;
      ours.forEach((shade, i) => {
        expect(Math.abs(shade - theirs[i]!)).toBeLessThanOrEqual(1);
        if (shade !== theirs[i]) differing++;
      });
      // Both round; only ties may part.
      expect(differing / ours.length).toBeLessThan(0.01);
    },
  );

  it("draws the contours of gdal_contour: the same lengths within 0.1 % and the same places within a thousandth of a step", () => {
    const interval = name === "dunes" ? 1 : 10;
    // Half levels: the matrix holds whole metres, and a level that is also a height is a matter of taste.
    const base = name === "dunes" ? 0.25 : 0.5;
    const out = `${tiff}.contours.json`;
    gdal("gdal_contour", [
      "-q",
      "-f",
      "GeoJSON",
      "-lco",
      "COORDINATE_PRECISION=6",
      "-lco",
      "RFC7946=NO",
      "-a",
      "height",
      "-i",
      `${interval}`,
      "-off",
      `${base}`,
      tiff,
      out,
    ]);
    const theirs = inside(
      (
        JSON.parse(readFileSync(out, "utf8")) as {
          features: { properties: { height: number }; geometry: { coordinates: Point[] } }[];
        }
      ).features.map(({ properties, geometry }) => ({
        heightMetres: properties.height,
        points: geometry.coordinates,
      })),
      grid,
    );
    const ours = inside(contoursOf(grid, { intervalMetres: interval, baseMetres: base }), grid);
    const levels = [...theirs.keys()].sort((a, b) => a - b);
    expect(levels.length).toBeGreaterThan(5);
    expect([...ours.keys()].sort((a, b) => a - b)).toEqual(levels);
    for (const level of levels) {
      const [mine, gdals] = [ours.get(level)!, theirs.get(level)!];
      expect(Math.abs(lengthOf(mine) / lengthOf(gdals) - 1)).toBeLessThan(0.001);
      for (const [a] of mine) expect(nearest(a, gdals)).toBeLessThan(0.001 * grid.stepMetres);
      for (const [a] of gdals) expect(nearest(a, mine)).toBeLessThan(0.001 * grid.stepMetres);
    }
  });
});

const nearestNode = (grid: HeightGrid, point: Point): Point => {
  const [column, row] = columnRowOf(grid, point);
  return nodeAt(grid, Math.round(column), Math.round(row));
};

type Segment = readonly [Point, Point];

/**
 * The segments of each level that lie inside the outermost heights and away from unknown
 * ground: GDAL carries its lines half a step beyond the one and up to the other.
 */
function inside(
  lines: readonly { heightMetres: number; points: readonly Point[] }[],
  grid: HeightGrid,
): Map<number, Segment[]> {
  const byLevel = new Map<number, Segment[]>();
  for (const { heightMetres, points } of lines) {
    points.slice(1).forEach((b, i) => {
      const a = points[i]!;
      const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      if (slopeAt(grid, middle) === undefined) return;
      const segments = byLevel.get(heightMetres) ?? [];
      segments.push([a, b]);
      byLevel.set(heightMetres, segments);
    });
  }
  return byLevel;
}

const lengthOf = (segments: readonly Segment[]): number =>
  segments.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);

const nearest = (point: Point, segments: readonly Segment[]): number =>
  Math.min(...segments.map(([a, b]) => distanceToPiece(a, b, point[0], point[1])));
