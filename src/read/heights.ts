/**
 * The ground of a course, from a GeoTIFF of heights to a grid in the course's plane.
 *
 * The file may be in any coordinates proj4 can compute, tiled or not, of whole or floating
 * numbers, and far larger than the course: only the part that the course needs is read.
 */
import type { Frame } from "../geo/frame.ts";
import type { Point, Position } from "../geo/position.ts";
import type { Bounds, HeightGrid } from "../terrain/grid.ts";
import { type Raster, type Sampling, bilinear } from "../terrain/sample.ts";
import { type Crs, crsOf, parseCrsSetting, statedHeightUnit } from "./heights-crs.ts";
import { HeightsError } from "./heights-error.ts";
import { fillSmallGaps } from "./heights-gaps.ts";
import { type HeightFile, openHeightFile } from "./heights-raster.ts";
import { type ToSource, resample } from "./heights-resample.ts";
import { type HeightPair, looksLikeFeet } from "./heights-unit.ts";

export { HeightsError } from "./heights-error.ts";

export interface HeightsOptions {
  /** The file as messages name it, relative to the content folder. */
  readonly file: string;
  readonly frame: Frame;
  /** What of the plane the course takes up. */
  readonly bounds: Bounds;
  /** Ground wanted beyond the bounds; 150 m when left out. */
  readonly marginMetres?: number;
  /**
   * `crs` of course.yaml: an EPSG code or a proj string, where the file does not say it
   * well. `+vunits=ft` in it, or alone, gives the unit of height.
   */
  readonly crs?: string | undefined;
  /** Step of the grid; the file's own when left out. */
  readonly stepMetres?: number;
  readonly sampling?: Sampling;
  /**
   * Positions that must have ground under them: tees, turning points, greens. Their third
   * values also test the file's unit.
   */
  readonly positions?: readonly Position[];
  /** Gaps up to this far across are filled; 10 m, or three of the file's samples if that is more, when left out. */
  readonly gapMetres?: number;
  /** The most heights a grid may have; a step too fine for it is widened. */
  readonly mostHeights?: number;
}

export interface Heights {
  readonly grid: HeightGrid;
  /** The coordinates the file was read in. */
  readonly crs: string;
  /** Step of the file about the course, metres. */
  readonly fileStepMetres: number;
  /** Metres to one unit of height in the file. */
  readonly metresPerHeightUnit: number;
  readonly gapsFilled: number;
  /** Share of the grid that is unknown, 0 to 1. */
  readonly unknownShare: number;
  /** What the club should hear of: sentences, without the file's name. */
  readonly notes: readonly string[];
}

/**
 * Reads the ground about a course.
 *
 * @param path where the file is; `options.file` is how messages name it.
 * @throws HeightsError, saying what to type, when the file is missing, is no height file,
 *   lies elsewhere, leaves a position without cover, or is in feet without saying so.
 */
export async function readHeights(path: string, options: HeightsOptions): Promise<Heights> {
  const source = await openHeightFile(path, options.file);
  try {
    return await read(source, options);
  } finally {
    await source.close();
  }
}

async function read(source: HeightFile, options: HeightsOptions): Promise<Heights> {
  const {
    file,
    frame,
    bounds,
    marginMetres = 150,
    sampling = "bicubic",
    positions = [],
    mostHeights = 16e6,
  } = options;
  const notes: string[] = [];
  const setting = parseCrsSetting(file, options.crs);
  const crs = crsOf(file, setting, source.keys);
  const toSample = sampleFinder(source, crs);
  const toSource: ToSource = (point) => toSample(frame.toPosition(point));

  checkCover(source, crs, toSample, toSource, options, notes);

  const fileStepMetres = stepAt(toSource, [(bounds.west + bounds.east) / 2, (bounds.south + bounds.north) / 2]);
  const wide = grow(bounds, marginMetres);
  const window = windowOver(source, toSource, wide);
  const { heights, impossible } = await source.window(window.column, window.row, window.columns, window.rows);
  if (impossible > 0) {
    notes.push(
      `${impossible} heights are impossible (such as -9999) and were left unknown. Declare the value as nodata in the file to silence this.`,
    );
  }
  refuseOneHeight(file, heights);
  const raw: Raster = { columns: window.columns, rows: window.rows, heights };
  const stated = setting.metresPerHeightUnit ?? statedHeightUnit(source.keys, source.bandUnit);
  const metresPerHeightUnit = stated ?? 1;
  if (stated === undefined) refuseHiddenFeet(file, pairsOf(raw, window, toSample, positions));
  if (metresPerHeightUnit !== 1) for (let i = 0; i < heights.length; i++) heights[i]! *= metresPerHeightUnit;

  const gapMetres = options.gapMetres ?? Math.max(10, 3 * fileStepMetres);
  const { heights: whole, gaps } = fillSmallGaps(raw, Math.round(gapMetres / fileStepMetres));

  const area = (wide.east - wide.west) * (wide.north - wide.south);
  const asked = options.stepMetres ?? roundStep(fileStepMetres);
  const stepMetres = Math.max(asked, roundUpStep(Math.sqrt(area / mostHeights)));
  if (stepMetres > asked) {
    notes.push(
      `At ${asked} m the ground would be more than ${mostHeights} heights; it is kept at ${stepMetres} m instead.`,
    );
  }
  const grid = resample(
    { columns: window.columns, rows: window.rows, heights: whole },
    (point) => {
      const [column, row] = toSource(point);
      return [column - window.column, row - window.row];
    },
    wide,
    stepMetres,
    sampling,
  );
  let unknown = 0;
  for (const height of grid.heights) if (Number.isNaN(height)) unknown++;
  if (unknown === grid.heights.length) {
    throw new HeightsError(
      file,
      "holds no heights about the course: all is nodata there. Give a file whose data covers the course.",
    );
  }
  return {
    grid,
    crs: crs.name,
    fileStepMetres,
    metresPerHeightUnit,
    gapsFilled: gaps,
    unknownShare: unknown / grid.heights.length,
    notes,
  };
}

/** No survey finds one height everywhere; a file that was filled up instead of written does. */
function refuseOneHeight(file: string, heights: Float32Array): void {
  let only = NaN;
  for (const height of heights) {
    if (Number.isNaN(height)) continue;
    if (Number.isNaN(only)) only = height;
    else if (height !== only) return;
  }
  if (Number.isNaN(only)) return;
  throw new HeightsError(
    file,
    `holds one and the same height everywhere about the course (${only}): it was made without data. Export it again, or take ground out of course.yaml to build without heights.`,
  );
}

type SampleFinder = (position: Position) => readonly [column: number, row: number];

/** Fractional column and row of a position in the file. */
function sampleFinder({ affine, columns }: HeightFile, crs: Crs): SampleFinder {
  const [a, b, c, d, e, f] = affine;
  const determinant = a * e - b * d;
  const middle = c + (a * columns) / 2;
  return (position) => {
    const [x0, y] = crs.toFile(position);
    // Degrees may be counted from 0 to 360, or past the date line.
    const x = crs.geographic ? x0 + 360 * Math.round((middle - x0) / 360) : x0;
    return [(e * (x - c) - b * (y - f)) / determinant, (a * (y - f) - d * (x - c)) / determinant];
  };
}

/** Metres between samples of the file at a point of the plane: the root of the ground one sample stands for. */
function stepAt(toSource: ToSource, [x, y]: Point): number {
  const [i0, j0] = toSource([x, y]);
  const [i1, j1] = toSource([x + 1, y]);
  const [i2, j2] = toSource([x, y + 1]);
  return 1 / Math.sqrt(Math.abs((i1 - i0) * (j2 - j0) - (j1 - j0) * (i2 - i0)));
}

/** To two digits, so that 0.9998 m, the file's metre seen in our plane, is 1 m. */
const roundStep = (metres: number): number => Number(metres.toPrecision(2));

const roundUpStep = (metres: number): number => {
  const unit = 10 ** (Math.floor(Math.log10(metres)) - 1);
  return Number((Math.ceil(metres / unit - 1e-9) * unit).toPrecision(2));
};

const grow = (bounds: Bounds, metres: number): Bounds => ({
  west: bounds.west - metres,
  south: bounds.south - metres,
  east: bounds.east + metres,
  north: bounds.north + metres,
});

/** Points over a rectangle, its edges with them. */
function latticeOver(bounds: Bounds, pieces: number): Point[] {
  const points: Point[] = [];
  for (let j = 0; j <= pieces; j++) {
    for (let i = 0; i <= pieces; i++) {
      points.push([
        bounds.west + ((bounds.east - bounds.west) * i) / pieces,
        bounds.south + ((bounds.north - bounds.south) * j) / pieces,
      ]);
    }
  }
  return points;
}

interface Window {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** The samples about a rectangle, with the few beyond it that sampling reaches for. */
function windowOver(source: HeightFile, toSource: ToSource, bounds: Bounds): Window {
  const places = latticeOver(bounds, 8).map(toSource);
  const hold = (value: number, count: number): number => Math.min(Math.max(value, 0), count);
  const column = Math.min(
    hold(Math.floor(Math.min(...places.map(([i]) => i))) - 3, source.columns),
    source.columns - 2,
  );
  const row = Math.min(hold(Math.floor(Math.min(...places.map(([, j]) => j))) - 3, source.rows), source.rows - 2);
  const end = hold(Math.ceil(Math.max(...places.map(([i]) => i))) + 4, source.columns);
  const bottom = hold(Math.ceil(Math.max(...places.map(([, j]) => j))) + 4, source.rows);
  return { column, row, columns: Math.max(2, end - column), rows: Math.max(2, bottom - row) };
}

/** Whether a place is on the file; its outermost half samples count, although nothing can be interpolated there. */
const isOn = ({ columns, rows }: HeightFile, [i, j]: readonly [number, number]): boolean =>
  i >= -0.5 && j >= -0.5 && i <= columns - 0.5 && j <= rows - 0.5;

function checkCover(
  source: HeightFile,
  crs: Crs,
  toSample: SampleFinder,
  toSource: ToSource,
  { file, frame, bounds, positions = [] }: HeightsOptions,
  notes: string[],
): void {
  const lattice = latticeOver(bounds, 20);
  const covered = lattice.filter((point) => isOn(source, toSource(point))).length / lattice.length;
  if (covered === 0) {
    const middle = frame.toPosition([(bounds.west + bounds.east) / 2, (bounds.south + bounds.north) / 2]);
    throw new HeightsError(
      file,
      `does not cover the course: read as ${crs.name} it lies about ${spoken(middleOf(source, crs))}, and the course about ${spoken(middle)}. Give the file for the course's place; if it is the right file, its coordinates are named wrongly: add crs: "EPSG:..." or crs: "+proj=..." to ground in course.yaml.`,
    );
  }
  const bare = positions.filter((position) => !isOn(source, toSample(position)));
  if (bare.length > 0) {
    throw new HeightsError(
      file,
      `does not cover the whole course: ${bare.length} of ${positions.length} positions lie off it, one at ${spoken(bare[0]!)}. Give a file that reaches further, or take ground out of course.yaml to build without heights.`,
    );
  }
  if (covered < 1) {
    notes.push(`Covers ${Math.round(covered * 100)} % of the ground about the course; the rest stays unknown.`);
  }
}

function middleOf({ affine: [a, b, c, d, e, f], columns, rows }: HeightFile, crs: Crs): Position {
  const [i, j] = [(columns - 1) / 2, (rows - 1) / 2];
  return crs.toPosition([a * i + b * j + c, d * i + e * j + f]);
}

const spoken = ([longitude, latitude]: Position): string =>
  `${Math.abs(latitude).toFixed(4)} ${latitude < 0 ? "S" : "N"}, ${Math.abs(longitude).toFixed(4)} ${longitude < 0 ? "W" : "E"}`;

function pairsOf(raw: Raster, window: Window, toSample: SampleFinder, positions: readonly Position[]): HeightPair[] {
  return positions.flatMap((position) => {
    const writtenMetres = position[2];
    if (writtenMetres === undefined) return [];
    const [column, row] = toSample(position);
    const inFile = bilinear(raw, column - window.column, row - window.row);
    return Number.isNaN(inFile) ? [] : [{ writtenMetres, inFile }];
  });
}

function refuseHiddenFeet(file: string, pairs: readonly HeightPair[]): void {
  if (!looksLikeFeet(pairs)) return;
  throw new HeightsError(
    file,
    `seems to hold feet: at ${pairs.length} positions of the course its heights vary 3.28 times as much as the heights written there in metres, and the file names no unit. Add crs: "+vunits=ft" (or "+vunits=us-ft") to ground in course.yaml; if it does hold metres, correct the written heights or say crs: "+vunits=m".`,
  );
}
