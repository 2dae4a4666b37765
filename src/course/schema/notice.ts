/** Dated notices: a temporary green, winter tees, buggies kept to paths. */
import * as z from "zod";
import type { Notice } from "../types.ts";
import { expects, group, isoDate, line, MOST_HOLES, wholeNumber } from "./fields.ts";
import { errorAt, type Finding } from "./finding.ts";
import { valueAt } from "./issues.ts";
import { count, oneOf } from "./wording.ts";

const EXAMPLE = 'notices: and below it - { from: 2026-11-01, until: 2027-02-28, text: "Winter tees in use." }';

const fields = {
  from: isoDate("the first day it holds as year-month-day", "from: 2026-11-01").optional(),
  until: isoDate("the last day it holds as year-month-day", "until: 2027-02-28"),
  text: line("a sentence", 'text: "Winter tees in use."', 500),
};

const inOrder = <T extends { readonly from?: string | undefined; readonly until: string }>(notice: z.ZodType<T>) =>
  notice.refine(({ from, until }) => from === undefined || from <= until, {
    path: ["until"],
    error: ({ input }) =>
      `expected a day not before from, ${String(valueAt(input, ["from"]))}. Write until: ${String(valueAt(input, ["from"]))} or a later day.`,
  });

/** Notices on a hole's own page. */
export const holeNotices = () =>
  z.array(inOrder(group(fields, "a notice")), expects("a list of notices", EXAMPLE)).default([]);

/** Notices of a course, for some holes or for all. */
export const courseNotices = () =>
  z
    .array(
      inOrder(
        group(
          {
            ...fields,
            holes: z
              .array(
                wholeNumber(1, MOST_HOLES, `a hole's number from 1 to ${MOST_HOLES}`, "holes: [ 3, 7 ]"),
                expects("a list of hole numbers", "holes: [ 3, 7 ]"),
              )
              .min(1)
              .optional(),
          },
          "a notice",
        ),
      ),
      expects("a list of notices", EXAMPLE),
    )
    .default([]);

/** Others were told by the schema already. */
const isHole = (value: unknown): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= 1 && value <= MOST_HOLES;

/** Hole numbers in a course's notices that no page has. */
export function checkNoticeHoles(course: unknown, numbers: ReadonlySet<number>): Finding[] {
  const notices = valueAt(course, ["notices"]);
  if (!Array.isArray(notices)) return [];
  return notices.flatMap((notice, i) => {
    const holes = valueAt(notice, ["holes"]);
    if (!Array.isArray(holes)) return [];
    return holes.flatMap((hole: unknown, j) =>
      !isHole(hole) || numbers.has(hole)
        ? []
        : [
            errorAt(
              ["notices", i, "holes", j],
              "notice-hole",
              `There is no hole ${hole}: the course has ${count(numbers.size, "hole")}. Write ${oneOf([...numbers].sort((a, b) => a - b).map(String))}.`,
            ),
          ],
    );
  });
}

/** A notice as written, tied to its line. */
export const noticeFrom = (
  {
    from,
    until,
    text,
    holes,
  }: { from?: string | undefined; until: string; text: string; holes?: readonly number[] | undefined },
  place: Notice["place"],
): Notice => ({ from, until, text, holes, place });
