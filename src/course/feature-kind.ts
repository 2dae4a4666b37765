/** OpenStreetMap tags to what a feature is for us. */
import { ALL_KINDS, kindFacts, type FeatureKind } from "./kinds.ts";
import type { GeometryType } from "./schema/geometry.ts";

export type Tags = Readonly<Record<string, string | number | boolean>>;

/** Keys that say what a feature is, the first that says something counts. */
const KEYS = [
  "golf",
  "leisure",
  "man_made",
  "building",
  "barrier",
  "waterway",
  "highway",
  "natural",
  "landuse",
] as const;

/** By tag (`golf=bunker`, `building=*`) the kinds it may mean, told apart by their geometry. */
const KINDS_BY_TAG = new Map<string, FeatureKind[]>();
for (const kind of ALL_KINDS) {
  for (const tag of kindFacts(kind).tags) KINDS_BY_TAG.set(tag, [...(KINDS_BY_TAG.get(tag) ?? []), kind]);
}

/** Values of a key that the guide knows, for messages. */
export const valuesOf = (key: string): readonly string[] =>
  [...KINDS_BY_TAG.keys()]
    .filter((tag) => tag.startsWith(`${key}=`) && !tag.endsWith("*"))
    .map((tag) => tag.slice(key.length + 1));

/** Geometries that a tag may have. */
export const geometriesOf = (tag: string): readonly GeometryType[] =>
  (KINDS_BY_TAG.get(tag) ?? []).flatMap((kind) => kindFacts(kind).geometry);

function kindAmong(keys: readonly string[], tags: Tags, geometry: GeometryType | undefined): FeatureKind {
  for (const key of keys) {
    const value = tags[key];
    if (value === undefined) continue;
    const kinds = KINDS_BY_TAG.get(`${key}=${value}`) ?? KINDS_BY_TAG.get(`${key}=*`);
    if (kinds === undefined) continue;
    return (
      kinds.find((kind) => geometry !== undefined && kindFacts(kind).geometry.includes(geometry)) ?? kinds.at(-1)!
    );
  }
  return "other";
}

/** The kind of a feature, or `"other"` for tags Marram does not draw or measure. */
export const featureKind = (tags: Tags, geometry: GeometryType): FeatureKind => kindAmong(KEYS, tags, geometry);

/**
 * Keys that say what ground lies where the club has marked a penalty area: stakes stand round gorse as round
 * water.
 */
const GROUND_KEYS = ["waterway", "natural", "wetland", "landuse"] as const;

/** The kind of ground the tags name; `"other"` where it is none of ours, undefined where they name none. */
export const kindOfGround = (tags: Tags): FeatureKind | undefined =>
  GROUND_KEYS.some((key) => tags[key] !== undefined) ? kindAmong(GROUND_KEYS, tags, undefined) : undefined;
