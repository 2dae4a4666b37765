/** GDAL's command-line programs, an independent implementation to hold ours against. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { HeightGrid } from "../../src/terrain/grid.ts";
import { needTools } from "./tools.ts";

export type GdalProgram =
  | "gdal_contour"
  | "gdal_translate"
  | "gdaldem"
  | "gdalinfo"
  | "gdallocationinfo"
  | "gdaltransform"
  | "gdalwarp"
  | "ogr2ogr"
  | "ogrinfo";

/** Runs one of GDAL's programs and returns what it prints. */
export function gdal(program: GdalProgram, args: readonly string[], input = ""): string {
  needTools("gdal-bin");
  return execFileSync(program, args, {
    encoding: "utf8",
    input,
    maxBuffer: 256 * 1024 * 1024,
    // GDAL's notes about its own plug-ins are no part of a test.
    stdio: ["pipe", "pipe", "pipe"],
  });
}

/** A folder for one test file's rasters; call the second value when done. */
export function scratch(): readonly [folder: string, remove: () => void] {
  const folder = mkdtempSync(join(tmpdir(), "marram-terrain-"));
  return [folder, () => rmSync(folder, { recursive: true, force: true })];
}

/** A raster to write: samples row by row from the north. */
export interface RasterToWrite {
  readonly columns: number;
  readonly rows: number;
  readonly samples: ArrayLike<number>;
  /** Outer corner of the first sample, and the size of one, in the file's coordinates. */
  readonly west: number;
  readonly north: number;
  readonly stepX: number;
  readonly stepY: number;
  /** Anything GDAL takes for -a_srs. */
  readonly srs: string | undefined;
  readonly nodata?: number;
  readonly type?: "Float32" | "Int16" | "Float64" | "UInt16";
  /** Further arguments of gdal_translate, such as "-co", "TILED=YES". */
  readonly extra?: readonly string[];
}

/** Writes a GeoTIFF by GDAL, so that the reader meets files it did not shape itself. */
export function writeGeoTiff(path: string, raster: RasterToWrite): void {
  const { columns, rows, samples, west, north, stepX, stepY, srs, nodata, type = "Float32", extra = [] } = raster;
  // An ENVI raster is bare numbers and a small text header.
  const bare = `${path}.envi`;
  writeFileSync(bare, Buffer.from(Float64Array.from(samples).buffer));
  writeFileSync(
    `${path}.hdr`,
    `ENVI\nsamples = ${columns}\nlines = ${rows}\nbands = 1\nheader offset = 0\nfile type = ENVI Standard\ndata type = 5\ninterleave = bsq\nbyte order = 0\n`,
  );
  gdal("gdal_translate", [
    "-q",
    ...["-of", "GTiff", "-ot", type],
    ...["-a_ullr", `${west}`, `${north}`, `${west + columns * stepX}`, `${north - rows * stepY}`],
    ...(srs === undefined ? [] : ["-a_srs", srs]),
    ...(nodata === undefined ? [] : ["-a_nodata", `${nodata}`]),
    ...extra,
    bare,
    path,
  ]);
}

/** A grid as a GeoTIFF in metres, UTM zone 29 standing in for its plane; unknown heights as -9999. */
export function writeGrid(path: string, grid: HeightGrid): void {
  const { columns, rows, stepMetres, westMetres, northMetres, heights } = grid;
  writeGeoTiff(path, {
    columns,
    rows,
    samples: heights.map((height) => (Number.isNaN(height) ? -9999 : height)),
    // GDAL's samples fill a cell; ours stand in its middle.
    west: westMetres - stepMetres / 2,
    north: northMetres + stepMetres / 2,
    stepX: stepMetres,
    stepY: stepMetres,
    srs: "EPSG:32629",
    nodata: -9999,
  });
}

/** The numbers of a raster, row by row. */
export function readBand(path: string): Float32Array {
  const bare = `${path}.read`;
  gdal("gdal_translate", ["-q", "-of", "ENVI", "-ot", "Float32", path, bare]);
  const bytes = readFileSync(bare);
  return new Float32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4).slice();
}
