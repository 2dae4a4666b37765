import { describe, expect, it } from "vitest";
import type { Position } from "../../src/geo/position.ts";
import {
  MERCATOR_HALF_WIDTH_METRES,
  MERCATOR_LATITUDE_LIMIT,
  metresPerPixel,
  positionOnTile,
  positionOfUnitSquare,
  tileOf,
  tilesOver,
  unitSquareOf,
} from "../../src/terrain/web-mercator.ts";
import { pixelOn, tileBounds } from "../support/tiles.ts";

const closeTo = (
  values: readonly (number | undefined)[],
  expected: readonly (number | undefined)[],
  digits: number,
): void => expected.forEach((value, i) => expect(values[i]).toBeCloseTo(value!, digits));

describe("web mercator", () => {
  // Published: worked example of wiki.openstreetmap.org, Slippy map tilenames.
  const tokyo: Position = [139.7006793, 35.6590699];
  it("finds the published tile and place in the unit square", () => {
    expect(tileOf(tokyo, 18)).toEqual({ z: 18, x: 232798, y: 103246 });
    closeTo(unitSquareOf(tokyo), [0.8880574425, 0.3938537995827], 10);
  });

  // Computed, regression.
  it("finds a tile's corners and a pixel on it", () => {
    const [west, south, east, north] = tileBounds({ z: 18, x: 232798, y: 103246 });
    closeTo(
      [north, west, south, east],
      [35.65952786487721, 139.69940185546875, 35.65841206428203, 139.70077514648438],
      11,
    );
    const tile = tileOf([-3, 56], 15);
    expect(tile).toEqual({ z: 15, x: 16110, y: 10203 });
    closeTo(pixelOn(tile, [-3, 56]), [238.93, 188.54], 2);
    closeTo(positionOnTile(tile, pixelOn(tile, [-3, 56])), [-3, 56], 10);
  });

  it("has the published limits and scale", () => {
    expect(MERCATOR_LATITUDE_LIMIT).toBeCloseTo(85.0511287798066, 12);
    expect(MERCATOR_HALF_WIDTH_METRES).toBeCloseTo(20_037_508.34, 2);
    expect(metresPerPixel(0, 0)).toBeCloseTo(156_543.03392804, 7);
    expect(metresPerPixel(0, 15)).toBeCloseTo(4.777314, 6);
    expect(metresPerPixel(56, 15)).toBeCloseTo(2.67144, 6);
    expect(metresPerPixel(56, 17)).toBeCloseTo(0.66786, 6);
  });

  it("goes there and back", () => {
    for (const position of [
      [0, 0],
      [-179.9, 84],
      [179.9, -84],
      [13.4, 52.5],
    ] as const) {
      closeTo(positionOfUnitSquare(unitSquareOf(position)), position, 11);
    }
  });

  it("keeps the world's edges on its tiles", () => {
    expect(tileOf([-180, 90], 3)).toEqual({ z: 3, x: 0, y: 0 });
    expect(tileOf([180, -90], 3)).toEqual({ z: 3, x: 7, y: 7 });
    expect(tileOf([5, 5], 0)).toEqual({ z: 0, x: 0, y: 0 });
  });

  it("lists every tile over a box once", () => {
    const tiles = tilesOver([-9.02, 56.49, -8.98, 56.51], 15);
    const [first, last] = [tiles[0]!, tiles.at(-1)!];
    expect(tiles).toHaveLength((last.x - first.x + 1) * (last.y - first.y + 1));
    expect(new Set(tiles.map(({ x, y }) => `${x}/${y}`)).size).toBe(tiles.length);
    expect(first).toEqual(tileOf([-9.02, 56.51], 15));
    expect(last).toEqual(tileOf([-8.98, 56.49], 15));
  });
});
