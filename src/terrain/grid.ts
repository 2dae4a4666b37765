/**
 * Ground as a regular grid of heights in a course's plane.
 *
 * ```
 *   (west, north) o---o---o---o   row 0
 *                 |   |   |   |
 *                 o---o---o---o   row 1        o = a height, at a point, not over a cell
 *               col 0   1   2   3
 * ```
 *
 * Rows run from north to south as in a raster, so a picture of the grid needs no turning.
 */
import type { Point } from "../geo/position.ts";

export interface HeightGrid {
  readonly columns: number;
  readonly rows: number;
  /** Distance between neighbouring heights, the same east and north. */
  readonly stepMetres: number;
  /** East coordinate of column 0. */
  readonly westMetres: number;
  /** North coordinate of row 0. */
  readonly northMetres: number;
  /** Heights in metres, row by row; NaN where the ground is unknown. */
  readonly heights: Float32Array;
}

/** A rectangle of the plane, sides along east and north. */
export interface Bounds {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/**
 * A grid from its parts.
 *
 * @throws RangeError when sizes disagree, are below 2 by 2, or the step is not above 0.
 */
export function heightGrid(parts: HeightGrid): HeightGrid {
  const { columns, rows, stepMetres, westMetres, northMetres, heights } = parts;
  if (!Number.isInteger(columns) || !Number.isInteger(rows) || columns < 2 || rows < 2) {
    throw new RangeError(`A height grid needs at least 2 columns and 2 rows, not ${columns} by ${rows}.`);
  }
  if (!(stepMetres > 0) || !Number.isFinite(stepMetres + westMetres + northMetres)) {
    throw new RangeError(
      `A height grid needs a step above 0 and a finite corner, not ${stepMetres} at ${westMetres}, ${northMetres}.`,
    );
  }
  if (heights.length !== columns * rows) {
    throw new RangeError(`A grid of ${columns} by ${rows} needs ${columns * rows} heights, not ${heights.length}.`);
  }
  return parts;
}

/** A grid of a surface given as a formula; undefined or NaN where it is unknown. */
export function gridOf(bounds: Bounds, stepMetres: number, surface: (point: Point) => number | undefined): HeightGrid {
  // The hair off the quotient keeps 10 / 0.1 from growing a column by rounding.
  const columns = Math.ceil((bounds.east - bounds.west) / stepMetres - 1e-9) + 1;
  const rows = Math.ceil((bounds.north - bounds.south) / stepMetres - 1e-9) + 1;
  const heights = new Float32Array(columns * rows);
  for (let row = 0, i = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, i++) {
      heights[i] = surface([bounds.west + column * stepMetres, bounds.north - row * stepMetres]) ?? NaN;
    }
  }
  return heightGrid({ columns, rows, stepMetres, westMetres: bounds.west, northMetres: bounds.north, heights });
}

/** The rectangle the heights span, corner to corner. */
export const boundsOf = (grid: HeightGrid): Bounds => ({
  west: grid.westMetres,
  north: grid.northMetres,
  east: grid.westMetres + (grid.columns - 1) * grid.stepMetres,
  south: grid.northMetres - (grid.rows - 1) * grid.stepMetres,
});

/** Where a height of the grid stands in the plane. */
export const nodeAt = (grid: HeightGrid, column: number, row: number): Point => [
  grid.westMetres + column * grid.stepMetres,
  grid.northMetres - row * grid.stepMetres,
];

/** Fractional column and row of a point of the plane; outside the grid too. */
export const columnRowOf = (grid: HeightGrid, [x, y]: Point): readonly [column: number, row: number] => [
  (x - grid.westMetres) / grid.stepMetres,
  (grid.northMetres - y) / grid.stepMetres,
];

/**
 * The part of a grid that covers a rectangle, at least 2 by 2 heights; cut at the grid's
 * own edges.
 *
 * @throws RangeError when the rectangle lies off the grid.
 */
export function cropTo(grid: HeightGrid, bounds: Bounds): HeightGrid {
  const [left, top] = columnRowOf(grid, [bounds.west, bounds.north]);
  const [right, bottom] = columnRowOf(grid, [bounds.east, bounds.south]);
  if (right < 0 || bottom < 0 || left > grid.columns - 1 || top > grid.rows - 1) {
    throw new RangeError("The rectangle to cut out lies off the height grid.");
  }
  const column0 = Math.min(Math.max(0, Math.floor(left)), grid.columns - 2);
  const row0 = Math.min(Math.max(0, Math.floor(top)), grid.rows - 2);
  const column1 = Math.max(Math.min(grid.columns - 1, Math.ceil(right)), column0 + 1);
  const row1 = Math.max(Math.min(grid.rows - 1, Math.ceil(bottom)), row0 + 1);
  const columns = column1 - column0 + 1;
  const rows = row1 - row0 + 1;
  const heights = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const start = (row0 + row) * grid.columns + column0;
    heights.set(grid.heights.subarray(start, start + columns), row * columns);
  }
  const [westMetres, northMetres] = nodeAt(grid, column0, row0);
  return heightGrid({ columns, rows, stepMetres: grid.stepMetres, westMetres, northMetres, heights });
}
