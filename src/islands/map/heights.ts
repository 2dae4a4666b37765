/** Heights of the ground at a place, from the guide's own height tiles. */
import type { Tile } from "../../terrain/web-mercator.ts";
import type { HeightTiles, LonLat } from "../../contract/map-data.ts";
import { decodeTerrarium } from "../../terrain/terrarium.ts";
import { TILE_PIXELS, unitSquareOf } from "../../terrain/web-mercator.ts";

/** A tile's pixels, red, green, blue, alpha, row by row; undefined where there is no such tile. */
export type TilePixels = (address: string) => Promise<Uint8ClampedArray | undefined>;

export interface Heights {
  /** Metres in the guide's own datum; undefined beyond the ground, and where a tile does not come. */
  at(position: LonLat): Promise<number | undefined>;
}

/**
 * Between the four nearest pixel middles of the finest tiles, each of which holds the height
 * at its middle. A tile that did not come is asked for again the next time.
 */
export function heightsOf(
  { tiles, maximumZoom: z, bounds: [west, south, east, north] }: HeightTiles,
  pixelsOf: TilePixels,
): Heights {
  const kept = new Map<string, Promise<Uint8ClampedArray | undefined>>();
  const tile = (address: string): Promise<Uint8ClampedArray | undefined> => {
    const asked = kept.get(address) ?? pixelsOf(address).catch(() => undefined);
    kept.set(address, asked);
    void asked.then((pixels) => pixels === undefined && kept.delete(address));
    return asked;
  };
  /** By pixel column and row of the whole world. */
  const pixel = async (column: number, row: number): Promise<number | undefined> => {
    const at: Tile = { z, x: Math.floor(column / TILE_PIXELS), y: Math.floor(row / TILE_PIXELS) };
    const pixels = await tile(addressOf(tiles, at));
    if (pixels === undefined) return undefined;
    const i = 4 * ((row - at.y * TILE_PIXELS) * TILE_PIXELS + (column - at.x * TILE_PIXELS));
    return decodeTerrarium([pixels[i]!, pixels[i + 1]!, pixels[i + 2]!]);
  };
  return {
    async at(position) {
      const [longitude, latitude] = position;
      if (!(longitude >= west && longitude <= east && latitude >= south && latitude <= north)) return undefined;
      const [u, v] = unitSquareOf([longitude, latitude]);
      const [x, y] = [u * 2 ** z * TILE_PIXELS - 0.5, v * 2 ** z * TILE_PIXELS - 0.5];
      const [column, row] = [Math.floor(x), Math.floor(y)];
      const [nw, ne, sw, se] = await Promise.all([
        pixel(column, row),
        pixel(column + 1, row),
        pixel(column, row + 1),
        pixel(column + 1, row + 1),
      ]);
      if (nw === undefined || ne === undefined || sw === undefined || se === undefined) return undefined;
      const [right, down] = [x - column, y - row];
      return (nw * (1 - right) + ne * right) * (1 - down) + (sw * (1 - right) + se * right) * down;
    },
  };
}

const addressOf = (pattern: string, { z, x, y }: Tile): string =>
  pattern.replace("{z}", String(z)).replace("{x}", String(x)).replace("{y}", String(y));
