/** What a page says of the state and the sources of what it shows. Pure. */
import { creditLines } from "../../course/credits.ts";
import { draftOf, unnamedSources } from "../../course/draft.ts";
import type { Course, Hole } from "../../course/types.ts";
import type { Words } from "../language/words.ts";

/** `Draft: shapes are placeholders.`; undefined where all is the club's own. */
export function draftLine(
  course: Course,
  { draft: words }: Words,
  holes: readonly Hole[] = course.holes,
): string | undefined {
  const drafts = holes.flatMap((hole) => draftOf(hole) ?? []);
  const reasons = [
    ...(drafts.some(({ shapes }) => shapes.length > 0) ? [words.shapes] : []),
    ...(drafts.some(({ proposed }) => proposed.length > 0) ? [words.proposed] : []),
    ...(drafts.some(({ placeholderFields, proposedFields }) => placeholderFields.length + proposedFields.length > 0)
      ? [words.figures]
      : []),
    ...(drafts.some(({ tip }) => tip) ? [words.tip] : []),
    ...(unnamedSources(course).length > 0 ? [words.sources] : []),
  ];
  return reasons.length === 0 ? undefined : words.line({ reasons: reasons.join("; ") });
}

/** All credits in one line, as paper and pictures carry it; undefined where no source asks for it. */
export function creditText(course: Course, words: Words): string | undefined {
  const credits = creditLines(course);
  return credits.length === 0
    ? undefined
    : words.draft.mapData({ credits: credits.map(({ text }) => text).join("; ") });
}

/** What the figures are computed from: a survey is claimed only where there is one. */
export function computedFrom(course: Course, words: Words, holes: readonly Hole[] = course.holes): string {
  const say = words.draft;
  if (holes.some((hole) => (draftOf(hole)?.shapes.length ?? 0) > 0)) return say.fromPlaceholders;
  if (course.surveyed !== undefined) return words.footer.measured;
  return course.sources.length > 0 ? say.fromSources({ sources: course.sources.join("; ") }) : say.fromClub;
}

/**
 * What a film's picture carries: that it is a draft, and whose the shapes are; undefined where there is
 * nothing to say.
 */
export const filmNote = (course: Course, words: Words, holes: readonly Hole[]): string | undefined =>
  [draftLine(course, words, holes), creditText(course, words)].filter((line) => line !== undefined).join(" ") ||
  undefined;
