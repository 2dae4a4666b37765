/** The heights of an area, as evenly spread samples. */
import { areaSquareMetres, chords } from "../geo/area.ts";
import type { Area, Point } from "../geo/position.ts";
import type { HeightGrid } from "./grid.ts";
import { heightAt } from "./sample.ts";

/** A point of known ground. */
export interface Spot {
  readonly point: Point;
  readonly heightMetres: number;
}

/**
 * Points inside an area on a square lattice with the given spacing, widened where that
 * would be more than `atMost` points. The lattice is laid about the area's own corner, so
 * the same area gives the same points. A sliver between the lattice's rows may get none.
 */
export function pointsInside(area: Area, spacingMetres: number, atMost: number): Point[] {
  const ring = area[0]!;
  const spacing = Math.max(spacingMetres, Math.sqrt(areaSquareMetres(area) / atMost));
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  const west = Math.min(...xs) + spacing / 2;
  const top = Math.max(...ys);
  const points: Point[] = [];
  for (let y = Math.min(...ys) + spacing / 2; y < top; y += spacing) {
    for (const [enter, exit] of chords([area], [west, y], [1, 0])) {
      for (let k = Math.ceil(enter / spacing); k * spacing < exit; k++) points.push([west + k * spacing, y]);
    }
  }
  return points;
}

/** The known heights of an area's points, up to 2,500 of them. */
export function spotsIn(grid: HeightGrid, area: Area, spacingMetres = grid.stepMetres / 2): Spot[] {
  const spots: Spot[] = [];
  for (const point of pointsInside(area, spacingMetres, 2500)) {
    const heightMetres = heightAt(grid, point);
    if (heightMetres !== undefined) spots.push({ point, heightMetres });
  }
  return spots;
}
