/** The demo's pocket book as the command makes it, read by poppler. */
import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PALETTE } from "../../src/draw/palette.ts";
import { dot, rightOf } from "../../src/geo/vector.ts";
import { inUnit } from "../../src/geo/units.ts";
import { greenOf } from "../../src/measure/hole.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../../src/measure/types.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import type { Guide } from "../../src/site/load/guide.ts";
import { boxesOf, poppler, sizeOf, textOf, vectorsOf } from "../support/poppler.ts";
import { PROJECT, run, type Ended } from "../support/run.ts";
import { announced, bookmarksOf } from "./outline.ts";
import { extent, filledWith } from "./vectors.ts";

const TEES = ["sand", "heather"];
const MM_PER_POINT = 25.4 / 72;

let folder = "";
let file = "";
let ended: Ended;
let guide: Guide;
let course: MeasuredCourse;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "marram-book-"));
  file = join(folder, "book.pdf");
  ended = await run("src/commands/paper.ts", ["book", "--out", file, "--tees", TEES.join(","), "--unit", "yards"]);
  guide = (await loadGuide(join(PROJECT, "content"))).guide!;
  course = guide.courses[0]!;
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The left-hand page of a hole, found by what stands on it. */
function pagesOf(): Map<number, number> {
  const pages = new Map<number, number>();
  const text = poppler("pdftotext", ["-layout", file, "-"]).split("\f");
  for (const { hole } of course.holes) {
    // Its heading stands first on the page.
    pages.set(
      hole.number,
      text
        .map((page) => page.trimStart().replace(/\s+/g, " ").slice(0, 90))
        .findIndex((head) => head.startsWith(`${hole.number} ${hole.name}`) && head.includes("Stroke index")) + 1,
    );
  }
  return pages;
}

test("the command ends well, and no page runs over", () => {
  expect({ code: ended.code, stderr: ended.stderr }).toEqual({ code: 0, stderr: "" });
  expect(ended.stdout).toMatch(/book\.pdf written: 44 pages/);
});

test("it is made in fours, under 5 MB", () => {
  expect(boxesOf(file).length % 4).toBe(0);
  expect(statSync(file).size).toBeLessThan(5e6);
});

test("no page is larger than 4 1/4 by 7 inches (published: USGA, green-reading announcement and FAQ, clarification 4.3a/1)", () => {
  const pages = boxesOf(file);
  expect(pages.length).toBeGreaterThan(36);
  for (const { MediaBox, TrimBox, CropBox } of pages) {
    for (const box of [MediaBox, TrimBox, CropBox]) {
      const [width, height] = sizeOf(box);
      expect(width).toBeLessThanOrEqual(4.25 * 72);
      expect(height).toBeLessThanOrEqual(7 * 72);
      // Nor is it a smaller page by mistake.
      expect([width, height]).toEqual([306, 504]);
    }
  }
});

test("no green is drawn larger than 3/8 inch to 5 yards, by the page's own coordinates (published: same)", () => {
  const limit = ((3 / 8) * 72) / (5 * 0.9144); // points to a metre
  const pages = pagesOf();
  const printed: number[] = [];
  for (const measured of course.holes) {
    const page = pages.get(measured.hole.number)! + 1;
    const greens = filledWith(vectorsOf(file, page), PALETTE.light.green);
    expect(greens.length, `hole ${measured.hole.number}`).toBeGreaterThan(0);
    const drawn = greens.map(extent).sort((a, b) => b[0] - a[0])[0]!;
    const [across, up] = groundExtent(measured);
    const scale = Math.max(drawn[0] / across, drawn[1] / up);
    expect(scale, `hole ${measured.hole.number}`).toBeLessThanOrEqual(limit);
    // It is the measured green that was drawn, the same both ways: curves cut its corners by little.
    expect(Math.abs(drawn[0] / across / (drawn[1] / up) - 1), `hole ${measured.hole.number}`).toBeLessThan(0.1);
    const said = Number(/Green 1:([\d,]+)/.exec(textOf(file, page))?.[1]?.replace(",", ""));
    expect(
      Math.abs(said / (1000 / (scale * MM_PER_POINT)) - 1),
      `hole ${measured.hole.number} says 1:${said}`,
    ).toBeLessThan(0.06);
    printed.push(scale);
  }
  // Larger greens are drawn smaller: there is no one scale for all.
  expect(Math.max(...printed) / Math.min(...printed)).toBeGreaterThan(1.2);
});

/** How wide and deep a green is, along the approach from the tee the book is drawn from. */
function groundExtent(measured: MeasuredHole): readonly [number, number] {
  const { approach } = measured.tees.find(({ tee }) => tee.id === course.course.defaultTee)!.green;
  const outline = greenOf(measured.placed, measured.hole)[0]!;
  const reach = (axis: readonly [number, number]): number => {
    const along = outline.map((point) => dot(point, axis));
    return Math.max(...along) - Math.min(...along);
  };
  return [reach(rightOf(approach)), reach(approach)];
}

test("plates, too, stay below that scale", () => {
  const limit = ((3 / 8) * 72) / (5 * 0.9144);
  const pages = pagesOf();
  // The shortest hole has the largest scale.
  const shortest = [...course.holes].sort((a, b) => a.tees[0]!.lengthMetres - b.tees[0]!.lengthMetres)[0]!;
  const greens = filledWith(vectorsOf(file, pages.get(shortest.hole.number)!), PALETTE.light.green);
  const widest = Math.max(...greens.map((points) => Math.hypot(...extent(points))));
  expect(greens.length).toBeGreaterThan(0);
  expect(widest / Math.hypot(...groundExtent(shortest))).toBeLessThan(limit);
});

test("each hole opens on a left-hand page, one after the other", () => {
  const pages = [...pagesOf().values()];
  expect(pages).toHaveLength(18);
  for (const page of pages) expect(page % 2).toBe(0);
  expect(pages).toEqual(Array.from({ length: 18 }, (_, i) => pages[0]! + 2 * i));
});

const whole = (metres: number): string => String(Math.round(inUnit(metres, "yards")));

describe("figures", () => {
  const rowOf = (text: string, tee: TeeFigures): string[] =>
    new RegExp(`^\\s*${tee.tee.name}\\s+(\\d.*)$`, "m").exec(text)?.[1]?.trim().split(/\s+/) ?? [];

  test("of every hole from every chosen tee are the measured ones, and of no other tee", () => {
    const pages = pagesOf();
    for (const measured of course.holes) {
      const text = textOf(file, pages.get(measured.hole.number)! + 1);
      for (const tee of measured.tees) {
        const row = rowOf(text, tee);
        if (!TEES.includes(tee.tee.id)) {
          expect(row, `hole ${measured.hole.number}, ${tee.tee.name}`).toEqual([]);
          continue;
        }
        expect([row[0], ...row.slice(-3)], `hole ${measured.hole.number}, ${tee.tee.name}`).toEqual(
          [tee.lengthMetres, tee.green.frontMetres, tee.green.middleMetres, tee.green.backMetres].map(whole),
        );
      }
    }
  });

  test("lettering with a halo is text once, not twice", () => {
    const text = textOf(file, pagesOf().get(1)!);
    expect(text.match(/Tarvay Light/g)).toHaveLength(1);
    expect(text.match(/^\s*N\s*$/gm)).toHaveLength(1);
  });
});

test("fonts are all embedded, as outlines", () => {
  const rows = poppler("pdffonts", [file]).trim().split("\n").slice(2);
  expect(rows.length).toBeGreaterThanOrEqual(4);
  for (const row of rows) {
    expect(row).toMatch(/^[A-Z]{6}\+(Besley|SourceSans3)\S*\s+CID TrueType\s+\S+\s+yes yes yes/);
  }
});

test("it is tagged, titled, in its language, and has a bookmark for every hole", async () => {
  const info = poppler("pdfinfo", [file]);
  expect(info).toMatch(/^Tagged:\s+yes$/m);
  expect(info).toMatch(/^Title:\s+Pocket book of Tarvay Links$/m);
  expect(info).not.toMatch(/CreationDate/);
  expect(await announced(file)).toEqual({ language: "en-GB", showsTitle: true, facing: "/TwoPageRight" });
  const titles = (await bookmarksOf(file)).map(({ title }) => title);
  for (const { hole } of course.holes)
    expect(
      titles.filter((title) => title.includes(hole.name)),
      hole.name,
    ).toHaveLength(1);
  for (const title of ["How to read this book", "Cautions", "Local rules", "Scorecard"])
    expect(titles).toContain(title);
});

test("cautions, local rules and the note that all is invented are in it", () => {
  const text = poppler("pdftotext", [file, "-"]).replace(/\s+/g, " ");
  for (const caution of guide.club.cautions) expect(text).toContain(caution);
  for (const rule of guide.club.localRules) expect(text).toContain(rule.slice(0, 60));
  expect(text).toContain(guide.club.invented!.slice(0, 50));
  expect(text).toMatch(/Lightning\. Stop play at once/);
});

test("drawings are lines, not pictures: the only pictures are relief, in soft shades beneath", () => {
  const rows = poppler("pdfimages", ["-list", file])
    .trim()
    .split("\n")
    .slice(2)
    .map((row) => row.trim().split(/\s+/));
  // One relief and its mask for the cover and each plate.
  expect(rows.length).toBe(2 * (1 + 18));
  for (const row of rows) expect(Number(row[3]), "width").toBeLessThan(700);
});
