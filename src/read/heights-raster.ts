/** The GeoTIFF itself: where its samples stand, and a window of them as heights. */
import { stat } from "node:fs/promises";
import { type GeoTIFF, type GeoTIFFImage, fromFile } from "geotiff";
import type { GeoKeys } from "./heights-crs.ts";
import { HeightsError } from "./heights-error.ts";

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
    tiff = await fromFile(path);
    return await describe(tiff, await tiff.getImage(0), file);
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

async function describe(tiff: GeoTIFF, image: GeoTIFFImage, file: string): Promise<HeightFile> {
  const columns = image.getWidth();
  const rows = image.getHeight();
  if (image.getSamplesPerPixel() > 2) {
    throw new HeightsError(
      file,
      `has ${image.getSamplesPerPixel()} bands: it looks like a picture, not heights. Give the single-band elevation file (a picture of the ground does not go under heights).`,
    );
  }
  if (columns < 2 || rows < 2) throw new HeightsError(file, `is ${columns} by ${rows} samples; heights need at least 2 by 2.`);
  const keys: GeoKeys | null = image.getGeoKeys();
  const affine = affineOf(image, keys, file);
  const band = await image.getGDALMetadata(0);
  const text = (name: string): string | undefined => {
    const value = band?.[name];
    return typeof value === "string" && value !== "" ? value : undefined;
  };
  const scale = Number(text("SCALE") ?? 1);
  const offset = Number(text("OFFSET") ?? 0);
  const nodata = nodataOf(image);
  return {
    columns,
    rows,
    affine,
    keys,
    bandUnit: text("UNITTYPE"),
    async window(column, row, width, height) {
      const [samples] = await image
        .readRasters({ window: [column, row, column + width, row + height], samples: [0], interleave: false })
        .catch((cause: unknown) => {
          throw new HeightsError(
            file,
            `its heights cannot be unpacked (${cause instanceof Error ? cause.message : String(cause)}). The file may be cut short: copy it again, or export it again with deflate or no compression.`,
            { cause },
          );
        });
      return heightsOf(samples!, nodata, scale, offset);
    },
    close: async () => {
      await tiff.close();
    },
  };
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

function heightsOf(samples: ArrayLike<number>, nodata: number | undefined, scale: number, offset: number): HeightWindow {
  const heights = new Float32Array(samples.length);
  // A float file holds its nodata value rounded to single precision.
  const single = nodata === undefined ? NaN : Math.fround(nodata);
  let impossible = 0;
  for (let i = 0; i < heights.length; i++) {
    const sample = samples[i]!;
    const height = sample * scale + offset;
    if (sample === nodata || sample === single) {
      heights[i] = NaN;
    } else if (height >= POSSIBLE[0] && height <= POSSIBLE[1]) {
      heights[i] = height;
    } else {
      heights[i] = NaN;
      if (!Number.isNaN(height)) impossible++;
    }
  }
  return { heights, impossible };
}
