/** A FeatureCollection as features of a hole or a course, each checked on its own. */
import { featureKind } from "../feature-kind.ts";
import { isRecord } from "../record.ts";
import type { Feature } from "../types.ts";
import { SLUG } from "./fields.ts";
import { errorAt, type Finding, type Path } from "./finding.ts";
import { checkGeometry, isGeometryType } from "./geometry.ts";
import { checkTags, checkVocabulary } from "./vocabulary.ts";
import { insteadOf, quote, shown } from "./wording.ts";

/** A feature that is not yet tied to a line of a file. */
export type CheckedFeature = Omit<Feature, "place"> & { readonly path: Path };

export interface CheckedFeatures {
  /** Whether there was a list of features at all, even an empty one. */
  readonly listed: boolean;
  /** Those without an error, in the order written. */
  readonly features: readonly CheckedFeature[];
  /** Every id written, sound feature or not, with where; for counting and for doubled ids. */
  readonly written: readonly WrittenFeature[];
  readonly findings: readonly Finding[];
}

/** What could be read of a feature even when it has mistakes. */
export interface WrittenFeature {
  readonly id: string | undefined;
  readonly golf: string | undefined;
  readonly tee: string | undefined;
  readonly isPoint: boolean;
  readonly path: Path;
}

const NONE = { listed: false, features: [], written: [] } as const;

/** A valid id made of a wrong one: `Kelp Gully` to `kelp-gully`. */
export function slugFrom(text: string): string {
  const plain = text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return plain
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60)
    .replace(/-+$/, "");
}

function unknownMembers(
  value: Readonly<Record<string, unknown>>,
  known: readonly string[],
  path: Path,
  name: string,
): Finding[] {
  return Object.keys(value)
    .filter((key) => !known.includes(key))
    .map((key) =>
      key === "crs"
        ? errorAt(
            [...path, key],
            "geometry-crs",
            `${name}: GeoJSON has no crs any more: positions are longitude and latitude on WGS 84. Convert the coordinates and remove crs.`,
            "key",
          )
        : errorAt(
            [...path, key],
            "unknown-field",
            `${name}: there is no field ${JSON.stringify(key)} here. ${insteadOf(
              key,
              known.filter((k) => k !== "bbox"),
            )}`,
            "key",
          ),
    );
}

/**
 * @param value the `features` field: an RFC 7946 FeatureCollection.
 * @param path where it stands in its document.
 */
export function checkFeatures(value: unknown, path: Path): CheckedFeatures {
  const refuse = (rule: string, message: string, at = path): CheckedFeatures => ({
    ...NONE,
    findings: [errorAt(at, rule, message)],
  });
  if (value === undefined)
    return refuse(
      "missing-field",
      "features are missing: expected a GeoJSON FeatureCollection. Write features: and below it type: FeatureCollection and features: with a list.",
    );
  if (!isRecord(value)) {
    const advice = Array.isArray(value)
      ? " Write type: FeatureCollection and features: one level above the list."
      : " Write type: FeatureCollection and features: with a list.";
    return refuse("feature-collection", `features is ${shown(value)}: expected a GeoJSON FeatureCollection.${advice}`);
  }
  const findings: Finding[] = unknownMembers(value, ["type", "features", "bbox"], path, "FeatureCollection");
  if (value["type"] !== "FeatureCollection") {
    findings.push(
      errorAt(
        [...path, "type"],
        "feature-collection",
        `type is ${shown(value["type"])}: expected FeatureCollection. Write type: FeatureCollection.`,
      ),
    );
  }
  const list = value["features"];
  if (!Array.isArray(list)) {
    findings.push(
      errorAt(
        [...path, "features"],
        "feature-collection",
        `features is ${shown(list)}: expected a list of features. Write - { type: Feature, id: ..., properties: ..., geometry: ... } for each.`,
      ),
    );
    return { ...NONE, findings };
  }
  if (list.length > MOST_FEATURES) {
    findings.push(
      errorAt(
        [...path, "features"],
        "feature-count",
        `There are ${list.length} features here: expected at most ${MOST_FEATURES}. Leave out what the hole does not need.`,
      ),
    );
    return { ...NONE, findings };
  }
  const features: CheckedFeature[] = [];
  const written: WrittenFeature[] = [];
  list.forEach((entry: unknown, i) => {
    const result = checkFeature(entry, [...path, "features", i], i);
    findings.push(...result.findings);
    if (result.written) written.push(result.written);
    if (result.feature) features.push(result.feature);
  });
  return { listed: true, features, written, findings };
}

/** A hole drawn in every detail has a hundred. */
const MOST_FEATURES = 2000;

interface OneFeature {
  readonly feature: CheckedFeature | undefined;
  readonly written: WrittenFeature | undefined;
  readonly findings: readonly Finding[];
}

function checkFeature(entry: unknown, path: Path, index: number): OneFeature {
  const ordinal = `feature ${index + 1}`;
  if (!isRecord(entry)) {
    return {
      feature: undefined,
      written: undefined,
      findings: [
        errorAt(
          path,
          "feature",
          `${ordinal} is ${shown(entry)}: expected { type: Feature, id: ..., properties: ..., geometry: ... }.`,
        ),
      ],
    };
  }
  const id = entry["id"];
  const name = typeof id === "string" && id !== "" ? id : ordinal;
  const findings: Finding[] = unknownMembers(entry, ["type", "id", "properties", "geometry", "bbox"], path, name);
  if (entry["type"] !== "Feature") {
    findings.push(
      errorAt(
        [...path, "type"],
        "feature-type",
        `${name}: type is ${shown(entry["type"])}: expected Feature. Write type: Feature.`,
      ),
    );
  }
  findings.push(...checkId(id, [...path, "id"], ordinal));
  const { tags, findings: tagFindings } = checkTags(entry["properties"], [...path, "properties"], name);
  findings.push(...tagFindings);
  const { geometry, findings: geometryFindings } = checkGeometry(entry["geometry"], [...path, "geometry"], name);
  findings.push(...geometryFindings);
  const type =
    isRecord(entry["geometry"]) && isGeometryType(entry["geometry"]["type"]) ? entry["geometry"]["type"] : undefined;
  if (tagFindings.every(({ rule }) => rule !== "missing-field" && rule !== "properties")) {
    findings.push(...checkVocabulary(tags, type, [...path, "properties"], name));
  }
  const { golf, tee } = tags;
  if (golf === "tee" && type === "Point" && typeof tee !== "string") {
    const at: Path = tee === undefined ? [...path, "properties"] : [...path, "properties", "tee"];
    findings.push(
      errorAt(
        at,
        "tee-marker",
        `${name}: a tee marker (golf: tee on a Point) needs the id of its tee set, and tee is ${shown(tee)}. Write tee: yellow, or another id from course.yaml.`,
      ),
    );
  }
  const written: WrittenFeature = {
    id: typeof id === "string" ? id : undefined,
    golf: typeof golf === "string" ? golf : undefined,
    tee: golf === "tee" && typeof tee === "string" ? tee : undefined,
    isPoint: type === "Point",
    path,
  };
  if (geometry === undefined || typeof id !== "string" || findings.some(({ severity }) => severity === "error")) {
    return { feature: undefined, written, findings };
  }
  const metres = (key: string): number | undefined => (typeof tags[key] === "number" ? tags[key] : undefined);
  return {
    written,
    findings,
    feature: {
      id,
      kind: featureKind(tags, geometry.type),
      name: typeof tags["name"] === "string" ? tags["name"] : undefined,
      tee: written.tee,
      widthMetres: metres("width"),
      heightMetres: metres("height"),
      geometry,
      tags,
      path,
    },
  };
}

function checkId(id: unknown, path: Path, ordinal: string): Finding[] {
  if (typeof id === "string" && id.length <= 60 && SLUG.test(id)) return [];
  const wanted = "expected lower-case words joined by hyphens";
  if (id === undefined || id === null || id === "")
    return [
      errorAt(
        path,
        "feature-id",
        `${ordinal} has no id: ${wanted}. Write id: bunker-left, so that tips and messages can name it.`,
      ),
    ];
  if (typeof id === "string")
    return [errorAt(path, "feature-id", `id is ${quote(id)}: ${wanted}. Write id: ${slugFrom(id) || "bunker-left"}.`)];
  return [
    errorAt(
      path,
      "feature-id",
      `id of ${ordinal} is ${shown(id)}: ${wanted}. Write id: ${typeof id === "number" ? `bunker-${Math.abs(Math.trunc(id))}` : "bunker-left"}.`,
    ),
  ];
}
