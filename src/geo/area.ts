/**
 * Areas in the plane: size, middle, and where a straight line runs through them.
 * Booleans between polygons are Turf's work; these are the few planar sums behind every
 * figure, kept here because they run thousands of times in a build.
 */
import { boxAround, type Box } from "./box.ts";
import type { Area, Point, Ring } from "./position.ts";
import { along, cross, dot } from "./vector.ts";

/** Twice the signed area of a ring: positive when counter-clockwise. */
function doubleArea(ring: Ring): number {
  let sum = 0;
  for (let i = 1; i < ring.length; i++) sum += cross(ring[i - 1]!, ring[i]!);
  return sum;
}

/** Area in square metres, holes taken out. */
export function areaSquareMetres(area: Area): number {
  return area.reduce((sum, ring, i) => sum + ((i === 0 ? 1 : -1) * Math.abs(doubleArea(ring))) / 2, 0);
}

/** Centre of gravity of the exterior ring. */
export function centroid(area: Area): Point {
  const ring = area[0]!;
  // Summed about the first point: far from the origin the products would lose digits.
  const [x0, y0] = ring[0]!;
  let [sum, x, y] = [0, 0, 0];
  for (let i = 1; i < ring.length; i++) {
    const a: Point = [ring[i - 1]![0] - x0, ring[i - 1]![1] - y0];
    const b: Point = [ring[i]![0] - x0, ring[i]![1] - y0];
    const c = cross(a, b);
    sum += c;
    x += (a[0] + b[0]) * c;
    y += (a[1] + b[1]) * c;
  }
  return sum === 0 ? ring[0]! : [x0 + x / (3 * sum), y0 + y / (3 * sum)];
}

/** Whether a point lies inside an area (even-odd rule, holes respected); its rings may be closed or open. */
export function contains(area: readonly (readonly Point[])[], [px, py]: Point): boolean {
  let inside = false;
  for (const ring of area) {
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const [x1, y1] = ring[j]!;
      const [x2, y2] = ring[i]!;
      if (y1 > py !== y2 > py && px < x1 + ((py - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
    }
  }
  return inside;
}

const boxes = new WeakMap<Area, Box>();

/** The box around an area, found once: areas are not changed. Outside it {@link contains} is false. */
export function boxOf(area: Area): Box {
  const box = boxes.get(area) ?? boxAround(area[0]!);
  boxes.set(area, box);
  return box;
}

/** A stretch of a straight line inside an area: distances from the line's origin, metres. */
export type Chord = readonly [enter: number, exit: number];

/**
 * The stretches in which the straight line through `origin` in a unit `direction` runs
 * inside any of the areas, in order and merged where areas overlap. Distances are
 * signed: negative behind the origin.
 */
export function chords(areas: readonly Area[], origin: Point, direction: Point): Chord[] {
  const all: Chord[] = [];
  for (const area of areas) {
    const hits: number[] = [];
    for (const ring of area) {
      for (let i = 1; i < ring.length; i++) {
        const a: Point = [ring[i - 1]![0] - origin[0], ring[i - 1]![1] - origin[1]];
        const b: Point = [ring[i]![0] - origin[0], ring[i]![1] - origin[1]];
        const sideA = cross(direction, a);
        const sideB = cross(direction, b);
        // Half-open, so a vertex on the line is counted once.
        if (sideA > 0 === sideB > 0) continue;
        const t = sideA / (sideA - sideB);
        hits.push(dot(direction, a) + t * (dot(direction, b) - dot(direction, a)));
      }
    }
    hits.sort((p, q) => p - q);
    for (let i = 0; i + 1 < hits.length; i += 2) all.push([hits[i]!, hits[i + 1]!]);
  }
  all.sort((p, q) => p[0] - q[0]);
  const merged: [number, number][] = [];
  for (const [enter, exit] of all) {
    const previous = merged[merged.length - 1];
    if (previous && enter <= previous[1]) previous[1] = Math.max(previous[1], exit);
    else merged.push([enter, exit]);
  }
  return merged;
}

/** A point certainly inside: the centroid, or the middle of the widest chord through it for a curved outline. */
export function innerPoint(area: Area): Point {
  const centre = centroid(area);
  if (contains(area, centre)) return centre;
  let best: { point: Point; width: number } = { point: centre, width: -1 };
  for (const direction of [
    [1, 0],
    [0, 1],
  ] as const) {
    for (const [enter, exit] of chords([area], centre, direction)) {
      if (exit - enter > best.width)
        best = { point: along(centre, direction, (enter + exit) / 2), width: exit - enter };
    }
  }
  return best.point;
}
