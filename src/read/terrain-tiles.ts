/** Terrain tiles for the live map: terrarium heights as lossless WebP. */
import sharp from "sharp";
import type { Frame } from "../geo/frame.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { terrariumPixels, tileGround, tilesOfGrid } from "../terrain/tile-heights.ts";
import { TILE_PIXELS } from "../terrain/web-mercator.ts";

export interface TerrainTile {
  readonly z: number;
  readonly x: number;
  readonly y: number;
  readonly webp: Uint8Array;
}

/** From a whole course in one tile to about 1.3 m a pixel at 56 degrees. */
export const TERRAIN_ZOOMS: readonly number[] = [12, 13, 14, 15, 16];

/**
 * The tiles that a grid touches, zoom by zoom, row by row: the same grid gives the same
 * bytes in the same order. One is made at a time; nothing is kept.
 */
export async function* terrainTiles(
  grid: HeightGrid,
  frame: Frame,
  zooms: readonly number[] = TERRAIN_ZOOMS,
): AsyncGenerator<TerrainTile> {
  const ground = tileGround(grid);
  for (const zoom of zooms) {
    for (const tile of tilesOfGrid(grid, frame, zoom)) {
      const webp = await sharp(terrariumPixels(ground, frame, tile), {
        raw: { width: TILE_PIXELS, height: TILE_PIXELS, channels: 3 },
      })
        .webp({ lossless: true })
        .toBuffer();
      yield { ...tile, webp };
    }
  }
}
