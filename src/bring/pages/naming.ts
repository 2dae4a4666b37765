/**
 * Ids for what is new on a page: a real name where there is one, else kind, side and order along the line of
 * play. Pure.
 */
import { slugFrom } from "../../course/schema/features.ts";
import { kindFacts, type FeatureKind } from "../../course/kinds.ts";
import type { Lie } from "../place/shape.ts";

export interface ToName {
  readonly kind: FeatureKind;
  readonly name: string | undefined;
  readonly tee: string | undefined;
  /** From an earlier export of ours. */
  readonly id: string | undefined;
  /** How it lies to its hole's line of play; undefined for the course's own. */
  readonly lie: Lie | undefined;
}

const WORDS: Readonly<Partial<Record<FeatureKind, string>>> = {
  "line-of-play": "line",
  "penalty-area-yellow": "water",
  "penalty-area-red": "water",
  "out-of-bounds": "boundary",
  other: "feature",
};

/** Hell's becomes hells, not hell-s. */
export const slugOf = (name: string | undefined): string => slugFrom((name ?? "").replace(/['\u2019]/g, ""));

const wordFor = (kind: FeatureKind): string => WORDS[kind] ?? kind;

/**
 * An id for each, in their order. Numbers follow the order along the line of play; on a
 * page that has such ids already they go on from the highest, since a tip may name those.
 *
 * @param taken ids the page, and for a hole the course too, has already
 */
export function nameFeatures(features: readonly ToName[], taken: ReadonlySet<string>): string[] {
  const used = new Set(taken);
  const ids: string[] = features.map(() => "");
  const claim = (i: number, id: string): void => {
    ids[i] = id;
    used.add(id);
  };
  const order = features
    .map((_, i) => i)
    .sort((a, b) => (features[a]!.lie?.stationMetres ?? 0) - (features[b]!.lie?.stationMetres ?? 0) || a - b);
  const rest: number[] = [];
  for (const i of order) {
    const { id, name, kind, tee } = features[i]!;
    const own =
      id ??
      (kind === "line-of-play" ? "line" : kind === "tee-marker" && tee !== undefined ? `tee-${tee}` : slugOf(name));
    if (own !== "" && !used.has(own)) claim(i, own);
    else rest.push(i);
  }
  const highest = new Map<string, number>();
  for (const id of used) {
    const [, stem, number] = /^(.+)-(\d+)$/.exec(id) ?? [];
    if (stem !== undefined) highest.set(stem, Math.max(highest.get(stem) ?? 0, Number(number)));
  }
  for (const i of rest) {
    const { kind, lie, tee } = features[i]!;
    const word = kind === "teeing-ground" && tee !== undefined ? `${wordFor(kind)}-${tee}` : wordFor(kind);
    const sided = lie !== undefined && !kindFacts(kind).single;
    const stem = sided ? `${word}-${lie.side}` : word;
    if (!sided && !used.has(stem)) {
      claim(i, stem);
      continue;
    }
    const next = Math.max(sided ? 0 : 1, highest.get(stem) ?? 0) + 1;
    highest.set(stem, next);
    claim(i, `${stem}-${next}`);
  }
  return ids;
}
