import jsQR from "jsqr";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { linesOf, paginate, type Block, type FlowStyle } from "../../src/paper/flow.ts";
import { padding, saddleStitch } from "../../src/paper/imposition.ts";
import { centred, cropMarks, foldMarks } from "../../src/paper/marks.ts";
import { drawQr } from "../../src/paper/qr.ts";
import { greenSize } from "../../src/paper/book-hole.ts";
import { BOOK_PAGE, points } from "../../src/paper/sizes.ts";
import { inkOn } from "../../src/paper/sign.ts";
import { GREEN_SHEET_PX_PER_METRE } from "../../src/draw/green-sheet.ts";

describe("imposition", () => {
  test("of eight pages, as a folded pair of sheets shows", () => {
    expect(saddleStitch(8)).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });

  test.each([4, 8, 44, 64])("of %i pages: each once, facing pages beside each other, backs behind fronts", (count) => {
    const sides = saddleStitch(count);
    expect(sides.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    for (const [left, right] of sides) expect(left + right).toBe(count + 1);
    // Turned over the short edge, what is behind a right-hand page is the left half: a leaf's two pages follow each
    // other.
    for (let sheet = 0; sheet < sides.length; sheet += 2) {
      expect(sides[sheet + 1]![0]).toBe(sides[sheet]![1] + 1);
      expect(sides[sheet]![0]).toBe(sides[sheet + 1]![1] + 1);
    }
  });

  test("pads to fours, and refuses what is none", () => {
    expect([1, 2, 3, 4, 5, 41].map(padding)).toEqual([3, 2, 1, 0, 3, 3]);
    for (const count of [0, 2, 42, 4.5]) expect(() => saddleStitch(count)).toThrow(RangeError);
  });
});

describe("marks", () => {
  const trim = centred(300, 200, 400, 280);

  test("stand clear of the bleed, in line with the cut, and inside the sheet", () => {
    const marks = cropMarks(trim, 9);
    expect(marks).toHaveLength(8);
    for (const {
      from: [x1, y1],
      to: [x2, y2],
    } of marks) {
      const upright = x1 === x2;
      if (upright) expect([trim.x, trim.x + trim.width]).toContain(x1);
      else expect([trim.y, trim.y + trim.height]).toContain(y1);
      const inside = (x: number, y: number): boolean =>
        x > trim.x - 9 && x < trim.x + trim.width + 9 && y > trim.y - 9 && y < trim.y + trim.height + 9;
      expect(inside(x1, y1) || inside(x2, y2)).toBe(false);
      for (const value of [x1, x2]) expect(value).toBeGreaterThanOrEqual(0);
      for (const value of [y1, y2]) expect(value).toBeLessThanOrEqual(280);
    }
  });

  test("of a fold are above and below it", () => {
    expect(foldMarks(trim, 200, 9).map(({ from }) => from)).toEqual([
      [200, 31],
      [200, 249],
    ]);
  });
});

describe("running text", () => {
  const style: FlowStyle = { widthMm: 90, heightMm: 40, fontMm: 2.75, lineMm: 3.5, gapMm: 1.5, headingMm: 7 };
  const block = (text: string, more: Partial<Block> = {}): Block => ({ html: `<p>${text}</p>`, text, ...more });
  const long = "The cliff edges are undercut and not fenced. Keep well back, and let the ball go. ".repeat(3);

  test("keeps every block, in order, on as many pages as it takes", () => {
    const blocks = Array.from({ length: 20 }, (_, i) => block(`${i} ${long}`));
    const pages = paginate(blocks, style);
    expect(pages.length).toBeGreaterThan(3);
    expect(pages.flat()).toEqual(blocks);
    expect(pages.every((page) => page.length > 0)).toBe(true);
  });

  test("a heading goes with what follows it", () => {
    const pages = paginate([block(long), block(long), block("Heading", { heading: true }), block(long)], {
      ...style,
      heightMm: 33,
    });
    for (const page of pages) expect(page[page.length - 1]!.heading ?? false).toBe(false);
  });

  test("a block taller than a page has one of its own; nothing at all has none", () => {
    expect(paginate([block("a"), block(long.repeat(9)), block("b")], style).map((page) => page.length)).toEqual([
      1, 1, 1,
    ]);
    expect(paginate([], style)).toEqual([]);
  });

  test("longer text takes more lines, a wider measure fewer", () => {
    expect(linesOf("", 90, 2.75)).toBe(1);
    expect(linesOf(long, 45, 2.75)).toBeGreaterThan(linesOf(long, 90, 2.75));
  });
});

describe("a green's size on the page", () => {
  // 1:480 is 3/8 inch to 5 yards (published: USGA, green-reading announcement and FAQ, clarification 4.3a/1).
  const LIMIT = (5 * 0.9144) / ((3 / 8) * 0.0254);
  const green = (metresAcross: number, metresUp: number) => ({
    width: metresAcross * GREEN_SHEET_PX_PER_METRE,
    height: metresUp * GREEN_SHEET_PX_PER_METRE,
    pxPerMetre: GREEN_SHEET_PX_PER_METRE,
  });

  test("the limit is one in 480", () => expect(LIMIT).toBeCloseTo(480, 9));

  test.each([
    [4, 4],
    [20, 20],
    [38, 14],
    [45, 60],
    [120, 30],
    [30, 200],
  ])("of %i by %i m is never over scale, nor over the room", (across, up) => {
    const room = { widthMm: 64, heightMm: 70 };
    const { widthMm, heightMm, scale } = greenSize(green(across, up), room);
    expect(scale).toBeGreaterThan(LIMIT);
    expect(widthMm).toBeLessThanOrEqual(room.widthMm + 1e-9);
    expect(heightMm).toBeLessThanOrEqual(room.heightMm + 1e-9);
    // What is printed is what the scale says.
    expect(widthMm).toBeCloseTo((across * 1000) / scale, 6);
    expect(heightMm).toBeCloseTo((up * 1000) / scale, 6);
  });

  test("a larger green is drawn smaller, a small one no larger than the others", () => {
    const scales = [10, 30, 60, 120].map(
      (metres) => greenSize(green(metres, metres), { widthMm: 64, heightMm: 64 }).scale,
    );
    expect(scales[0]).toBeCloseTo(500, 6);
    expect(scales[1]).toBeCloseTo(500, 6);
    expect(scales[3]!).toBeGreaterThan(scales[2]!);
    expect(scales[2]!).toBeGreaterThan(500);
  });

  test("the page is 4 1/4 by 7 inches", () =>
    expect([points(BOOK_PAGE.widthMm), points(BOOK_PAGE.heightMm)].map((n) => Math.round(n * 1e6) / 1e6)).toEqual([
      306, 504,
    ]));
});

describe("codes", () => {
  test.each([
    "https://a.example/t/1/",
    "https://www.links.example.org/guides/tarvay/18/",
    `https://www.example.org/${"a-long-way-round/".repeat(8)}7/`,
  ])("%s is read back by another library", async (address) => {
    const svg = drawQr(address, { label: "Hole", sizeMm: 60 });
    const { data, info } = await sharp(Buffer.from(svg), { density: 150 })
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data).toBe(address);
  });

  test("the quiet zone is four modules wide (from memory: ISO/IEC 18004)", async () => {
    const svg = drawQr("https://a.example/", { label: "Hole", sizeMm: 40 });
    const size = Number(/viewBox="0 0 (\d+)/.exec(svg)![1]);
    const { data, info } = await sharp(Buffer.from(svg))
      .resize(size, size, { kernel: "nearest" })
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const dark = (x: number, y: number): boolean => data[(y * info.width + x) * info.channels]! < 128;
    for (let i = 0; i < size; i++)
      for (let edge = 0; edge < 4; edge++)
        expect(dark(i, edge) || dark(edge, i) || dark(i, size - 1 - edge) || dark(size - 1 - edge, i)).toBe(false);
    expect(dark(4, 4)).toBe(true);
  });

  test("the label is told, and cannot break out", () =>
    expect(drawQr("x", { label: '"><script>', sizeMm: 10 })).not.toContain("<script"));
});

test("lettering on a tee's colour is what stands out more", () => {
  expect(["#ffffff", "#cfa861", "#2b2b2b", "#000000", "#1f3a8c"].map(inkOn)).toEqual([
    "#000000",
    "#000000",
    "#ffffff",
    "#ffffff",
    "#ffffff",
  ]);
});
