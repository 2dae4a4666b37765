/**
 * Water as charts show it: lines that follow the shore and thin out from it.
 *
 * They are level lines of the distance to the shore. Offsetting polygons instead would
 * need care at every narrow and every overlap of two surveyed waters; on a grid of
 * distances a narrow simply closes and overlaps are one water.
 */
import { contains } from "../geo/area.ts";
import { boxAround, grow, type Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { nearestShare } from "../geo/segment.ts";
import { clipLine, inBox } from "./clip.ts";
import { CoverGrid } from "./cover.ts";
import { evenly, simplified } from "./curves.ts";
import { isolines } from "./isolines.ts";

type Rings = readonly (readonly Point[])[];

/** Signed distances to the shore on a grid: positive in the water. */
interface ShoreField {
  readonly columns: number;
  readonly rows: number;
  readonly cell: number;
  readonly box: Box;
  readonly values: Float64Array;
  /** Columns and rows that hold all its water, and one more on each side: first and last. */
  readonly wet: readonly [number, number, number, number];
}

/** Nearer to the box's edge than this an outline is the cut, not a shore. */
const CUT = 12;

function shoreField(waters: readonly Rings[], box: Box, cell: number, reach: number): ShoreField {
  const columns = Math.ceil((box[2] - box[0]) / cell) + 1;
  const rows = Math.ceil((box[3] - box[1]) / cell) + 1;
  const values = new Float64Array(columns * rows).fill(reach * 2);
  // Where water was cut to the box there is no shore; smoothing has rounded the cut's corners off a little.
  const cut = grow(box, -CUT);
  const boxes = waters.map((rings) => boxAround(rings[0]!));
  waters.forEach((rings, water) => {
    for (const ring of rings) {
      for (let i = 0; i < ring.length; i++) {
        const [a, b] = [ring[i]!, ring[(i + 1) % ring.length]!];
        const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
        if (!inBox(middle, cut)) continue;
        if (waters.some((other, k) => k !== water && inBox(middle, boxes[k]!) && contains(other, middle))) continue;
        const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
        const [c0, c1] = [Math.min(a[0], b[0]) - reach, Math.max(a[0], b[0]) + reach].map((x) =>
          Math.round((x - box[0]) / cell),
        ) as [number, number];
        const [r0, r1] = [Math.min(a[1], b[1]) - reach, Math.max(a[1], b[1]) + reach].map((y) =>
          Math.round((y - box[1]) / cell),
        ) as [number, number];
        for (let row = Math.max(0, r0); row <= Math.min(rows - 1, r1); row++) {
          for (let column = Math.max(0, c0); column <= Math.min(columns - 1, c1); column++) {
            const [x, y] = [box[0] + column * cell, box[1] + row * cell];
            const share = nearestShare(a, b, x, y);
            const [offX, offY] = [x - a[0] - dx * share, y - a[1] - dy * share];
            const index = row * columns + column;
            const known = values[index]!;
            // A root is drawn only where the squares leave it open.
            if (offX * offX + offY * offY > known * known * 1.000001) continue;
            const distance = Math.hypot(offX, offY);
            if (distance < known) values[index] = distance;
          }
        }
      }
    }
  });
  // A grid whose cells have their middles on the nodes tells which nodes are wet, scan line by scan line.
  const wet = new CoverGrid(
    [box[0] - cell / 2, box[1] - cell / 2, box[0] + (columns - 0.5) * cell, box[1] + (rows - 0.5) * cell],
    cell,
  );
  for (const rings of waters) wet.fill(rings, "water");
  let [left, top, right, bottom] = [columns, rows, -1, -1];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const i = row * columns + column;
      if (wet.codes[i] === 0) {
        values[i]! *= -1;
        continue;
      }
      left = Math.min(left, column);
      right = Math.max(right, column);
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
    }
  }
  return {
    columns,
    rows,
    cell,
    box,
    values,
    wet: [
      Math.max(0, left - 1),
      Math.max(0, top - 1),
      Math.min(columns - 1, right + 1),
      Math.min(rows - 1, bottom + 1),
    ],
  };
}

export interface WaterLine {
  /** Which distance, counted from the shore. */
  readonly rank: number;
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** Lines at the given distances from the shores of waters (smooth open rings cut to `box`). */
export function waterLines(
  waters: readonly Rings[],
  box: Box,
  distances: readonly number[],
  knots: number,
): WaterLine[] {
  if (waters.length === 0) return [];
  const reach = (distances[distances.length - 1] ?? 0) + 6;
  const field = shoreField(waters, box, 3, reach);
  // Along the cut the field ends; what runs there is no line of the water's.
  const cut = grow(box, -CUT);
  return distances.flatMap((distance, rank) =>
    isolines(field.values, field.columns, field.rows, distance, field.wet)
      .map(({ points, closed }) => ({
        closed,
        points: points.map(([x, y]): Point => [box[0] + x * field.cell, box[1] + y * field.cell]),
      }))
      .flatMap(({ points, closed }) => {
        if (points.every((p) => inBox(p, cut))) return [{ points, closed }];
        return clipLine(closed ? [...points, points[0]!] : points, cut).map((piece) => ({
          points: piece,
          closed: false,
        }));
      })
      .filter(({ points }) => points.length > 5)
      .map(({ points, closed }) => ({
        rank,
        closed,
        // Farther lines are smoother, as the eye expects of water.
        points: evenly(simplified(points, 0.35), knots * (2 + 0.3 * rank), closed),
      })),
  );
}

/** A burn as a ribbon that widens downstream; GeoJSON lines of `waterway` run with the water. */
export function ribbon(line: readonly Point[], width: number, knots: number): Point[] {
  const points = evenly(line, knots, false);
  const n = points.length;
  const left: Point[] = [];
  const right: Point[] = [];
  points.forEach((p, i) => {
    const [a, b] = [points[Math.max(0, i - 1)]!, points[Math.min(n - 1, i + 1)]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
    const half = (width / 2) * (0.62 + (0.38 * i) / Math.max(1, n - 1));
    left.push([p[0] + nx * half, p[1] + ny * half]);
    right.push([p[0] - nx * half, p[1] - ny * half]);
  });
  return [...left, ...right.reverse()];
}
