import { expect, test } from "vitest";
import { runChecks } from "../../src/check/check.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { Club } from "../../src/course/types.ts";
import { plainCourse } from "./support.ts";

const PAGES = new Set(["", "test/1/", "test/1/flyover/", "test/card/", "test/map/"]);

const told = (markdown: string): string[] => {
  const place = { file: "test/holes/01-test.md", line: 20, column: 1 };
  const club = { name: "Test", language: "en", units: "yards", courses: [] } as unknown as Club;
  const measured = measureCourse(plainCourse({ rest: { tip: { markdown, place } } }));
  return runChecks({ club, measured, today: "2026-06-01", pages: PAGES })
    .diagnostics.filter(({ rule }) => rule === "dead-link")
    .map(({ line, column, message }) => `${line}:${column} ${message}`);
};

test("links to pages of the guide, to other sites, to mail and on the page are in order", () => {
  expect(
    told(
      'See [the card](../card/), [the map](../map), [the film](flyover/ "Film"), [the cover](../../), [us](https://club.example/), [mail](mailto:a@b.example), [below](#green). It is :carry[pond] (just).',
    ),
  ).toEqual([]);
});

test("a page that is not there, and an address from the root, are told with their place", () => {
  expect(told("Play on.\nThen [the ninth](../9/) or [the card](/card/).")).toEqual([
    "21:6 [the ninth](../9/) leads to no page of the guide. From here another hole is ../7/, the scorecard ../card/, the map ../map/.",
    "21:28 [the card](/card/) starts at the address's root, which may not be the guide's. Write it from this page, such as ../card/ for the scorecard.",
  ]);
});
