/** Level lines of a grid of numbers, strung together: marching squares with linear crossings. */
import type { Point } from "../geo/position.ts";

export interface Isoline {
  /** In columns and rows of the grid; a closed line does not repeat its first point. */
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/**
 * @param values row by row, `columns * rows` of them; a saddle is parted by the mean of its corners
 * @param within where the level is crossed at all, if that is known: first and last column and row
 */
export function isolines(
  values: ArrayLike<number>,
  columns: number,
  rows: number,
  level: number,
  [firstColumn, firstRow, lastColumn, lastRow]: readonly [number, number, number, number] = [
    0,
    0,
    columns - 1,
    rows - 1,
  ],
): Isoline[] {
  const at = (c: number, r: number): number => values[r * columns + c]! - level;
  // Edges are named by their upper left node: even for the one to the right, odd for the one down.
  const point = (edge: number): Point => {
    const node = edge >> 1;
    const [c, r] = [node % columns, Math.floor(node / columns)];
    const [a, b] = edge % 2 === 0 ? [at(c, r), at(c + 1, r)] : [at(c, r), at(c, r + 1)];
    const t = a / (a - b);
    return edge % 2 === 0 ? [c + t, r] : [c, r + t];
  };
  const next = new Map<number, number[]>();
  const link = (a: number, b: number): void => {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const known = next.get(from);
      if (known) known.push(to);
      else next.set(from, [to]);
    }
  };
  for (let r = firstRow; r < lastRow; r++) {
    for (let c = firstColumn; c < lastColumn; c++) {
      const upper = r * columns + c;
      // Most cells lie wholly on one side: pass them by without making anything.
      const above = values[upper]! > level;
      if (
        above === values[upper + 1]! > level &&
        above === values[upper + columns]! > level &&
        above === values[upper + columns + 1]! > level
      )
        continue;
      const corners = [at(c, r), at(c + 1, r), at(c + 1, r + 1), at(c, r + 1)] as const;
      const node = r * columns + c;
      const edges = [node * 2, (node + 1) * 2 + 1, (node + columns) * 2, node * 2 + 1] as const;
      const crossed = edges.filter((_, k) => corners[k]! > 0 !== corners[(k + 1) % 4]! > 0);
      if (crossed.length === 2) link(crossed[0]!, crossed[1]!);
      else if (crossed.length === 4) {
        const middle = corners[0] + corners[1] + corners[2] + corners[3] > 0;
        const joined = middle === corners[0] > 0;
        link(edges[0], joined ? edges[1] : edges[3]);
        link(edges[2], joined ? edges[3] : edges[1]);
      }
    }
  }
  const used = new Set<number>();
  const walk = (start: number): number[] => {
    const path = [start];
    used.add(start);
    for (let here = start; ;) {
      const onward = next.get(here)!.find((edge) => !used.has(edge));
      if (onward === undefined) return path;
      used.add(onward);
      path.push(onward);
      here = onward;
    }
  };
  const result: Isoline[] = [];
  for (const [edge, neighbours] of next) {
    if (!used.has(edge) && neighbours.length === 1) result.push({ points: walk(edge).map(point), closed: false });
  }
  for (const edge of next.keys()) {
    if (!used.has(edge)) result.push({ points: walk(edge).map(point), closed: true });
  }
  return result;
}
