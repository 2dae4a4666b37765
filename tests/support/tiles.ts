/** Places on Web Mercator tiles, the other way round from the code under test. */
import type { Position } from "../../src/geo/position.ts";
import { positionOnTile, TILE_PIXELS, unitSquareOf, type Tile } from "../../src/terrain/web-mercator.ts";

/** A position's place on a tile in pixels from its north-west corner; outside 0 to 256 when on another tile. */
export function pixelOn({ z, x, y }: Tile, position: Position): readonly [x: number, y: number] {
  const [u, v] = unitSquareOf(position);
  return [(u * 2 ** z - x) * TILE_PIXELS, (v * 2 ** z - y) * TILE_PIXELS];
}

/** West, south, east, north of a tile, degrees. */
export function tileBounds(tile: Tile): readonly [west: number, south: number, east: number, north: number] {
  const [west, north] = positionOnTile(tile, [0, 0]);
  const [east, south] = positionOnTile(tile, [TILE_PIXELS, TILE_PIXELS]);
  return [west, south, east, north];
}
