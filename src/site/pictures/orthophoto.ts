/** A course's photo from the air as tiles for the live map, made once and kept by content. */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { join } from "node:path";
import { pipeline } from "node:stream/promises";
import type { Course } from "../../course/types.ts";
import { positionsOf } from "../../measure/place.ts";
import {
  openOrthophoto,
  readOrthophoto,
  type LonLatBox,
  type OrthophotoSource,
  type Pixels,
} from "../../read/orthophoto.ts";
import { halved, tilePixels, tileWebp } from "../../read/orthophoto-tiles.ts";
import { metresPerPixel, tilesOver, type Tile } from "../../terrain/web-mercator.ts";
import { atMost } from "./at-most.ts";
import { cached, cacheKey, keep } from "../cache/cache.ts";

export { OrthophotoError } from "../../read/orthophoto.ts";

/** From a whole course in a few tiles to about 0.33 m a pixel at 56 degrees. */
const LOWEST_ZOOM = 14;
const HIGHEST_ZOOM = 18;

/** Ground shown beyond the course's features, in degrees of latitude: about 100 m. */
const MARGIN_DEGREES = 0.0009;

/** Raised when the same photo would make other tiles. */
const MAKER = "orthophoto 1";

export interface CoursePhoto {
  readonly source: OrthophotoSource;
  /** Where there are tiles at every zoom. */
  readonly bounds: LonLatBox;
  readonly minimumZoom: number;
  readonly maximumZoom: number;
  readonly tiles: readonly Tile[];
}

/** The ground a course's own features lie on, with a margin. */
function boxOf(course: Course): LonLatBox {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const feature of course.holes.flatMap((hole) => hole.features)) {
    for (const [longitude, latitude] of positionsOf(feature)) {
      [west, south, east, north] = [
        Math.min(west, longitude),
        Math.min(south, latitude),
        Math.max(east, longitude),
        Math.max(north, latitude),
      ];
    }
  }
  const wide = MARGIN_DEGREES / Math.cos((((south + north) / 2) * Math.PI) / 180);
  return [west - wide, south - MARGIN_DEGREES, east + wide, north + MARGIN_DEGREES];
}

/**
 * A course's photo, opened; undefined where it has none.
 *
 * @throws OrthophotoError when it cannot be used.
 */
export async function coursePhoto(course: Course, contentFolder: string): Promise<CoursePhoto | undefined> {
  const { orthophoto } = course;
  if (orthophoto === undefined) return undefined;
  const bounds = boxOf(course);
  const source = await openOrthophoto(join(contentFolder, orthophoto.file), orthophoto, bounds);
  const latitude = (bounds[1] + bounds[3]) / 2;
  // Beyond the photo's own pixels a tile would only be larger, not finer.
  const finest = Array.from({ length: HIGHEST_ZOOM - LOWEST_ZOOM }, (_, i) => LOWEST_ZOOM + i).find(
    (zoom) => metresPerPixel(latitude, zoom) <= source.metresPerPixel,
  );
  const maximumZoom = finest ?? HIGHEST_ZOOM;
  const zooms = Array.from({ length: maximumZoom - LOWEST_ZOOM + 1 }, (_, i) => LOWEST_ZOOM + i);
  return {
    source,
    bounds,
    minimumZoom: LOWEST_ZOOM,
    maximumZoom,
    tiles: zooms.flatMap((zoom) => tilesOver(bounds, zoom)),
  };
}

/**
 * Opens a course's photo and reads it through once, so that a build does not fall over it
 * later; a photo that was read before is not read again.
 *
 * @throws OrthophotoError when it cannot be used.
 */
export async function provePhoto(course: Course, contentFolder: string): Promise<void> {
  const photo = await coursePhoto(course, contentFolder);
  if (photo === undefined) return;
  const key = cacheKey(MAKER, "sound", await hashOf(photo.source.path), JSON.stringify(photo.source.window));
  if (await cached(key)) return;
  await readOrthophoto(photo.source, course.orthophoto!.file, 20);
  await keep(key, Buffer.from("sound"));
}

const made = new WeakMap<Course, Promise<string>>();

const nameOf = ({ z, x, y }: Tile): string => `${z}/${x}/${y}`;

/** One tile's bytes: from the cache, or made together with all the others. */
export async function photoTile(
  course: Course,
  contentFolder: string,
  tile: Tile,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const base = made.get(course) ?? makeTiles(course, contentFolder);
  made.set(course, base);
  return cached(cacheKey(await base, nameOf(tile)));
}

/** Makes the tiles that are not there yet. @returns the key that all their keys begin with */
async function makeTiles(course: Course, contentFolder: string): Promise<string> {
  const photo = await coursePhoto(course, contentFolder);
  if (photo === undefined) return "";
  const { source, bounds, tiles, maximumZoom } = photo;
  const { crs, corners } = course.orthophoto!;
  const base = cacheKey(MAKER, await hashOf(source.path), JSON.stringify([crs, corners, bounds]));
  const missing: Tile[] = [];
  for (const tile of tiles) if ((await cached(cacheKey(base, nameOf(tile)))) === undefined) missing.push(tile);
  if (missing.length === 0) return base;
  const inTurn = atMost(2);
  const latitude = (bounds[1] + bounds[3]) / 2;
  let pixels: Pixels | undefined;
  // From the finest down, halving, so that each zoom reads pixels of its own size.
  for (let zoom = maximumZoom; zoom >= LOWEST_ZOOM; zoom--) {
    const own = missing.filter(({ z }) => z === zoom);
    pixels =
      pixels === undefined
        ? await readOrthophoto(source, course.orthophoto!.file, metresPerPixel(latitude, zoom) * 0.75)
        : halved(pixels);
    const from = pixels;
    await Promise.all(
      own.map((tile) =>
        inTurn(async () => keep(cacheKey(base, nameOf(tile)), await tileWebp(tilePixels(source, from, tile)))),
      ),
    );
  }
  return base;
}

async function hashOf(path: string): Promise<string> {
  const hash = createHash("sha256");
  await pipeline(createReadStream(path), hash);
  return hash.digest("hex");
}
