/** Tips in several languages: each by its own words, in its own file, under its hole's silences. */
import { describe, expect, test } from "vitest";
import { runChecks } from "../../src/check/check.ts";
import type { Diagnostic } from "../../src/course/diagnostic.ts";
import type { Course, Hole } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { areaFeature, box, course } from "../support/flat-course.ts";
import { club, found, plainCourse, plainHole, TODAY, tipIn, tipOf } from "./support.ts";

const POND = areaFeature("pond", "water", box(20, 370, 40, 390), { name: "Otter Pond" });
const withTips = (
  english: string,
  german: string,
  rest: Partial<Hole> = {},
  names: Readonly<Record<string, string>> = {},
): Course =>
  plainCourse({ features: [POND], rest: { tip: tipOf(english), translations: tipIn("de", german, names), ...rest } });
const told = (diagnostics: readonly Diagnostic[]): string[] =>
  diagnostics.map(({ file, line, column }) => `${file}:${line}:${column}`);

describe("a translated tip", () => {
  test("is held to the ground by the words of its language, at its place in its file", () => {
    const diagnostics = found(
      "tip-says-water",
      withTips("A pond lies right of the green.", "Schön.\n\nLinks vom Grün liegt ein Teich."),
    );
    expect(told(diagnostics)).toEqual(["test/holes/01.de.md:6:1"]);
    expect(diagnostics[0]!.severity).toBe("error");
    expect(diagnostics[0]!.message).toContain('"Links vom Grün liegt ein Teich"');
  });
  test("is not what the original is refuted by", () => {
    expect(
      told(found("tip-says-water", withTips("A pond lies left of the green.", "Rechts vom Grün liegt ein Teich."))),
    ).toEqual(["test/holes/01.md:20:1"]);
  });
  test("calls features by the names they have in its language", () => {
    const named = withTips("Right is Otter Pond.", "Der Otterteich liegt links vom Grün.", {}, { pond: "Otterteich" });
    const [diagnostic] = found("tip-says-water", named);
    expect(diagnostic?.file).toBe("test/holes/01.de.md");
    expect(diagnostic?.message).toContain("Otterteich lies right");
  });
  test("calls shared features by the names the course's translation gives them", () => {
    const shared = {
      ...plainHole({ rest: { tip: tipOf(""), translations: tipIn("de", "Die Lange Rinne liegt links vom Grün.") } }),
    };
    const one = course([shared], {
      features: [areaFeature("gully", "water", box(20, 370, 40, 390), { name: "Long Gully" })],
      translations: {
        de: {
          name: undefined,
          description: undefined,
          sources: undefined,
          tees: {},
          features: { gully: "Lange Rinne" },
          notices: [],
          place: { file: "test/course.de.yaml", line: 1, column: 1 },
        },
      },
    });
    expect(found("tip-says-water", one)).toHaveLength(1);
  });
  test("is measured by the rules of length, links and hazards too, reading ease only in English", () => {
    const one = withTips("Otter Pond is right.", "Siehe [Karte](../99/).");
    expect(told(found("tip-length", one))).toEqual(["test/holes/01.md:20:1", "test/holes/01.de.md:4:1"].sort());
    expect(told(found("dead-link", one))).toEqual(["test/holes/01.de.md:4:7"]);
    expect(told(found("hazard-unmentioned", one))).toEqual(["test/holes/01.de.md:4:1"]);
    expect(found("tip-reading", one)).toEqual([]);
  });
  test("mentions a hazard by any word for it, in any case", () => {
    expect(found("hazard-unmentioned", withTips("Otter Pond is right.", "Hüten Sie sich vor den Teichen."))).toEqual(
      [],
    );
  });
  test("is under the silences of its hole", () => {
    const silence = [
      {
        rule: "tip-says-water",
        because: "The pond is dug next week.",
        place: { file: "test/holes/01.md", line: 3, column: 1 },
      },
    ];
    const one = withTips("", "Links vom Grün liegt ein Teich.", { silence });
    const { diagnostics, silenced } = runChecks({ club: club([one]), measured: measureCourse(one), today: TODAY });
    expect(silenced.map(({ diagnostic: { file } }) => file)).toEqual(["test/holes/01.de.md"]);
    expect(diagnostics.map(({ rule }) => rule)).not.toContain("silence-unused");
  });
});

describe("a language the check does not know", () => {
  const french = (number: number) =>
    plainHole({
      east: number * 100,
      rest: { number, tip: tipOf("Straight."), translations: tipIn("fr", "Un étang à gauche.") },
    });
  test("is told of once for the course, not for each tip", () => {
    const diagnostics = found("tip-language", course([french(1), french(2), french(3)]));
    expect(diagnostics).toMatchObject([{ severity: "note", file: "test/course.yaml" }]);
    expect(diagnostics[0]!.message).toContain("in fr");
    expect(diagnostics[0]!.message).toContain("en and de");
  });
  test("is told of where it is the club's own", () => {
    expect(
      found("tip-language", plainCourse({ rest: { tip: tipOf("Um lago à esquerda.") } }), {
        club: { language: "pt" },
      }),
    ).toHaveLength(1);
  });
  test("is not told of for tips nobody wrote", () => {
    expect(found("tip-language", plainCourse({ rest: { tip: tipOf(" ") } }), { club: { language: "pt" } })).toEqual(
      [],
    );
  });
});
