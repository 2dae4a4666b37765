/** Content in further languages: what is read of it, and how its mistakes are told. */
import { describe, expect, test } from "vitest";
import { readContent } from "../../src/read/content.ts";
import { translationFile } from "../../src/read/translations.ts";
import { hole, linesOf, placesOf, takeMarks, withClub, writeInto } from "../fixtures/marked.ts";
import { CLUB_YAML } from "../fixtures/club.ts";
import { readFile } from "node:fs/promises";
import { join } from "node:path";

const german = hole(1).replace(".md", ".de.md");
const IN_GERMAN = CLUB_YAML.replace("language: en", "language: [en, de]");

/** A club in English and German with some files written into it; marks are taken out and returned. */
const reading = <T>(
  files: Readonly<Record<string, string>>,
  use: (content: Awaited<ReturnType<typeof readContent>>, places: string[]) => T,
): Promise<T> =>
  withClub(async (folder) => {
    const places: string[] = [];
    for (const [file, marked] of Object.entries({ "club.yaml": IN_GERMAN, ...files })) {
      const { text, places: own } = takeMarks(marked);
      places.push(...own.map((place) => `${file}:${place}`));
      await writeInto(folder, file, text);
    }
    return use(await readContent(folder), places.sort());
  });

describe("a translation's file", () => {
  test("is named after what it translates, with the language before the ending", () => {
    expect(translationFile("07-skerry.de.md")).toEqual({
      file: "07-skerry.de.md",
      of: "07-skerry.md",
      language: "de",
    });
    expect(translationFile("course.pt-BR.yaml")).toMatchObject({ of: "course.yaml", language: "pt-BR" });
    for (const name of ["07-skerry.md", "course.yaml", "notes.draft.txt", "07.v2-final.md.bak"])
      expect(translationFile(name), name).toBeUndefined();
  });
});

describe("a club in two languages", () => {
  test("without a single translation is sound, and has both", async () => {
    await reading({}, ({ club, diagnostics }) => {
      expect(linesOf(diagnostics)).toEqual([]);
      expect(club).toMatchObject({ language: "en", languages: ["en", "de"], translations: {} });
    });
  });

  test("in one language needs no list", async () => {
    await reading({ "club.yaml": CLUB_YAML }, ({ club }) =>
      expect(club).toMatchObject({ language: "en", languages: ["en"] }),
    );
  });

  test("is read with what its translations say, and no more", async () => {
    const files = {
      "club.de.yaml": "place: Insel Sample\ncautions: []\n",
      "course-1/course.de.yaml": "description: |\n  Ein Platz für Tests.\ntees: { white: Weiß }\n",
      [german]: "---\nname: Loch Eins\nfeatures: { pond: Teich }\n---\nBis hinter den Teich sind es :carry[pond].\n",
      [hole(2).replace(".md", ".de.md")]: "Geradeaus, :length.\n",
    };
    await reading(files, ({ club, diagnostics }) => {
      expect(linesOf(diagnostics)).toEqual([]);
      expect(club!.translations["de"]).toMatchObject({ place: "Insel Sample", name: undefined });
      const [course] = club!.courses;
      expect(course!.translations["de"]).toMatchObject({
        description: "Ein Platz für Tests.",
        tees: { white: "Weiß" },
        sources: undefined,
      });
      expect(course!.holes[0]!.translations["de"]).toMatchObject({
        name: "Loch Eins",
        features: { pond: "Teich" },
        tip: {
          language: "de",
          markdown: "Bis hinter den Teich sind es :carry[pond].",
          place: { file: german, line: 5, column: 1 },
        },
      });
      // A page that is only a tip needs no fences.
      expect(course!.holes[1]!.translations["de"]!.tip).toMatchObject({
        markdown: "Geradeaus, :length.",
        place: { line: 1, column: 1 },
      });
      expect(course!.holes[2]!.translations).toEqual({});
    });
  });

  test("front matter without a tip below leaves the tip in the first language", async () => {
    await reading({ [german]: "---\nname: Loch Eins\n---\n" }, ({ club }) => {
      expect(club!.courses[0]!.holes[0]!.translations["de"]).toMatchObject({ name: "Loch Eins", tip: undefined });
    });
  });
});

describe("mistakes", () => {
  const withNotice = async (): Promise<string> =>
    withClub(async (folder) =>
      (await readFile(join(folder, hole(1)), "utf8")).replace(
        "card:",
        'notices: [ { until: 2027-01-31, text: "Temporary green." } ]\nphotos: []\ncard:',
      ),
    );

  const cases: readonly [name: string, files: Readonly<Record<string, string>>, messages: readonly RegExp[]][] = [
    ["a field there is not", { [german]: "---\n¶tittle: Loch\n---\nTip.\n" }, [/no field "tittle"/]],
    [
      "a feature nobody has",
      { [german]: "---\nfeatures: { ¶pont: Teich }\n---\nTip.\n" },
      [/no feature "pont" to translate\. Did you mean pond\?/],
    ],
    ["a tee set nobody has", { "course-1/course.de.yaml": "tees: { ¶whit: Weiß }\n" }, [/no tee set "whit".*white/]],
    [
      "a photo the page does not show",
      { [german]: "---\nphotos:\n  ¶01.jpg: { alt: Blick }\n---\nTip.\n" },
      [/no photo "01\.jpg" to translate/],
    ],
    ["HTML in a translated tip", { [german]: "Ein ¶<b>fetter</b> Tipp.\n" }, [/<b> is raw HTML/]],
    ["YAML that is none", { "club.de.yaml": 'place: "Insel\n¶' }, [/./]],
    ["an empty file", { "club.de.yaml": "¶" }, [/empty/]],
    [
      "a first language translated into itself",
      { [hole(1).replace(".md", ".en.md")]: "¶Tip.\n" },
      [/language content is written in\. Put it into 01-hole\.md/],
    ],
    ["a translation of no page", { "course-1/holes/21-none.de.md": "¶Tipp.\n" }, [/no 21-none\.md/]],
    [
      "a language the guide has no words in",
      { "club.yaml": CLUB_YAML.replace("language: en", "language: [en, ¶nl]") },
      [/expected a language that the guide has words in, en, de or fr/],
    ],
    [
      "the same language twice",
      { "club.yaml": CLUB_YAML.replace("language: en", "language: ¶[en, de, DE]") },
      [/each language once/],
    ],
  ];
  test.each(cases)("%s", async (_, files, messages) => {
    await reading(files, ({ club, diagnostics }, places) => {
      expect(club).toBeUndefined();
      expect(placesOf(diagnostics)).toEqual(places);
      for (const [i, message] of messages.entries()) expect(diagnostics[i]!.message).toMatch(message);
    });
  });

  test("more notices than there are to translate", async () => {
    await reading(
      { [hole(1)]: await withNotice(), [german]: '---\n¶notices: [ "Wintergrün.", "Noch eins." ]\n---\nTip.\n' },
      ({ club, diagnostics }, places) => {
        expect(club).toBeUndefined();
        expect(placesOf(diagnostics)).toEqual(places);
        expect(diagnostics[0]!.message).toBe(
          "notices has 2 entries, where the first language has 1: expected as many, in the same order. Remove what has nothing to translate.",
        );
      },
    );
  });

  test("a course's folder named like a language's pages", async () => {
    await withClub(async (folder) => {
      await writeInto(folder, "club.yaml", IN_GERMAN);
      await writeInto(folder, "de/course.yaml", await readFile(join(folder, "course-1/course.yaml"), "utf8"));
      await writeInto(folder, "de/holes/01-hole.md", await readFile(join(folder, hole(1)), "utf8"));
      const { diagnostics } = await readContent(folder);
      expect(linesOf(diagnostics)).toContainEqual(
        expect.stringMatching(
          /^de\/course\.yaml:1:1: The course's folder is named "de", as is the folder of the guide's pages in that language/,
        ),
      );
    });
  });
});

describe("remarks, which stop nothing", () => {
  const remarks: readonly [name: string, files: Readonly<Record<string, string>>, message: RegExp][] = [
    [
      "a translation into a language that is not published",
      { [hole(1).replace(".md", ".fr.md")]: "¶Conseil.\n" },
      /"fr" is not among the languages of the guide, en and de\. Write language: \[en, de, fr\] in club\.yaml/,
    ],
    [
      "fewer cautions than in the first language: one may be missing",
      {
        "club.yaml": `${IN_GERMAN}cautions: [ "Mind the cliff.", "Mind the road." ]\n`,
        "club.de.yaml": '¶cautions: [ "Achtung, Klippe." ]\n',
      },
      /cautions has 1 entry, where the first language has 2/,
    ],
  ];
  test.each(remarks)("%s", async (_, files, message) => {
    await reading(files, ({ club, diagnostics }, places) => {
      expect(club).toBeDefined();
      expect(placesOf(diagnostics)).toEqual(places);
      expect(diagnostics[0]!.message).toMatch(message);
      expect(diagnostics[0]!.severity).toBe("warning");
    });
  });

  test("a first language the guide has no words in", async () => {
    await reading(
      { "club.yaml": CLUB_YAML.replace("language: en", "language: ¶nl") },
      ({ club, diagnostics }, places) => {
        expect(club).toMatchObject({ language: "nl", languages: ["nl"] });
        expect(placesOf(diagnostics)).toEqual(places);
        expect(diagnostics[0]!.message).toMatch(/no words of its own in "nl"/);
      },
    );
  });
});
