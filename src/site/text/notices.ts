/** The notices a page shows. */
import type { Course, Hole, Notice } from "../../course/types.ts";

export interface ShownNotice extends Omit<Notice, "place" | "holes"> {
  /** Holes it is about, ascending; none: the whole course. */
  readonly holes: readonly number[];
}

const shown = ({ from, until, text, holes, untranslated = [] }: Notice): ShownNotice => ({
  from,
  until,
  text,
  untranslated,
  holes: [...new Set(holes ?? [])].sort((a, b) => a - b),
});

/** What begins first stands first; what has begun already, in the order written. */
const byDay = (notices: readonly ShownNotice[]): ShownNotice[] =>
  [...notices].sort((a, b) => ((a.from ?? "") < (b.from ?? "") ? -1 : (a.from ?? "") > (b.from ?? "") ? 1 : 0));

/** Those of a hole's own page, then the course's that name it or are for all. */
export const holeNotices = (course: Course, { number, notices }: Hole): ShownNotice[] =>
  [
    ...byDay(notices.map(shown)),
    ...byDay(course.notices.filter(({ holes }) => holes === undefined || holes.includes(number)).map(shown)),
  ].map((notice) => ({ ...notice, holes: [] }));

/** Every notice of a course: those for all of it first, then by hole. */
export function courseNotices(course: Course): ShownNotice[] {
  const own = course.notices.map(shown);
  const ofHoles = course.holes.flatMap(({ number, notices }) =>
    notices.map((notice) => shown({ ...notice, holes: [number] })),
  );
  return [
    ...byDay(own.filter(({ holes }) => holes.length === 0)),
    ...[...own.filter(({ holes }) => holes.length > 0), ...ofHoles].sort((a, b) => a.holes[0]! - b.holes[0]!),
  ];
}
