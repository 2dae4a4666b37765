/** The scorecard: what is printed per hole and what it adds up to. */
import type { Hole, PerGender, TeeSet } from "../course/types.ts";
import type { MeasuredCourse, TeeFigures } from "./types.ts";

export interface ScorecardRow {
  readonly hole: Hole;
  /** Measured lengths by tee set; a set without a marker on this hole is absent. */
  readonly lengthMetres: Readonly<Record<string, number>>;
}

export interface ScorecardTotal {
  readonly par: PerGender;
  /** Sum of the measured lengths by tee set. */
  readonly lengthMetres: Readonly<Record<string, number>>;
  /** Sum of the printed card by tee set. */
  readonly cardMetres: Readonly<Record<string, number>>;
}

export interface Nine {
  readonly rows: readonly ScorecardRow[];
  readonly total: ScorecardTotal;
}

export interface Scorecard {
  readonly tees: readonly TeeSet[];
  /** Holes 1 to 9. */
  readonly out: Nine;
  /** Holes 10 to 18; undefined on a nine-hole course. */
  readonly in: Nine | undefined;
  readonly total: ScorecardTotal;
}

const lengths = (tees: readonly TeeFigures[]): Record<string, number> =>
  Object.fromEntries(tees.map((one) => [one.tee.id, one.lengthMetres]));

/** Per tee set, the sum over holes; sets that miss a hole are added up without it. */
function sums(records: readonly Readonly<Record<string, number>>[]): Record<string, number> {
  const total: Record<string, number> = {};
  for (const record of records) for (const [tee, metres] of Object.entries(record)) total[tee] = (total[tee] ?? 0) + metres;
  return total;
}

const totalOf = (rows: readonly ScorecardRow[]): ScorecardTotal => ({
  par: {
    men: rows.reduce((sum, { hole }) => sum + hole.par.men, 0),
    women: rows.reduce((sum, { hole }) => sum + hole.par.women, 0),
  },
  lengthMetres: sums(rows.map((row) => row.lengthMetres)),
  cardMetres: sums(rows.map(({ hole }) => hole.cardMetres)),
});

export function scorecard({ course, holes }: MeasuredCourse): Scorecard {
  const rows = holes.map(({ hole, tees }): ScorecardRow => ({ hole, lengthMetres: lengths(tees) }));
  const nine = (some: readonly ScorecardRow[]): Nine => ({ rows: some, total: totalOf(some) });
  return {
    tees: course.tees,
    out: nine(rows.slice(0, 9)),
    in: rows.length > 9 ? nine(rows.slice(9)) : undefined,
    total: totalOf(rows),
  };
}
