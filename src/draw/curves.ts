/**
 * Lines as a draughtsman would pull them: curves through surveyed points, even spacing,
 * and the crescents that light leaves on an edge. Rings here are open: the first point is
 * not repeated at the end.
 */
import type { Point } from "../geo/position.ts";
import { cross, distanceMetres as distance, dot } from "../geo/vector.ts";

/** Points every `spacing` or a little less along a line or open ring; ends are kept. */
export function evenly(points: readonly Point[], spacing: number, closed: boolean): Point[] {
  const n = points.length;
  if (n < 2) return points.slice();
  const ends = closed ? n : n - 1;
  let total = 0;
  for (let i = 0; i < ends; i++) total += distance(points[i]!, points[(i + 1) % n]!);
  const pieces = Math.max(closed ? 4 : 1, Math.ceil(total / spacing));
  const step = total / pieces;
  const result: Point[] = [points[0]!];
  let [next, walked] = [step, 0];
  for (let i = 0; i < ends; i++) {
    const [a, b] = [points[i]!, points[(i + 1) % n]!];
    const length = distance(a, b);
    while (next <= walked + length + 1e-9 && result.length < pieces + (closed ? 0 : 1)) {
      const t = length === 0 ? 0 : Math.min(1, (next - walked) / length);
      result.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
      next += step;
    }
    walked += length;
  }
  // The last step would miss the end by the sum of its rounding.
  if (!closed) result[result.length - 1] = points[n - 1]!;
  return result;
}

/**
 * A curve through every given point (centripetal Catmull-Rom, which neither loops nor
 * overshoots however uneven the points lie), as a fine polyline.
 */
export function curveThrough(points: readonly Point[], closed: boolean, step: number): Point[] {
  const n = points.length;
  if (n < 3) return points.slice();
  const at = (i: number): Point => (closed ? points[((i % n) + n) % n]! : points[Math.max(0, Math.min(n - 1, i))]!);
  const result: Point[] = [];
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const knot = (a: Point, b: Point): number => Math.max(1e-6, Math.sqrt(distance(a, b)));
    const [d1, d2, d3] = [knot(p0, p1), knot(p1, p2), knot(p2, p3)];
    const pieces = Math.max(1, Math.ceil(distance(p1, p2) / step));
    for (let k = 0; k < pieces; k++) {
      const t = k / pieces;
      result.push(
        [0, 1].map((c) => {
          const [a, b, e, f] = [p0[c]!, p1[c]!, p2[c]!, p3[c]!];
          const m1 = d2 * ((b - a) / d1 - (e - a) / (d1 + d2) + (e - b) / d2);
          const m2 = d2 * ((e - b) / d2 - (f - b) / (d2 + d3) + (f - e) / d3);
          return b + m1 * t + (-3 * b + 3 * e - 2 * m1 - m2) * t * t + (2 * b - 2 * e + m1 + m2) * t * t * t;
        }) as [number, number],
      );
    }
  }
  if (!closed) result.push(points[n - 1]!);
  return result;
}

/** Even knots of a natural outline: the curve through its points, taken every `spacing`. */
export const naturalKnots = (points: readonly Point[], spacing: number, closed: boolean): Point[] =>
  evenly(curveThrough(points, closed, spacing / 3), spacing, closed);

/** Twice the signed area of an open ring; on a sheet (y down) positive is clockwise to the eye. */
export function doubleArea(ring: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) sum += cross(ring[i]!, ring[(i + 1) % ring.length]!);
  return sum;
}

/** Outward unit normals at the points of an open ring. */
export function outwardNormals(ring: readonly Point[]): Point[] {
  const n = ring.length;
  const sign = doubleArea(ring) > 0 ? 1 : -1;
  return ring.map((_, i) => {
    const [a, b] = [ring[(i + n - 1) % n]!, ring[(i + 1) % n]!];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = Math.hypot(dx, dy) || 1;
    return [(sign * dy) / length, (-sign * dx) / length];
  });
}

/** Towards the light: the upper left of the sheet, whichever way the hole runs. */
export const LIGHT: Point = [-Math.SQRT1_2, -Math.SQRT1_2];

/**
 * Crescents along a ring where its outward side faces `towards`, thickest where it faces
 * squarely and running out to nothing: the swelling line of an engraver.
 *
 * @param depth thickness at most; positive goes inward, negative outward
 */
export function crescents(ring: readonly Point[], towards: Point, depth: number): Point[][] {
  const n = ring.length;
  if (n < 4) return [];
  const normals = outwardNormals(ring);
  const weight = normals.map((normal) => Math.max(0, dot(normal, towards)) ** 0.75);
  const on = weight.map((w) => w > 0.05);
  if (on.every(Boolean)) return [];
  const result: Point[][] = [];
  for (let start = 0; start < n; start++) {
    if (!on[start] || on[(start + n - 1) % n]) continue;
    const edge: Point[] = [];
    const inner: Point[] = [];
    for (let k = 0; k < n && on[(start + k) % n]; k++) {
      const i = (start + k) % n;
      const [p, normal] = [ring[i]!, normals[i]!];
      edge.push(p);
      inner.push([p[0] - normal[0] * depth * weight[i]!, p[1] - normal[1] * depth * weight[i]!]);
    }
    if (edge.length >= 3) result.push([...edge, ...inner.reverse()]);
  }
  return result;
}

/** Douglas-Peucker, iterative: fewest points within a tolerance of the line. */
export function simplified(points: readonly Point[], tolerance: number): Point[] {
  if (points.length < 3) return points.slice();
  const keep = new Uint8Array(points.length);
  keep[0] = keep[points.length - 1] = 1;
  const stack: [number, number][] = [[0, points.length - 1]];
  while (stack.length > 0) {
    const [from, to] = stack.pop()!;
    const [a, b] = [points[from]!, points[to]!];
    const length = distance(a, b);
    let [furthest, index] = [tolerance, -1];
    for (let i = from + 1; i < to; i++) {
      const p = points[i]!;
      const off =
        length < 1e-9
          ? distance(a, p)
          : Math.abs(cross([b[0] - a[0], b[1] - a[1]], [p[0] - a[0], p[1] - a[1]])) / length;
      if (off > furthest) [furthest, index] = [off, i];
    }
    if (index < 0) continue;
    keep[index] = 1;
    stack.push([from, index], [index, to]);
  }
  return points.filter((_, i) => keep[i] === 1);
}

/** A polyline whose corners are rounded off with arcs that begin up to `reach` before them. */
export function roundedLine(points: readonly Point[], reach: number, step: number): Point[] {
  if (points.length < 3) return points.slice();
  const result: Point[] = [points[0]!];
  for (let i = 1; i < points.length - 1; i++) {
    const [a, b, c] = [points[i - 1]!, points[i]!, points[i + 1]!];
    const r = Math.min(reach, distance(a, b) * 0.48, distance(b, c) * 0.48);
    const toward = (from: Point, to: Point): Point => {
      const length = distance(from, to) || 1;
      return [from[0] + ((to[0] - from[0]) * r) / length, from[1] + ((to[1] - from[1]) * r) / length];
    };
    const [p, q] = [toward(b, a), toward(b, c)];
    const pieces = Math.max(2, Math.ceil((2 * r) / step));
    for (let k = 0; k <= pieces; k++) {
      const t = k / pieces;
      const [u, v, w] = [(1 - t) * (1 - t), 2 * t * (1 - t), t * t];
      result.push([u * p[0] + v * b[0] + w * q[0], u * p[1] + v * b[1] + w * q[1]]);
    }
  }
  result.push(points[points.length - 1]!);
  return result;
}

/** A line shifted sideways; positive to the right of its direction as the eye sees it on the sheet (y down). */
export function shifted(points: readonly Point[], offset: number): Point[] {
  return points.map((p, i) => {
    const [a, b] = [points[Math.max(0, i - 1)]!, points[Math.min(points.length - 1, i + 1)]!];
    const length = distance(a, b) || 1;
    const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    return [p[0] - dy * offset, p[1] + dx * offset];
  });
}
