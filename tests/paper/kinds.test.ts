/** Variants of the book, the scorecard and tee signs of a small club, as the command makes them. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsQR from "jsqr";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PALETTE } from "../../src/draw/palette.ts";
import { holeFileName, oval, writeClub } from "../fixtures/club.ts";
import { boxesOf, pictureOf, poppler, sizeOf, textOf, vectorsOf } from "../support/poppler.ts";
import { run, type Ended } from "../support/run.ts";
import { bookmarksOf } from "./outline.ts";
import { extent, filledWith } from "./vectors.ts";

const INCH = 72;
const MM = 72 / 25.4;

let folder = "";
let content = "";
const out = (name: string): string => join(folder, name);
const paper = (...args: readonly string[]): Promise<Ended> =>
  run("src/commands/paper.ts", [...args, "--content", content]);

const made = new Map<string, Promise<string>>();

/** A PDF, made once for all tests that read it. */
function make(kind: string, name: string, ...args: readonly string[]): Promise<string> {
  const known =
    made.get(name) ??
    paper(kind, "--out", out(name), ...args).then((ended) => {
      expect({ code: ended.code, stderr: ended.stderr }).toEqual({ code: 0, stderr: "" });
      return out(name);
    });
  made.set(name, known);
  return known;
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "marram-paper-"));
  content = join(folder, "content");
  await writeClub(content, { holes: 3, vertices: 24 });
  // The second hole's green is 90 m wide and 110 m deep: at 1:480 it would be larger than the page.
  const second = join(content, "course-1/holes", holeFileName(2));
  const ring = JSON.stringify(oval(130, 330, 45, 55, 24));
  const written = readFileSync(second, "utf8").replace(/(id: green,.*coordinates: )\[\[\[.*?\]\]\]/, `$1[${ring}]`);
  expect(written).toContain(ring);
  writeFileSync(second, written);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Whether a page is grey all over. */
async function isGrey(file: string, page: number): Promise<boolean> {
  const { data, info } = await sharp(pictureOf(file, page, 50))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  for (let i = 0; i < data.length; i += info.channels) {
    if (Math.max(data[i]!, data[i + 1]!, data[i + 2]!) - Math.min(data[i]!, data[i + 1]!, data[i + 2]!) > 6)
      return false;
  }
  return true;
}

describe("the book", () => {
  test("in one ink holds no colour on any page, and no picture; in colour it does", async () => {
    const ink = await make("book", "ink.pdf", "--ink");
    const pages = boxesOf(ink).length;
    for (let page = 1; page <= pages; page++) expect(await isGrey(ink, page), `page ${page}`).toBe(true);
    expect(poppler("pdfimages", ["-list", ink]).trim().split("\n")).toHaveLength(2);
    const colour = await make("book", "book.pdf");
    expect(await isGrey(colour, 1)).toBe(false);
    // Still told apart: a tee set's first letter stands in its mark.
    expect(textOf(ink, 5)).toMatch(/W\s*White/);
  });

  test("a green too large for the page is drawn smaller than the limit asks", async () => {
    const file = await make("book", "book.pdf");
    const limit = ((3 / 8) * INCH) / (5 * 0.9144);
    const scales = [1, 2].map((hole) => {
      const page = 3 + 2 * hole;
      const [across] = extent(filledWith(vectorsOf(file, page), PALETTE.light.green)[0]!);
      return across / (hole === 1 ? 22 : 90);
    });
    for (const scale of scales) expect(scale).toBeLessThanOrEqual(limit);
    // Its green alone would be some 190 mm wide at the scale of the first.
    expect(scales[1]!).toBeLessThan(scales[0]! / 2);
  });

  test("with marks: bleed all round the cut, marks beyond it, and the cut still 4 1/4 by 7 inches", async () => {
    const file = await make("book", "marks.pdf", "--marks");
    for (const { MediaBox, BleedBox, TrimBox } of boxesOf(file)) {
      expect(sizeOf(TrimBox)).toEqual([4.25 * INCH, 7 * INCH]);
      const [bleed, media] = [sizeOf(BleedBox), sizeOf(MediaBox)];
      expect(bleed).toEqual([4.25 * INCH + 18, 7 * INCH + 18]);
      expect(media[0] - bleed[0]).toBeCloseTo(2 * 7 * MM, 1);
      expect(media[1] - bleed[1]).toBeCloseTo(2 * 7 * MM, 1);
    }
    // The cover's colour runs to the edge of the bleed and not past it.
    const { data, info } = await sharp(pictureOf(file, 1, 144))
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const at = (mm: number): number[] => [
      ...data
        .subarray((Math.round(info.height / 2) * info.width + Math.round((mm * 144) / 25.4)) * info.channels)
        .subarray(0, 3),
    ];
    expect(at(7 - 0.8)).toEqual([255, 255, 255]);
    expect(at(7 + 0.8)).not.toEqual([255, 255, 255]);
    // A crop mark at the upper left, upright, in line with the cut.
    const dark = (xMm: number, yMm: number): boolean => {
      const [x0, y0] = [xMm, yMm].map((mm) => Math.round((mm * 144) / 25.4)) as [number, number];
      return [-1, 0, 1].some((dx) => data[(y0 * info.width + x0 + dx) * info.channels]! < 140);
    };
    expect(dark(7 + 25.4 / 8, 4.5)).toBe(true);
    expect(dark(7 + 25.4 / 8 + 3, 4.5)).toBe(false);
  });

  test.each([["letter", [11 * INCH, 8.5 * INCH]]] as const)(
    "as a booklet on %s: two pages to a side, each sheet's outer pages first",
    async (sheet, [width, height]) => {
      const single = await make("book", "book.pdf");
      const file = await make("book", `booklet-${sheet}.pdf`, "--booklet", sheet);
      const pages = boxesOf(single).length;
      const sides = boxesOf(file);
      expect(pages % 4).toBe(0);
      expect(sides).toHaveLength(pages / 2);
      for (const { MediaBox, TrimBox } of sides) {
        expect(sizeOf(MediaBox)[0]).toBeCloseTo(width, 1);
        expect(sizeOf(MediaBox)[1]).toBeCloseTo(height, 1);
        expect(sizeOf(TrimBox).map(Math.round)).toEqual([612, 504]);
      }
      // Each half of a side holds the page that belongs there, told by the words on it.
      const words = (pdf: string, page: number, box: readonly string[] = []): string =>
        poppler("pdftotext", ["-f", `${page}`, "-l", `${page}`, ...box, pdf, "-"])
          .replace(/\s+/g, " ")
          .trim();
      const half = (side: number, x: number): string =>
        words(file, side, ["-x", `${x}`, "-y", "0", "-W", `${Math.round(width / 2)}`, "-H", `${Math.ceil(height)}`]);
      expect([half(1, 0), half(1, Math.round(width / 2))]).toEqual([words(single, pages), words(single, 1)]);
      expect([half(2, 0), half(2, Math.round(width / 2))]).toEqual([words(single, 2), words(single, pages - 1)]);
    },
  );

  test("in metres from one tee", async () => {
    const text = textOf(await make("book", "metres.pdf", "--unit", "metres", "--tees", "red"), 5);
    expect(text).toMatch(/Metres/);
    // 30 m on from the longest tee: 300.7 m along the bend.
    expect(text).toMatch(/Red\s+301\b/);
    expect(text).not.toMatch(/White/);
  });

  test("is the same bytes every time", async () => {
    const [one, other] = [await make("book", "book.pdf"), await make("book", "again.pdf")];
    expect(readFileSync(other).equals(readFileSync(one))).toBe(true);
  });
});

describe("the scorecard", () => {
  test("has every tee's lengths, par, index and ratings, rows for four players and a marker, and places to sign", async () => {
    const file = await make("card", "card.pdf");
    expect(boxesOf(file)).toHaveLength(2);
    expect(sizeOf(boxesOf(file)[0]!["TrimBox"]).map((n) => Math.round(n / MM))).toEqual([216, 140]);
    const [outside, inside] = [textOf(file, 1), textOf(file, 2)];
    expect(outside).toMatch(/White, men\s+11\s+70\.1\s+124/);
    expect(outside).toMatch(/Red, women\s+11\s+71\.4\s+126/);
    // 330.65 m along the bend is 361.6 yd, 150 m is 164.04; a total is of the whole yards.
    expect(inside).toMatch(/White\s+362\s+362\s+164\s+888/);
    expect(inside).toMatch(/Par\s+4\s+4\s+3\s+11/);
    expect(inside).toMatch(/Stroke index\s+1\s+2\s+3/);
    for (const row of ["A", "B", "C", "D", "Marker"]) expect(inside).toMatch(new RegExp(`^\\s*${row}(\\s|$)`, "m"));
    expect(inside).toMatch(/Player’s signature\s+Marker’s signature/);
    expect(inside).not.toContain("•");
  });

  test("dots strokes received hole by hole, for each player's own index and allowance", async () => {
    const file = await make("card", "dots.pdf", "--course-handicap", "4,2,+1", "--gender", "men,women,men");
    const inside = textOf(file, 2);
    // Four strokes over three holes: index 1 twice.
    expect(inside.match(/•/g)).toHaveLength(4 + 2);
    expect(inside.match(/••/g)).toHaveLength(1);
    expect(inside).toContain("Each dot is a stroke received. Each + is a stroke given back.");
    const allowed = textOf(await make("card", "allowed.pdf", "--course-handicap", "20", "--allowance", "95"), 2);
    expect(allowed.match(/•/g)).toHaveLength(19);
    expect(allowed).toContain("95 % of the Course Handicap");
  });

  test("on a sheet it lies in the middle, with marks to cut and fold", async () => {
    const [page] = boxesOf(await make("card", "a4.pdf", "--sheet", "a4"));
    expect(sizeOf(page!["MediaBox"]).map((n) => Math.round(n / MM))).toEqual([297, 210]);
    const [left, low, right, high] = page!["TrimBox"]!;
    expect(left! + right!).toBeCloseTo(297 * MM, 1);
    expect(low! + high!).toBeCloseTo(210 * MM, 1);
  });
});

describe("tee signs", () => {
  test("are large, one for each hole, and their codes lead to its page from two metres off", async () => {
    const file = await make("signs", "signs.pdf", "--site", "https://links.example.org", "--base", "/guide/");
    const pages = boxesOf(file);
    expect(pages).toHaveLength(3);
    for (const { MediaBox } of pages) expect(sizeOf(MediaBox).map((n) => Math.round(n / MM))).toEqual([297, 420]);
    for (let page = 1; page <= 3; page++) {
      // A telephone's camera of 12 megapixels sees some 2.8 m across at 2 m: 1.4 pixels to a millimetre (from memory:
      // 70 degrees, 4,032 pixels).
      const { data, info } = await sharp(pictureOf(file, page, 1.4 * 25.4))
        .ensureAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true });
      expect(jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data).toBe(
        `https://links.example.org/guide/course-1/${page}/`,
      );
    }
    const titles = (await bookmarksOf(file)).map(({ title }) => title);
    expect(titles).toHaveLength(3);
    // Letters that are read at 2 m are some 10 mm tall (a two-hundredth of the distance: common practice, no source).
    const boxes = poppler("pdftotext", ["-bbox", "-f", "1", "-l", "1", file, "-"]);
    for (const figure of ["362", "329"]) {
      const word = new RegExp(`yMin="([\\d.]+)"[^>]*yMax="([\\d.]+)">${figure}</word>`).exec(boxes);
      expect((Number(word?.[2]) - Number(word?.[1])) / MM, figure).toBeGreaterThan(12);
    }
  });

  test("fit other sheets whole", async () => {
    const file = await make("signs", "a4-signs.pdf", "--site", "https://links.example.org", "--sheet", "a4");
    expect(boxesOf(file)).toHaveLength(3);
    expect(sizeOf(boxesOf(file)[0]!["MediaBox"]).map((n) => Math.round(n / MM))).toEqual([210, 297]);
    expect(textOf(file, 1)).toContain("Local rules, staff and signs come first.");
  });

  test("stand in the club's colours", async () => {
    const svg = vectorsOf(
      await make("signs", "signs.pdf", "--site", "https://links.example.org", "--base", "/guide/"),
      1,
    );
    for (const colour of ["#f4f4f0", "#b3261e"])
      expect(
        filledWith(svg, colour).some((points) => extent(points)[0] > 90 * MM),
        colour,
      ).toBe(true);
  });
});

describe("what cannot be done is told, with what to write", () => {
  test.each([
    [[], "What is to be printed? Write book, card or signs first: npm run paper -- book --out book.pdf."],
    [["poster", "--out", "x.pdf"], '"poster" cannot be printed. Write book, card or signs first'],
    [["book"], "--out is missing: where is the PDF to go? Write --out book.pdf."],
    [["book", "--out", "book.txt"], "Write --out book.txt.pdf."],
    [
      ["book", "--out", "x.pdf", "--tees", "blue"],
      "there is no tee set blue. Choose from white, red. Write --tees white,red.",
    ],
    [["book", "--out", "x.pdf", "--unit", "feet"], "Write --unit metres."],
    [["book", "--out", "x.pdf", "--language", "xx"], "Write --language en."],
    [["book", "--out", "x.pdf", "--course", "dunes"], "Write --course course-1."],
    [["book", "--out", "x.pdf", "--booklet", "a2"], "expected a4, letter. Write --booklet a4."],
    [["book", "--out", "x.pdf", "--site", "https://a.example"], "--site is for signs, not for book. Leave it out."],
    [
      ["card", "--out", "x.pdf", "--course-handicap", "many"],
      "Write --course-handicap 14 or --course-handicap 14,+2.",
    ],
    [["card", "--out", "x.pdf", "--course-handicap", "1,2,3,4,5"], "a card has rows for 4"],
    [["card", "--out", "x.pdf", "--allowance", "95"], "Write --course-handicap 14."],
    [["signs", "--out", "x.pdf"], "--site is missing: which address are the codes to lead to?"],
  ] as const)("%j", async (args, message) => {
    const ended = await paper(...args);
    expect(ended.code).toBe(1);
    expect(ended.stderr).toContain(message);
    expect(ended.stderr).not.toMatch(/^\s+at /m);
  });
});
