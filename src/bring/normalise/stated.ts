/**
 * What a file says of a feature besides its kind: its hole, its id from an export of ours, its tee sets, its
 * name on a map.
 */
import { slugFrom } from "../../course/schema/features.ts";
import { SLUG } from "../../course/schema/fields.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { Candidate, TeeSet } from "./candidate.ts";
import { holeFromWords, teeFromWords } from "./words.ts";

type Tidy = ReadonlyMap<string, string | number | boolean>;

/** `hole=7 id=gully`, as our GPX comments say it. */
export function pairsIn(text: unknown): Record<string, string> {
  if (typeof text !== "string" || !/^\w[\w:]*=\S+( \w[\w:]*=\S+)*$/.test(text)) return {};
  return Object.fromEntries(
    text.split(" ").map((pair) => [pair.slice(0, pair.indexOf("=")), pair.slice(pair.indexOf("=") + 1)]),
  );
}

const wholeHole = (value: unknown): number | undefined => {
  const found = /^\s*(?:hole\s*)?0?(\d{1,2})\s*$/i.exec(String(value ?? ""));
  const n = Number(found?.[1]);
  return n >= 1 && n <= 18 ? n : undefined;
};

/**
 * By its own tag; by OSM's `ref`, which golf features carry; by words, unless it is a road or a building,
 * whose names have numbers of their own.
 */
export function holeStated(tidy: Tidy, tags: Tags, words: readonly string[]): Candidate["hole"] {
  if (tidy.get("hole") === "all") return "all";
  // As tables of other languages name the column.
  const column = ["Bahn", "bahn", "BAHN", "Loch", "loch", "Spielbahn", "trou", "Trou"]
    .map((key) => tidy.get(key))
    .find((value) => value !== undefined);
  const own =
    wholeHole(tidy.get("hole") ?? column) ?? (tags["golf"] !== undefined ? wholeHole(tidy.get("ref")) : undefined);
  return own ?? (tags["highway"] === undefined && tags["building"] === undefined ? holeFromWords(words) : undefined);
}

export function idStated(tidy: Tidy): string | undefined {
  const said = tidy.get("id");
  return typeof said === "string" && SLUG.test(said) && said.length <= 60 ? said : undefined;
}

/** Words that say no more than the hole, the kind and the side: no name to put on a map. */
const EMPTY_WORDS =
  /\b(hole|no|nr|the|of|and|left|right|centre|center|middle|front|back|top|bottom|side|greenside|fairway|fwy|bunkers?|sand|traps?|greens?|tees?|box|ground|pin|flag|water|hazard|pond|line|play|rough|tree|trees|wall|fence|hedge|burn|stream|ditch|ob|h?\d+(st|nd|rd|th)?)\b/g;

/** The name to put on a map, where what is written is one. */
export function mapName(
  name: unknown,
  hole: Candidate["hole"],
  id: string | undefined,
  tees: readonly TeeSet[],
): string | undefined {
  if (typeof name !== "string") return undefined;
  let own = name.trim();
  if (id !== undefined && hole !== undefined && own.startsWith(`${hole} `)) own = own.slice(`${hole} `.length);
  if (own === id) return undefined;
  if (id !== undefined) return own;
  const rest = tees.reduce(
    (text, tee) => text.replaceAll(tee.id, "").replaceAll(tee.name.toLowerCase(), ""),
    own.toLowerCase().replace(/[-_/]+/g, " "),
  );
  return rest.replace(EMPTY_WORDS, "").replace(/[^\p{L}]+/gu, "") === "" ? undefined : own;
}

/** The tee sets a tag means: `white`, `White`, `white;yellow`. */
const teesNamed = (value: unknown, tees: readonly TeeSet[]): TeeSet[] =>
  String(value ?? "")
    .split(/[;,/]/)
    .flatMap(
      (part) =>
        tees.find(({ id, name }) => slugFrom(part) !== "" && [id, slugFrom(name)].includes(slugFrom(part))) ?? [],
    );

/** Of a tee: the sets of the course it is of, by its tags, else by words. */
export function teesStated(tidy: Tidy, tags: Tags, words: readonly string[], tees: readonly TeeSet[]): TeeSet[] {
  const named = teesNamed(tags["tee"] ?? tidy.get("colour") ?? tidy.get("color"), tees);
  if (named.length > 0) return named;
  const found = teeFromWords(words, tees);
  return tees.filter(({ id }) => id === found);
}
