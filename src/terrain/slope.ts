/**
 * How steep the ground is and which way it falls.
 *
 * Horn's method: the gradient at a height is a weighted mean of the differences across its
 * eight neighbours (B. K. P. Horn, "Hill shading and the reflectance map", Proceedings of
 * the IEEE 69, 1981). It is exact on a plane and evens out the noise of a survey.
 */
import type { Point } from "../geo/position.ts";
import { bearingDegrees } from "../geo/vector.ts";
import { degrees } from "../geo/units.ts";
import { type HeightGrid, columnRowOf } from "./grid.ts";

/** Rise in metres per metre toward the east and toward the north. */
export interface Gradient {
  readonly east: number;
  readonly north: number;
}

export interface Slope {
  /** Rise over run, times 100. */
  readonly percent: number;
  readonly degrees: number;
  /** Compass direction the ground falls in (its aspect); undefined on level ground. */
  readonly downhillDegrees: number | undefined;
}

/** Slope and aspect of a gradient. */
export function slopeOf({ east, north }: Gradient): Slope {
  const rise = Math.hypot(east, north);
  return {
    percent: rise * 100,
    degrees: degrees(Math.atan(rise)),
    downhillDegrees: rise === 0 ? undefined : bearingDegrees([-east, -north]),
  };
}

/**
 * Visits every height that has its eight neighbours, with its gradient (NaN where one of
 * them is unknown). The heights of the outer edge are not visited.
 */
export function eachGradient(grid: HeightGrid, visit: (index: number, east: number, north: number) => void): void {
  const { columns, rows, heights } = grid;
  const scale = 1 / (8 * grid.stepMetres);
  for (let row = 1; row < rows - 1; row++) {
    const start = row * columns + 1;
    for (let i = start; i < start + columns - 2; i++) {
      const n = i - columns;
      const s = i + columns;
      const nw = heights[n - 1]!;
      const ne = heights[n + 1]!;
      const sw = heights[s - 1]!;
      const se = heights[s + 1]!;
      const east = (ne + 2 * heights[i + 1]! + se - nw - 2 * heights[i - 1]! - sw) * scale;
      const north = (nw + 2 * heights[n]! + ne - sw - 2 * heights[s]! - se) * scale;
      // The middle height has no weight in Horn's sums, yet an unknown one has no slope.
      if (heights[i]! === heights[i]!) visit(i, east, north);
      else visit(i, NaN, NaN);
    }
  }
}

/** Slope in percent at every height of the grid, in the grid's order; NaN where unknown and along the edge. */
export function slopePercents(grid: HeightGrid): Float32Array {
  const slopes = new Float32Array(grid.heights.length).fill(NaN);
  eachGradient(grid, (i, east, north) => {
    slopes[i] = 100 * Math.sqrt(east * east + north * north);
  });
  return slopes;
}

/**
 * Gradient at any point: Horn's sums over the eight points one step away, which is the
 * same as mixing the gradients at the four heights about it. Undefined within a step of
 * the edge or of unknown ground.
 */
export function gradientAt(grid: HeightGrid, point: Point): Gradient | undefined {
  const [column, row] = columnRowOf(grid, point);
  const { columns, rows, heights, stepMetres } = grid;
  // On the last line that has neighbours the cell before it serves, with a share of 1.
  const i = Math.min(Math.floor(column), columns - 3);
  const j = Math.min(Math.floor(row), rows - 3);
  const [u, v] = [column - i, row - j];
  if (!(i >= 1 && j >= 1 && u <= 1 && v <= 1)) return undefined;
  let [east, north] = [0, 0];
  for (let down = 0; down < 2; down++) {
    for (let across = 0; across < 2; across++) {
      const weight = (across === 0 ? 1 - u : u) * (down === 0 ? 1 - v : v);
      // A share of 0 must not drag in unknown ground: NaN times 0 is NaN.
      if (weight === 0) continue;
      const middle = (j + down) * columns + i + across;
      const [above, below] = [middle - columns, middle + columns];
      const [nw, n, ne] = [heights[above - 1]!, heights[above]!, heights[above + 1]!];
      const [sw, s, se] = [heights[below - 1]!, heights[below]!, heights[below + 1]!];
      east += weight * (ne + 2 * heights[middle + 1]! + se - nw - 2 * heights[middle - 1]! - sw);
      north += weight * (nw + 2 * n + ne - sw - 2 * s - se);
      if (Number.isNaN(heights[middle]!)) return undefined;
    }
  }
  return Number.isNaN(east + north) ? undefined : { east: east / (8 * stepMetres), north: north / (8 * stepMetres) };
}

const slopes = new WeakMap<HeightGrid, Float32Array>();

/**
 * Whether the ground at a point is steeper than so many percent; false where it is unknown.
 * A slope is a mix of those at the four heights about it and no steeper than the steepest
 * of them, so most points of gentle ground need no sum.
 */
export function isSteeper(grid: HeightGrid, point: Point, percent: number): boolean {
  const known = slopes.get(grid) ?? slopePercents(grid);
  slopes.set(grid, known);
  const { columns, rows } = grid;
  const [column, row] = columnRowOf(grid, point);
  const i = Math.min(Math.floor(column), columns - 3);
  const j = Math.min(Math.floor(row), rows - 3);
  if (i < 1 || j < 1 || column > columns - 2 || row > rows - 2) return false;
  const at = j * columns + i;
  // A little room for the rounding of both.
  const gentle = percent * 0.9999;
  if (
    known[at]! < gentle &&
    known[at + 1]! < gentle &&
    known[at + columns]! < gentle &&
    known[at + columns + 1]! < gentle
  )
    return false;
  const gradient = gradientAt(grid, point);
  return gradient !== undefined && Math.hypot(gradient.east, gradient.north) * 100 > percent;
}

/** Rise in percent when moving along a compass direction: positive is uphill. */
export const risePercentToward = ({ east, north }: Gradient, [x, y]: Point): number => 100 * (east * x + north * y);
