/** What bringing would change: for each page its new text, for each feature what became of it. Pure. */
import { valueAt } from "../course/schema/issues.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { Candidate, LeftOver } from "./normalise/candidate.ts";
import { cardYards } from "./normalise/card-tags.ts";
import type { Ledger, LedgerEntry } from "./pages/ledger.ts";
import { atOf, matchFeatures, placeKey, type Existing, type Match } from "./merge/match.ts";
import { entryOf, mergeFeature, mergeField } from "./merge/merge.ts";
import { nameFeatures } from "./pages/naming.ts";
import { featuresBlock, holeFileName, newPage } from "./pages/new-page.ts";
import type { CoursePages, Page, PageAt } from "./pages/pages.ts";
import { placeCandidates } from "./place/place.ts";
import type { Lie } from "./place/shape.ts";
import { editYaml, type Edit } from "./pages/yaml-edit.ts";

export interface Outcome {
  readonly at: PageAt;
  readonly id: string;
  readonly from: string;
  readonly what: "new" | "changed" | "same" | "taken-out";
  readonly kind: Candidate["kind"];
  readonly lie: Lie | undefined;
  readonly guessed: boolean;
  readonly reason: string;
  readonly changes: readonly string[];
  readonly kept: readonly string[];
}

export interface PlannedFile {
  readonly file: string;
  /** Undefined for one that is not there yet. */
  readonly before: string | undefined;
  readonly after: string;
}

export interface Plan {
  /** Pages that change, in order. */
  readonly files: readonly PlannedFile[];
  readonly ledger: Ledger;
  readonly outcomes: readonly Outcome[];
  readonly leftOver: readonly LeftOver[];
  /** In sentences: what to do by hand, what was assumed. */
  readonly notes: readonly string[];
}

export interface PlanOptions {
  /** The course's folder. */
  readonly course: string;
  /** Unit of lengths that do not say theirs. */
  readonly distUnit: LengthUnit | undefined;
}

interface FeatureValue {
  readonly type: "Feature";
  readonly id: string;
  readonly properties: Candidate["tags"];
  readonly geometry: Candidate["geometry"];
}

/** All that is to be done to one page. */
class PageWork {
  readonly edits: Edit[] = [];
  readonly added: FeatureValue[] = [];
  line: Candidate | undefined;
}

const hole = (at: PageAt): string => (at === "course" ? "the course" : `hole ${at}`);

export function planBring(candidates: readonly Candidate[], pages: CoursePages, { course, distUnit }: PlanOptions): Plan {
  const { incoming, leftOver, frame, turned } = placeCandidates(candidates, pages);
  const notes = turned.map((from) => `${from} ran from green to tee and was turned round.`);
  const all: readonly Page[] = [pages.course, ...pages.holes];
  const pageAt = new Map(all.map((page) => [page.at, page]));
  const existing = all.flatMap((page): Existing[] => page.features.map((feature) => ({ at: page.at, feature })));
  const matches = matchFeatures(incoming, existing, pages.ledger, frame);
  const work = new Map<PageAt, PageWork>();
  const workAt = (at: PageAt): PageWork => {
    const own = work.get(at) ?? new PageWork();
    work.set(at, own);
    return own;
  };
  const outcomes: Outcome[] = [];
  const entries: Record<string, LedgerEntry> = { ...pages.ledger.features };
  const keyAt = new Map(Object.entries(entries).map(([key, { at }]) => [at, key]));
  const record = ({ key }: Match["incoming"], at: PageAt, id: string, { geometry, tags }: Candidate): void => {
    const [own, place] = [key ?? placeKey(at, id), atOf(at, id)];
    const before = keyAt.get(place);
    if (before !== undefined && before !== own) delete entries[before];
    keyAt.set(place, own);
    entries[own] = entryOf(place, geometry, tags);
  };
  const outcome = (match: Match, at: PageAt, id: string, what: Outcome["what"], changes: readonly string[] = [], kept: readonly string[] = []): void => {
    const { candidate, guessed, reason, lie } = match.incoming;
    outcomes.push({ at, id, from: candidate.from, what, kind: candidate.kind, lie, guessed, reason, changes, kept });
  };

  for (const match of matches) {
    const { incoming: one, existing: found, last, takenOut } = match;
    if (takenOut) outcome(match, one.at, last!.at.slice(last!.at.indexOf("/") + 1), "taken-out");
    if (one.candidate.kind === "line-of-play") workAt(one.at).line = one.candidate;
    if (found === undefined) continue;
    const { edits, changes, kept } = mergeFeature(match);
    workAt(found.at).edits.push(...edits);
    outcome(match, found.at, found.feature.id, edits.length > 0 ? "changed" : "same", changes, kept);
    record(one, found.at, found.feature.id, one.candidate);
  }
  for (const [at, fresh] of groupBy(matches.filter(({ existing: found, takenOut }) => found === undefined && !takenOut), ({ incoming: one }) => one.at)) {
    const others = at === "course" ? all.flatMap(({ ids }) => ids) : [...(pageAt.get(at)?.ids ?? []), ...pages.course.ids];
    // The course's own come first in the matches' order only by chance, so both sides look at what the other is given.
    const given = [...work.entries()].flatMap(([other, { added }]) => (other === at || other === "course" || at === "course" ? added.map(({ id }) => id) : []));
    const names = nameFeatures(fresh.map(({ incoming: { candidate, lie } }) => ({
      kind: candidate.kind,
      name: typeof candidate.tags["name"] === "string" ? candidate.tags["name"] : undefined,
      tee: typeof candidate.tags["tee"] === "string" ? candidate.tags["tee"] : undefined,
      id: candidate.id,
      lie,
    })), new Set([...others, ...given]));
    const named = fresh.map((match, i) => ({ match, id: names[i]! }));
    named.sort((a, b) => order(a.match) - order(b.match) || (a.match.incoming.lie?.stationMetres ?? 0) - (b.match.incoming.lie?.stationMetres ?? 0));
    for (const { match, id } of named) {
      const { candidate } = match.incoming;
      workAt(at).added.push({ type: "Feature", id, properties: candidate.tags, geometry: candidate.geometry });
      outcome(match, at, id, "new");
      record(match.incoming, at, id, candidate);
    }
  }
  const holes: Record<string, Readonly<Record<string, unknown>>> = { ...pages.ledger.holes };
  const files: PlannedFile[] = [];
  for (const [at, own] of [...work].sort(([a], [b]) => (a === "course" ? -1 : b === "course" ? 1 : a - b))) {
    const said = own.line?.card;
    const { card, unknown } = said ? cardYards(said, distUnit) : { card: {}, unknown: [] };
    if (unknown.length > 0) notes.push(`${own.line!.from} gives lengths for ${unknown.join(", ")} without a unit, and OpenStreetMap sets none. Look whether they are yards or metres and say --dist-unit yards or --dist-unit metres; the card was left as it is.`);
    for (const fault of said?.faults ?? []) notes.push(`${own.line!.from}: ${fault}.`);
    const page = pageAt.get(at);
    const fields: Record<string, unknown> = said ? { name: said.name, par: said.par, strokeIndex: said.strokeIndex, ...Object.fromEntries(Object.entries(card).map(([tee, yards]) => [`card.${tee}`, yards])) } : {};
    if (page === undefined) {
      const file = `${course}/holes/${holeFileName(at as number, said?.name)}`;
      files.push({ file, before: undefined, after: newPage(at as number, said, card, own.added) });
      const missing = [said?.par === undefined ? "par" : "", said?.strokeIndex === undefined ? "strokeIndex" : "", Object.keys(card).length === 0 ? "card" : ""].filter(Boolean);
      notes.push(`${file} is new: write ${[...missing, "the tip"].join(", ").replace(/, ([^,]*)$/, " and $1")} by hand.`);
    } else {
      fieldEdits(page, fields, holes[String(at)] ?? {}, own.edits, notes);
      const after = editedPage(page, own);
      if (after !== page.text) files.push({ file: page.file, before: page.text, after });
    }
    const before = holes[String(at)] ?? {};
    const now = { ...before, ...Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) };
    if (Object.keys(now).length > 0) holes[String(at)] = now;
  }
  return { files, ledger: { features: entries, holes }, outcomes: outcomes.sort(byPage), leftOver, notes: [...notes, ...gone(matches, pages, candidates)] };
}

const byPage = (a: Outcome, b: Outcome): number => {
  const place = ({ at }: Outcome): number => (at === "course" ? 0 : at);
  return place(a) - place(b) || (a.lie?.stationMetres ?? -1) - (b.lie?.stationMetres ?? -1);
};

/** The order of kinds on a page: the way a hole is played. */
function order({ incoming: { candidate } }: Match): number {
  const at = ["line-of-play", "tee-marker", "teeing-ground", "fairway", "green", "pin"].indexOf(candidate.kind);
  return at === -1 ? 9 : at;
}

function groupBy<K, T>(items: readonly T[], key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}

function fieldEdits(page: Page, fields: Readonly<Record<string, unknown>>, last: Readonly<Record<string, unknown>>, edits: Edit[], notes: string[]): void {
  const cardThere = valueAt(page.value, ["card"]) !== undefined;
  const newCard: Record<string, unknown> = {};
  for (const [field, value] of Object.entries(fields)) {
    const path = field.split(".");
    const own = valueAt(page.value, path);
    // The page's own name is the club's; a source's name only fills a gap.
    if (field === "name" && own !== undefined && last[field] === undefined) continue;
    const merged = mergeField(field, own, value, last[field]);
    if (merged === undefined) continue;
    if (merged.kept) notes.push(`${page.file} keeps ${merged.kept}.`);
    if (!merged.change) continue;
    notes.push(`${page.file}: ${merged.change}.`);
    if (own !== undefined) edits.push({ op: "replace", path, value });
    else if (path.length === 1) edits.push({ op: "add", path: [], key: field, value });
    else if (cardThere) edits.push({ op: "add", path: ["card"], key: path[1]!, value });
    else newCard[path[1]!] = value;
  }
  if (Object.keys(newCard).length > 0) edits.push({ op: "add", path: [], key: "card", value: newCard });
}

function editedPage(page: Page, { edits, added }: PageWork): string {
  const { text, start, end, value, file } = page;
  const yaml = text.slice(start, end);
  const list = valueAt(value, ["features", "features"]);
  const all: Edit[] = [...edits];
  let tail = "";
  if (added.length > 0) {
    if (Array.isArray(list)) all.push(...(list.length === 0 ? [{ op: "replace", path: ["features", "features"], value: added } as const] : added.map((feature) => ({ op: "append", path: ["features", "features"], value: feature }) as const)));
    else if (valueAt(value, ["features"]) === undefined) {
      const newline = text.includes("\r\n") ? "\r\n" : "\n";
      tail = `${yaml.endsWith("\n") || yaml === "" ? "" : newline}${featuresBlock(added, newline)}${newline}`;
    } else all.push({ op: "replace", path: ["features"], value: { type: "FeatureCollection", features: added } });
  }
  return text.slice(0, start) + editYaml(file, yaml, all) + tail + text.slice(end);
}

/** Features an earlier run brought from sources of which this run has others, but no longer these. */
function gone(matches: readonly Match[], pages: CoursePages, candidates: readonly Candidate[]): string[] {
  const source = (key: string): string => key.slice(0, key.indexOf(key.startsWith("osm:") ? ":" : "#") + 1);
  const present = new Set(candidates.flatMap(({ key }) => (key === undefined ? [] : source(key))));
  const seen = new Set(matches.map(({ incoming: { key } }) => key));
  const own = new Set([pages.course, ...pages.holes].flatMap((page) => page.ids.map((id) => atOf(page.at, id))));
  return Object.entries(pages.ledger.features).flatMap(([key, { at }]) => {
    if (key.startsWith("=") || seen.has(key) || !present.has(source(key)) || !own.has(at)) return [];
    const [page, id] = [at.slice(0, at.indexOf("/")), at.slice(at.indexOf("/") + 1)];
    return [`${id} of ${hole(page === "course" ? "course" : Number(page))} is no longer in the source (${key}). It was kept; delete it from the page if it is gone from the ground.`];
  });
}

