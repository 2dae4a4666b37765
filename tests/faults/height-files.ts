/** Height files broken in every way, read as the build reads them. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { HeightsError } from "../../src/read/heights-error.ts";
import { openHeightFile } from "../../src/read/heights-raster.ts";
import { writeGeoTiff } from "../support/gdal.ts";
import { damaged, type Random } from "./random.ts";

const SIDE = 96;

/** Ground with no two neighbours alike, so that level ground in a mutant was made up. */
const slope = (column: number, row: number): number =>
  20 + 0.31 * column + 0.17 * row + Math.sin(column / 7) * Math.cos(row / 5);

export const KINDS: Readonly<
  Record<string, { readonly type?: "Float32" | "Int16"; readonly extra: readonly string[] }>
> = {
  bare: { extra: [] },
  tiled: { extra: ["-co", "TILED=YES", "-co", "BLOCKXSIZE=32", "-co", "BLOCKYSIZE=32"] },
  deflate: {
    extra: [
      "-co",
      "COMPRESS=DEFLATE",
      "-co",
      "PREDICTOR=3",
      "-co",
      "TILED=YES",
      "-co",
      "BLOCKXSIZE=32",
      "-co",
      "BLOCKYSIZE=32",
    ],
  },
  zstd: { extra: ["-co", "COMPRESS=ZSTD", "-co", "BLOCKYSIZE=16"] },
  lzw: { extra: ["-co", "COMPRESS=LZW", "-co", "BLOCKYSIZE=16"] },
  packbits: { type: "Int16", extra: ["-co", "COMPRESS=PACKBITS", "-co", "BLOCKYSIZE=16"] },
};

/** Writes a whole file of each kind. */
export function writeHeightFiles(folder: string): { readonly kind: string; readonly path: string }[] {
  return Object.entries(KINDS).map(([kind, { type = "Float32", extra }]) => {
    const path = join(folder, `${kind}.tif`);
    const samples = Array.from(
      { length: SIDE * SIDE },
      (_, i) => slope(i % SIDE, Math.floor(i / SIDE)) * (type === "Int16" ? 50 : 1),
    );
    writeGeoTiff(path, {
      columns: SIDE,
      rows: SIDE,
      samples,
      west: 500_000,
      north: 6_261_000,
      stepX: 1,
      stepY: 1,
      srs: "EPSG:32629",
      type,
      extra,
    });
    return { kind, path };
  });
}

/** All of a file's heights, or the sentence that refuses it. */
export async function readAll(
  path: string,
): Promise<{ readonly columns: number; readonly heights: Float32Array } | string> {
  try {
    const file = await openHeightFile(path, "ground/height.tif");
    try {
      // As much as a course would take of it.
      const [columns, rows] = [Math.min(file.columns, 4000), Math.min(file.rows, 4000)];
      return { columns, heights: (await file.window(0, 0, columns, rows)).heights };
    } finally {
      await file.close();
    }
  } catch (error) {
    if (error instanceof HeightsError) return error.message;
    throw error;
  }
}

/** The longest run of one height along a row: none in the ground that was written. */
export function longestLevelRun(columns: number, heights: Float32Array): number {
  let [longest, run] = [1, 1];
  for (let i = 1; i < heights.length; i++) {
    run = i % columns !== 0 && heights[i] === heights[i - 1] ? run + 1 : 1;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** A run this long is not one byte changed but ground made up. */
const MADE_UP = 6;

export interface HeightFaults {
  readonly tried: number;
  readonly lost: readonly string[];
  readonly refused: number;
}

/** Damages files of every kind so often in all. */
export async function damageHeightFiles(folder: string, count: number, random: Random): Promise<HeightFaults> {
  const files = writeHeightFiles(folder);
  const lost: string[] = [];
  let refused = 0;
  const wholes = await Promise.all(files.map(async ({ kind, path }) => ({ kind, bytes: await readFile(path) })));
  for (let i = 0; i < count; i++) {
    const { kind, bytes } = wholes[i % wholes.length]!;
    let mutant = damaged(bytes, random);
    // Much of what matters is in few bytes: the header at the front and GDAL's directories.
    if (random.chance(0.4)) mutant = Buffer.concat([damaged(bytes.subarray(0, 400), random), bytes.subarray(400)]);
    const path = join(folder, "mutant.tif");
    await writeFile(path, mutant);
    let outcome;
    try {
      outcome = await readAll(path);
    } catch (error) {
      lost.push(
        `${kind}, mutant ${i}: not refused in a sentence: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
      );
      await writeFile(join(folder, `lost-${i}.tif`), mutant);
      continue;
    }
    if (typeof outcome === "string") refused++;
    else if (longestLevelRun(outcome.columns, outcome.heights) >= MADE_UP) {
      lost.push(
        `${kind}, mutant ${i}: level ground was made up, ${longestLevelRun(outcome.columns, outcome.heights)} heights alike in a row`,
      );
    }
  }
  return { tried: count, lost, refused };
}
