/** Which notices stand on which page. */
import { expect, test } from "vitest";
import type { Course, Notice } from "../../src/course/types.ts";
import { courseNotices, holeNotices } from "../../src/site/text/notices.ts";
import { course, hole } from "../support/flat-course.ts";

const place = { file: "test/course.yaml", line: 1, column: 1 };
const notice = (text: string, rest: Partial<Notice> = {}): Notice => ({
  from: undefined,
  until: "2027-02-28",
  text,
  holes: undefined,
  place,
  ...rest,
});

const sample: Course = course(
  [1, 2, 3].map((number) => hole([], { number, notices: number === 2 ? [notice("Own")] : [] })),
  { notices: [notice("Some", { holes: [3, 1, 3] }), notice("Later", { from: "2026-12-01" }), notice("All")] },
);
const texts = (notices: readonly { text: string }[]): string[] => notices.map(({ text }) => text);

test("a hole page has its own, the course's that name it, and those for all, in order of their days", () => {
  expect(texts(holeNotices(sample, sample.holes[0]!))).toEqual(["Some", "All", "Later"]);
  expect(texts(holeNotices(sample, sample.holes[1]!))).toEqual(["Own", "All", "Later"]);
  // On a hole's own page there is no need to say which hole.
  expect(holeNotices(sample, sample.holes[0]!).flatMap(({ holes }) => holes)).toEqual([]);
});

test("the cover has every one, those for the whole course first, and says for which holes", () => {
  expect(courseNotices(sample).map(({ text, holes }) => [text, holes])).toEqual([
    ["All", []],
    ["Later", []],
    ["Some", [1, 3]],
    ["Own", [2]],
  ]);
});
