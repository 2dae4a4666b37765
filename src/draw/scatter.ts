/**
 * Marks strewn evenly and repeatably. Every candidate place comes from the ground itself
 * (a cell of the plane and a hash of its number), so the same content gives the same marks
 * and a hole's sheet does not reshuffle when a label moves.
 */
import type { Point } from "../geo/position.ts";
import type { Sheet } from "./sheet.ts";

/** A number in [0, 1) from two cell numbers and a salt: an integer hash (after Wellons' lowbias32 finaliser). */
export function hash01(i: number, j: number, salt: number): number {
  let h = (Math.imul(i, 0x9e3779b1) ^ Math.imul(j, 0x85ebca77) ^ Math.imul(salt, 0xc2b2ae3d)) >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d) >>> 0;
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b) >>> 0;
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

export interface Strewn {
  /** On the sheet. */
  readonly point: Point;
  /** In [0, 1), for choosing a variant. */
  readonly lot: number;
}

/**
 * Blue-noise points over the sheet, by dart throwing in a fixed order: no two closer than
 * `spacing(point)`, from top to bottom so that nearer marks overlap farther ones.
 *
 * @param spacing least distance at a place, sheet units; 0 or less leaves the place empty
 * @param least the smallest value `spacing` gives where it is above 0
 */
export function strew(sheet: Sheet, least: number, salt: number, spacing: (point: Point) => number): Strewn[] {
  const cellMetres = (least * 0.62) / sheet.pxPerMetre;
  const [minX, minY, maxX, maxY] = sheet.map;
  const corners = ([[minX, minY], [maxX, minY], [maxX, maxY], [minX, maxY]] as const).map((p) => sheet.toPlane(p));
  const range = (axis: 0 | 1): [number, number] => {
    const values = corners.map((p) => p[axis] / cellMetres);
    return [Math.floor(Math.min(...values)), Math.ceil(Math.max(...values))];
  };
  const [[i0, i1], [j0, j1]] = [range(0), range(1)];
  const candidates: { point: Point; lot: number; order: number; space: number }[] = [];
  for (let j = j0; j <= j1; j++) {
    for (let i = i0; i <= i1; i++) {
      const point = sheet.toSheet([
        (i + hash01(i, j, salt)) * cellMetres,
        (j + hash01(i, j, salt + 1)) * cellMetres,
      ]);
      if (point[0] < minX || point[0] > maxX || point[1] < minY || point[1] > maxY) continue;
      const space = spacing(point);
      if (space > 0) candidates.push({ point, lot: hash01(i, j, salt + 2), order: hash01(i, j, salt + 3), space });
    }
  }
  candidates.sort((a, b) => a.order - b.order || a.point[0] - b.point[0]);
  const bucket = least;
  const columns = Math.ceil((maxX - minX) / bucket) + 1;
  const taken = new Map<number, Point[]>();
  const kept: Strewn[] = [];
  for (const { point, lot, space } of candidates) {
    const reach = Math.ceil(space / bucket);
    const [c, r] = [Math.floor((point[0] - minX) / bucket), Math.floor((point[1] - minY) / bucket)];
    let free = true;
    for (let dr = -reach; free && dr <= reach; dr++) {
      for (let dc = -reach; free && dc <= reach; dc++) {
        for (const other of taken.get((r + dr) * columns + c + dc) ?? []) {
          if (Math.hypot(other[0] - point[0], other[1] - point[1]) < space) free = false;
        }
      }
    }
    if (!free) continue;
    const key = r * columns + c;
    const here = taken.get(key);
    if (here) here.push(point);
    else taken.set(key, [point]);
    kept.push({ point, lot });
  }
  return kept.sort((a, b) => a.point[1] - b.point[1] || a.point[0] - b.point[0]);
}
