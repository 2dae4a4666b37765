/** From longitude and latitude into the course's plane. */
import type { Position as GeoJsonPosition } from "geojson";
import { coverOf } from "../course/ground-cover.ts";
import type { Feature, FeatureKind } from "../course/types.ts";
import { bandAround } from "../geo/band.ts";
import type { Frame } from "../geo/frame.ts";
import type { Area, Point, Position } from "../geo/position.ts";
import type { PlacedFeature, Shape } from "./types.ts";

/** A GeoJSON position as ours: the reader has checked that it has two or three numbers. */
export const position = (written: GeoJsonPosition): Position =>
  written.length > 2 ? [written[0]!, written[1]!, written[2]!] : [written[0]!, written[1]!];

/** Every position of a feature, in the order written. */
export function positionsOf({ geometry }: Feature): Position[] {
  switch (geometry.type) {
    case "Point":
      return [position(geometry.coordinates)];
    case "MultiPoint":
    case "LineString":
      return geometry.coordinates.map(position);
    case "MultiLineString":
    case "Polygon":
      return geometry.coordinates.flat().map(position);
    case "MultiPolygon":
      return geometry.coordinates.flat(2).map(position);
  }
}

/** A feature laid into a frame. Heights, where written, are averaged and kept beside it. */
export function placeFeature(feature: Feature, frame: Frame, shared: boolean): PlacedFeature {
  const point = (p: GeoJsonPosition): Point => frame.toPlane(position(p));
  const path = (line: readonly GeoJsonPosition[]): Point[] => line.map(point);
  const { geometry } = feature;
  let shape: Shape;
  switch (geometry.type) {
    case "Point":
      shape = { type: "points", points: [point(geometry.coordinates)] };
      break;
    case "MultiPoint":
      shape = { type: "points", points: path(geometry.coordinates) };
      break;
    case "LineString":
      shape = { type: "lines", lines: [path(geometry.coordinates)] };
      break;
    case "MultiLineString":
      shape = { type: "lines", lines: geometry.coordinates.map(path) };
      break;
    case "Polygon":
      shape = { type: "areas", areas: [geometry.coordinates.map(path)] };
      break;
    case "MultiPolygon":
      shape = { type: "areas", areas: geometry.coordinates.map((area) => area.map(path)) };
      break;
  }
  const heights = positionsOf(feature).flatMap(([, , height]) => (height === undefined ? [] : [height]));
  return {
    feature,
    shape,
    cover: coverOf(feature),
    heightMetres: heights.length > 0 ? heights.reduce((a, b) => a + b, 0) / heights.length : undefined,
    shared,
  };
}

/** The areas a feature covers; a line with a width covers its band, other lines and points none. */
export function areasOf({ feature, shape }: PlacedFeature): readonly Area[] {
  if (shape.type === "areas") return shape.areas;
  if (shape.type === "lines" && feature.widthMetres !== undefined && feature.widthMetres > 0) {
    const width = feature.widthMetres;
    return shape.lines.map((line) => bandAround(line, width));
  }
  return [];
}

/** The paths that bound a feature: rings, or lines as they are; a point has none. */
export function boundariesOf(placed: PlacedFeature): readonly (readonly Point[])[] {
  const areas = areasOf(placed);
  if (areas.length > 0) return areas.flat();
  return placed.shape.type === "lines" ? placed.shape.lines : [];
}

/** Every point of a shape. */
export function pointsOf(shape: Shape): readonly Point[] {
  if (shape.type === "points") return shape.points;
  if (shape.type === "lines") return shape.lines.flat();
  return shape.areas.flat(2);
}

/** The mean of a shape's points: good enough to say in which direction it lies. */
export function centreOf(shape: Shape): Point {
  const points = pointsOf(shape);
  return [
    points.reduce((sum, [x]) => sum + x, 0) / points.length,
    points.reduce((sum, [, y]) => sum + y, 0) / points.length,
  ];
}

/** The areas of all features of a kind. */
export function areasOfKind(placed: Iterable<PlacedFeature>, kind: FeatureKind): Area[] {
  const areas: Area[] = [];
  for (const one of placed) if (one.feature.kind === kind) areas.push(...areasOf(one));
  return areas;
}
