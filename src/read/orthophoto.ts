/** A photo from the air: where its pixels lie on earth, and the part of it a course needs. */
import { extname } from "node:path";
import type { GeoTIFF } from "geotiff";
import sharp, { type Metadata } from "sharp";
import { showPosition } from "../course/schema/geometry.ts";
import type { Orthophoto } from "../course/types.ts";
import type { Position } from "../geo/position.ts";
import { metresPerPixel } from "../terrain/web-mercator.ts";
import { crsOf, parseCrsSetting } from "./heights-crs.ts";
import { HeightsError } from "./heights-error.ts";
import { affineOf, nodataOf } from "./heights-raster.ts";
import { perspective } from "./orthophoto-corners.ts";
import { READING } from "./photos.ts";
import { openTiff } from "./tiff-header.ts";

/** A photo from the air that cannot be used: what is wrong, then what to do. */
export class OrthophotoError extends Error {
  override readonly name = "OrthophotoError";
}

/** West, south, east, north, degrees. */
export type LonLatBox = readonly [west: number, south: number, east: number, north: number];

export interface OrthophotoSource {
  readonly path: string;
  readonly columns: number;
  readonly rows: number;
  /** Fractional column and row of a position; whole numbers are the middles of pixels. */
  toPixel(position: Position): readonly [column: number, row: number];
  /** Value of all bands that the file says means nothing. */
  readonly nodata: number | undefined;
  /** Pixels the course lies on, within the picture. */
  readonly window: { readonly column: number; readonly row: number; readonly columns: number; readonly rows: number };
  /** Metres on the ground to a pixel, at the middle of the course. */
  readonly metresPerPixel: number;
}

const isTiff = (file: string): boolean => [".tif", ".tiff"].includes(extname(file).toLowerCase());

/** Pixels that a window may have before it is made smaller: some 250 MB with transparency. */
const MOST_PIXELS = 64_000_000;

/**
 * Finds out where a photo lies.
 *
 * @param path where the file is.
 * @param photo as the content has it.
 * @param box what of the earth the course needs of it.
 * @throws OrthophotoError when it cannot be read, says no place, or lies elsewhere.
 */
export async function openOrthophoto(path: string, photo: Orthophoto, box: LonLatBox): Promise<OrthophotoSource> {
  const { file, corners } = photo;
  let found: Metadata;
  try {
    found = await sharp(path, { limitInputPixels: false }).metadata();
  } catch {
    throw new OrthophotoError(
      `${file} cannot be read as a picture. Export it again as a GeoTIFF with red, green and blue, or as JPEG.`,
    );
  }
  const { width: columns, height: rows } = found.autoOrient;
  if (found.channels > 4)
    throw new OrthophotoError(
      `${file} has ${found.channels} bands: expected red, green and blue, and perhaps transparency. Export those alone.`,
    );
  if (corners === undefined && !isTiff(file)) {
    throw new OrthophotoError(
      `${file} does not say where on earth it lies. Write its corners, clockwise from the upper left: photo: { file: ${file.slice(file.indexOf("/") + 1)}, corners: [[-9.01, 56.51], [-8.99, 56.51], [-8.99, 56.50], [-9.01, 56.50]] }, or give a GeoTIFF.`,
    );
  }
  const placed =
    corners === undefined
      ? await placeOf(path, photo)
      : { toPixel: perspective(corners, columns, rows), nodata: undefined };
  const window = windowOver(placed.toPixel, box, columns, rows);
  if (window === undefined) {
    const [west, south, east, north] = box;
    throw new OrthophotoError(
      `${file} does not lie on the course: nothing of it is between ${showPosition([round(west), round(south)])} and ${showPosition([round(east), round(north)])}. Give the sheet that covers the course, or correct its ${corners === undefined ? "crs" : "corners"}.`,
    );
  }
  return {
    path,
    columns,
    rows,
    ...placed,
    window,
    metresPerPixel: resolutionAt(placed.toPixel, [(box[0] + box[2]) / 2, (box[1] + box[3]) / 2]),
  };
}

const round = (degrees: number): number => Number(degrees.toFixed(4));

async function placeOf(
  path: string,
  { file, crs: setting }: Orthophoto,
): Promise<Pick<OrthophotoSource, "toPixel" | "nodata">> {
  let tiff: GeoTIFF | undefined;
  try {
    tiff = await openTiff(path);
    const image = await tiff.getImage(0);
    const keys = image.getGeoKeys();
    const [a, b, c, d, e, f] = affineOf(image, keys, file);
    const crs = crsOf(file, parseCrsSetting(file, setting), keys);
    const det = a * e - b * d;
    return {
      nodata: nodataOf(image),
      toPixel: (position) => {
        const [x, y] = crs.toFile(position);
        return [(e * (x - c) - b * (y - f)) / det, (a * (y - f) - d * (x - c)) / det];
      },
    };
  } catch (cause) {
    if (!(cause instanceof HeightsError))
      throw new OrthophotoError(
        `${file} cannot be read as a GeoTIFF (${cause instanceof Error ? cause.message : String(cause)}). Export it again, or give a picture with its corners.`,
      );
    throw new OrthophotoError(
      cause.message
        .replace(
          "Add crs to ground in course.yaml",
          "Write it with the photo in course.yaml, photo: { file: ..., crs: ... }",
        )
        .replace("add it to ground in course.yaml", "add it to the photo in course.yaml"),
    );
  } finally {
    await tiff?.close();
  }
}

/** The pixels a box lies on, cut to the picture; undefined where there are none. */
function windowOver(
  toPixel: OrthophotoSource["toPixel"],
  [west, south, east, north]: LonLatBox,
  columns: number,
  rows: number,
): OrthophotoSource["window"] | undefined {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = ([column, row]: readonly [number, number]): void => {
    if (!Number.isFinite(column) || !Number.isFinite(row)) return;
    [left, top, right, bottom] = [
      Math.min(left, column),
      Math.min(top, row),
      Math.max(right, column),
      Math.max(bottom, row),
    ];
  };
  // Edges of the box may bow in the file's coordinates, so they are walked along.
  for (let i = 0; i <= 8; i++) {
    const [x, y] = [west + ((east - west) * i) / 8, south + ((north - south) * i) / 8];
    for (const position of [
      [x, south],
      [x, north],
      [west, y],
      [east, y],
    ] as const)
      take(toPixel(position));
  }
  const from = [Math.max(0, Math.floor(left) - 1), Math.max(0, Math.floor(top) - 1)] as const;
  const to = [Math.min(columns, Math.ceil(right) + 2), Math.min(rows, Math.ceil(bottom) + 2)] as const;
  const window = { column: from[0], row: from[1], columns: to[0] - from[0], rows: to[1] - from[1] };
  return window.columns > 1 && window.rows > 1 ? window : undefined;
}

/** Metres to a pixel about a position: the finer of its two directions. */
function resolutionAt(toPixel: OrthophotoSource["toPixel"], [longitude, latitude]: Position): number {
  const step = 1e-4;
  const [x, y] = toPixel([longitude, latitude]);
  const perDegree = (to: readonly [number, number]): number => Math.hypot(to[0] - x, to[1] - y) / step;
  const metresPerDegree = (metresPerPixel(0, 0) * 256) / 360;
  const north = perDegree(toPixel([longitude, latitude + step])) / metresPerDegree;
  const east =
    perDegree(toPixel([longitude + step, latitude])) / (metresPerDegree * Math.cos((latitude * Math.PI) / 180));
  return 1 / Math.max(north, east);
}

/** Pixels, four bytes each (red, green, blue, opacity), and where they come from. */
export interface Pixels {
  readonly columns: number;
  readonly rows: number;
  readonly rgba: Uint8Array;
  /** Fractional column and row of these pixels for those of the file. */
  fromFile(column: number, row: number): readonly [column: number, row: number];
}

/**
 * Reads a photo's window, made smaller where it is finer than asked.
 *
 * @param leastMetresPerPixel finest that is wanted.
 * @throws OrthophotoError when its pixels cannot be read.
 */
export async function readOrthophoto(
  { path, window, nodata, metresPerPixel: fine }: OrthophotoSource,
  file: string,
  leastMetresPerPixel: number,
): Promise<Pixels> {
  const wanted = Math.min(1, fine / leastMetresPerPixel, Math.sqrt(MOST_PIXELS / (window.columns * window.rows)));
  const columns = Math.max(1, Math.round(window.columns * wanted));
  const rows = Math.max(1, Math.round(window.rows * wanted));
  try {
    // A TIFF's missing tiles count as a warning only, and would come out black.
    const failOn = isTiff(file) ? "warning" : READING.failOn;
    const { data, info } = await sharp(path, { failOn, limitInputPixels: false })
      .autoOrient()
      .extract({ left: window.column, top: window.row, width: window.columns, height: window.rows })
      .resize(columns, rows, { fit: "fill", kernel: "lanczos2" })
      .toColourspace("srgb")
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const rgba = new Uint8Array(data.buffer, data.byteOffset, data.length);
    if (nodata !== undefined) clearNodata(rgba, nodata);
    const [scaleX, scaleY] = [info.width / window.columns, info.height / window.rows];
    return {
      columns: info.width,
      rows: info.height,
      rgba,
      // Middles of pixels are whole numbers on both sides, their edges halves.
      fromFile: (column, row) => [
        (column - window.column + 0.5) * scaleX - 0.5,
        (row - window.row + 0.5) * scaleY - 0.5,
      ],
    };
  } catch {
    throw new OrthophotoError(
      `${file} cannot be read to its end: it is damaged, or compressed in a way the guide does not know. Export it again as a GeoTIFF compressed by JPEG or deflate.`,
    );
  }
}

function clearNodata(rgba: Uint8Array, nodata: number): void {
  for (let i = 0; i < rgba.length; i += 4)
    if (rgba[i] === nodata && rgba[i + 1] === nodata && rgba[i + 2] === nodata) rgba[i + 3] = 0;
}
