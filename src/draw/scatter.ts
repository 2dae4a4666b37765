/**
 * Marks strewn evenly and repeatably. Every candidate place comes from the ground itself
 * (a cell of the plane and a hash of its number), so the same content gives the same marks
 * and a hole's sheet does not reshuffle when a label moves.
 */
import type { Point } from "../geo/position.ts";
import type { Cover, CoverGrid, CoverMask } from "./cover.ts";
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

/** Ground that marks stand on. */
export interface Standing {
  readonly cover: CoverGrid;
  readonly on: (cover: Cover) => boolean;
}

/** Side of the cells that hold a candidate each, as a share of the least distance. */
const CELL = 0.62;

/**
 * Blue-noise points over the sheet, by dart throwing in a fixed order: no two closer than
 * `spacing(point)`, from top to bottom so that nearer marks overlap farther ones.
 *
 * @param spacing least distance at a place, sheet units; 0 or less leaves the place empty
 * @param least the smallest value `spacing` gives where it is above 0
 * @param standing the only ground for which `spacing` is above 0: elsewhere it is not asked
 */
export function strew(
  sheet: Sheet,
  least: number,
  salt: number,
  spacing: (point: Point) => number,
  standing?: Standing,
): Strewn[] {
  // A candidate lies within half a diagonal of its cell's middle.
  const where = standing?.cover.mask(least * CELL * Math.SQRT1_2 + 1e-6, standing.on);
  if (where?.empty) return [];
  return throwDarts(sheet, least, candidates(sheet, least, salt, spacing, where));
}

interface Candidate extends Strewn {
  readonly order: number;
  readonly space: number;
}

/** A candidate in every cell of the plane that the sheet shows, where `spacing` allows one. */
function candidates(
  sheet: Sheet,
  least: number,
  salt: number,
  spacing: (point: Point) => number,
  where: CoverMask | undefined,
): Candidate[] {
  const cellMetres = (least * CELL) / sheet.pxPerMetre;
  const [minX, minY, maxX, maxY] = sheet.map;
  const corners = (
    [
      [minX, minY],
      [maxX, minY],
      [maxX, maxY],
      [minX, maxY],
    ] as const
  ).map((p) => sheet.toPlane(p));
  const range = (axis: 0 | 1): [number, number] => {
    const values = corners.map((p) => p[axis] / cellMetres);
    return [Math.floor(Math.min(...values)), Math.ceil(Math.max(...values))];
  };
  const [[i0, i1], [j0, j1]] = [range(0), range(1)];
  // A cell's sides on the sheet: what lies off the sheet or its cover is passed by before it is worked out.
  const [origin, east, north] = [
    sheet.toSheet([0, 0]),
    sheet.toSheet([cellMetres, 0]),
    sheet.toSheet([0, cellMetres]),
  ];
  const [ux, uy, vx, vy] = [east[0] - origin[0], east[1] - origin[1], north[0] - origin[0], north[1] - origin[1]];
  const side = Math.hypot(ux, uy);
  const found: Candidate[] = [];
  for (let j = j0; j <= j1; j++) {
    const [x, y] = [origin[0] + j * vx, origin[1] + j * vy];
    const [acrossFrom, acrossTo] = cellsWithin(x, ux, vx, minX, maxX);
    const [downFrom, downTo] = cellsWithin(y, uy, vy, minY, maxY);
    const last = Math.min(i1, acrossTo, downTo);
    for (let i = Math.max(i0, acrossFrom, downFrom); i <= last; i++) {
      const gap = where?.gap(x + i * ux + (ux + vx) / 2, y + i * uy + (uy + vy) / 2) ?? 0;
      if (gap > 0) {
        i += Math.floor(gap / side);
        continue;
      }
      const point = sheet.toSheet([(i + hash01(i, j, salt)) * cellMetres, (j + hash01(i, j, salt + 1)) * cellMetres]);
      if (point[0] < minX || point[0] > maxX || point[1] < minY || point[1] > maxY) continue;
      const space = spacing(point);
      if (space > 0) found.push({ point, lot: hash01(i, j, salt + 2), order: hash01(i, j, salt + 3), space });
    }
  }
  return found;
}

/**
 * From which to which i a cell that begins at `start + i * step` and reaches on by `step` and `other` meets
 * an interval; one more at each end, for rounding.
 */
function cellsWithin(
  start: number,
  step: number,
  other: number,
  least: number,
  most: number,
): readonly [from: number, to: number] {
  if (Math.abs(step) < 1e-9) return [-Infinity, Infinity];
  const low = (least - start - Math.max(0, step) - Math.max(0, other)) / step;
  const high = (most - start - Math.min(0, step) - Math.min(0, other)) / step;
  return [Math.floor(Math.min(low, high)) - 1, Math.ceil(Math.max(low, high)) + 1];
}

/** Numbers that fit beside an order's 32 bits in a whole number. */
const MOST_NUMBERED = 2 ** 20;

/** Candidates by their order; two of the same from left to right. */
function inOrder(all: readonly Candidate[]): Candidate[] {
  const compare = (a: Candidate, b: Candidate): number => a.order - b.order || a.point[0] - b.point[0];
  if (all.length > MOST_NUMBERED) return [...all].sort(compare);
  // Numbers are sorted many times faster than objects: the order, which is so many 2^-32, and the place in the list.
  const keys = Float64Array.from(all, ({ order }, i) => order * 2 ** 32 * MOST_NUMBERED + i).sort();
  const sorted = Array.from(keys, (key) => all[key % MOST_NUMBERED]!);
  for (let i = 1; i < sorted.length; i++) {
    for (
      let k = i;
      k > 0 && sorted[k]!.order === sorted[k - 1]!.order && compare(sorted[k - 1]!, sorted[k]!) > 0;
      k--
    ) {
      [sorted[k - 1], sorted[k]] = [sorted[k]!, sorted[k - 1]!];
    }
  }
  return sorted;
}

/** Those candidates that keep their distance from all before them, in order of their lots. */
function throwDarts({ map: [minX, minY, maxX, maxY] }: Sheet, bucket: number, all: readonly Candidate[]): Strewn[] {
  const columns = Math.ceil((maxX - minX) / bucket) + 1;
  const rows = Math.ceil((maxY - minY) / bucket) + 1;
  // Points kept so far, chained by the bucket they lie in.
  const first = new Int32Array(columns * rows).fill(-1);
  const next: number[] = [];
  const kept: Strewn[] = [];
  const isFree = ([x, y]: Point, column: number, row: number, space: number): boolean => {
    const reach = Math.ceil(space / bucket);
    const nearly = space * space * 1.000001;
    for (let r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
      for (let c = Math.max(0, column - reach); c <= Math.min(columns - 1, column + reach); c++) {
        for (let k = first[r * columns + c]!; k >= 0; k = next[k]!) {
          const other = kept[k]!.point;
          // A root is drawn only where the squares leave it open.
          const [dx, dy] = [other[0] - x, other[1] - y];
          if (dx * dx + dy * dy < nearly && Math.hypot(dx, dy) < space) return false;
        }
      }
    }
    return true;
  };
  for (const { point, lot, space } of inOrder(all)) {
    const [column, row] = [Math.floor((point[0] - minX) / bucket), Math.floor((point[1] - minY) / bucket)];
    if (!isFree(point, column, row, space)) continue;
    const key = row * columns + column;
    next.push(first[key]!);
    first[key] = kept.length;
    kept.push({ point, lot });
  }
  return kept.sort((a, b) => a.point[1] - b.point[1] || a.point[0] - b.point[0]);
}
