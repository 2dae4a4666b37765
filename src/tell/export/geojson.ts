/** A course as one RFC 7946 FeatureCollection. */
import type { Feature as GeoJsonFeature, FeatureCollection } from "geojson";
import type { Course } from "../../course/types.ts";
import { exportFeatures } from "./features.ts";

/**
 * Every feature with its tags as properties, its own `id` and, its `hole`, which is
 * `all` for what holes share. Feature ids are unique in the collection: `7/bunker-left-1`.
 */
export function courseGeoJson(course: Course): FeatureCollection {
  return {
    type: "FeatureCollection",
    features: exportFeatures(course).map(({ hole, feature, tags }): GeoJsonFeature => ({
      type: "Feature",
      id: hole === undefined ? feature.id : `${hole}/${feature.id}`,
      properties: { hole: hole ?? "all", id: feature.id, ...tags },
      geometry: feature.geometry,
    })),
  };
}

/** One feature to a line, so that a difference of two exports can be read. */
export function writeGeoJson({ features }: FeatureCollection): string {
  return `{"type":"FeatureCollection","features":[\n${features.map((feature) => JSON.stringify(feature)).join(",\n")}\n]}\n`;
}
