/**
 * Brought features to candidates, in small steps: tidy its attributes; read its tags, or
 * guess them from words; hear what it says of hole, id, tee sets and name; give it the
 * shape of its kind; hold it to the content's checks; a marker of several tee sets becomes
 * one for each. Pure.
 */
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { LeftOver } from "../left-over.ts";
import type { Brought } from "../sources/brought.ts";
import type { Candidate, TeeSet } from "./candidate.ts";
import { cardTagsOf } from "./card-tags.ts";
import { cleaned } from "./clean.ts";
import { kindAndShape, unfit } from "./fit.ts";
import { otherTags } from "./other-tags.ts";
import { holeStated, idStated, mapName, pairsIn, teesStated } from "./stated.ts";
import { saysKind, tagsOf, tidied } from "./tags.ts";
import { kindFromWords } from "./words.ts";

export interface Normalised {
  readonly candidates: readonly Candidate[];
  readonly leftOver: readonly LeftOver[];
  readonly notes: readonly string[];
}

/** @param tees the course's tee sets, which markers must name */
export function normalise(brought: readonly Brought[], tees: readonly TeeSet[]): Normalised {
  const candidates: Candidate[] = [];
  const leftOver: LeftOver[] = [];
  const notes: string[] = [];
  for (const one of brought) {
    const found = normaliseOne(one, tees);
    if (typeof found === "string") leftOver.push({ from: one.from, reason: found });
    else {
      candidates.push(...found.candidates);
      notes.push(...found.faults.map((fault) => `${one.from}: ${fault}.`));
    }
  }
  return { candidates, leftOver, notes };
}

type Tidy = ReadonlyMap<string, string | number | boolean>;

/** Attributes in which a file may say in words what a feature is, the nearest to it last. */
const SAYING = [
  "description",
  "desc",
  "type",
  "class",
  "category",
  "kind",
  "layer",
  "Typ",
  "typ",
  "TYP",
  "Art",
  "nature",
  "name",
] as const;

const wordsAbout = ({ words }: Brought, tidy: Tidy): string[] => [
  ...words,
  ...SAYING.flatMap((key) => (typeof tidy.get(key) === "string" ? [String(tidy.get(key))] : [])),
];

interface Meaning {
  readonly tags: Tags;
  readonly guess: string | undefined;
}

/** What it is by its tags or, where a file has none, by words; or why nobody can say. */
function meaningOf(
  { mapped }: Brought,
  tidy: Tidy,
  read: Tags,
  words: readonly string[],
  geometry: CheckedGeometry,
): Meaning | string {
  if (saysKind(tidy)) return { tags: read, guess: undefined };
  if (mapped) return "its tags are none that the guide draws or measures";
  const shape = geometry.type.endsWith("Point") ? "point" : geometry.type.endsWith("Polygon") ? "area" : "line";
  // A walked outline is a line until a word says that it is an area.
  const found = kindFromWords(words, shape) ?? (shape === "line" ? kindFromWords(words, "area") : undefined);
  const name = tidy.get("name");
  if (found === undefined)
    return `nothing says what it is: give it a tag such as golf=bunker${typeof name === "string" ? `, or a word for it in its name ${JSON.stringify(name.slice(0, 40))}` : ""}`;
  return { tags: { ...read, ...found.tags }, guess: `the word ${JSON.stringify(found.word)} says what it is` };
}

const without = (tags: Tags, key: string): Tags =>
  Object.fromEntries(Object.entries(tags).filter(([own]) => own !== key));

const isStandIn = (geometry: CheckedGeometry, tidy: Tidy): boolean =>
  geometry.type === "Point" && ["area", "line"].includes(String(tidy.get("shape"))) && tidy.has("id");

function normaliseOne(
  brought: Brought,
  tees: readonly TeeSet[],
): { candidates: Candidate[]; faults: readonly string[] } | string {
  const { from, key, properties } = brought;
  const tidy = tidied({ ...otherTags(properties["other_tags"]), ...properties, ...pairsIn(properties["cmt"]) });
  if (String(tidy.get("placeholder")) === "true") return "it is a placeholder, which stands for a real shape";
  const { tags: read, faults } = tagsOf(tidy);
  const words = wordsAbout(brought, tidy);
  const clean = cleaned(brought.geometry);
  if (isStandIn(clean, tidy))
    return "it is a waypoint that stands for an outline, which GPX cannot hold: bring the GeoJSON or KML export";
  const meaning = meaningOf(brought, tidy, read, words, clean);
  if (typeof meaning === "string") return meaning;
  const hole = holeStated(tidy, meaning.tags, words);
  const id = idStated(tidy);
  const { kind, shaped } = kindAndShape(meaning.tags, clean);
  const name = kind === "line-of-play" ? undefined : mapName(meaning.tags["name"], hole, id, tees);
  const named: Tags = name === undefined ? without(meaning.tags, "name") : { ...meaning.tags, name };
  const problem = unfit(named, shaped);
  if (problem !== undefined) return problem;
  const said = tidy.get("name");
  const card =
    kind === "line-of-play" ? cardTagsOf(tidy, typeof said === "string" ? said : undefined, tees) : undefined;
  const own = { from, key, id, hole, kind, geometry: shaped, guess: meaning.guess, card };
  if (named["golf"] !== "tee") return { candidates: [{ ...own, tags: named }], faults };
  const tags = without(named, "tee");
  const sets = teesStated(tidy, meaning.tags, words, tees);
  if (kind !== "tee-marker")
    return { candidates: [{ ...own, tags: sets.length === 1 ? { ...tags, tee: sets[0]!.id } : tags }], faults };
  if (sets.length === 0) return unnamedMarker(named["tee"], tees);
  return {
    candidates: sets.map((set) => ({
      ...own,
      key: key === undefined || sets.length === 1 ? key : `${key}+${set.id}`,
      tags: { ...tags, tee: set.id },
    })),
    faults,
  };
}

const unnamedMarker = (written: Tags[string] | undefined, tees: readonly TeeSet[]): string =>
  `it is a tee marker ${written === undefined ? "that names no tee set" : `of the tee set ${JSON.stringify(written)}`}, and the course's are ${tees.map((tee) => tee.id).join(", ") || "not written yet"}: give it tee=${tees[0]?.id ?? "white"}`;
