/** A course as one RFC 7946 FeatureCollection. */
import type { Feature as GeoJsonFeature, FeatureCollection } from "geojson";
import { creditLines } from "../../course/credits.ts";
import type { Course } from "../../course/types.ts";
import { exportFeatures } from "./features.ts";

/** With whom its licences ask to name: a foreign member (RFC 7946, section 6.1). */
export interface AttributedCollection extends FeatureCollection {
  readonly attribution?: string;
}

/**
 * Every feature with its tags as properties, its own `id` and, its `hole`, which is
 * `all` for what holes share. Feature ids are unique in the collection: `7/bunker-left-1`.
 */
export function courseGeoJson(course: Course): AttributedCollection {
  const credits = creditLines(course)
    .map(({ text }) => text)
    .join("; ");
  return {
    type: "FeatureCollection",
    ...(credits === "" ? {} : { attribution: credits }),
    features: exportFeatures(course).map(({ hole, feature, tags }): GeoJsonFeature => ({
      type: "Feature",
      id: hole === undefined ? feature.id : `${hole}/${feature.id}`,
      properties: { hole: hole ?? "all", id: feature.id, ...tags },
      geometry: feature.geometry,
    })),
  };
}

/** One feature to a line, so that a difference of two exports can be read. */
export function writeGeoJson({ features, attribution }: AttributedCollection): string {
  const credit = attribution === undefined ? "" : `"attribution":${JSON.stringify(attribution)},`;
  return `{"type":"FeatureCollection",${credit}"features":[\n${features.map((feature) => JSON.stringify(feature)).join(",\n")}\n]}\n`;
}
