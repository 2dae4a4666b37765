/** What bringing would change: for each page its new text, for each feature what became of it. Pure. */
import { yardsFromMetres, type LengthUnit } from "../geo/units.ts";
import { parFromLength } from "../measure/par-length.ts";
import type { Completion } from "./complete/complete.ts";
import type { MarkerPlace } from "./complete/markers.ts";
import type { LeftOver } from "./left-over.ts";
import { fieldEdits, type Measured } from "./merge/card.ts";
import { nextEntries, type Change } from "./merge/changes.ts";
import { creditEdits, type SourceFile, type StatedSource } from "./merge/credits.ts";
import { dealtAgain } from "./merge/stroke-index.ts";
import { fieldsOf, type Fields, type SaidOfHole } from "./normalise/said.ts";
import type { Ledger } from "./pages/ledger.ts";
import { holeFileName, newPage } from "./pages/new-page.ts";
import { allPages, type CoursePages, type Page, type PageAt } from "./pages/pages.ts";
import { editedPage } from "./pages/written.ts";
import type { Edit } from "./pages/yaml-edit.ts";

export interface PlannedFile {
  readonly file: string;
  /** Undefined for one that is not there yet. */
  readonly before: string | undefined;
  readonly after: string;
}

export interface Plan {
  /** Files that change, in order: the course's, then the holes'. */
  readonly files: readonly PlannedFile[];
  readonly ledger: Ledger;
  /** In the order of pages, and along each line of play. */
  readonly changes: readonly Change[];
  /** What was worked out, laid or taken away beside what came. */
  readonly completions: readonly Completion[];
  readonly leftOver: readonly LeftOver[];
  /** In sentences: what to do by hand, what was assumed. */
  readonly notes: readonly string[];
}

export interface PlanOptions {
  /** The course's folder. */
  readonly course: string;
  /** Unit of lengths that do not say theirs. */
  readonly distUnit: LengthUnit | undefined;
  /** Whether measured lengths are to stand on cards that have none of the club's. */
  readonly cardFromGround: boolean;
  readonly markerPlace: MarkerPlace;
  /** Metres from a line of play within which roads, paths, buildings and fences are kept. */
  readonly aroundMetres: number;
  readonly stated: StatedSource;
  /** The file each brought feature is from, by what messages call the feature. */
  readonly fileOf: ReadonlyMap<string, SourceFile>;
}

/** What the pages are made from. */
export interface Decided {
  readonly changes: readonly Change[];
  readonly completions: readonly Completion[];
  /** By hole: what its line of play says. */
  readonly said: ReadonlyMap<PageAt, SaidOfHole>;
}

export function planFiles(
  { changes, completions, said }: Decided,
  pages: CoursePages,
  { course, cardFromGround, stated, fileOf }: PlanOptions,
): Omit<Plan, "leftOver"> {
  const pageAt = new Map(allPages(pages).map((page) => [page.at, page]));
  const sources = contributing(changes, fileOf);
  const dealt = dealtAgain(
    pages.holes,
    new Map(
      [...said].flatMap(([at, { strokeIndex }]) =>
        typeof at === "number" && strokeIndex !== undefined ? [[at, strokeIndex]] : [],
      ),
    ),
  );
  const holes: Record<string, Fields> = { ...pages.ledger.holes };
  const files: PlannedFile[] = [];
  const notes: string[] = [];
  const arriving = changes.filter(({ what }) => what !== "taken-out" && what !== "duplicate");
  const touched = new Set<PageAt>([
    ...said.keys(),
    ...arriving.map(({ at }) => at),
    ...dealt.keys(),
    ...(sources.length > 0 ? ["course" as const] : []),
  ]);
  for (const at of [...touched].sort((a, b) => numberOf(a) - numberOf(b))) {
    const own = changes.filter((change) => change.at === at);
    const completion = completions.find(({ hole }) => hole === at);
    const added = [
      ...own.flatMap((change) => change.added ?? []),
      ...(completion?.proposed ?? []),
      ...(completion?.placeholders ?? []),
    ];
    const told = said.get(at) ?? { name: undefined, par: undefined, strokeIndex: undefined, card: {}, notes: [] };
    const measured = measuredOf(completion, cardFromGround);
    notes.push(...told.notes);
    const page = pageAt.get(at);
    const before = holes[String(at)] ?? {};
    if (page !== undefined) {
      const fields = fieldEdits(page, fieldsOf(told), before, measured);
      notes.push(...fields.notes);
      const more: Edit[] = [
        ...(at === "course" ? creditEdits(page.value, sources, stated) : []),
        ...(typeof at === "number" && dealt.has(at)
          ? [{ op: "replace", path: ["strokeIndex"], value: dealt.get(at) } as const]
          : []),
      ];
      files.push(
        ...editedPage(page, {
          fields: [...fields.edits, ...more],
          features: [...own.flatMap(({ edits }) => edits), ...drops(page, completion)],
          added,
        }),
      );
    } else if (at !== "course") {
      const file = `${course}/holes/${holeFileName(at, told.name)}`;
      const card = Object.keys(told.card).length > 0 ? told.card : (measured.card ?? {});
      const proposed = card !== told.card && Object.keys(card).length > 0;
      files.push({
        file,
        before: undefined,
        after: newPage(at, { ...told, card }, added, {
          tees: pages.tees,
          lengths: completion?.lengths ?? {},
          proposed: proposed ? ["card"] : [],
        }),
      });
      const missing = [
        told.par === undefined ? "par" : "",
        told.strokeIndex === undefined ? "strokeIndex" : "",
        Object.keys(card).length === 0 ? "card" : "",
      ].filter(Boolean);
      notes.push(
        `${file} is new: write ${[...missing, "the tip"].join(", ").replace(/, ([^,]*)$/, " and $1")} by hand.`,
      );
    }
    const now = { ...before, ...fieldsOf(told) };
    if (Object.keys(now).length > 0) holes[String(at)] = now;
  }
  const ledger = {
    sources: [...new Set([...pages.ledger.sources, ...sources.map(({ name }) => name)])].sort(),
    features: nextEntries(pages.ledger, changes),
    holes,
  };
  return { files, ledger, changes: changes.toSorted(byPage), completions, notes };
}

/** Placeholders taken off a page, by their places in its list. */
const drops = ({ list }: Page, completion: Completion | undefined): Edit[] =>
  (completion?.dropped ?? []).map(({ path }) => ({
    op: "drop",
    path: [...list.path, "features"],
    index: path.at(-1) as number,
  }));

function measuredOf(completion: Completion | undefined, cardFromGround: boolean): Measured {
  const lengths = Object.entries(completion?.lengths ?? {});
  const longest = Math.max(...lengths.map(([, metres]) => metres));
  return {
    par: lengths.length === 0 ? undefined : parFromLength(longest),
    card:
      cardFromGround && lengths.length > 0
        ? Object.fromEntries(lengths.map(([tee, metres]) => [tee, Math.round(yardsFromMetres(metres))]))
        : undefined,
  };
}

/** The files whose features are on pages now and were not, or have changed them. */
function contributing(changes: readonly Change[], fileOf: PlanOptions["fileOf"]): SourceFile[] {
  const files = changes.flatMap(({ what, match }) =>
    what === "new" || what === "changed" ? (fileOf.get(match.incoming.candidate.from) ?? []) : [],
  );
  return [...new Map(files.map((file) => [file.name, file])).values()];
}

/** The course before its holes. */
const numberOf = (at: PageAt): number => (at === "course" ? 0 : at);

const byPage = (a: Change, b: Change): number => {
  const station = ({ match }: Change): number => match.incoming.lie?.stationMetres ?? -1;
  return numberOf(a.at) - numberOf(b.at) || station(a) - station(b);
};
