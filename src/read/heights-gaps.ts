/**
 * Small gaps in a survey, such as a pond's glare or a roof cut out, filled from their rim;
 * larger ones, and those open to the edge, stay unknown: the guide says nothing there.
 */
import type { Raster } from "../terrain/sample.ts";

export interface Filled {
  readonly heights: Float32Array;
  /** How many gaps were closed, and how many heights that made. */
  readonly gaps: number;
  readonly filled: number;
}

/**
 * Fills gaps that are at most `most` samples wide and tall. Inside, each height becomes
 * the mean of its four neighbours (Laplace's equation), the surface a soap film would
 * take on the rim: no new peak or pit can appear. The input is left as it is.
 */
export function fillSmallGaps(raster: Raster, most: number): Filled {
  const { columns, rows } = raster;
  const heights = raster.heights.slice();
  const seen = new Uint8Array(heights.length);
  let gaps = 0;
  let filled = 0;
  for (let start = 0; start < heights.length; start++) {
    if (seen[start] || !Number.isNaN(heights[start]!)) continue;
    const gap = gapFrom(raster, start, seen);
    const within =
      gap.west > 0 &&
      gap.north > 0 &&
      gap.east < columns - 1 &&
      gap.south < rows - 1 &&
      gap.east - gap.west < most &&
      gap.south - gap.north < most;
    if (!within) continue;
    relax(heights, columns, gap.cells);
    gaps++;
    filled += gap.cells.length;
  }
  return { heights, gaps, filled };
}

interface Gap {
  readonly cells: number[];
  west: number;
  east: number;
  north: number;
  south: number;
}

/** The unknown samples connected to one, corners included, so that a gap's rim is known ground all round. */
function gapFrom({ columns, rows, heights }: Raster, start: number, seen: Uint8Array): Gap {
  const gap: Gap = { cells: [start], west: columns, east: -1, north: rows, south: -1 };
  seen[start] = 1;
  for (let k = 0; k < gap.cells.length; k++) {
    const cell = gap.cells[k]!;
    const column = cell % columns;
    const row = (cell - column) / columns;
    gap.west = Math.min(gap.west, column);
    gap.east = Math.max(gap.east, column);
    gap.north = Math.min(gap.north, row);
    gap.south = Math.max(gap.south, row);
    for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
      for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
        const next = r * columns + c;
        if (seen[next] || !Number.isNaN(heights[next]!)) continue;
        seen[next] = 1;
        gap.cells.push(next);
      }
    }
  }
  return gap;
}

/** Gauss-Seidel sweeps from the rim's mean until nothing moves by a tenth of a millimetre. */
function relax(heights: Float32Array, columns: number, cells: readonly number[]): void {
  const inside = new Set(cells);
  let sum = 0;
  let count = 0;
  for (const cell of cells) {
    for (const next of [cell - 1, cell + 1, cell - columns, cell + columns]) {
      if (inside.has(next)) continue;
      sum += heights[next]!;
      count++;
    }
  }
  for (const cell of cells) heights[cell] = sum / count;
  for (let sweep = 0; sweep < 2000; sweep++) {
    let most = 0;
    for (const cell of cells) {
      const mean = (heights[cell - 1]! + heights[cell + 1]! + heights[cell - columns]! + heights[cell + columns]!) / 4;
      most = Math.max(most, Math.abs(mean - heights[cell]!));
      heights[cell] = mean;
    }
    if (most < 1e-4) return;
  }
}
