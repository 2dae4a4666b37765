/**
 * The tags a feature may carry and the geometry each takes: OpenStreetMap's golf, natural,
 * barrier, waterway, highway, building, man_made, leisure and landuse keys (see the table
 * in DEVELOPERS.md).
 */
import { geometriesOf, valuesOf, type Tags } from "../feature-kind.ts";
import { errorAt, warningAt, type Finding, type Path } from "./finding.ts";
import type { GeometryType } from "./geometry.ts";
import { nearestNames } from "./nearest.ts";
import { insteadOf, oneOf, quote, shown } from "./wording.ts";

export type { Tags };

/** Keys that say what a feature is. */
export const KIND_KEYS = [
  "golf",
  "natural",
  "barrier",
  "waterway",
  "highway",
  "building",
  "man_made",
  "leisure",
  "landuse",
] as const;

/** Keys with a number that is measured or drawn. */
const METRE_KEYS = ["width", "height"] as const;

/** Marks of a feature that is not the club's own yet: `true`, or left out. */
const MARK_KEYS = ["placeholder", "proposed"] as const;

/** The other keys Marram reads; a misspelling of one would go unnoticed otherwise. */
const OTHER_KEYS = ["tee", "name", ...MARK_KEYS] as const;

const ALL_KEYS: readonly string[] = [...KIND_KEYS, ...METRE_KEYS, ...OTHER_KEYS];

const SIMPLE = ["string", "number", "boolean"];

/** The tags of a feature's properties; null values count as not tagged, as GIS tables export them. */
export function checkTags(properties: unknown, path: Path, name: string): { tags: Tags; findings: Finding[] } {
  const findings: Finding[] = [];
  const tags: Record<string, string | number | boolean> = {};
  if (properties === null || typeof properties !== "object" || Array.isArray(properties)) {
    const rule = properties === undefined ? "missing-field" : "properties";
    findings.push(
      errorAt(
        path,
        rule,
        `${name}: properties are ${shown(properties)}: expected tags. Write properties: { golf: bunker }.`,
      ),
    );
    return { tags, findings };
  }
  for (const [key, value] of Object.entries(properties)) {
    if (value === null) continue;
    if (!SIMPLE.includes(typeof value)) {
      findings.push(
        errorAt(
          [...path, key],
          "tag-value",
          `${name}: tag ${key} is ${shown(value)}: expected a text, a number or true or false.`,
        ),
      );
    } else if (typeof value === "number" && !Number.isFinite(value)) {
      findings.push(
        errorAt([...path, key], "tag-value", `${name}: tag ${key} is ${value}: expected a finite number.`),
      );
    } else {
      tags[key] = value as string | number | boolean;
    }
  }
  return { tags, findings };
}

/** Whether the tags are ones the guide knows and fit the geometry. */
export function checkVocabulary(tags: Tags, type: GeometryType | undefined, path: Path, name: string): Finding[] {
  const findings: Finding[] = [];
  const at = (key: string): Path => [...path, key];
  const golf = tags["golf"];
  if (golf !== undefined) {
    const known = valuesOf("golf");
    if (typeof golf !== "string" || !known.includes(golf)) {
      const instead = typeof golf === "string" ? insteadOf(golf, known) : `Write ${oneOf(known)}.`;
      findings.push(
        errorAt(
          at("golf"),
          "golf-value",
          `${name}: golf is ${shown(golf)}, which is no feature of a hole. ${instead}`,
        ),
      );
    } else if (type !== undefined) {
      const fitting = geometriesOf(`golf=${golf}`);
      if (!fitting.includes(type)) {
        findings.push(
          errorAt(
            at("golf"),
            "golf-geometry",
            `${name}: golf: ${golf} is drawn as a ${type}: expected a ${oneOf(fitting)}. Change its geometry, or write another tag.`,
          ),
        );
      }
    }
  }
  for (const key of ["natural", "barrier"]) {
    const value = tags[key];
    const values = valuesOf(key);
    if (value !== undefined && golf === undefined && !values.some((one) => one === value)) {
      const near = typeof value === "string" ? nearestNames(value, values) : [];
      const message = `${name}: ${key} is ${shown(value)}, which the guide does not draw. ${near.length > 0 ? `Did you mean ${oneOf(near)}?` : `It draws ${oneOf(values, "and")}.`}`;
      findings.push(warningAt(at(key), "tag-value", message));
    }
  }
  for (const key of METRE_KEYS) {
    const value = tags[key];
    if (value !== undefined && !(typeof value === "number" && value > 0 && value < 1000)) {
      findings.push(
        errorAt(
          at(key),
          "tag-metres",
          `${name}: ${key} is ${shown(value)}: expected metres as a number above 0. Write ${key}: 3.5.`,
        ),
      );
    }
  }
  for (const key of MARK_KEYS) {
    const value = tags[key];
    if (value !== undefined && value !== true)
      findings.push(
        errorAt(
          at(key),
          "tag-mark",
          `${name}: ${key} is ${shown(value)}: expected true, or no such tag. Delete ${key} once the shape is the club's own.`,
        ),
      );
  }
  if (tags["name"] !== undefined && (typeof tags["name"] !== "string" || tags["name"].trim() === "")) {
    findings.push(
      errorAt(
        at("name"),
        "tag-name",
        `${name}: name is ${shown(tags["name"])}: expected a text. Write name: ${quote(String(tags["name"]).trim() || "Kelp Gully")}.`,
      ),
    );
  }
  const keys = Object.keys(tags);
  const known = keys.some((key) => (KIND_KEYS as readonly string[]).includes(key));
  const misspelt = keys
    .filter((key) => !ALL_KEYS.includes(key))
    .flatMap((key) => {
      const near = nearestNames(key, known ? ALL_KEYS.filter((k) => !keys.includes(k)) : KIND_KEYS);
      return near.length > 0 && (!known || key.length > 3) ? [{ key, near }] : [];
    });
  if (!known && misspelt.length === 0) {
    findings.push(
      errorAt(
        path,
        "tag-missing",
        `${name}: no tag says what it is. Write one of ${oneOf(KIND_KEYS)}, for example golf: bunker.`,
        "key",
      ),
    );
  }
  if (!known) {
    for (const { key, near } of misspelt)
      findings.push(
        errorAt(at(key), "tag-key", `${name}: there is no tag ${quote(key)}. Did you mean ${oneOf(near)}?`, "key"),
      );
  } else {
    for (const { key, near } of misspelt)
      findings.push(
        warningAt(
          at(key),
          "tag-key",
          `${name}: the guide does not use the tag ${quote(key)}. Did you mean ${oneOf(near)}?`,
          "key",
        ),
      );
  }
  return findings;
}
