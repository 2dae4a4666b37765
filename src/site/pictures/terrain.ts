/** A course's terrain tiles for the live map, made once and kept by content. */
import type { MeasuredCourse } from "../../measure/types.ts";
import { TERRAIN_ZOOMS, terrainTiles } from "../../read/terrain-tiles.ts";
import { tilesOfGrid } from "../../terrain/tile-heights.ts";
import { cacheKey, cached, keep } from "../cache/cache.ts";

export interface TileAddress {
  readonly z: number;
  readonly x: number;
  readonly y: number;
}

/** Raised when the same heights would make other tiles. */
const MAKER = "terrain-tiles 1";

/** The tiles a course has; none without a height model. */
export const courseTiles = ({ ground, frame }: MeasuredCourse): TileAddress[] =>
  ground
    ? TERRAIN_ZOOMS.flatMap((zoom) => [...tilesOfGrid(ground, frame, zoom)].map(({ z, x, y }) => ({ z, x, y })))
    : [];

const made = new WeakMap<MeasuredCourse, Promise<ReadonlyMap<string, Uint8Array<ArrayBuffer>>>>();

const nameOf = ({ z, x, y }: TileAddress): string => `${z}/${x}/${y}`;

/** One tile's bytes: from the cache, or made together with all the others. */
export async function terrainTile(
  course: MeasuredCourse,
  address: TileAddress,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const tiles = made.get(course) ?? tilesOf(course);
  made.set(course, tiles);
  return (await tiles).get(nameOf(address));
}

async function tilesOf(course: MeasuredCourse): Promise<ReadonlyMap<string, Uint8Array<ArrayBuffer>>> {
  const { ground, frame } = course;
  const tiles = new Map<string, Uint8Array<ArrayBuffer>>();
  if (!ground) return tiles;
  const { columns, rows, stepMetres, westMetres, northMetres, heights } = ground;
  const place = JSON.stringify([
    MAKER,
    frame.origin,
    columns,
    rows,
    stepMetres,
    westMetres,
    northMetres,
    TERRAIN_ZOOMS,
  ]);
  const base = cacheKey(place, new Uint8Array(heights.buffer, heights.byteOffset, heights.byteLength));
  const wanted = courseTiles(course);
  for (const address of wanted) {
    const bytes = await cached(cacheKey(base, nameOf(address)));
    if (bytes) tiles.set(nameOf(address), bytes);
  }
  if (tiles.size === wanted.length) return tiles;
  for await (const { webp, ...address } of terrainTiles(ground, frame)) {
    const bytes = new Uint8Array(webp);
    tiles.set(nameOf(address), bytes);
    await keep(cacheKey(base, nameOf(address)), bytes);
  }
  return tiles;
}
