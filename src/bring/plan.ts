/** What bringing would change: for each page its new text, for each feature what became of it. Pure. */
import type { LengthUnit } from "../geo/units.ts";
import type { LeftOver } from "./left-over.ts";
import { fieldEdits } from "./merge/card.ts";
import { nextEntries, type Change } from "./merge/changes.ts";
import type { Candidate } from "./normalise/candidate.ts";
import { fieldsOf, saidBy, type Fields } from "./normalise/said.ts";
import type { Ledger } from "./pages/ledger.ts";
import { holeFileName, newPage } from "./pages/new-page.ts";
import { allPages, type CoursePages, type PageAt } from "./pages/pages.ts";
import { editedPage } from "./pages/written.ts";
import type { Incoming } from "./place/incoming.ts";

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
  /** In the order of pages, and along each line of play. */
  readonly changes: readonly Change[];
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

/** @param incoming all that goes to pages: their lines of play say what a hole's card is */
export function planFiles(incoming: readonly Incoming[], changes: readonly Change[], pages: CoursePages, { course, distUnit }: PlanOptions): Omit<Plan, "leftOver"> {
  const lines = new Map(incoming.flatMap(({ at, candidate }): [PageAt, Candidate][] => (candidate.kind === "line-of-play" ? [[at, candidate]] : [])));
  const pageAt = new Map(allPages(pages).map((page) => [page.at, page]));
  const holes: Record<string, Fields> = { ...pages.ledger.holes };
  const files: PlannedFile[] = [];
  const notes: string[] = [];
  for (const at of [...new Set([...lines.keys(), ...changes.filter(({ what }) => what !== "taken-out").map((change) => change.at)])].sort((a, b) => numberOf(a) - numberOf(b))) {
    const own = changes.filter((change) => change.at === at);
    const added = own.flatMap((change) => change.added ?? []);
    const said = saidBy(lines.get(at), distUnit);
    notes.push(...said.notes);
    const page = pageAt.get(at);
    const before = holes[String(at)] ?? {};
    if (page !== undefined) {
      const fields = fieldEdits(page, fieldsOf(said), before);
      notes.push(...fields.notes);
      const after = editedPage(page, [...own.flatMap(({ edits }) => edits), ...fields.edits], added);
      if (after !== page.text) files.push({ file: page.file, before: page.text, after });
    } else if (at !== "course") {
      const file = `${course}/holes/${holeFileName(at, said.name)}`;
      files.push({ file, before: undefined, after: newPage(at, said, added) });
      const missing = [said.par === undefined ? "par" : "", said.strokeIndex === undefined ? "strokeIndex" : "", Object.keys(said.card).length === 0 ? "card" : ""].filter(Boolean);
      notes.push(`${file} is new: write ${[...missing, "the tip"].join(", ").replace(/, ([^,]*)$/, " and $1")} by hand.`);
    }
    const now = { ...before, ...fieldsOf(said) };
    if (Object.keys(now).length > 0) holes[String(at)] = now;
  }
  return { files, ledger: { features: nextEntries(pages.ledger, changes), holes }, changes: changes.toSorted(byPage), notes };
}

/** The course before its holes. */
const numberOf = (at: PageAt): number => (at === "course" ? 0 : at);

const byPage = (a: Change, b: Change): number => {
  const station = ({ match }: Change): number => match.incoming.lie?.stationMetres ?? -1;
  return numberOf(a.at) - numberOf(b.at) || station(a) - station(b);
};
