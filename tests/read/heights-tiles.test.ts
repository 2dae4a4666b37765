import sharp from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { frameAt } from "../../src/geo/frame.ts";
import type { Point } from "../../src/geo/position.ts";
import { type TerrainTile, terrainTiles } from "../../src/read/terrain-tiles.ts";
import { boundsOf, gridOf } from "../../src/terrain/grid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { decodeTerrarium } from "../../src/terrain/terrarium.ts";
import { TERRARIUM_STEP_METRES } from "../support/terrarium.ts";
import { positionOnTile, tileOf } from "../../src/terrain/web-mercator.ts";

const frame = frameAt([-9, 56.5]);
const ground = ([x, y]: Point): number => 25 + 0.01 * x + 9 * Math.sin(x / 60) * Math.cos(y / 45);
const pond = (point: Point): number | undefined =>
  Math.hypot(point[0] - 100, point[1] - 80) < 20 ? undefined : ground(point);
const grid = gridOf({ west: -300, south: -250, east: 300, north: 250 }, 2, pond);

interface Decoded extends TerrainTile {
  readonly height: (x: number, y: number) => number;
}

async function decode(tile: TerrainTile): Promise<Decoded> {
  const { data, info } = await sharp(tile.webp).raw().toBuffer({ resolveWithObject: true });
  expect([info.width, info.height, info.channels, info.format]).toEqual([256, 256, 3, "raw"]);
  return {
    ...tile,
    height: (x, y) => {
      const at = (y * 256 + x) * 3;
      return decodeTerrarium([data[at]!, data[at + 1]!, data[at + 2]!]);
    },
  };
}

describe("terrainTiles", () => {
  const tiles: Decoded[] = [];
  beforeAll(async () => {
    for await (const tile of terrainTiles(grid, frame)) tiles.push(await decode(tile));
  });

  it("covers the grid at every zoom from 12 to 16, each tile once, coarse first", () => {
    expect([...new Set(tiles.map(({ z }) => z))]).toEqual([12, 13, 14, 15, 16]);
    const names = tiles.map(({ z, x, y }) => `${z}/${x}/${y}`);
    expect(new Set(names).size).toBe(names.length);
    const { west, south, east, north } = boundsOf(grid);
    for (const z of [12, 13, 14, 15, 16]) {
      for (const corner of [
        [west, south],
        [west, north],
        [east, south],
        [east, north],
        [0, 0],
      ] as const) {
        const { x, y } = tileOf(frame.toPosition(corner), z);
        expect(names).toContain(`${z}/${x}/${y}`);
      }
    }
  });

  it("holds the grid's height at each pixel's middle, at most a step low, at the zoom as fine as the grid", () => {
    let compared = 0;
    for (const tile of tiles.filter(({ z }) => z === 16)) {
      for (let y = 0; y < 256; y += 7) {
        for (let x = 0; x < 256; x += 7) {
          const point = frame.toPlane(positionOnTile(tile, [x + 0.5, y + 0.5]));
          const expected = heightAt(grid, point);
          if (expected === undefined) continue;
          compared++;
          const off = expected - tile.height(x, y);
          // A tenth of a millimetre for the interpolated place and single precision.
          expect(off).toBeGreaterThan(-1e-4);
          expect(off).toBeLessThan(TERRARIUM_STEP_METRES + 1e-4);
        }
      }
    }
    expect(compared).toBeGreaterThan(3000);
  });

  it("is a mean, not a pick, at coarse zooms: within 15 cm of the ground smoothed by a pixel", () => {
    for (const tile of tiles.filter(({ z }) => z === 14)) {
      for (let y = 3; y < 256; y += 11) {
        for (let x = 3; x < 256; x += 11) {
          const point = frame.toPlane(positionOnTile(tile, [x + 0.5, y + 0.5]));
          if (Math.abs(point[0]) > 280 || Math.abs(point[1]) > 230 || Math.hypot(point[0] - 100, point[1] - 80) < 30)
            continue;
          expect(Math.abs(tile.height(x, y) - ground(point))).toBeLessThan(0.15);
        }
      }
    }
  });

  it("makes up the pond from its shore and runs on beyond the edge", () => {
    for (const tile of tiles) {
      for (let y = 0; y < 256; y += 15) {
        for (let x = 0; x < 256; x += 15) {
          expect(tile.height(x, y)).toBeGreaterThan(12);
          expect(tile.height(x, y)).toBeLessThan(38);
        }
      }
    }
  });

  it("meets its neighbour without a step", () => {
    for (const tile of tiles.filter(({ z }) => z === 16)) {
      const east = tiles.find(({ z, x, y }) => z === 16 && x === tile.x + 1 && y === tile.y);
      if (!east) continue;
      for (let y = 0; y < 256; y += 5) {
        // A pixel is 1.3 m and the ground at most 20 % steep.
        expect(Math.abs(east.height(0, y) - tile.height(255, y))).toBeLessThan(0.3);
      }
    }
  });

  it("gives the same bytes again", async () => {
    const again: TerrainTile[] = [];
    for await (const tile of terrainTiles(grid, frame, [14])) again.push(tile);
    expect(again.map(({ webp }) => Buffer.from(webp).toString("base64"))).toEqual(
      tiles.filter(({ z }) => z === 14).map(({ webp }) => Buffer.from(webp).toString("base64")),
    );
  });
});
