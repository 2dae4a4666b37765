/** Finds what a tip claims. Knows no language: the words are the lexicon's. */
import type { HoleFacts, Thing } from "../facts.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { fromUnit } from "../../geo/units.ts";
import type { Claim, ClaimKind, ClaimSide } from "./claim.ts";
import type { ClaimPattern, Lexicon } from "./lexicon.ts";
import { segmentsOf, type Naming, type Segment } from "./text.ts";

/** The word a named feature is found by: its class and number. */
const CLASS_WORD: Readonly<Record<string, string>> = {
  bunker: "bunker",
  water: "water",
  "out-of-bounds": "boundary",
  trees: "trees",
  gorse: "gorse",
  wall: "wall",
  road: "road",
};

const standIn = (thing: Thing, index: number): string => `named_${CLASS_WORD[thing.classes[0]!]!}_${index}`;

const wordsIn = (name: string): string[] =>
  [...name.matchAll(/\d+|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)*/gu)].map((match) => match[0].replaceAll("’", "'"));

function naming(facts: HoleFacts, lexicon: Lexicon): Naming {
  return {
    prepare: (markdown) => lexicon.prepare(markdown),
    spell: (word) => lexicon.spell(word),
    figure: (_name, target) => {
      const at = facts.things.findIndex(({ id }) => id === target);
      return at < 0 ? ["#"] : [standIn(facts.things[at]!, at)];
    },
    names: facts.things
      .flatMap((thing, i) =>
        thing.name === undefined
          ? []
          : [
              {
                words: lexicon.nameWords(wordsIn(thing.name).flatMap((word) => lexicon.spell(word))),
                standsFor: standIn(thing, i),
              },
            ],
      )
      .filter(({ words }) => words.length > 0)
      // "Long Tom's Burn" before "Long Tom".
      .sort((a, b) => b.words.length - a.words.length),
  };
}

/** What the groups of a match hold, by name without number, in the order they stand. */
function particulars(match: RegExpExecArray): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const [name, value] of Object.entries(match.groups ?? {})) {
    if (value === undefined) continue;
    const key = name.replace(/_\d+$/, "");
    found.set(key, [...(found.get(key) ?? []), value]);
  }
  return found;
}

/** Sides: those said as one ("short left", groups `cdep` and `clat`), then those said one by one. */
function sidesOf(found: Map<string, string[]>, lexicon: Lexicon): ClaimSide[] {
  const read = <T extends string>(group: string): T[] =>
    (found.get(group) ?? []).map((word) => lexicon.sides[word] as T);
  const lateral = read<"left" | "right">("clat");
  const combined = read<"short" | "long">("cdep").map((one, i): ClaimSide => `${one}-${lateral[i]!}`);
  const both: ClaimSide[] = found.has("both") ? ["left", "right"] : [];
  return [...combined, ...both, ...read<"short" | "long">("dep"), ...read<"left" | "right">("lat")];
}

const numberOf = (words: string | undefined, lexicon: Lexicon): number | undefined =>
  words === undefined ? undefined : /^\d/.test(words) ? Number(words) : lexicon.numbers[words];

const LENGTHS: ReadonlySet<ClaimKind> = new Set<ClaimKind>(["length", "hazard-distance"]);

function claimsOf(
  pattern: ClaimPattern,
  match: RegExpExecArray,
  segment: Segment,
  lexicon: Lexicon,
  facts: HoleFacts,
): Claim[] {
  const found = particulars(match);
  const before = segment.text.slice(0, match.index).trimEnd();
  const after = segment.text.slice(match.index + match[0].length);
  const denials = (found.get("no")?.length ?? 0) + (found.get("not")?.length ?? 0) + (pattern.denied ? 1 : 0);
  const way = found.get("way")?.[0];
  const point = found.get("compass")?.[0];
  const sides: readonly (ClaimSide | undefined)[] =
    pattern.kind === "hazard-distance"
      ? []
      : pattern.side
        ? [pattern.side]
        : way !== undefined
          ? lexicon.way(way)
          : point !== undefined
            ? [lexicon.compass(point)]
            : sidesOf(found, lexicon);
  if (way !== undefined && sides.length === 0) return [];
  const written = numberOf(found.get("num")?.[0], lexicon);
  const unit = found.get("unit")?.[0] as LengthUnit | undefined;
  const amount = pattern.number ?? written ?? (pattern.kind.startsWith("clubs") ? 1 : undefined);
  const named = /named_[a-z]+_(\d+)/.exec(match[0]);
  const one = (side: ClaimSide | undefined): Claim => ({
    kind: pattern.kind,
    denied: denials % 2 === 1,
    side,
    place: pattern.place ?? lexicon.place(before, match[0], after),
    number: amount,
    metres: amount !== undefined && LENGTHS.has(pattern.kind) ? fromUnit(amount, unit ?? "yards") : undefined,
    strong: found.has("strong"),
    featureId: named ? facts.things[Number(named[1])]?.id : undefined,
    thing: pattern.thing,
    offset: segment.sourceAt(match.index),
    end: segment.sourceEndAt(match.index + match[0].length),
  });
  return sides.length === 0 ? [one(undefined)] : sides.map(one);
}

function inSegment(segment: Segment, lexicon: Lexicon, facts: HoleFacts): Claim[] {
  const { text } = segment;
  const advised = lexicon.advice(text);
  const claims: Claim[] = [];
  const taken = new Map<string, [number, number][]>();
  const silentKinds = new Set<ClaimKind>();
  for (const [kind, anchor] of Object.entries(lexicon.anchors))
    if (!anchor.test(text)) silentKinds.add(kind as ClaimKind);
  for (const pattern of lexicon.patterns) {
    if (silentKinds.has(pattern.kind) || pattern.unless?.test(text)) continue;
    pattern.expression.lastIndex = 0;
    for (let match = pattern.expression.exec(text); match; match = pattern.expression.exec(text)) {
      if (match[0] === "") {
        pattern.expression.lastIndex++;
        continue;
      }
      const [from, to] = [match.index, match.index + match[0].length];
      const before = text.slice(0, from).trimEnd();
      const warned = lexicon.warned(before);
      const spans = taken.get(pattern.kind) ?? [];
      if (spans.some(([start, end]) => start < to && from < end)) continue;
      if (pattern.needsBefore && !pattern.needsBefore.test(before)) continue;
      if (!warned && pattern.notAfter?.test(before)) continue;
      if (pattern.notBefore?.test(text.slice(to))) continue;
      // What is advised is where the words begin to say something, not where they end.
      if (!warned && !pattern.inAdvice && advised(from)) continue;
      if (
        lexicon.denied(before, text.slice(to), match[0]) ||
        lexicon.borrowed(before, match[0]) ||
        lexicon.seeming(text, from)
      )
        continue;
      const here = claimsOf(pattern, match, segment, lexicon, facts);
      if (here.length === 0) continue;
      claims.push(...here);
      taken.set(pattern.kind, [...spans, [from, to]]);
    }
  }
  return claims;
}

/** A tip's words as patterns know them, features called by their names as words for what they are. */
export const wordsRead = (markdown: string, facts: HoleFacts, lexicon: Lexicon): string =>
  segmentsOf(markdown, naming(facts, lexicon))
    .map(({ text }) => text)
    .join(" ");

/** What a tip's Markdown claims of its hole, in reading order. */
export function findClaims(markdown: string, facts: HoleFacts, lexicon: Lexicon): Claim[] {
  return segmentsOf(markdown, naming(facts, lexicon))
    .filter(({ text, ends }) => !lexicon.silent(text, ends, facts.number))
    .flatMap((segment) => inSegment(segment, lexicon, facts))
    .sort((a, b) => a.offset - b.offset || a.end - b.end);
}
