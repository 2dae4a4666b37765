/** The ground as terrarium pixels, one Web Mercator tile at a time. */
import type { Frame } from "../geo/frame.ts";
import type { Point, Position } from "../geo/position.ts";
import { type HeightGrid, boundsOf, columnRowOf } from "./grid.ts";
import { halved, heldHeight, withoutUnknowns } from "./pyramid.ts";
import { type Tile, TILE_PIXELS, metresPerPixel, positionOnTile, tilesOver } from "./web-mercator.ts";

/** A ground prepared for tiles: without unknowns, and ever coarser. */
export type TileGround = readonly HeightGrid[];

/** Prepares a grid; unknown heights are made up from those about them. */
export function tileGround(grid: HeightGrid): TileGround {
  const levels = [withoutUnknowns(grid)];
  for (let next = halved(levels[0]!); next; next = halved(next)) levels.push(next);
  return levels;
}

/** The tiles of a zoom that the grid's rectangle touches, row by row from the north. */
export function tilesOfGrid(grid: HeightGrid, frame: Frame, z: number): Tile[] {
  const { west, south, east, north } = boundsOf(grid);
  const corners = (
    [
      [west, south],
      [west, north],
      [east, south],
      [east, north],
    ] as const
  ).map((point) => frame.toPosition(point));
  const longitudes = corners.map(([longitude]) => longitude);
  const latitudes = corners.map(([, latitude]) => latitude);
  return tilesOver(
    [Math.min(...longitudes), Math.min(...latitudes), Math.max(...longitudes), Math.max(...latitudes)],
    z,
  );
}

/** Every so many pixels a place is computed; between, interpolated: at zoom 12 that is off by 4 mm. */
const STRIDE = 16;

/**
 * A tile's pixels, red, green, blue, row by row: the height at each pixel's middle in
 * terrarium encoding. Beyond the grid the ground runs on at the height of its edge.
 */
export function terrariumPixels(ground: TileGround, frame: Frame, tile: Tile): Uint8Array {
  const [, latitude]: Position = positionOnTile(tile, [TILE_PIXELS / 2, TILE_PIXELS / 2]);
  const pixelMetres = metresPerPixel(latitude, tile.z);
  // The coarsest level still finer than a pixel: a single height picked out of many would flicker between zooms.
  const grid = [...ground].reverse().find(({ stepMetres }) => stepMetres <= pixelMetres) ?? ground[0]!;
  const knots = TILE_PIXELS / STRIDE + 1;
  const places: (readonly [column: number, row: number])[] = [];
  for (let j = 0; j < knots; j++) {
    for (let i = 0; i < knots; i++) {
      const point: Point = frame.toPlane(positionOnTile(tile, [i * STRIDE + 0.5, j * STRIDE + 0.5]));
      places.push(columnRowOf(grid, point));
    }
  }
  const pixels = new Uint8Array(TILE_PIXELS * TILE_PIXELS * 3);
  for (let y = 0, at = 0; y < TILE_PIXELS; y++) {
    const j = Math.floor(y / STRIDE);
    const v = y / STRIDE - j;
    for (let x = 0; x < TILE_PIXELS; x++, at += 3) {
      const i = Math.floor(x / STRIDE);
      const u = x / STRIDE - i;
      const [nw, ne] = [places[j * knots + i]!, places[j * knots + i + 1]!];
      const [sw, se] = [places[(j + 1) * knots + i]!, places[(j + 1) * knots + i + 1]!];
      const weigh = (k: 0 | 1): number => (nw[k] * (1 - u) + ne[k] * u) * (1 - v) + (sw[k] * (1 - u) + se[k] * u) * v;
      // The encoding written out: an array for each of some million pixels is most of the time.
      const steps = Math.floor((heldHeight(grid, weigh(0), weigh(1)) + 32768) * 256);
      pixels[at] = steps >> 16;
      pixels[at + 1] = (steps >> 8) & 255;
      pixels[at + 2] = steps & 255;
    }
  }
  return pixels;
}
