/**
 * The height of any point from the heights about it.
 *
 * Unknown ground stays unknown: a point is only given a height when every height that
 * bears on it is known.
 */
import type { Point } from "../geo/position.ts";
import { type HeightGrid, columnRowOf } from "./grid.ts";

/** How heights between grid points are found. */
export type Sampling = "bilinear" | "bicubic";

/** A raster of heights without a place: what sampling itself needs. */
export interface Raster {
  readonly columns: number;
  readonly rows: number;
  readonly heights: Float32Array;
}

/** A point this close to a grid line, in steps, counts as on it, so rounding cannot push the edge off the grid. */
const ON_LINE = 1e-6;

/** Fractional place split into the lower index and the share of the next one, or undefined off the grid. */
function split(place: number, count: number): readonly [index: number, share: number] | undefined {
  if (!(place >= -ON_LINE && place <= count - 1 + ON_LINE)) return undefined;
  const nearest = Math.round(place);
  if (Math.abs(place - nearest) <= ON_LINE) return nearest === count - 1 ? [nearest - 1, 1] : [nearest, 0];
  const index = Math.floor(place);
  return [index, place - index];
}

/** Bilinear height at a fractional column and row; NaN where unknown or off the raster. */
export function bilinear(raster: Raster, column: number, row: number): number {
  const across = split(column, raster.columns);
  const down = split(row, raster.rows);
  if (!across || !down) return NaN;
  const [i, u] = across;
  const [j, v] = down;
  const { heights, columns } = raster;
  const at = j * columns + i;
  // A share of 0 must not drag in an unknown neighbour: NaN times 0 is NaN.
  const mix = (a: number, b: number, t: number): number => (t === 0 ? a : t === 1 ? b : a + (b - a) * t);
  const upper = v === 1 ? 0 : mix(heights[at]!, heights[at + 1]!, u);
  const lower = v === 0 ? 0 : mix(heights[at + columns]!, heights[at + columns + 1]!, u);
  return mix(upper, lower, v);
}

/**
 * Bicubic height at a fractional column and row: cubic convolution with a = -1/2 (R. G.
 * Keys, "Cubic convolution interpolation for digital image processing", IEEE Transactions
 * on Acoustics, Speech, and Signal Processing 29, 1981). Passes through the heights and
 * reproduces any quadratic. Within one step of the edge or of unknown ground it falls back
 * to {@link bilinear}.
 */
export function bicubic(raster: Raster, column: number, row: number): number {
  const across = split(column, raster.columns);
  const down = split(row, raster.rows);
  if (!across || !down) return NaN;
  const [i, u] = across;
  const [j, v] = down;
  const { heights, columns, rows } = raster;
  if (i < 1 || j < 1 || i + 2 >= columns || j + 2 >= rows) return bilinear(raster, column, row);
  const [a0, a1, a2, a3] = keys(u);
  const [b0, b1, b2, b3] = keys(v);
  const at = (j - 1) * columns + i - 1;
  const line = (k: number): number =>
    a0 * heights[k]! + a1 * heights[k + 1]! + a2 * heights[k + 2]! + a3 * heights[k + 3]!;
  const height = b0 * line(at) + b1 * line(at + columns) + b2 * line(at + 2 * columns) + b3 * line(at + 3 * columns);
  return Number.isNaN(height) ? bilinear(raster, column, row) : height;
}

/** Weights of the four heights about a point a share t beyond the second. */
const keys = (t: number): readonly [number, number, number, number] => [
  ((-t + 2) * t - 1) * t * 0.5,
  ((3 * t - 5) * t * t + 2) * 0.5,
  ((-3 * t + 4) * t + 1) * t * 0.5,
  (t - 1) * t * t * 0.5,
];

/** Height in metres at a point of the plane, or undefined where the ground is unknown or off the grid. */
export function heightAt(grid: HeightGrid, point: Point, sampling: Sampling = "bilinear"): number | undefined {
  const [column, row] = columnRowOf(grid, point);
  const height = sampling === "bicubic" ? bicubic(grid, column, row) : bilinear(grid, column, row);
  return Number.isNaN(height) ? undefined : height;
}
