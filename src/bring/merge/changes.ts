/** What becomes of every incoming feature, with what it changes on its page. Pure. */
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { FeatureKind } from "../../course/types.ts";
import { atOf, placeKey, type Ledger, type LedgerEntry } from "../pages/ledger.ts";
import { nameFeatures } from "../pages/naming.ts";
import { allPages, type CoursePages, type PageAt } from "../pages/pages.ts";
import type { Edit } from "../pages/yaml-edit.ts";
import { entryOf, mergeFeature } from "./feature.ts";
import type { Match } from "./match.ts";

/** A feature as it is written on a page. */
export interface FeatureValue {
  readonly type: "Feature";
  readonly id: string;
  readonly properties: Tags;
  readonly geometry: CheckedGeometry;
}

export interface Change {
  readonly match: Match;
  /** The page it is on, or will be. */
  readonly at: PageAt;
  readonly id: string;
  readonly what: "new" | "changed" | "same" | "taken-out";
  /** To what is on the page; none for a new feature. */
  readonly edits: readonly Edit[];
  /** The feature to add, of a new one. */
  readonly added: FeatureValue | undefined;
  /** What changes, in words. */
  readonly changes: readonly string[];
  /** What the source has otherwise and the page keeps. */
  readonly kept: readonly string[];
}

export function changesOf(matches: readonly Match[], pages: CoursePages): Change[] {
  const known = matches.flatMap((match): Change[] => {
    const { incoming, existing, last, takenOut } = match;
    const nothing = { match, edits: [], added: undefined, changes: [], kept: [] };
    if (takenOut) return [{ ...nothing, at: incoming.at, id: last!.at.slice(last!.at.indexOf("/") + 1), what: "taken-out" }];
    if (existing === undefined) return [];
    const merged = mergeFeature(match);
    return [{ ...nothing, ...merged, at: existing.at, id: existing.feature.id, what: merged.edits.length > 0 ? "changed" : "same" }];
  });
  return [...known, ...additions(matches.filter(({ existing, takenOut }) => existing === undefined && !takenOut), pages)];
}

/** New features by page, named, in the order a hole is read: the line, tees, fairway, green, then hazards as they are met. */
function additions(fresh: readonly Match[], pages: CoursePages): Change[] {
  const changes: Change[] = [];
  for (const at of new Set(fresh.map(({ incoming }) => incoming.at))) {
    const own = fresh.filter(({ incoming }) => incoming.at === at);
    // A tip of any hole may name the course's features, so their ids are no hole's and a hole's are not theirs.
    const meets = (other: PageAt): boolean => at === "course" || other === at || other === "course";
    const taken = allPages(pages).filter((page) => meets(page.at)).flatMap(({ ids }) => ids);
    const given = changes.filter((change) => meets(change.at)).map(({ id }) => id);
    const ids = nameFeatures(own.map(toName), new Set([...taken, ...given]));
    const named = own.map((match, i) => ({ match, id: ids[i]! }));
    named.sort((a, b) => order(a.match) - order(b.match) || stationOf(a.match) - stationOf(b.match));
    for (const { match, id } of named) {
      const { tags, geometry } = match.incoming.candidate;
      changes.push({ match, at, id, what: "new", edits: [], added: { type: "Feature", id, properties: tags, geometry }, changes: [], kept: [] });
    }
  }
  return changes;
}

const toName = ({ incoming: { candidate, lie } }: Match): Parameters<typeof nameFeatures>[0][number] => ({
  kind: candidate.kind,
  name: typeof candidate.tags["name"] === "string" ? candidate.tags["name"] : undefined,
  tee: typeof candidate.tags["tee"] === "string" ? candidate.tags["tee"] : undefined,
  id: candidate.id,
  lie,
});

/** The order of kinds on a page: the way a hole is played. */
const PLAYED: readonly FeatureKind[] = ["line-of-play", "tee-marker", "teeing-ground", "fairway", "green", "pin"];

const order = ({ incoming: { candidate } }: Match): number => {
  const at = PLAYED.indexOf(candidate.kind);
  return at === -1 ? PLAYED.length : at;
};

const stationOf = ({ incoming }: Match): number => incoming.lie?.stationMetres ?? 0;

/** The ledger's features with those of this run. */
export function nextEntries({ features }: Ledger, changes: readonly Change[]): Record<string, LedgerEntry> {
  const entries: Record<string, LedgerEntry> = { ...features };
  const keyAt = new Map(Object.entries(entries).map(([key, { at }]) => [at, key]));
  for (const { match: { incoming: { candidate, key } }, at, id, what } of changes) {
    if (what === "taken-out") continue;
    const [own, place] = [key ?? placeKey(at, id), atOf(at, id)];
    const before = keyAt.get(place);
    if (before !== undefined && before !== own) delete entries[before];
    keyAt.set(place, own);
    entries[own] = entryOf(place, candidate.geometry, candidate.tags);
  }
  return entries;
}
