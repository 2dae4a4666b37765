import { describe, expect, test } from "vitest";
import type { HeightTiles, LonLat } from "../../src/contract/map-data.ts";
import { heightsOf } from "../../src/islands/map/heights.ts";
import { encodeTerrarium, TERRARIUM_STEP_METRES } from "../support/terrarium.ts";
import { positionOnTile, TILE_PIXELS } from "../../src/terrain/web-mercator.ts";
import { pixelOn, tileBounds } from "../support/tiles.ts";

const Z = 16;
// Two tiles side by side and the two below them, over open sea.
const FIRST = { z: Z, x: 31130, y: 20300 };
const [west, , , north] = tileBounds(FIRST);
const [, south, east] = tileBounds({ z: Z, x: FIRST.x + 1, y: FIRST.y + 1 });
const ground: HeightTiles = {
  tiles: "/g/{z}/{x}/{y}.webp",
  encoding: "terrarium",
  minimumZoom: 12,
  maximumZoom: Z,
  bounds: [west, south, east, north],
};

/** A plane in pixels from the first tile's corner: what lies between pixel middles is then known exactly. */
const height = (px: number, py: number): number => 20 + px * 0.03 - py * 0.05;

const asked: string[] = [];
const pixelsOf = async (address: string): Promise<Uint8ClampedArray | undefined> => {
  asked.push(address);
  const [, x, y] = /\/(\d+)\/(\d+)\.webp$/.exec(address)!.map(Number) as [number, number, number];
  const pixels = new Uint8ClampedArray(TILE_PIXELS * TILE_PIXELS * 4);
  for (let row = 0; row < TILE_PIXELS; row++) {
    for (let column = 0; column < TILE_PIXELS; column++) {
      const colour = encodeTerrarium(
        height((x - FIRST.x) * TILE_PIXELS + column + 0.5, (y - FIRST.y) * TILE_PIXELS + row + 0.5),
      );
      pixels.set([...colour, 255], 4 * (row * TILE_PIXELS + column));
    }
  }
  return pixels;
};
const at = (px: number, py: number): LonLat => {
  const [longitude, latitude] = positionOnTile(FIRST, [px, py]);
  return [longitude, latitude];
};

describe("heights from tiles", () => {
  test.each([
    [100.5, 30.5],
    [100.9, 30.1],
    [255.9, 128.2],
    [256.3, 255.8],
    [301.7, 400.4],
  ])("at %d, %d pixels are the ground's, across tile edges too", async (px, py) => {
    const found = (await heightsOf(ground, pixelsOf).at(at(px, py)))!;
    const [x, y] = pixelOn(FIRST, at(px, py));
    // The encoding takes the step below.
    expect(found).toBeLessThanOrEqual(height(x, y) + 1e-6);
    expect(found).toBeGreaterThan(height(x, y) - TERRARIUM_STEP_METRES - 1e-6);
  });

  test("fetch each tile once", async () => {
    const heights = heightsOf(ground, pixelsOf);
    asked.length = 0;
    await Promise.all([heights.at(at(100, 100)), heights.at(at(120, 90)), heights.at(at(140, 95))]);
    expect(asked).toEqual([`/g/${Z}/${FIRST.x}/${FIRST.y}.webp`]);
  });

  test("are unknown beyond the ground, without asking", async () => {
    asked.length = 0;
    expect(await heightsOf(ground, pixelsOf).at([west - 0.001, south])).toBeUndefined();
    expect(await heightsOf(ground, pixelsOf).at([Number.NaN, south])).toBeUndefined();
    expect(asked).toEqual([]);
  });

  test("are unknown while a tile is missing or fails, and asked for again", async () => {
    let there = false;
    const heights = heightsOf(ground, async (address) => {
      if (!there) throw new Error("no network");
      return pixelsOf(address);
    });
    expect(await heights.at(at(100, 100))).toBeUndefined();
    there = true;
    expect(await heights.at(at(100, 100))).toBeCloseTo(height(100, 100), 1);
    expect(await heightsOf(ground, async () => undefined).at(at(100, 100))).toBeUndefined();
  });
});
