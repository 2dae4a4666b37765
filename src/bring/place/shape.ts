/** A geometry laid into the plane, and how it lies to a line of play. */
import type { Position as GeoJsonPosition } from "geojson";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import { areaSquareMetres, contains, innerPoint } from "../../geo/area.ts";
import { boxAround, grow, overlaps } from "../../geo/box.ts";
import type { Frame } from "../../geo/frame.ts";
import { locate, type Line } from "../../geo/line.ts";
import type { Area, Point } from "../../geo/position.ts";
import { crossing, densify, nearestOn } from "../../geo/segment.ts";
import { distanceMetres } from "../../geo/vector.ts";

export interface Shape {
  readonly points: readonly Point[];
  readonly lines: readonly (readonly Point[])[];
  readonly areas: readonly Area[];
}

export function shapeOf(geometry: CheckedGeometry, frame: Frame): Shape {
  const point = ([x, y]: GeoJsonPosition): Point => frame.toPlane([x!, y!]);
  const path = (line: readonly GeoJsonPosition[]): Point[] => line.map(point);
  const nothing = { points: [], lines: [], areas: [] };
  switch (geometry.type) {
    case "Point":
      return { ...nothing, points: [point(geometry.coordinates)] };
    case "MultiPoint":
      return { ...nothing, points: path(geometry.coordinates) };
    case "LineString":
      return { ...nothing, lines: [path(geometry.coordinates)] };
    case "MultiLineString":
      return { ...nothing, lines: geometry.coordinates.map(path) };
    case "Polygon":
      return { ...nothing, areas: [geometry.coordinates.map(path)] };
    case "MultiPolygon":
      return { ...nothing, areas: geometry.coordinates.map((area) => area.map(path)) };
  }
}

/** A point of the plane as a position, to a centimetre. */
export function positionAt(point: Point, frame: Frame): GeoJsonPosition {
  const [longitude, latitude] = frame.toPosition(point);
  return [Number(longitude.toFixed(7)), Number(latitude.toFixed(7))];
}

/** The paths of a shape: its lines, or its areas' rings. */
export const pathsOf = ({ lines, areas }: Shape): readonly (readonly Point[])[] => [...lines, ...areas.flat()];

/** One point to stand for a shape: itself, halfway along its first line, or within its largest area. */
export function middleOf({ points, lines, areas }: Shape): Point {
  if (areas.length > 0)
    return innerPoint(areas.reduce((best, area) => (areaSquareMetres(area) > areaSquareMetres(best) ? area : best)));
  const line = lines[0];
  return points[0] ?? line![Math.floor(line!.length / 2)]!;
}

export const covers = ({ areas }: Shape, point: Point): boolean => areas.some((area) => contains(area, point));

/** Distance of a point from a path. */
export function distanceFromPath(path: readonly Point[], point: Point): number {
  let best = path.length === 1 ? distanceMetres(path[0]!, point) : Infinity;
  for (let i = 1; i < path.length; i++)
    best = Math.min(best, distanceMetres(point, nearestOn(path[i - 1]!, path[i]!, point)));
  return best;
}

/** Distance of a point from a shape, 0 within it. */
export function distanceFromShape(shape: Shape, point: Point): number {
  if (covers(shape, point)) return 0;
  const alone = shape.points.map((own) => distanceMetres(own, point));
  return Math.min(Infinity, ...alone, ...pathsOf(shape).map((path) => distanceFromPath(path, point)));
}

export type Side = "left" | "right" | "across";

export interface Lie {
  /** Distance of the shape's nearest part from the line as drawn; 0 where they meet. */
  readonly distanceMetres: number;
  /** Along the line, of the shape's nearest part. */
  readonly stationMetres: number;
  /** Of the nearest part, negative to the left; 0 where they meet. */
  readonly offsetMetres: number;
  readonly side: Side;
}

/** Spacing of the places on an outline that are tried. */
const STEP_METRES = 5;

/** Beyond this from a line an outline's own vertices tell enough: the sea may be long. */
const NEAR_METRES = 600;

/** How a shape lies to a line of play. */
export function lieOf(shape: Shape, line: Line): Lie {
  let best: Lie = { distanceMetres: Infinity, stationMetres: 0, offsetMetres: Infinity, side: "left" };
  const offer = (point: Point): void => {
    const distance = distanceFromPath(line.points, point);
    if (distance >= best.distanceMetres) return;
    const { station, offset } = locate(line, point);
    best = {
      distanceMetres: distance,
      stationMetres: station,
      offsetMetres: offset,
      side: offset < 0 ? "left" : "right",
    };
  };
  shape.points.forEach(offer);
  const near = grow(boxAround(line.points), NEAR_METRES);
  const crossings: Point[] = [];
  for (const path of pathsOf(shape)) {
    offer(path[0]!);
    for (let i = 1; i < path.length; i++) {
      const piece: [Point, Point] = [path[i - 1]!, path[i]!];
      if (!overlaps(boxAround(piece), near)) {
        offer(piece[1]);
        continue;
      }
      for (const point of densify(piece, STEP_METRES)) offer(point);
      for (let k = 1; k < line.points.length; k++) {
        const met = crossing(path[i - 1]!, path[i]!, line.points[k - 1]!, line.points[k]!);
        if (met) crossings.push(met);
      }
    }
  }
  // A bend of the outline may come nearer to a corner of the line than any place tried on it.
  for (const corner of line.points) {
    if (covers(shape, corner)) crossings.push(corner);
  }
  if (crossings.length === 0) return best;
  const stations = crossings.map((point) => locate(line, point).station);
  return { distanceMetres: 0, stationMetres: Math.min(...stations), offsetMetres: 0, side: "across" };
}

/** Metres of a line that run within a shape, to the spacing tried. */
export function lengthWithin(shape: Shape, line: Line): number {
  const dense = densify(line.points, STEP_METRES);
  let sum = 0;
  for (let i = 1; i < dense.length; i++) {
    const [a, b] = [dense[i - 1]!, dense[i]!];
    if (covers(shape, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2])) sum += distanceMetres(a, b);
  }
  return sum;
}
