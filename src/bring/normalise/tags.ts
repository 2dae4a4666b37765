/**
 * A file's attributes as OpenStreetMap tags of a feature. What belongs to the file and not
 * to the ground (styles, edit histories, row numbers) is left behind.
 */
import { METRES_PER_FOOT } from "../../geo/units.ts";
import { KIND_KEYS, type Tags } from "../../course/schema/vocabulary.ts";

/** Keys that are read whatever their capitals, as tables write them. */
const KNOWN = [...KIND_KEYS, "name", "width", "height", "tee", "ref", "par", "handicap", "hole", "id", "dist"];

/** OSM's notes to mappers, and what identifies a thing elsewhere. */
const MAPPERS =
  /^(source|note|fixme|created_by|attribution|check_date|survey|import|ref$|ref:|wikidata|wikipedia|wikimedia|website|url|phone|email|fax|contact|addr|operator|opening_hours|fee|image|mapillary|odbl|tiger|start_date|type$|area$)/;

/** Styles and bookkeeping of KML, GPX and GIS tables. */
const BOOKKEEPING = new Set([
  "id",
  "hole",
  "fid",
  "gid",
  "uid",
  "uuid",
  "objectid",
  "description",
  "desc",
  "cmt",
  "comment",
  "snippet",
  "sym",
  "time",
  "times",
  "timestamp",
  "timespan",
  "begin",
  "end",
  "links",
  "link",
  "src",
  "styleurl",
  "stylehash",
  "stylemaphash",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "fill",
  "fill-opacity",
  "icon",
  "visibility",
  "tessellate",
  "extrude",
  "altitudemode",
  "draworder",
  "address",
  "phonenumber",
  "marker-color",
  "marker-size",
  "marker-symbol",
  "layer",
  "path",
  "ele",
  "elevation",
  "other_tags",
  "osm_id",
  "osm_way_id",
  "z_order",
  "is_in",
  "placeholder",
  "proposed",
]);

/** The keys of the line of play that belong on the hole's page. */
const CARD_KEY = /^(ref|par|handicap|dist)(:|$)/;

const LONGEST_TEXT = 200;

export interface ReadTags {
  readonly tags: Tags;
  /** Attributes that were not usable as they are, in words. */
  readonly faults: readonly string[];
}

/** Metres of a tag: a bare number is metres, as OSM defines it; `3.5 m`, `12 ft` and `12'` are read too. */
function metres(value: string | number): number | undefined {
  const found =
    typeof value === "number"
      ? [String(value), String(value), ""]
      : /^\s*(\d+(?:\.\d+)?)\s*(m|metres?|meters?|ft|feet|'|)\s*$/i.exec(value);
  if (!found) return undefined;
  const n = Number(found[1]) * (/^(ft|feet|')$/i.test(found[2]!) ? METRES_PER_FOOT : 1);
  return n > 0 && n < 1000 ? Number(n.toFixed(2)) : undefined;
}

const tidyKey = (key: string): string => (KNOWN.includes(key.toLowerCase()) ? key.toLowerCase() : key);

/**
 * The properties with known keys in small letters and empty values left out; the first of several spellings
 * counts.
 */
export function tidied(properties: Readonly<Record<string, unknown>>): ReadonlyMap<string, string | number | boolean> {
  const tidy = new Map<string, string | number | boolean>();
  for (const [written, value] of Object.entries(properties)) {
    const key = tidyKey(written);
    const usable =
      (typeof value === "string" && value.trim() !== "") ||
      (typeof value === "number" && Number.isFinite(value)) ||
      typeof value === "boolean";
    if (usable && (!tidy.has(key) || key === written)) tidy.set(key, typeof value === "string" ? value.trim() : value);
  }
  // GPX has one field for a kind; `golf=bunker` is how ours and others write a tag there.
  const typed = /^([a-z_]+)=(\S+)$/.exec(String(tidy.get("type") ?? ""));
  if (typed && (KIND_KEYS as readonly string[]).includes(typed[1]!) && !tidy.has(typed[1]!))
    tidy.set(typed[1]!, typed[2]!);
  return tidy;
}

export const saysKind = (tidy: ReadonlyMap<string, unknown>): boolean => KIND_KEYS.some((key) => tidy.has(key));

/**
 * The tags to keep. Without a key that says what the feature is, its table's other columns mean nothing
 * here: only its name stays.
 */
export function tagsOf(tidy: ReadonlyMap<string, string | number | boolean>): ReadTags {
  const tags: Record<string, string | number | boolean> = {};
  const faults: string[] = [];
  const tagged = saysKind(tidy);
  for (const [key, value] of tidy) {
    if (!tagged && key !== "name" && key !== "tee") continue;
    if (!/^[a-z][a-z0-9_:-]{0,59}$/.test(key) || MAPPERS.test(key) || BOOKKEEPING.has(key)) continue;
    if (tidy.get("golf") === "hole" && CARD_KEY.test(key)) continue;
    if (key === "width" || key === "height") {
      const read = typeof value === "boolean" ? undefined : metres(value);
      if (read === undefined) faults.push(`${key} is ${JSON.stringify(value)}, which is no length; it was left out`);
      else tags[key] = read;
      continue;
    }
    // eslint-disable-next-line no-control-regex
    const text = typeof value === "string" ? value.replace(/[\u0000-\u001f\u007f]+/g, " ").trim() : value;
    if (typeof text === "string" && text.length > LONGEST_TEXT)
      faults.push(`${key} is ${text.length} characters long; it was left out`);
    else tags[key] = key === "name" || key === "tee" ? String(text) : text;
  }
  return { tags, faults };
}
