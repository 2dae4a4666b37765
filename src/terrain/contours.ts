/**
 * Contour lines.
 *
 * d3-contour finds which grid edges a level crosses and strings them together (marching
 * squares). It closes every line along the edge of its grid and treats unknown heights as
 * endlessly deep; a map wants neither, so it is asked for the edges only, and the lines are
 * laid here: a crossing beside unknown ground or outside the grid ends the line.
 *
 * The grid is cut into blocks. A block only needs the levels between its own lowest and
 * highest height, which on a course is a few of forty; lines are joined across blocks by
 * the edge they share, so the cut leaves no mark.
 */
import { contours as marchingSquares } from "d3-contour";
import type { Area, Point } from "../geo/position.ts";
import { boxOf } from "../geo/area.ts";
import { clipLine } from "./clip-line.ts";
import { columnRowOf, type HeightGrid } from "./grid.ts";
import { simplifyLine } from "./simplify-line.ts";

export interface Contour {
  readonly heightMetres: number;
  /** At least two points; first and last are the same when closed. Higher ground lies on the left. */
  readonly points: readonly Point[];
  readonly closed: boolean;
}

export interface ContourOptions {
  /** Metres between contours. */
  readonly intervalMetres: number;
  /** Height that the levels are counted from; 0 when left out. */
  readonly baseMetres?: number;
  /** Only inside this area. */
  readonly within?: Area;
  /** Furthest that a line may stray when points are left out; 0, all points, when left out. */
  readonly toleranceMetres?: number;
  /** Open lines and rings shorter than this are left out: specks. */
  readonly leastLengthMetres?: number;
}

/** Steps to a block's side: of 32 to 128 none is faster than another by much. */
const BLOCK = 64;

/**
 * Contours of a grid, lowest first, in a fixed order.
 *
 * @throws RangeError when the interval is not above 0.
 */
export function contoursOf(grid: HeightGrid, options: ContourOptions): Contour[] {
  const { intervalMetres, baseMetres = 0, within, toleranceMetres = 0, leastLengthMetres = 0 } = options;
  if (!(intervalMetres > 0)) throw new RangeError(`Contours need an interval above 0 m, not ${intervalMetres}.`);
  const found = new Map<number, Fragment[]>();
  const range = within ? heightsAbout(grid, within) : EVERY_HEIGHT;
  for (let row = 0; row < grid.rows - 1; row += BLOCK) {
    for (let column = 0; column < grid.columns - 1; column += BLOCK) {
      contourBlock(grid, column, row, intervalMetres, baseMetres, range, found);
    }
  }
  const result: Contour[] = [];
  for (const level of [...found.keys()].sort((a, b) => a - b)) {
    const heightMetres = baseMetres + level * intervalMetres;
    for (const edges of join(found.get(level)!)) {
      for (const whole of layOut(grid, edges, heightMetres)) {
        for (const part of within ? clipLine(whole, within) : [whole]) {
          const points = simplifyLine(part, toleranceMetres);
          if (points.length < 2 || lengthOf(points) < leastLengthMetres) continue;
          const [first, last] = [points[0]!, points[points.length - 1]!];
          result.push({ heightMetres, points, closed: first[0] === last[0] && first[1] === last[1] });
        }
      }
    }
  }
  return result;
}

type HeightRange = readonly [lowest: number, highest: number];

const EVERY_HEIGHT: HeightRange = [-Infinity, Infinity];

/** Lowest and highest height on and around an area: contours of other heights do not run inside it. */
function heightsAbout(grid: HeightGrid, area: Area): HeightRange {
  const [west, south, east, north] = boxOf(area);
  const [left, top] = columnRowOf(grid, [west, north]);
  const [right, bottom] = columnRowOf(grid, [east, south]);
  let [lowest, highest] = [Infinity, -Infinity];
  for (let row = Math.max(0, Math.floor(top) - 1); row <= Math.min(grid.rows - 1, Math.ceil(bottom) + 1); row++) {
    for (
      let column = Math.max(0, Math.floor(left) - 1);
      column <= Math.min(grid.columns - 1, Math.ceil(right) + 1);
      column++
    ) {
      const height = grid.heights[row * grid.columns + column]!;
      if (height < lowest) lowest = height;
      if (height > highest) highest = height;
    }
  }
  return [lowest, highest];
}

/**
 * A run of crossed grid edges. An edge is named by the middle of it, in half steps: with
 * d = 2 * columns + 1 edges to a row of names, 2 * column + 2 * row * d.
 */
type Fragment = number[];

const namesPerRow = (grid: HeightGrid): number => 2 * grid.columns + 1;

/** Adds a block's fragments, by level, to those found. */
function contourBlock(
  grid: HeightGrid,
  column0: number,
  row0: number,
  interval: number,
  base: number,
  [least, most]: HeightRange,
  found: Map<number, Fragment[]>,
): void {
  const columns = Math.min(BLOCK + 1, grid.columns - column0);
  const rows = Math.min(BLOCK + 1, grid.rows - row0);
  const values: number[] = new Array(columns * rows);
  let lowest = Infinity;
  let highest = -Infinity;
  for (let row = 0, i = 0; row < rows; row++) {
    const start = (row0 + row) * grid.columns + column0;
    for (let column = 0; column < columns; column++, i++) {
      const height = grid.heights[start + column]!;
      values[i] = height;
      if (height < lowest) lowest = height;
      if (height > highest) highest = height;
    }
  }
  const squares = marchingSquares().size([columns, rows]).smooth(false);
  const perRow = namesPerRow(grid);
  // A level is crossed when some height is below it and some is not.
  const firstLevel = Math.floor((lowest - base) / interval) + 1;
  for (let level = firstLevel; base + level * interval <= highest; level++) {
    const height = base + level * interval;
    if (height <= lowest || height < least) continue;
    if (height > most) break;
    const { coordinates } = squares.contour(values, height);
    let fragments = found.get(level);
    if (!fragments) found.set(level, (fragments = []));
    for (const polygon of coordinates) {
      for (const ring of polygon) {
        // d3 puts the height of column 0, row 0 at (0.5, 0.5): its (x, y) is edge (2x - 1, 2y - 1) in half steps.
        const names = ring.map((place) => {
          const x = place[0]!;
          const y = place[1]!;
          return x <= 0 || y <= 0 || x >= columns || y >= rows
            ? OUTSIDE
            : 2 * column0 + 2 * x - 1 + (2 * row0 + 2 * y - 1) * perRow;
        });
        splitRing(names, fragments);
      }
    }
  }
}

const OUTSIDE = -1;

/** The stretches of a closed ring of names without those outside. */
function splitRing(ring: readonly number[], into: Fragment[]): void {
  const start = ring.indexOf(OUTSIDE);
  if (start < 0) {
    into.push([...ring]);
    return;
  }
  const count = ring.length - 1;
  let fragment: Fragment = [];
  for (let k = 1; k <= count; k++) {
    const name = ring[(start + k) % count]!;
    if (name !== OUTSIDE) {
      fragment.push(name);
    } else {
      if (fragment.length > 1) into.push(fragment);
      fragment = [];
    }
  }
}

/** Joins fragments end to start; all run with the higher ground on the same side. */
function join(fragments: readonly Fragment[]): Fragment[] {
  const byStart = new Map<number, Fragment>();
  const joined: Fragment[] = [];
  const ends = new Set<number>();
  for (const fragment of fragments) {
    if (fragment[0] === fragment[fragment.length - 1]) {
      joined.push(fragment);
    } else {
      byStart.set(fragment[0]!, fragment);
      ends.add(fragment[fragment.length - 1]!);
    }
  }
  const follow = (start: number): void => {
    const chain: Fragment = [start];
    for (let next = byStart.get(start); next; next = byStart.get(chain[chain.length - 1]!)) {
      byStart.delete(next[0]!);
      for (let i = 1; i < next.length; i++) chain.push(next[i]!);
    }
    joined.push(chain);
  };
  // Lines that begin at the edge first; what is then left goes round.
  for (const start of [...byStart.keys()]) if (!ends.has(start)) follow(start);
  for (const start of [...byStart.keys()]) if (byStart.has(start)) follow(start);
  return joined;
}

/** Places a run of edges in the plane; it breaks where an edge has an unknown end. */
function layOut(grid: HeightGrid, edges: Fragment, level: number): Point[][] {
  const perRow = namesPerRow(grid);
  const { heights, columns, stepMetres, westMetres, northMetres } = grid;
  const parts: Point[][] = [];
  let part: Point[] = [];
  for (const edge of edges) {
    const halfColumn = edge % perRow;
    const halfRow = (edge - halfColumn) / perRow;
    const across = halfColumn % 2 === 1;
    const column = across ? (halfColumn - 1) / 2 : halfColumn / 2;
    const row = across ? halfRow / 2 : (halfRow - 1) / 2;
    const near = heights[row * columns + column]!;
    const far = heights[row * columns + column + (across ? 1 : columns)]!;
    const share = (level - near) / (far - near);
    if (Number.isNaN(share)) {
      if (part.length > 1) parts.push(part);
      part = [];
      continue;
    }
    const x = westMetres + (column + (across ? share : 0)) * stepMetres;
    const y = northMetres - (row + (across ? 0 : share)) * stepMetres;
    const previous = part[part.length - 1];
    // Where a height is the level itself several edges are crossed at one point.
    if (!previous || previous[0] !== x || previous[1] !== y) part.push([x, y]);
  }
  if (part.length > 1) parts.push(part);
  // A ring that broke somewhere still runs on over its own start.
  if (parts.length > 1 && edges[0] === edges[edges.length - 1]) {
    const [first, last] = [parts[0]!, parts[parts.length - 1]!];
    const [a, b] = [first[0]!, last[last.length - 1]!];
    if (a[0] === b[0] && a[1] === b[1]) {
      parts.pop();
      parts[0] = [...last, ...first.slice(1)];
    }
  }
  return parts;
}

function lengthOf(points: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < points.length; i++) {
    length += Math.hypot(points[i]![0] - points[i - 1]![0], points[i]![1] - points[i - 1]![1]);
  }
  return length;
}
