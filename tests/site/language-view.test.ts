/** A guide seen in another of its languages: texts replaced, figures untouched, and what is not translated marked. */
import { describe, expect, test } from "vitest";
import type { Club, HoleTranslation } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { drawnHole } from "../../src/site/cache/kept.ts";
import type { Guide } from "../../src/site/load/guide.ts";
import {
  guideIn,
  guideViews,
  originalCourse,
  originalHole,
  otherLanguage,
} from "../../src/site/language/language-view.ts";
import { tipWords } from "../../src/site/text/tip-words.ts";
import { languageName } from "../../src/components/language-name.ts";
import { webVtt } from "../../src/flyover/webvtt.ts";
import { roundFlyover } from "../../src/site/files/film.ts";
import { words } from "../../src/site/language/words.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";

const place = { file: "test/holes/01-test.md", line: 1, column: 1 };
const german = (rest: Partial<HoleTranslation>): HoleTranslation => ({
  name: undefined,
  aim: undefined,
  features: {},
  notices: [],
  photos: {},
  tip: undefined,
  place,
  ...rest,
});

const FEATURES = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 350],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
  pointFeature("tee-forward", "tee-marker", [0, 40], { tee: "forward" }),
  areaFeature("green", "green", box(-10, 338, 10, 362)),
  areaFeature("bunker", "bunker", box(-20, 200, -12, 208), { name: "Left bunker" }),
];

const photo = {
  file: "test/photos/a.jpg",
  alt: "The view",
  caption: "Look",
  credit: "A. Member",
  focus: undefined,
  taken: undefined,
  place,
};
const tip = (markdown: string) => ({ markdown, place });
const notice = (text: string) => ({ from: undefined, until: "2027-01-31", text, holes: undefined, place });

const COURSE = course(
  [
    hole(FEATURES, {
      photos: [photo],
      tip: tip("It is :reach[bunker] to the bunker."),
      aim: "Left of the bunker",
      notices: [notice("Winter green."), notice("Path closed.")],
      translations: {
        de: german({
          name: "Prüfung",
          aim: "Links vom Bunker",
          features: { bunker: "Linker Bunker" },
          notices: ["Wintergrün."],
          photos: { [photo.file]: { alt: "Der Blick", caption: undefined } },
          tip: { ...tip("Bis zum Bunker sind es :reach[bunker]."), language: "de" },
        }),
      },
    }),
    hole(FEATURES, { number: 2, tip: tip("Straight."), aim: "The flag" }),
  ],
  {
    description: "A course.",
    sources: ["Invented"],
    translations: {
      de: {
        name: undefined,
        description: "Ein Platz.",
        sources: undefined,
        tees: { back: "Hinten" },
        features: {},
        notices: [],
        place,
      },
    },
  },
);

const CLUB: Club = {
  name: "Test Club",
  place: "Isle",
  language: "en",
  languages: ["en", "de"],
  units: "yards",
  invented: undefined,
  contact: { email: undefined, telephone: undefined, website: undefined, address: "1 Shore Road" },
  cautions: ["Mind the cliff."],
  localRules: ["Stones are movable."],
  courses: [COURSE],
  translations: {
    de: {
      name: undefined,
      place: "Insel",
      invented: undefined,
      address: undefined,
      cautions: ["Achtung, Klippe."],
      localRules: undefined,
    },
  },
};

const GUIDE: Guide = { club: CLUB, courses: [measureCourse(COURSE, undefined)], contentFolder: "/nowhere" };
const view = guideIn(GUIDE, "de");
const seen = view.courses[0]!;
const [first, second] = seen.holes;

test("the first language is the guide itself, and a view is made once", () => {
  expect(guideViews(GUIDE)).toEqual([GUIDE, view]);
  expect(guideIn(GUIDE, "en")).toBe(GUIDE);
  expect(guideIn(GUIDE, "de")).toBe(view);
});

describe("what is translated", () => {
  test("stands in place of the original: club, course, tee set, hole, feature, notice, photo, tip", () => {
    expect(view.club).toMatchObject({ language: "de", place: "Insel", cautions: ["Achtung, Klippe."] });
    expect(seen.course).toMatchObject({ description: "Ein Platz.", tees: [{ name: "Hinten" }, { name: "Forward" }] });
    expect(first!.hole).toMatchObject({
      name: "Prüfung",
      notices: [{ text: "Wintergrün." }, { text: "Path closed." }],
      photos: [{ alt: "Der Blick", caption: "Look" }],
    });
    expect(first!.hole.tip.markdown).toMatch(/^Bis zum Bunker/);
    expect([first!.hole.aim, second!.hole.aim]).toEqual(["Links vom Bunker", "The flag"]);
    expect(first!.placed.get("bunker")!.feature.name).toBe("Linker Bunker");
    expect(first!.tees[0]!.tee.name).toBe("Hinten");
    // The same hole as the course holds, so that pages about the course say the same.
    expect(seen.course.holes[0]).toBe(first!.hole);
  });

  test("is not marked; the rest is, with the first language", () => {
    const { club } = view;
    expect(otherLanguage(club, first!.hole, "tip")).toBeUndefined();
    expect(otherLanguage(club, second!.hole, "tip")).toBe("en");
    expect([first!, second!].map((one) => otherLanguage(club, one.hole, "aim"))).toEqual([undefined, "en"]);
    expect(otherLanguage(club, club, "cautions")).toBeUndefined();
    expect(otherLanguage(club, club, "localRules")).toBe("en");
    // There is nothing to mark where nothing is said.
    expect(otherLanguage(club, club, "invented")).toBeUndefined();
    expect(otherLanguage(club, seen.course, "description")).toBeUndefined();
    expect(otherLanguage(club, seen.course, "sources")).toBe("en");
    expect(otherLanguage(club, first!.hole.photos[0]!, "alt")).toBeUndefined();
    expect(otherLanguage(club, first!.hole.photos[0]!, "caption")).toBe("en");
    expect(first!.hole.notices.map((one) => otherLanguage(club, one, "text"))).toEqual([undefined, "en"]);
  });

  test("nothing is marked in the first language", () => {
    for (const one of [CLUB, COURSE, COURSE.holes[0]!, COURSE.holes[0]!.photos[0]!])
      for (const field of ["tip", "alt", "cautions", "description"])
        expect(otherLanguage(CLUB, one, field)).toBeUndefined();
  });
});

test("figures are those of the guide, not measured anew", () => {
  const original = GUIDE.courses[0]!;
  for (const [i, one] of seen.holes.entries()) {
    expect(originalHole(one)).toBe(original.holes[i]);
    expect(one.tees.map(({ lengthMetres, hazards, green }) => [lengthMetres, hazards, green])).toEqual(
      original.holes[i]!.tees.map(({ lengthMetres, hazards, green }) => [lengthMetres, hazards, green]),
    );
  }
  expect(originalCourse(seen)).toBe(original);
});

test("drawings do not depend on whether a text is translated", () => {
  expect(drawnHole(second!).hole).toEqual(drawnHole(GUIDE.courses[0]!.holes[1]!).hole);
});

test("a tip that is not translated speaks its own language, its figures too", () => {
  expect(tipWords(view.club, first!.hole)).toBe(words("de").tell);
  expect(tipWords(view.club, second!.hole)).toBe(words("en").tell);
});

test("captions of such a tip are marked, the guide's own before it are not", () => {
  const { cues } = roundFlyover(view.club, seen).data;
  const marked = cues.map(({ text, language }) => [text.replaceAll("\n", " "), language] as const);
  expect(marked.find(([text]) => text.startsWith("Bis zum Bunker"))![1]).toBeUndefined();
  expect(marked.find(([text]) => text === "Straight.")![1]).toBe("en");
  expect(marked.filter(([, language]) => language !== undefined)).toHaveLength(1);
  // WebVTT's own mark, "WebVTT: The Web Video Text Tracks Format": the language span.
  expect(webVtt(cues)).toContain("<lang en>Straight.</lang>");
});

test("a language calls itself by its own name, with a capital as a link alone has one", () => {
  expect(["en", "de", "fr", "pt-BR"].map(languageName)).toEqual([
    "English",
    "Deutsch",
    "Français",
    "Português (Brasil)",
  ]);
});
