/**
 * From what files hold to what changes on pages, step by step, each a pure function of the
 * ones before: normalise, locate the course, lines first, match the rest, merge with what
 * the club has, complete what holes still need, plan. Reading and writing stand at either
 * end, in `run.ts` and `write.ts`.
 */
import { valueAt } from "../course/schema/issues.ts";
import { completeHoles } from "./complete/complete.ts";
import { isMarked } from "./merge/card.ts";
import { changesOf } from "./merge/changes.ts";
import { goneFromSources } from "./merge/gone.ts";
import { matchFeatures } from "./merge/match.ts";
import { normalise } from "./normalise/normalise.ts";
import { saidBy } from "./normalise/said.ts";
import type { CoursePages } from "./pages/pages.ts";
import { knownHoles, statedFirstTee } from "./place/known.ts";
import { linesFirst } from "./place/lines.ts";
import { locate } from "./place/locate.ts";
import { onePerHole, placeRest } from "./place/rest.ts";
import { straightenThrees } from "./place/straighten.ts";
import { planFiles, type Plan, type PlanOptions } from "./plan.ts";
import type { Brought } from "./sources/brought.ts";

export function planBring(brought: readonly Brought[], pages: CoursePages, options: PlanOptions): Plan {
  const normalised = normalise(brought, pages.tees);
  const known = knownHoles(pages);
  const located = locate(normalised.candidates, pages, known);
  const lines = linesFirst(located, known, statedFirstTee(pages));
  const rest = placeRest(located, lines, options.aroundMetres);
  const single = onePerHole([...lines.incoming, ...rest.incoming]);
  const parOf = (hole: number): unknown => {
    const page = pages.holes.find(({ at }) => at === hole);
    return page === undefined || isMarked(page, "par") ? undefined : valueAt(page.value, ["par"]);
  };
  const { incoming, notes: straightened } = straightenThrees(single.incoming, parOf);
  const changes = changesOf(matchFeatures(incoming, pages, located.frame), pages, located.frame);
  const said = new Map(
    incoming
      .filter(({ candidate }) => candidate.kind === "line-of-play")
      .map(({ at, candidate }) => [at, saidBy(candidate, options.distUnit)]),
  );
  const cards = new Map([...said].flatMap(([at, { card }]) => (typeof at === "number" ? [[at, card] as const] : [])));
  const completions = completeHoles(changes, lines, pages, located.frame, { markerPlace: options.markerPlace, cards });
  const plan = planFiles({ changes, completions, said }, pages, options);
  return {
    ...plan,
    leftOver: [...normalised.leftOver, ...located.leftOver, ...lines.leftOver, ...rest.leftOver, ...single.leftOver],
    notes: [
      ...normalised.notes,
      ...lines.notes,
      ...straightened,
      ...plan.notes,
      ...goneFromSources(incoming, normalised.candidates, pages),
    ],
  };
}
