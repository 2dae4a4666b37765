/** Routes, reports and page counts: the pure parts of putting a guide together. */
import { mkdtemp, mkdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import type { Diagnostic } from "../../src/course/diagnostic.ts";
import { readRecord, RECORD_FILE, writeRecord } from "../../src/site/build/build-record.ts";
import { currentGuide, setCurrentGuide, type Guide } from "../../src/site/load/guide.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { builtPages, pageFaults } from "../../src/site/build/page-check.ts";
import { reportLines, summary } from "../../src/site/load/report.ts";
import {
  cardPath,
  coursePath,
  coverPath,
  figuresPath,
  flyoverPath,
  holePath,
  languageFolder,
  mapPath,
  pagePaths,
  tidyBase,
  tourPath,
} from "../../src/site/addresses/routes.ts";
import { hole, plant, withClub } from "../fixtures/marked.ts";

const guide = (...ids: string[]) => ({
  club: { languages: ["en"] },
  courses: ids.map((id) => ({ course: { id, holes: [{ number: 1 }, { number: 2 }] } })),
});

describe("addresses", () => {
  test("of a course's pages", () => {
    expect([
      coursePath("links"),
      holePath("links", 7),
      cardPath("links"),
      mapPath("links"),
      figuresPath("links"),
      flyoverPath("links", 7),
      tourPath("links"),
    ]).toEqual([
      "links/",
      "links/7/",
      "links/card/",
      "links/map/",
      "links/figures/",
      "links/7/flyover/",
      "links/tour/",
    ]);
  });

  test("of covers: the root for a club's only course", () => {
    expect(coverPath("links", guide("links"))).toBe("");
    expect(coverPath("links", guide("links", "dunes"))).toBe("links/");
  });

  test("of a further language's pages: the same below its folder", () => {
    const both = pagePaths({ ...guide("links"), club: { languages: ["en", "de-AT"] } });
    const first = pagePaths(guide("links"));
    expect(both).toEqual([...first, ...first.map((path) => `de-at/${path}`)]);
    expect(languageFolder({ language: "en", languages: ["en", "de"] })).toBe("");
    expect(languageFolder({ language: "de", languages: ["en", "de"] })).toBe("de/");
  });

  test("of every page, none twice", () => {
    expect(pagePaths(guide("links"))).toEqual([
      "",
      "links/1/",
      "links/1/flyover/",
      "links/2/",
      "links/2/flyover/",
      "links/tour/",
      "links/card/",
      "links/map/",
      "links/figures/",
      "links/book/",
    ]);
    const several = pagePaths(guide("links", "dunes"));
    expect(several).toHaveLength(1 + 2 * 10);
    expect(new Set(several).size).toBe(several.length);
    expect(several.slice(0, 2)).toEqual(["", "links/"]);
  });

  test.each([
    ["", "/"],
    ["/", "/"],
    ["guides", "/guides/"],
    ["/guides/tarvay", "/guides/tarvay/"],
    ["//a//b//", "/a/b/"],
  ])("base %j is %j", (base, tidy) => {
    expect(tidyBase(base)).toBe(tidy);
  });
});

describe("the current guide", () => {
  afterEach(() => setCurrentGuide(undefined));

  test("is missing with a word on how to load it", () => {
    expect(() => currentGuide()).toThrow(
      "No guide is loaded. Pages are built with `npm run build` or `npx astro build`",
    );
  });

  test("is the one put in place, for covers too", () => {
    const value = {
      club: {},
      courses: guide("links", "dunes").courses,
      contentFolder: "/content",
    } as unknown as Guide;
    setCurrentGuide(value);
    expect(currentGuide()).toBe(value);
    expect(coverPath("links")).toBe("links/");
  });
});

describe("a report", () => {
  const diagnostic = (file: string, line: number, severity: Diagnostic["severity"]): Diagnostic => ({
    file,
    line,
    column: 2,
    severity,
    rule: "r",
    message: "Wrong.",
  });
  const all = [
    diagnostic("a.md", 1, "error"),
    diagnostic("a.md", 3, "warning"),
    diagnostic("b.md", 1, "error"),
    diagnostic("b.md", 9, "note"),
  ];

  test("groups by file, with names an editor can open", () => {
    expect(reportLines(all, "content/")).toEqual([
      "content/a.md:1:2: Wrong.",
      "content/a.md:3:2: warning: Wrong.",
      "",
      "content/b.md:1:2: Wrong.",
      "content/b.md:9:2: note: Wrong.",
    ]);
    expect(reportLines(all, ".")[0]).toBe("a.md:1:2: Wrong.");
    expect(reportLines([], "content")).toEqual([]);
  });

  test("counts", () => {
    expect(summary(all)).toBe("2 mistakes in 2 files, 2 remarks");
    expect(summary(all.slice(0, 1))).toBe("1 mistake in 1 file");
    expect(summary(all.slice(1, 2))).toBe("1 remark");
    expect(summary([])).toBe("No mistakes");
  });
});

describe("pages", () => {
  test("that are missing or strange are named; the error page may be there", () => {
    expect(pageFaults(["", "links/1/"], ["", "links/1/", "404.html"])).toEqual([]);
    expect(pageFaults(["", "links/1/"], ["links/2/", "404.html"])).toEqual([
      "Page the cover (index.html) is missing.",
      "Page links/1/ is missing.",
      "Page links/2/ is not one of the guide's (see pagePaths in src/site/addresses/routes.ts).",
    ]);
  });

  test("are found in a folder, and its record read", async () => {
    const folder = await mkdtemp(join(tmpdir(), "marram-pages-"));
    try {
      await mkdir(join(folder, "links/1"), { recursive: true });
      for (const file of ["index.html", "links/1/index.html", "404.html", "links/1/data.json"])
        await writeFile(join(folder, file), "");
      expect(await builtPages(folder)).toEqual(["", "404.html", "links/1/"]);
      expect(await readRecord(folder)).toBeUndefined();
      await writeRecord(folder, { madeBy: "Marram", base: "/x/", pages: 2, languages: ["en"] });
      expect(await readRecord(folder)).toEqual({ madeBy: "Marram", base: "/x/", pages: 2, languages: ["en"] });
      // Guides built before there were languages are still known for what they are.
      await writeFile(join(folder, RECORD_FILE), '{ "madeBy": "Marram", "base": "/x/", "pages": 2 }');
      expect(await readRecord(folder)).toMatchObject({ madeBy: "Marram", languages: [] });
      await writeFile(join(folder, RECORD_FILE), "{");
      expect(await readRecord(folder)).toBeUndefined();
    } finally {
      await rm(folder, { recursive: true });
    }
  });
});

describe("loading", () => {
  test("measures every hole of a sound club", async () => {
    await withClub(async (folder) => {
      const { guide: loaded, diagnostics } = await loadGuide(folder);
      expect(diagnostics).toEqual([]);
      expect(loaded!.contentFolder).toBe(folder);
      expect(loaded!.courses[0]!.holes).toHaveLength(9);
      // Hole 1 of the fixture goes 10 m right in 210 m and back in 120 m; its metres per degree are rounded to four
      // digits.
      const length = Math.hypot(10, 210) + Math.hypot(10, 120);
      const measured = loaded!.courses[0]!.holes[0]!.tees[0]!.lengthMetres;
      expect(Math.abs(measured - length) / length).toBeLessThan(5e-4);
    });
  });

  test("tells of figures in tips beside mistakes in other pages, at their places", async () => {
    await withClub(async (folder) => {
      const expected = await plant(folder, [
        { file: hole(1), from: "par: 4", to: "par: ¶four" },
        { file: hole(2), from: "It is :carry[pond]", to: "Mind it.\nIt is ¶:carry[lake]" },
      ]);
      const { guide: loaded, diagnostics } = await loadGuide(folder);
      expect(loaded).toBeUndefined();
      expect(diagnostics.map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual(expected);
      expect(diagnostics.map(({ rule }) => rule)).toEqual(["wrong-value", "tip-figure"]);
    });
  });
});
