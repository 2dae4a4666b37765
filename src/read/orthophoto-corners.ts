/** A picture laid on the earth by its four corners. */
import type { Position } from "../geo/position.ts";
import { unitSquareOf } from "../terrain/web-mercator.ts";

/** Scales the unit square so that numbers about a course are near 1. */
const SCALE = 2 ** 16;

/**
 * From positions to pixels by the projective map that takes the corners, clockwise from the
 * upper left, to the picture's: straight lines on a Web Mercator map stay straight in the
 * picture. Whole numbers are the middles of pixels.
 *
 * @param corners four, no three of them in line.
 */
export function perspective(
  corners: readonly Position[],
  columns: number,
  rows: number,
): (position: Position) => readonly [column: number, row: number] {
  const [ox, oy] = unitSquareOf(corners[0]!);
  const local = (position: Position): readonly [number, number] => {
    const [x, y] = unitSquareOf(position);
    return [(x - ox) * SCALE, (y - oy) * SCALE];
  };
  const pictured = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  // u = (h0 x + h1 y + h2) / (h6 x + h7 y + 1), v likewise with h3 to h5: two equations a corner.
  const equations = corners.flatMap((corner, i) => {
    const [x, y] = local(corner);
    const [u, v] = pictured[i]!;
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, v],
    ];
  });
  const h = solve(equations);
  return (position) => {
    const [x, y] = local(position);
    const w = h[6]! * x + h[7]! * y + 1;
    return [((h[0]! * x + h[1]! * y + h[2]!) / w) * columns - 0.5, ((h[3]! * x + h[4]! * y + h[5]!) / w) * rows - 0.5];
  };
}

/** Gaussian elimination with row exchange; the last column is the right side. */
function solve(equations: number[][]): number[] {
  const n = equations.length;
  const rows = equations.map((row) => [...row]);
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let j = i + 1; j < n; j++) if (Math.abs(rows[j]![i]!) > Math.abs(rows[pivot]![i]!)) pivot = j;
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    const head = rows[i]!;
    for (let j = 0; j < n; j++) {
      if (j === i) continue;
      const share = rows[j]![i]! / head[i]!;
      for (let k = i; k <= n; k++) rows[j]![k]! -= share * head[k]!;
    }
  }
  return rows.map((row, i) => row[n]! / row[i]!);
}
