/** GeoJSON for the map's own sources. */
import type { Feature, FeatureCollection, Position } from "geojson";
import type { LonLat } from "../../contract/map-data.ts";

type Properties = Readonly<Record<string, string | number | boolean>>;

export const collection = (features: Feature[]): FeatureCollection => ({ type: "FeatureCollection", features });

export const point = (position: LonLat, properties: Properties): Feature => ({
  type: "Feature",
  properties: { ...properties },
  geometry: { type: "Point", coordinates: [...position] },
});

export const line = (positions: readonly LonLat[], properties: Properties): Feature => ({
  type: "Feature",
  properties: { ...properties },
  geometry: { type: "LineString", coordinates: positions.map((position): Position => [...position]) },
});

/** @param ring closed */
export const area = (ring: readonly LonLat[], properties: Properties): Feature => ({
  type: "Feature",
  properties: { ...properties },
  geometry: { type: "Polygon", coordinates: [ring.map((position): Position => [...position])] },
});
