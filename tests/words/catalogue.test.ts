/** What is wrong in a catalogue is said with file and line, and what to write instead. */
import { describe, expect, test } from "vitest";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { formatDiagnostic } from "../../src/course/diagnostic.ts";
import { disagreements } from "../../src/words/agreement.ts";
import { readCatalogue } from "../../src/words/catalogue.ts";
import { compiledGroup } from "../../src/words/compiled.ts";
import { loadCatalogues } from "../../src/words/load.ts";
import { typesOf } from "../../src/words/typing.ts";
import { PROJECT } from "../support/run.ts";

const read = (text: string, language = "en") => readCatalogue(language, `${language}.yaml`, text);
const faults = (text: string): string[] => read(text).faults.map(formatDiagnostic);
const catalogue = (text: string, language = "en") => {
  const { catalogue: made, faults: wrong } = read(text, language);
  expect(wrong).toEqual([]);
  return made;
};

describe("a catalogue", () => {
  test("that is whole has no faults", () => {
    expect(faults("locale: en-GB\nhole: Hole {hole}\nnav:\n  # Said first.\n  main: Guide\n")).toEqual([]);
  });

  test.each([
    ["locale: en\nhole: Hole {hole", "en.yaml:2:1: hole: a brace { is not closed. Close it with }."],
    [
      "locale: en\nhole: Hole }",
      "en.yaml:2:1: hole: a brace stands by itself, or behind an apostrophe '. Write the apostrophe as ’ and give every brace its other.",
    ],
    [
      'locale: en\nhole: "l\'{name}"',
      "en.yaml:2:1: hole: a brace stands by itself, or behind an apostrophe '. Write the apostrophe as ’ and give every brace its other.",
    ],
    ["locale: en\nhole: Hole {}", "en.yaml:2:1: hole: braces {} name nothing. Write a name between them."],
    [
      'locale: en\ncount: "{n, plural, one {# hole}}"',
      "en.yaml:2:1: count: the case other is missing. Every plural and select ends with other {...}.",
    ],
    [
      'locale: en\ncount: "{n, plural, other {# holes}}"',
      "en.yaml:2:1: count: {n} has no case one, which en needs for 1. Write one {...}.",
    ],
    [
      'locale: de\ncount: "{n, plural, one {#} few {#} other {#}}"',
      "en.yaml:2:1: count: {n} has the case few, which de does not know. Write one, other, or =1 for one number.",
    ],
    [
      'locale: en\ncount: "{n, plural, offset:1 one {#} other {#}}"',
      "en.yaml:2:1: count: {n} has an offset. Leave it out and count what is said.",
    ],
    [
      'locale: en\na: "{n, number}{n, select, x {x} other {}}"',
      "en.yaml:2:1: a: {n} is a number in one place and a choice in another. Make it one of them.",
    ],
    ['locale: en\na: "{n, date, short}"', "en.yaml:2:1: a: a date is written {n, date, long}. Write it so."],
    [
      'locale: en\na: "{n, spellout}"',
      "en.yaml:2:1: a: a kind of argument is not known. Write plural, selectordinal, select, number or date.",
    ],
    ["locale: en\na: <b>bold</b>", "en.yaml:2:1: a: the tag <b> has no place in a guide's words. Leave it out."],
    ["locale: en\nnav:\n  main:", "en.yaml:3:3: nav.main says nothing. Write its words behind the colon."],
    ["locale: en\nnav:\n  - Guide", "en.yaml:3:3: nav is a list. Write a group, each message behind a name: nav: ..."],
    ["locale: en\na: A\na: B", "en.yaml:3:1: This is no YAML: Map keys must be unique"],
    [
      "a: A",
      "en.yaml:1:1: locale is missing. Write a language tag whose numbers and dates are known, for example locale: en-GB.",
    ],
    [
      "locale: e_n\na: A",
      'en.yaml:1:1: locale is "e_n". Write a language tag whose numbers and dates are known, for example locale: en-GB.',
    ],
  ])("%j", (text, message) => {
    expect(faults(text)).toEqual([message]);
  });

  test("says a text twice by an alias", () => {
    const { words } = catalogue("locale: en\nplain: &plain Plain figures\ntools:\n  plain: *plain\n");
    expect(compiledGroup(words)).toEqual({ locale: "en", plain: "Plain figures", tools: { plain: "Plain figures" } });
  });
});

describe("another language", () => {
  const first = catalogue(
    'locale: en-GB\nnav:\n  main: Guide\n  tee: From the {tee} tee\nbend: "{angle}° {side, select, left {left} right {right} other {}}"\nopen: "{kind, select, other {{id}}}"\nn: "{n, plural, one {# hole} other {# holes}}"\n',
  );
  const against = (text: string): string[] =>
    disagreements(first, catalogue(`locale: de-DE\n${text}`, "de")).map(formatDiagnostic);
  const whole = {
    nav: "nav:\n  main: Platzführer\n  tee: Vom Abschlag {tee}\n",
    bend: 'bend: "{angle}° {side, select, left {links} right {rechts} other {}}"\n',
    open: 'open: "{kind, select, bunker {Sand} other {{id}}}"\n',
    n: 'n: "{n, plural, one {# Loch} other {# Löcher}}"\n',
  };
  const all = (change: Partial<typeof whole> = {}): string => Object.values({ ...whole, ...change }).join("");

  test("says the same in its own way", () => {
    expect(against(all())).toEqual([]);
    // A case may be left to other, a count may be printed as it is.
    expect(
      against(
        all({ bend: 'bend: "{angle}° {side, select, left {links} other {rechts}}"\n', n: 'n: "Löcher: {n}"\n' }),
      ),
    ).toEqual([]);
  });

  test.each([
    [
      "a name left out",
      { nav: "nav:\n  main: Platzführer\n" },
      'de.yaml:2:1: nav.tee is missing. Add it: en has "From the {tee} tee" (en.yaml:4).',
    ],
    ["a group left out", { nav: "" }, "de.yaml:1:1: nav is missing. Add it: en has a group (en.yaml:2)."],
    [
      "a name too many",
      { nav: `${whole.nav}  maine: Weg\n` },
      "de.yaml:5:3: nav.maine is not known: en.yaml has no such name. Take it out, or spell it as there.",
    ],
    ["a message for a group", { nav: "nav: Platzführer\n" }, "de.yaml:2:1: nav must be a group, as at en.yaml:2."],
    [
      "an argument left out",
      { nav: "nav:\n  main: Platzführer\n  tee: Vom Abschlag\n" },
      "de.yaml:4:3: nav.tee: {tee} is left out. Say it, as at en.yaml:4.",
    ],
    [
      "an argument too many",
      { nav: "nav:\n  main: Platzführer\n  tee: Vom Abschlag {tee} {unit}\n" },
      "de.yaml:4:3: nav.tee: {unit} is not given. The arguments are {tee} (en.yaml:4).",
    ],
    [
      "another kind of argument",
      { nav: 'nav:\n  main: Platzführer\n  tee: "{tee, plural, one {#} other {#}}"\n' },
      "de.yaml:4:3: nav.tee: {tee} is a number, where en.yaml:4 has a text. Change one of them.",
    ],
    [
      "a case that never comes",
      { bend: 'bend: "{angle}° {side, select, left {links} rihgt {rechts} right {rechts} other {}}"\n' },
      "de.yaml:5:1: bend: {side} has the case rihgt, which never comes. The cases are left, right (en.yaml:5).",
    ],
    [
      "a case left out",
      { bend: 'bend: "{angle}° {side, select, left {links} other {}}"\n' },
      "de.yaml:5:1: bend: {side} says nothing for the case right. Add it, as at en.yaml:5.",
    ],
  ] as const)("%s", (_, change, message) => {
    expect(against(all(change))).toEqual([message]);
  });

  test("is listed in the first one's order", () => {
    const { words } = catalogue("locale: de\nb: B\na: A\n", "de");
    expect(Object.keys(compiledGroup(words, catalogue("a: A\nb: B\nlocale: en\n").words))).toEqual([
      "a",
      "b",
      "locale",
    ]);
  });
});

test("types of names and arguments are the first language's", () => {
  expect(
    typesOf(
      catalogue(
        'locale: en\nnav:\n  two-way: "{tee} {n, number} {d, date, long} {side, select, left {l} right {r} other {}} {kind, select, other {{id}}}"\n',
      ),
    ),
  ).toContain(`export interface Catalogue {
  readonly locale: string;
  readonly nav: {
    readonly "two-way": (said: {
      readonly tee: Text;
      readonly n: number;
      readonly d: Date;
      readonly side: "left" | "right";
      readonly kind: string;
      readonly id: Text;
    }) => string;
  };
}`);
});

test("the types in the source are those of the catalogue: `npm run words` writes them", () => {
  const [first] = loadCatalogues(PROJECT);
  expect(readFileSync(join(PROJECT, "src/words/catalogue-type.ts"), "utf8")).toBe(typesOf(first!));
});

test("a language without a catalogue is told which file to write", () => {
  expect(() => loadCatalogues(PROJECT, ["en", "tlh"])).toThrow(/^src\/words\/tlh\.yaml:1:1: .*guide-languages\.ts/);
});
