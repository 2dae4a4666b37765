/** What was brought, as a feature a page could hold: its tags, kind and shape, or why it can be none. */
import { featureKind } from "../../course/feature-kind.ts";
import { slugFrom } from "../../course/schema/features.ts";
import { SLUG } from "../../course/schema/fields.ts";
import { checkGeometry, type CheckedGeometry } from "../../course/schema/geometry.ts";
import { checkVocabulary, type Tags } from "../../course/schema/vocabulary.ts";
import type { FeatureKind } from "../../course/types.ts";
import type { Brought } from "../sources/brought.ts";
import { cardTagsOf, type CardTags } from "./card-tags.ts";
import { cleaned } from "./clean.ts";
import { saysKind, tagsOf, tidied } from "./tags.ts";
import { holeFromWords, kindFromWords, teeFromWords } from "./words.ts";

export interface Candidate {
  readonly from: string;
  readonly key: string | undefined;
  /** Its id in an earlier export of ours. */
  readonly id: string | undefined;
  /** The hole the file says, or `all` where an export of ours says that holes share it. */
  readonly hole: number | "all" | undefined;
  readonly kind: FeatureKind;
  readonly tags: Tags;
  readonly geometry: CheckedGeometry;
  /** Why what it is, is a guess. */
  readonly guess: string | undefined;
  /** Of a line of play: what it says of its hole. */
  readonly card: CardTags | undefined;
}

export interface LeftOver {
  readonly from: string;
  readonly reason: string;
}

export interface CandidateResult {
  readonly candidates: readonly Candidate[];
  readonly leftOver: readonly LeftOver[];
  readonly notes: readonly string[];
}

type Tee = { readonly id: string; readonly name: string };

const AREAS: ReadonlySet<FeatureKind> = new Set(["teeing-ground", "fairway", "rough", "green", "bunker", "penalty-area-yellow", "penalty-area-red", "water", "sand", "scrub", "heath", "wood", "rock", "grassland", "building", "driving-range", "course"] satisfies FeatureKind[]);
const LINES: ReadonlySet<FeatureKind> = new Set(["line-of-play", "path", "road", "stream", "wall", "fence", "hedge", "cliff", "ridge", "coastline"] satisfies FeatureKind[]);

/** A walked outline rarely ends where it began. */
const CLOSED_DEGREES = 5e-5;

/** A line that comes home, where an area is meant, is its outline; an outline where a line is meant is the line. */
function fitShape(geometry: CheckedGeometry, kind: FeatureKind, tags: Tags): CheckedGeometry {
  if (geometry.type === "LineString" && AREAS.has(kind) && tags["natural"] !== "tree_row" && geometry.coordinates.length >= 4) {
    const [first, last] = [geometry.coordinates[0]!, geometry.coordinates[geometry.coordinates.length - 1]!];
    const gap = Math.hypot(first[0]! - last[0]!, first[1]! - last[1]!);
    if (gap <= CLOSED_DEGREES) return cleaned({ type: "Polygon", coordinates: [geometry.coordinates] });
  }
  if (geometry.type === "Polygon" && LINES.has(kind) && geometry.coordinates.length === 1) return { type: "LineString", coordinates: geometry.coordinates[0]! };
  return geometry;
}

/** `hole=7 id=gully`, as our GPX comments say it. */
function pairsIn(text: unknown): Record<string, string> {
  if (typeof text !== "string" || !/^\w[\w:]*=\S+( \w[\w:]*=\S+)*$/.test(text)) return {};
  return Object.fromEntries(text.split(" ").map((pair) => [pair.slice(0, pair.indexOf("=")), pair.slice(pair.indexOf("=") + 1)]));
}

const wholeHole = (value: unknown): number | undefined => {
  const found = /^\s*(?:hole\s*)?0?(\d{1,2})\s*$/i.exec(String(value ?? ""));
  const n = Number(found?.[1]);
  return n >= 1 && n <= 18 ? n : undefined;
};

/** Words that say no more than the hole, the kind and the side: no name to put on a map. */
const EMPTY_WORDS = /\b(hole|no|nr|the|of|and|left|right|centre|center|middle|front|back|top|bottom|side|greenside|fairway|fwy|bunkers?|sand|traps?|greens?|tees?|box|ground|pin|flag|water|hazard|pond|line|play|rough|tree|trees|wall|fence|hedge|burn|stream|ditch|ob|h?\d+(st|nd|rd|th)?)\b/g;

function realName(name: string, hole: Candidate["hole"], id: string | undefined, tees: readonly Tee[]): string | undefined {
  let own = name.trim();
  if (id !== undefined && hole !== undefined && own.startsWith(`${hole} `)) own = own.slice(`${hole} `.length);
  if (own === id) return undefined;
  if (id !== undefined) return own;
  const rest = tees.reduce((text, tee) => text.replaceAll(tee.id, "").replaceAll(tee.name.toLowerCase(), ""), own.toLowerCase().replace(/[-_/]+/g, " "));
  return rest.replace(EMPTY_WORDS, "").replace(/[^\p{L}]+/gu, "") === "" ? undefined : own;
}

/** The tee sets a tag means: `white`, `White`, `white;yellow`. */
const teesNamed = (value: unknown, tees: readonly Tee[]): Tee[] =>
  String(value ?? "").split(/[;,/]/).flatMap((part) => tees.find(({ id, name }) => slugFrom(part) !== "" && [id, slugFrom(name)].includes(slugFrom(part))) ?? []);

/** @param tees the course's tee sets, which markers must name */
export function candidatesOf(brought: readonly Brought[], tees: readonly Tee[]): CandidateResult {
  const candidates: Candidate[] = [];
  const leftOver: LeftOver[] = [];
  const notes: string[] = [];
  for (const one of brought) {
    const found = candidatesOfOne(one, tees);
    if (typeof found === "string") leftOver.push({ from: one.from, reason: found });
    else {
      candidates.push(...found.candidates);
      notes.push(...found.faults.map((fault) => `${one.from}: ${fault}.`));
    }
  }
  return { candidates, leftOver, notes };
}

function candidatesOfOne({ from, key, properties, geometry, words, mapped }: Brought, tees: readonly Tee[]): { candidates: Candidate[]; faults: readonly string[] } | string {
  const tidy = tidied({ ...properties, ...pairsIn(properties["cmt"]) });
  const { tags: read, faults } = tagsOf(tidy);
  const name = tidy.get("name");
  const said = [...words, ...["description", "desc", "type", "class", "category", "kind", "layer"].flatMap((k) => (typeof tidy.get(k) === "string" ? [String(tidy.get(k))] : [])), ...(typeof name === "string" ? [name] : [])];
  const clean = cleaned(geometry);
  if (clean.type === "Point" && ["area", "line"].includes(String(tidy.get("shape"))) && tidy.has("id")) return "it is a waypoint that stands for an outline, which GPX cannot hold: bring the GeoJSON or KML export";
  const tags: Record<string, string | number | boolean> = { ...read };
  let guess: string | undefined;
  if (!saysKind(tidy)) {
    if (mapped) return "its tags are none that the guide draws or measures";
    const shape = clean.type.endsWith("Point") ? "point" : clean.type.endsWith("Polygon") ? "area" : "line";
    // A walked outline is a line until a word says that it is an area.
    const found = kindFromWords(said, shape) ?? (shape === "line" ? kindFromWords(said, "area") : undefined);
    if (found === undefined) return `nothing says what it is: give it a tag such as golf=bunker${typeof name === "string" ? `, or a word for it in its name ${JSON.stringify(name.slice(0, 40))}` : ""}`;
    Object.assign(tags, found.tags);
    guess = `the word ${JSON.stringify(found.word)} says what it is`;
  }
  const idSaid = tidy.get("id");
  const hole = tidy.get("hole") === "all" ? "all" : wholeHole(tidy.get("hole")) ?? (tags["golf"] !== undefined ? wholeHole(tidy.get("ref")) : undefined) ?? (tags["highway"] === undefined && tags["building"] === undefined ? holeFromWords(said) : undefined);
  const id = typeof idSaid === "string" && SLUG.test(idSaid) && idSaid.length <= 60 ? idSaid : undefined;
  const { kind, shaped } = kindAndShape(tags, clean);
  const card = kind === "line-of-play" ? cardTagsOf(tidy, typeof name === "string" ? name : undefined, tees) : undefined;
  const mapName = typeof tags["name"] === "string" && kind !== "line-of-play" ? realName(tags["name"], hole, id, tees) : undefined;
  if (mapName === undefined) delete tags["name"];
  else tags["name"] = mapName;
  let named = teesNamed(tags["tee"] ?? tidy.get("colour") ?? tidy.get("color"), tees);
  const fromWords = tags["golf"] === "tee" && named.length === 0 ? teeFromWords(said, tees) : undefined;
  if (fromWords !== undefined) named = tees.filter((tee) => tee.id === fromWords);
  const problem = unfit(tags, shaped);
  if (problem !== undefined) return problem;
  const make = (extra: Tags, suffix = ""): Candidate => ({ from, key: key === undefined ? undefined : key + suffix, id, hole, kind, tags: { ...tags, ...extra }, geometry: shaped, guess, card });
  if (tags["golf"] !== "tee") return { candidates: [make({})], faults };
  const written = tags["tee"];
  delete tags["tee"];
  if (kind === "tee-marker") {
    if (named.length === 0) return `it is a tee marker ${written === undefined ? "that names no tee set" : `of the tee set ${JSON.stringify(written)}`}, and the course's are ${tees.map((tee) => tee.id).join(", ") || "not written yet"}: give it tee=${tees[0]?.id ?? "white"}`;
    return { candidates: named.map((tee) => make({ tee: tee.id }, named.length > 1 ? `+${tee.id}` : "")), faults };
  }
  return { candidates: [make(named.length === 1 ? { tee: named[0]!.id } : {})], faults };
}

function kindAndShape(tags: Tags, geometry: CheckedGeometry): { kind: FeatureKind; shaped: CheckedGeometry } {
  const shaped = fitShape(geometry, featureKind(tags, geometry.type), tags);
  return { kind: featureKind(tags, shaped.type), shaped };
}

/** The first thing the content's own checks would say against it. */
function unfit(tags: Tags, geometry: CheckedGeometry): string | undefined {
  const findings = [...checkVocabulary(tags, geometry.type, [], "it"), ...checkGeometry(geometry, [], "it").findings];
  const fault = findings.find(({ severity }) => severity === "error");
  return fault?.message.replace(/^it: /, "").replace(/\.$/, "");
}
