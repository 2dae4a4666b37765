/**
 * A course's features as every export has them: with the hole they belong to and, on lines of play, what the
 * card says.
 */
import type { Course, Feature, Hole, PerGender } from "../../course/types.ts";
import { yardsFromMetres } from "../../geo/units.ts";

export interface ExportFeature {
  /** Undefined for what the course keeps for all holes. */
  readonly hole: number | undefined;
  readonly feature: Feature;
  /** Its tags and, for a line of play, OSM's ref, par, handicap, name and dist. */
  readonly tags: Readonly<Record<string, string | number | boolean>>;
}

const perGender = (key: string, { men, women }: PerGender): Record<string, number> =>
  men === women ? { [key]: men } : { [`${key}:men`]: men, [`${key}:women`]: women };

/** The card as tags; lengths say their unit, which OSM's wiki leaves open. */
const cardTags = (hole: Hole): Record<string, string | number> => ({
  ref: String(hole.number),
  name: hole.name,
  ...perGender("par", hole.par),
  ...perGender("handicap", hole.strokeIndex),
  ...Object.fromEntries(
    Object.entries(hole.cardMetres).map(([tee, metres]) => [
      `dist:${tee}`,
      `${Math.round(yardsFromMetres(metres))} yd`,
    ]),
  ),
});

/** All of a course's features, shared ones first, then hole by hole as written. */
export function exportFeatures(course: Course): ExportFeature[] {
  return [
    ...course.features.map((feature): ExportFeature => ({ hole: undefined, feature, tags: feature.tags })),
    ...course.holes.flatMap((hole) =>
      hole.features.map((feature): ExportFeature => ({
        hole: hole.number,
        feature,
        tags: feature.kind === "line-of-play" ? { ...feature.tags, ...cardTags(hole) } : feature.tags,
      })),
    ),
  ];
}
