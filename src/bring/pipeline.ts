/**
 * From what files hold to what changes on pages, step by step, each a pure function of the
 * ones before: normalise, locate the course, lines first, match the rest, merge with what
 * the club has, plan. Reading and writing stand at either end, in `run.ts`.
 */
import { goneFromSources } from "./merge/gone.ts";
import { changesOf } from "./merge/changes.ts";
import { matchFeatures } from "./merge/match.ts";
import { normalise } from "./normalise/normalise.ts";
import type { CoursePages } from "./pages/pages.ts";
import { knownHoles } from "./place/known.ts";
import { linesFirst } from "./place/lines.ts";
import { locate } from "./place/locate.ts";
import { onePerHole, placeRest } from "./place/rest.ts";
import { planFiles, type Plan, type PlanOptions } from "./plan.ts";
import type { Brought } from "./sources/brought.ts";

export function planBring(brought: readonly Brought[], pages: CoursePages, options: PlanOptions): Plan {
  const normalised = normalise(brought, pages.tees);
  const known = knownHoles(pages);
  const located = locate(normalised.candidates, pages, known);
  const lines = linesFirst(located, known);
  const rest = placeRest(located, lines);
  const single = onePerHole([...lines.incoming, ...rest.incoming]);
  const matches = matchFeatures(single.incoming, pages, located.frame);
  const plan = planFiles(single.incoming, changesOf(matches, pages), pages, options);
  return {
    ...plan,
    leftOver: [...normalised.leftOver, ...located.leftOver, ...lines.leftOver, ...rest.leftOver, ...single.leftOver],
    notes: [...normalised.notes, ...lines.notes, ...plan.notes, ...goneFromSources(single.incoming, normalised.candidates, pages)],
  };
}
