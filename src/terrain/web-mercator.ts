/**
 * Web Mercator tiles (EPSG:3857): the world as a square, halved again at each zoom; z/x/y
 * counts from the north-west. Conventions as in the OpenStreetMap wiki, "Slippy map
 * tilenames".
 */
import type { Position } from "../geo/position.ts";
import { degrees, radians } from "../geo/units.ts";

/** Latitude at the square's edge, where it is as high as it is wide: atan(sinh π). */
export const MERCATOR_LATITUDE_LIMIT = degrees(Math.atan(Math.sinh(Math.PI)));

/** Half the square's side in Web Mercator metres: π times the equatorial radius. */
export const MERCATOR_HALF_WIDTH_METRES = Math.PI * 6_378_137;

export const TILE_PIXELS = 256;

export interface Tile {
  readonly z: number;
  readonly x: number;
  readonly y: number;
}

/** Place in the unit square, from its north-west corner; latitudes beyond the limit are held to it. */
export function unitSquareOf([longitude, latitude]: Position): readonly [x: number, y: number] {
  const held = Math.max(-MERCATOR_LATITUDE_LIMIT, Math.min(MERCATOR_LATITUDE_LIMIT, latitude));
  return [(longitude + 180) / 360, (1 - Math.asinh(Math.tan(radians(held))) / Math.PI) / 2];
}

/** The position of a place in the unit square. */
export const positionOfUnitSquare = ([x, y]: readonly [x: number, y: number]): Position => [
  x * 360 - 180,
  degrees(Math.atan(Math.sinh(Math.PI * (1 - 2 * y)))),
];

/** The tile a position lies on; the east and south edge of the world belong to the last tile. */
export function tileOf(position: Position, z: number): Tile {
  const [x, y] = unitSquareOf(position);
  const last = 2 ** z - 1;
  const hold = (value: number): number => Math.min(last, Math.max(0, Math.floor(value * 2 ** z)));
  return { z, x: hold(x), y: hold(y) };
}

/** The position of a pixel place on a tile; whole numbers are pixel corners, halves their middles. */
export const positionOnTile = ({ z, x, y }: Tile, [px, py]: readonly [x: number, y: number]): Position =>
  positionOfUnitSquare([(x + px / TILE_PIXELS) / 2 ** z, (y + py / TILE_PIXELS) / 2 ** z]);

/** Every tile that touches a box given as west, south, east, north; row by row from the north. */
export function tilesOver(
  [west, south, east, north]: readonly [west: number, south: number, east: number, north: number],
  z: number,
): Tile[] {
  const from = tileOf([west, north], z);
  const to = tileOf([east, south], z);
  const tiles: Tile[] = [];
  for (let y = from.y; y <= to.y; y++) for (let x = from.x; x <= to.x; x++) tiles.push({ z, x, y });
  return tiles;
}

/** Metres on the ground to a pixel at a latitude (on the sphere that Web Mercator takes the earth for). */
export const metresPerPixel = (latitude: number, z: number): number =>
  (2 * MERCATOR_HALF_WIDTH_METRES * Math.cos(radians(latitude))) / TILE_PIXELS / 2 ** z;
