import type { Point } from "../../src/geo/position.ts";
import type { HeightGrid } from "../../src/terrain/grid.ts";
import { gradientAt, slopeOf } from "../../src/terrain/slope.ts";

/** Slope and aspect at any point; undefined where the gradient is. */
export function slopeAt(grid: HeightGrid, point: Point): ReturnType<typeof slopeOf> | undefined {
  const gradient = gradientAt(grid, point);
  return gradient && slopeOf(gradient);
}
