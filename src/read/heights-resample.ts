/** From a file's own grid to the course's plane. */
import type { Bounds, HeightGrid } from "../terrain/grid.ts";
import { heightGrid } from "../terrain/grid.ts";
import type { Point } from "../geo/position.ts";
import { type Raster, type Sampling, bicubic, bilinear } from "../terrain/sample.ts";

/** Fractional column and row of the source for a point of the plane. */
export type ToSource = (point: Point) => readonly [column: number, row: number];

/**
 * Every so many steps of the new grid the projections are computed, and between them they
 * are interpolated. Over so short a way a projection is straight to well under a
 * millimetre, and two of them for each of some million points would take longer than
 * everything else that is done to the ground.
 */
const STRIDE = 16;

/** A grid over a rectangle of the plane, its heights read out of a raster. */
export function resample(
  source: Raster,
  toSource: ToSource,
  bounds: Bounds,
  stepMetres: number,
  sampling: Sampling,
): HeightGrid {
  const columns = Math.max(2, Math.round((bounds.east - bounds.west) / stepMetres) + 1);
  const rows = Math.max(2, Math.round((bounds.north - bounds.south) / stepMetres) + 1);
  const heights = new Float32Array(columns * rows);
  const read = sampling === "bicubic" ? bicubic : bilinear;
  const place = (column: number, row: number): readonly [number, number] =>
    toSource([bounds.west + column * stepMetres, bounds.north - row * stepMetres]);
  const knots = Math.ceil((columns - 1) / STRIDE) + 1;
  const knotsAlong = (row: number): (readonly [number, number])[] =>
    Array.from({ length: knots }, (_, k) => place(k * STRIDE, row));
  let upper = knotsAlong(0);
  let lower = upper;
  for (let row = 0; row < rows; row++) {
    const below = row % STRIDE;
    if (below === 0) {
      upper = row === 0 ? upper : lower;
      lower = knotsAlong(row + STRIDE);
    }
    const v = below / STRIDE;
    for (let k = 0; k < knots - 1 || k * STRIDE < columns; k++) {
      const [nw, sw] = [upper[k]!, lower[k]!];
      const [ne, se] = [upper[k + 1] ?? nw, lower[k + 1] ?? sw];
      const [i0, j0] = [nw[0] + (sw[0] - nw[0]) * v, nw[1] + (sw[1] - nw[1]) * v];
      const [i1, j1] = [ne[0] + (se[0] - ne[0]) * v, ne[1] + (se[1] - ne[1]) * v];
      const end = Math.min(columns, (k + 1) * STRIDE);
      for (let column = k * STRIDE; column < end; column++) {
        const u = (column - k * STRIDE) / STRIDE;
        heights[row * columns + column] = read(source, i0 + (i1 - i0) * u, j0 + (j1 - j0) * u);
      }
    }
  }
  return heightGrid({ columns, rows, stepMetres, westMetres: bounds.west, northMetres: bounds.north, heights });
}
