/** What becomes of every incoming feature, with what it changes on its page. Pure. */
import { isPlaceholder } from "../../course/draft.ts";
import type { Frame } from "../../geo/frame.ts";
import { shapeOf } from "../place/shape.ts";
import type { Tags } from "../../course/schema/vocabulary.ts";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { FeatureKind } from "../../course/types.ts";
import { atOf, placeKey, type Ledger, type LedgerEntry } from "../pages/ledger.ts";
import { nameFeatures } from "../pages/naming.ts";
import { allPages, type CoursePages, type Page, type PageAt } from "../pages/pages.ts";
import type { Edit } from "../pages/yaml-edit.ts";
import { entryOf, mergeFeature } from "./feature.ts";
import type { Match } from "./match.ts";
import { alike, sameGround } from "./same-ground.ts";

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
  readonly what: "new" | "changed" | "same" | "taken-out" | "duplicate";
  /** To what is on the page; none for a new feature. */
  readonly edits: readonly Edit[];
  /** The feature to add, of a new one. */
  readonly added: FeatureValue | undefined;
  /** What changes, in words. */
  readonly changes: readonly string[];
  /** What the source has otherwise and the page keeps. */
  readonly kept: readonly string[];
}

/** @param frame the plane shapes are compared in */
export function changesOf(matches: readonly Match[], pages: CoursePages, frame: Frame): Change[] {
  const known = matches.flatMap((match): Change[] => {
    const { incoming, existing, last, takenOut } = match;
    const nothing = { match, edits: [], added: undefined, changes: [], kept: [] };
    if (takenOut)
      return [{ ...nothing, at: incoming.at, id: last!.at.slice(last!.at.indexOf("/") + 1), what: "taken-out" }];
    if (existing === undefined) return [];
    if (match.duplicate) return [{ ...nothing, at: existing.at, id: existing.feature.id, what: "duplicate" }];
    const merged = mergeFeature(match);
    return [
      {
        ...nothing,
        ...merged,
        at: existing.at,
        id: existing.feature.id,
        what: merged.edits.length > 0 ? "changed" : "same",
      },
    ];
  });
  const fresh = matches.filter(({ existing, takenOut }) => existing === undefined && !takenOut);
  const { once, again } = drawnTwice(fresh, frame);
  const added = additions(once, pages);
  const idOf = new Map(added.map(({ match, id }) => [match, id]));
  return [
    ...known,
    ...added,
    ...again.map(({ match, of }): Change => ({
      match,
      at: of.incoming.at,
      id: idOf.get(of)!,
      what: "duplicate",
      edits: [],
      added: undefined,
      changes: [],
      kept: [],
    })),
  ];
}

/**
 * New features that others of the same run draw too, by a poorer word or in another file: the first with a
 * golf tag stays.
 */
function drawnTwice(fresh: readonly Match[], frame: Frame): { once: Match[]; again: { match: Match; of: Match }[] } {
  const golf = ({ incoming: { candidate } }: Match): number => (candidate.tags["golf"] === undefined ? 1 : 0);
  const areas = fresh
    .filter(({ incoming: { candidate } }) => candidate.geometry.type.endsWith("Polygon"))
    .toSorted((a, b) => golf(a) - golf(b));
  const shapes = new Map(areas.map((match) => [match, shapeOf(match.incoming.candidate.geometry, frame)]));
  const again = new Map<Match, Match>();
  areas.forEach((match, i) => {
    const of = areas.slice(0, i).find((other) => {
      const [a, b] = [match.incoming.candidate, other.incoming.candidate];
      // One green of two holes is on both their pages.
      return (
        !again.has(other) &&
        a !== b &&
        a.geometry !== b.geometry &&
        alike(a, b) &&
        sameGround(shapes.get(match)!, shapes.get(other)!)
      );
    });
    if (of !== undefined) again.set(match, of);
  });
  return { once: fresh.filter((match) => !again.has(match)), again: [...again].map(([match, of]) => ({ match, of })) };
}

/**
 * New features by page, named, in the order a hole is read: the line, tees, fairway, green, then hazards as
 * they are met.
 */
function additions(fresh: readonly Match[], pages: CoursePages): Change[] {
  const changes: Change[] = [];
  for (const at of new Set(fresh.map(({ incoming }) => incoming.at))) {
    const own = fresh.filter(({ incoming }) => incoming.at === at);
    // A tip of any hole may name the course's features, so their ids are no hole's and a hole's are not theirs.
    const meets = (other: PageAt): boolean => at === "course" || other === at || other === "course";
    const taken = allPages(pages)
      .filter((page) => meets(page.at))
      .flatMap((page) => {
        const leaving = placeholderIds(page);
        return page.ids.filter((id) => !leaving.has(id));
      });
    const given = changes.filter((change) => meets(change.at)).map(({ id }) => id);
    const ids = nameFeatures(own.map(toName), new Set([...taken, ...given]));
    const named = own.map((match, i) => ({ match, id: ids[i]! }));
    named.sort((a, b) => order(a.match) - order(b.match) || stationOf(a.match) - stationOf(b.match));
    for (const { match, id } of named) {
      const { tags, geometry } = match.incoming.candidate;
      changes.push({
        match,
        at,
        id,
        what: "new",
        edits: [],
        added: { type: "Feature", id, properties: tags, geometry },
        changes: [],
        kept: [],
      });
    }
  }
  return changes;
}

/** Placeholders make room for what is brought, their names too. */
const placeholderIds = ({ features }: Page): ReadonlySet<string> =>
  new Set(features.filter(isPlaceholder).map(({ id }) => id));

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
  for (const {
    match: {
      incoming: { candidate, key },
    },
    at,
    id,
    what,
  } of changes) {
    if (what === "taken-out" || what === "duplicate") continue;
    const [own, place] = [key ?? placeKey(at, id), atOf(at, id)];
    const before = keyAt.get(place);
    if (before !== undefined && before !== own) delete entries[before];
    keyAt.set(place, own);
    entries[own] = entryOf(place, candidate.geometry, candidate.tags);
  }
  return entries;
}
