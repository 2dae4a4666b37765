/** The GeoTIFF itself: where its samples stand, and a window of them as heights. */
import { stat } from "node:fs/promises";
import type { GeoTIFF, GeoTIFFImage } from "geotiff";
import type { GeoKeys } from "./heights-crs.ts";
import { HeightsError } from "./heights-error.ts";
import { checkedLayout, unwrittenBlocks } from "./tiff-blocks.ts";
import { openTiff } from "./tiff-header.ts";
import { UnpackError } from "./tiff-unpack.ts";

/** x = a i + b j + c, y = d i + e j + f: file coordinates of the middle of sample (i, j). */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export interface HeightFile {
  readonly columns: number;
  readonly rows: number;
  readonly affine: Affine;
  readonly keys: GeoKeys | null;
  /** Unit of the band as GDAL writes it. */
  readonly bandUnit: string | undefined;
  /**
   * Samples of a window as written in the file, scale and offset applied; NaN where the
   * file says nodata or the value can be no height.
   */
  window(column: number, row: number, columns: number, rows: number): Promise<HeightWindow>;
  close(): Promise<void>;
}

export interface HeightWindow {
  readonly heights: Float32Array;
  /** Values that no place on earth can have and that were not declared as nodata. */
  readonly impossible: number;
}

/**
 * Heights beyond these, in metres or feet, are marks for "no data" that the file forgot to
 * declare, such as -9999: the lowest dry land is about -430 m, the highest about 29,030 ft.
 */
const POSSIBLE = [-1500, 30000] as const;

/** Nobody measures a billionth of a metre; bytes taken for floats by mistake are often as small. */
const LEAST = 1e-9;

/** Marks for "no data" that a file may mix; more different ones, and many of them, are damage. */
const MOST_MARKS = 16;

/** Heights a window may have: 4 km each way at half a metre, in some 300 MB. */
const MOST_SAMPLES = 64e6;

/** Rows unpacked at a time, at the least. */
const BAND_ROWS = 256;

/**
 * Opens a GeoTIFF of heights. Close it when done.
 *
 * @throws HeightsError when there is none, or it is a picture, or has no place.
 */
export async function openHeightFile(path: string, file: string): Promise<HeightFile> {
  const found = await stat(path).catch(() => undefined);
  if (!found?.isFile()) {
    throw new HeightsError(
      file,
      "there is no such file. Put the GeoTIFF there, correct heights under ground in course.yaml, or take ground out to build without heights.",
    );
  }
  let tiff: GeoTIFF | undefined;
  try {
    tiff = await openTiff(path);
    return await describe(tiff, await tiff.getImage(0), file, found.size);
  } catch (cause) {
    await tiff?.close();
    if (cause instanceof HeightsError) throw cause;
    throw new HeightsError(
      file,
      `cannot be read as a GeoTIFF (${cause instanceof Error ? cause.message : String(cause)}). Export the heights again as a single-band GeoTIFF.`,
      { cause },
    );
  }
}

async function describe(tiff: GeoTIFF, image: GeoTIFFImage, file: string, fileBytes: number): Promise<HeightFile> {
  const columns = image.getWidth();
  const rows = image.getHeight();
  if (image.getSamplesPerPixel() > 2) {
    throw new HeightsError(
      file,
      `has ${image.getSamplesPerPixel()} bands: it looks like a picture, not heights. Give the single-band elevation file (a picture of the ground does not go under heights).`,
    );
  }
  if (columns < 2 || rows < 2)
    throw new HeightsError(file, `is ${columns} by ${rows} samples; heights need at least 2 by 2.`);
  const keys: GeoKeys | null = image.getGeoKeys();
  const affine = affineOf(image, keys, file);
  const band = await image.getGDALMetadata(0);
  const text = (name: string): string | undefined => {
    const value = band?.[name];
    return typeof value === "string" && value !== "" ? value : undefined;
  };
  const scale = Number(text("SCALE") ?? 1);
  const offset = Number(text("OFFSET") ?? 0);
  if (!Number.isFinite(scale) || scale === 0 || !Number.isFinite(offset)) {
    throw new HeightsError(
      file,
      `its heights are to be multiplied by ${text("SCALE") ?? 1} and ${text("OFFSET") ?? 0} added, which makes no heights. Export it again with its scale and offset applied.`,
    );
  }
  const nodata = nodataOf(image);
  return {
    columns,
    rows,
    affine,
    keys,
    bandUnit: text("UNITTYPE"),
    window: (column, row, width, height) =>
      readWindow(image, file, fileBytes, [column, row, column + width, row + height], { nodata, scale, offset }),
    close: async () => {
      await tiff.close();
    },
  };
}

type Area = readonly [left: number, top: number, right: number, bottom: number];

interface Meaning {
  readonly nodata: number | undefined;
  readonly scale: number;
  readonly offset: number;
}

async function readWindow(
  image: GeoTIFFImage,
  file: string,
  fileBytes: number,
  [left, top, right, bottom]: Area,
  meaning: Meaning,
): Promise<HeightWindow> {
  const [columns, rows] = [right - left, bottom - top];
  if (columns * rows > MOST_SAMPLES) {
    throw new HeightsError(
      file,
      `has ${Math.ceil((columns * rows) / 1e6)} million heights about the course: expected at most ${MOST_SAMPLES / 1e6} million. Make it coarser, as by gdalwarp -tr 0.5 0.5, and cut it to the course.`,
    );
  }
  const heights = new Float32Array(columns * rows);
  const strange: Strange = { impossible: 0, tiny: 0, marks: new Set() };
  try {
    const layout = await checkedLayout(image);
    const unwritten = await unwrittenBlocks(image, layout, fileBytes, [left, top, right, bottom]);
    const { blockWidth, blockRows } = layout;
    const band = blockRows * Math.ceil(BAND_ROWS / blockRows);
    // Each block is unpacked once, and only some rows of them are held at a time.
    for (let from = top; from < bottom;) {
      const to = Math.min(bottom, (Math.floor(from / band) + 1) * band);
      const [samples] = await image.readRasters({ window: [left, from, right, to], samples: [0], interleave: false });
      if (samples!.length !== columns * (to - from))
        throw new UnpackError(`${samples!.length} came where ${columns * (to - from)} must be`);
      writeHeights(samples!, heights.subarray((from - top) * columns, (to - top) * columns), meaning, strange);
      from = to;
    }
    for (const { x, y } of unwritten) {
      const [start, end] = [Math.max(left, x * blockWidth) - left, Math.min(right, (x + 1) * blockWidth) - left];
      for (let row = Math.max(top, y * blockRows); row < Math.min(bottom, (y + 1) * blockRows); row++)
        heights.fill(NaN, (row - top) * columns + start, (row - top) * columns + end);
    }
  } catch (cause) {
    throw new HeightsError(
      file,
      `its heights cannot be unpacked (${cause instanceof Error ? cause.message : String(cause)}). The file may be cut short or damaged: copy it again, or export it again with deflate or no compression, in tiles.`,
      { cause },
    );
  }
  const { impossible, tiny, marks } = strange;
  if (marks.size > MOST_MARKS && impossible + tiny > heights.length / 4) {
    throw new HeightsError(
      file,
      `${impossible + tiny} of its ${heights.length} heights about the course are impossible, such as ${[...marks].slice(0, 3).join(", ")}: it is damaged, or holds something else. Copy it again, or export it again.`,
    );
  }
  return { heights, impossible };
}

/**
 * From ModelTransformation, or ModelTiepoint and ModelPixelScale. The tie names a corner of
 * the sample, or its middle when the file says that its pixels are points.
 */
export function affineOf(image: GeoTIFFImage, keys: GeoKeys | null, file: string): Affine {
  const directory = image.fileDirectory;
  const half = keys?.GTRasterTypeGeoKey === 2 ? 0 : 0.5;
  const numbers = (tag: "ModelTransformation" | "ModelTiepoint" | "ModelPixelScale"): number[] =>
    Array.from<unknown, number>(directory.getValue(tag) ?? [], Number);
  const matrix = numbers("ModelTransformation");
  if (matrix.length === 16) {
    const [a, b, , c, d, e, , f] = matrix as [number, number, number, number, number, number, number, number];
    return [a, b, c + (a + b) * half, d, e, f + (d + e) * half];
  }
  const [i, j, , x, y] = numbers("ModelTiepoint");
  const [sx, sy] = numbers("ModelPixelScale");
  if (i === undefined || j === undefined || x === undefined || y === undefined || !sx || !sy) {
    throw new HeightsError(
      file,
      "does not say where on earth it lies. Export it again as a GeoTIFF with its georeference kept (a plain TIFF, or one with a separate world file, will not do).",
    );
  }
  return [sx, 0, x + (half - i) * sx, 0, -sy, y - (half - j) * sy];
}

export function nodataOf(image: GeoTIFFImage): number | undefined {
  // Read here: the library's own reader takes the last character for a terminator even where there is none.
  const text: unknown = image.fileDirectory.getValue("GDAL_NODATA");
  if (typeof text !== "string") return undefined;
  const trimmed = text.replace(/\0+$/, "").trim();
  return trimmed === "" ? undefined : Number(trimmed);
}

/** What has come up that is odd for heights. */
interface Strange {
  impossible: number;
  tiny: number;
  /** Some of them. */
  readonly marks: Set<number>;
}

/** Writes what samples mean. */
function writeHeights(
  samples: ArrayLike<number>,
  heights: Float32Array,
  { nodata, scale, offset }: Meaning,
  strange: Strange,
): void {
  // A float file holds its nodata value rounded to single precision.
  const single = nodata === undefined ? NaN : Math.fround(nodata);
  for (let i = 0; i < heights.length; i++) {
    const sample = samples[i]!;
    const height = sample * scale + offset;
    const possible = height >= POSSIBLE[0] && height <= POSSIBLE[1];
    const unknown = sample === nodata || sample === single;
    heights[i] = possible && !unknown ? height : NaN;
    if (unknown || Number.isNaN(height) || (possible && (height === 0 || Math.abs(height) > LEAST))) continue;
    if (possible) strange.tiny++;
    else strange.impossible++;
    if (strange.marks.size <= MOST_MARKS) strange.marks.add(height);
  }
}
