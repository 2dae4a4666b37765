/** Coarser copies of a grid, and unknown ground made up from what lies about it. */
import { type HeightGrid, heightGrid } from "./grid.ts";
import { bilinear } from "./sample.ts";

/**
 * The grid at twice the step: each height the mean of the known ones among four. An odd
 * last column or row is carried over from those it has. Undefined when nothing would be
 * left to halve.
 */
export function halved(grid: HeightGrid): HeightGrid | undefined {
  const columns = Math.ceil(grid.columns / 2);
  const rows = Math.ceil(grid.rows / 2);
  if (columns < 2 || rows < 2) return undefined;
  const heights = new Float32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let sum = 0;
      let count = 0;
      for (let r = 2 * row; r < Math.min(2 * row + 2, grid.rows); r++) {
        for (let c = 2 * column; c < Math.min(2 * column + 2, grid.columns); c++) {
          const height = grid.heights[r * grid.columns + c]!;
          if (Number.isNaN(height)) continue;
          sum += height;
          count++;
        }
      }
      heights[row * columns + column] = count === 0 ? NaN : sum / count;
    }
  }
  return heightGrid({
    columns,
    rows,
    stepMetres: grid.stepMetres * 2,
    westMetres: grid.westMetres + grid.stepMetres / 2,
    northMetres: grid.northMetres - grid.stepMetres / 2,
    heights,
  });
}

/**
 * The grid with its unknown heights made up, for pictures that must have some height
 * everywhere: each comes from the nearest coarser grid that knows one there, so the ground
 * runs on smoothly. Never for figures. Ground without any height becomes `otherwise`.
 */
export function withoutUnknowns(grid: HeightGrid, otherwise = 0): HeightGrid {
  if (!grid.heights.some(Number.isNaN)) return grid;
  const coarser = halved(grid);
  const filled = coarser && withoutUnknowns(coarser, otherwise);
  const known = filled ? otherwise : (meanOf(grid.heights) ?? otherwise);
  const heights = grid.heights.slice();
  for (let row = 0, i = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++, i++) {
      if (!Number.isNaN(heights[i]!)) continue;
      heights[i] = filled ? heldHeight(filled, (column - 0.5) / 2, (row - 0.5) / 2) : known;
    }
  }
  return { ...grid, heights };
}

/** Bilinear height with places off the grid held to its edge. */
export function heldHeight(grid: HeightGrid, column: number, row: number): number {
  return bilinear(grid, Math.min(Math.max(column, 0), grid.columns - 1), Math.min(Math.max(row, 0), grid.rows - 1));
}

function meanOf(heights: Float32Array): number | undefined {
  let sum = 0;
  let count = 0;
  for (const height of heights) {
    if (Number.isNaN(height)) continue;
    sum += height;
    count++;
  }
  return count === 0 ? undefined : sum / count;
}
