/** A hole's features and positions as the maps are given them: flat, and rounded to a centimetre. */
import type { Feature as GeoFeature, Position as GeoPosition } from "geojson";
import { isHazard } from "../../course/kinds.ts";
import type { Feature } from "../../course/types.ts";
import type { Bounds, LonLat, MapFeatureProperties } from "../../contract/map-data.ts";
import type { Frame } from "../../geo/frame.ts";
import type { Point, Position } from "../../geo/position.ts";
import { positionsOf } from "../../measure/place.ts";
import type { PlacedFeature } from "../../measure/types.ts";

export const isDrawn = ({ feature: { kind } }: PlacedFeature): boolean =>
  kind !== "line-of-play" && kind !== "tee-marker";

export function mapFeature(
  { feature, cover, shared }: PlacedFeature,
  data: "hole" | "course",
  hole?: number,
): GeoFeature<Feature["geometry"], MapFeatureProperties> {
  const { id, kind, name, widthMetres, tags } = feature;
  const landmark = tags["man_made"];
  return {
    type: "Feature",
    properties: {
      id,
      kind,
      ...(name !== undefined && { name }),
      ...(typeof landmark === "string" && { landmark }),
      ...(isHazard(kind) && { hazard: true as const }),
      ...(cover !== "none" && { cover }),
      ...(widthMetres !== undefined && { widthMetres }),
      ...(data === "hole" && shared && { shared: true as const }),
      ...(hole !== undefined && { hole }),
    },
    geometry: flat(feature.geometry),
  };
}

/** The geometry without heights, rounded. */
function flat(geometry: Feature["geometry"]): Feature["geometry"] {
  const one = ([longitude, latitude]: GeoPosition): GeoPosition => [rounded(longitude!, 7), rounded(latitude!, 7)];
  const many = (line: readonly GeoPosition[]): GeoPosition[] => line.map(one);
  switch (geometry.type) {
    case "Point":
      return { type: "Point", coordinates: one(geometry.coordinates) };
    case "MultiPoint":
      return { type: "MultiPoint", coordinates: many(geometry.coordinates) };
    case "LineString":
      return { type: "LineString", coordinates: many(geometry.coordinates) };
    case "MultiLineString":
      return { type: "MultiLineString", coordinates: geometry.coordinates.map(many) };
    case "Polygon":
      return { type: "Polygon", coordinates: geometry.coordinates.map(many) };
    case "MultiPolygon":
      return { type: "MultiPolygon", coordinates: geometry.coordinates.map((area) => area.map(many)) };
  }
}

export function boundsOf(features: readonly Feature[]): Bounds {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const feature of features) {
    for (const [longitude, latitude] of positionsOf(feature)) {
      west = Math.min(west, longitude);
      south = Math.min(south, latitude);
      east = Math.max(east, longitude);
      north = Math.max(north, latitude);
    }
  }
  return [rounded(west, 7), rounded(south, 7), rounded(east, 7), rounded(north, 7)];
}

export const positions = (points: readonly Point[], frame: Frame): LonLat[] =>
  points.map((point) => lonLat(frame.toPosition(point)));

export const lonLat = ([longitude, latitude]: Position): LonLat => [rounded(longitude, 7), rounded(latitude, 7)];

export const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));
