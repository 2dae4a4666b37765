/** Silencing a rule takes a reason, is counted, and does not outlive its use. */
import { describe, expect, test } from "vitest";
import { runChecks } from "../../src/check/check.ts";
import type { Course, Silence } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { club, plainCourse, TODAY } from "./support.ts";

const at = (file: string): Silence["place"] => ({ file, line: 3, column: 5 });
const silence = (rule: string, file = "test"): Silence => ({
  rule,
  because: "The card is reprinted in spring.",
  place: at(file),
});

/** A course whose one hole trips card-against-ground, by 20 m. */
const wrongCard = (hole: readonly Silence[], whole: readonly Silence[] = []): Course =>
  plainCourse({ rest: { cardMetres: { back: 400 }, silence: hole } }, { silence: whole });

const run = (one: Course) => runChecks({ club: club([one]), measured: measureCourse(one), today: TODAY });
const rulesOf = (one: Course): string[] => run(one).diagnostics.map(({ rule }) => rule);

describe("silence", () => {
  test("without one the rule is heard", () => {
    expect(rulesOf(wrongCard([]))).toContain("card-against-ground");
    expect(run(wrongCard([])).silenced).toEqual([]);
  });
  test.each([
    ["a hole's own", wrongCard([silence("card-against-ground")])],
    ["the course's", wrongCard([], [silence("card-against-ground")])],
  ])("%s hides the rule, keeps the reason and is counted", (_, one) => {
    const { diagnostics, silenced } = run(one);
    expect(diagnostics.map(({ rule }) => rule)).not.toContain("card-against-ground");
    expect(diagnostics.map(({ rule }) => rule)).not.toContain("silence-unused");
    expect(silenced).toMatchObject([
      { because: "The card is reprinted in spring.", diagnostic: { rule: "card-against-ground" } },
    ]);
  });
  test("a hole's silence does not reach the course's own file", () => {
    const one = plainCourse({ rest: { silence: [silence("survey-age")] } }, { surveyed: undefined });
    expect(rulesOf(one)).toContain("survey-age");
    expect(rulesOf(one)).toContain("silence-unused");
  });
  test("one that hides nothing is a note at its place", () => {
    const one = plainCourse({ rest: { silence: [silence("card-against-ground", "test/holes/01.md")] } });
    expect(run(one).diagnostics.find(({ rule }) => rule === "silence-unused")).toMatchObject({
      severity: "note",
      file: "test/holes/01.md",
      line: 3,
      column: 5,
    });
  });
  test("one that names no rule is a warning", () => {
    expect(
      run(plainCourse({ rest: { silence: [silence("card-vs-ground")] } })).diagnostics.find(
        ({ rule }) => rule === "silence-unknown",
      ),
    ).toMatchObject({ severity: "warning" });
  });
});

describe("a check", () => {
  test("gives everything in reading order, and the short form is the same list", () => {
    const one = wrongCard([], []);
    const { diagnostics } = run(one);
    const input = { club: club([one]), measured: measureCourse(one), today: TODAY };
    expect(runChecks(input).diagnostics).toEqual(diagnostics);
    const keys = diagnostics.map(
      ({ file, line, column }) => `${file} ${String(line).padStart(5)} ${String(column).padStart(5)}`,
    );
    expect(keys).toEqual([...keys].sort());
  });
  test("is the same twice over", () => {
    const one = wrongCard([]);
    expect(run(one)).toEqual(run(one));
  });
});
