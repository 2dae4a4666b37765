/** What a file holds, whatever its format: the common form the rest of bring works on. */
import type { Geometry } from "geojson";

export type PlainGeometry = Exclude<Geometry, { type: "GeometryCollection" }>;

export interface Brought {
  /** As messages name it: `survey.geojson, feature 3` or `map.osm, way/12`. */
  readonly from: string;
  /** The same from one run to the next, where the file gives the feature an identity. */
  readonly key: string | undefined;
  readonly properties: Readonly<Record<string, unknown>>;
  /** WGS 84, longitude first. */
  readonly geometry: PlainGeometry;
  /** Words around it that may say what it is, such as the folder it lies in. */
  readonly words: readonly string[];
  /** Its properties are OpenStreetMap's tags and all there is to know: nothing is to be guessed from names. */
  readonly mapped: boolean;
}

export interface BroughtFile {
  readonly format: string;
  readonly features: readonly Brought[];
  /** It is OpenStreetMap's data, which asks to be named with its licence wherever it is shown. */
  readonly openStreetMap: boolean;
  /** What could not be read or was assumed, in sentences. */
  readonly notes: readonly string[];
}

/**
 * Simple geometries of any geometry; a collection comes apart, unless it is of one kind and so one thing in
 * several parts.
 */
export function plainGeometries(geometry: Geometry | null | undefined): PlainGeometry[] {
  if (!geometry) return [];
  if (geometry.type !== "GeometryCollection") return [geometry];
  const parts = geometry.geometries.flatMap(plainGeometries);
  if (parts.length < 2) return parts;
  const areas = parts.flatMap((part) =>
    part.type === "Polygon" ? [part.coordinates] : part.type === "MultiPolygon" ? part.coordinates : [],
  );
  if (parts.every(({ type }) => type.endsWith("Polygon"))) return [{ type: "MultiPolygon", coordinates: areas }];
  const lines = parts.flatMap((part) =>
    part.type === "LineString" ? [part.coordinates] : part.type === "MultiLineString" ? part.coordinates : [],
  );
  if (parts.every(({ type }) => type.endsWith("LineString"))) return [{ type: "MultiLineString", coordinates: lines }];
  return parts;
}
