/** Cutting shapes to the sheet. */
import type { Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";

/**
 * An open ring cut to a box (Sutherland and Hodgman, 1974). Where a ring leaves and comes
 * back the result runs along the box's edge; boxes are therefore larger than what is seen.
 */
export function clipRing(ring: readonly Point[], [minX, minY, maxX, maxY]: Box): Point[] {
  let points = ring.slice();
  for (const [axis, limit, sign] of [
    [0, minX, 1],
    [0, maxX, -1],
    [1, minY, 1],
    [1, maxY, -1],
  ] as const) {
    const inside = (p: Point): boolean => sign * (p[axis] - limit) >= 0;
    const result: Point[] = [];
    for (let i = 0; i < points.length; i++) {
      const [a, b] = [points[i]!, points[(i + 1) % points.length]!];
      if (inside(a)) result.push(a);
      if (inside(a) !== inside(b)) {
        const t = (limit - a[axis]) / (b[axis] - a[axis]);
        const other = a[1 - axis]! + (b[1 - axis]! - a[1 - axis]!) * t;
        result.push(axis === 0 ? [limit, other] : [other, limit]);
      }
    }
    points = result;
    if (points.length === 0) break;
  }
  return points;
}

/** The pieces of a polyline inside a box (Liang and Barsky, 1984, piece by piece). */
export function clipLine(line: readonly Point[], box: Box): Point[][] {
  const pieces: Point[][] = [];
  let current: Point[] = [];
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const cut = clipSegment(a, b, box);
    if (!cut) {
      if (current.length > 1) pieces.push(current);
      current = [];
      continue;
    }
    const [from, to] = cut;
    if (current.length === 0) current.push(lerp(a, b, from));
    current.push(lerp(a, b, to));
    if (to < 1) {
      pieces.push(current);
      current = [];
    }
  }
  if (current.length > 1) pieces.push(current);
  return pieces;
}

const lerp = (a: Point, b: Point, t: number): Point =>
  t === 0 ? a : t === 1 ? b : [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

function clipSegment(a: Point, b: Point, [minX, minY, maxX, maxY]: Box): [number, number] | undefined {
  let [from, to] = [0, 1];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  for (const [p, q] of [
    [-dx, a[0] - minX],
    [dx, maxX - a[0]],
    [-dy, a[1] - minY],
    [dy, maxY - a[1]],
  ] as const) {
    if (p === 0) {
      if (q < 0) return undefined;
      continue;
    }
    const t = q / p;
    if (p < 0) {
      if (t > to) return undefined;
      from = Math.max(from, t);
    } else {
      if (t < from) return undefined;
      to = Math.min(to, t);
    }
  }
  return from <= to ? [from, to] : undefined;
}

export const inBox = ([x, y]: Point, [minX, minY, maxX, maxY]: Box): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

/**
 * The water's side of coastlines inside a box, as rings. By OpenStreetMap's rule the sea
 * lies to the right of a coastline; a ring is closed along the box's edge, clockwise to
 * the eye. Pieces that begin or end inside the box are joined straight to its edge.
 */
export function seaFromCoast(coastlines: readonly (readonly Point[])[], box: Box): Point[][] {
  const pieces = coastlines.flatMap((line) => clipLine(line, box));
  const open = pieces.map((piece) => ({
    piece,
    start: perimeter(piece[0]!, box),
    end: perimeter(piece[piece.length - 1]!, box),
  }));
  const left = new Set(open.keys());
  const rings: Point[][] = [];
  for (const first of open.keys()) {
    if (!left.has(first)) continue;
    const ring: Point[] = [];
    let index: number | undefined = first;
    while (index !== undefined && left.has(index)) {
      left.delete(index);
      const { piece, end } = open[index]!;
      ring.push(...piece);
      // Onwards along the edge, clockwise, to the next coast that begins there.
      let best: { index: number; gap: number } | undefined;
      for (const [k, candidate] of open.entries()) {
        if (k !== first && !left.has(k)) continue;
        const gap = (candidate.start - end + 4) % 4;
        if (!best || gap < best.gap) best = { index: k, gap };
      }
      if (!best) break;
      for (let corner = Math.floor(end) + 1; corner < end + best.gap; corner++) ring.push(cornerOf(corner % 4, box));
      index = best.index === first ? undefined : best.index;
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

/** Place along a box's edge, clockwise from the upper left, one per side. */
function perimeter([x, y]: Point, [minX, minY, maxX, maxY]: Box): number {
  const gaps = [y - minY, maxX - x, maxY - y, x - minX];
  const side = gaps.indexOf(Math.min(...gaps));
  const [u, v] = [(x - minX) / (maxX - minX), (y - minY) / (maxY - minY)];
  const along = [u, v, 1 - u, 1 - v][side]!;
  return side + Math.max(0, Math.min(1 - 1e-9, along));
}

const cornerOf = (index: number, [minX, minY, maxX, maxY]: Box): Point =>
  (
    [
      [minX, minY],
      [maxX, minY],
      [maxX, maxY],
      [minX, maxY],
    ] as const
  )[index]!;
