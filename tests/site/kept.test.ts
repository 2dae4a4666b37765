/** Drawings kept between builds: never stale, and not made again for a word. */
import { cp, mkdir, mkdtemp, readdir, rm, stat, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import type { Feature, Hole } from "../../src/course/types.ts";
import { drawPlate, type PlateOptions } from "../../src/draw/plate.ts";
import { drawCourse } from "../../src/draw/course-map.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredCourse, MeasuredHole } from "../../src/measure/types.ts";
import { cached, keep, sweepCache } from "../../src/site/cache/cache.ts";
import { codeVersionOf, setCodeVersion } from "../../src/site/cache/code-version.ts";
import { drawnCourse, kept } from "../../src/site/cache/kept.ts";
import { keptCourse, keptPlate } from "../../src/site/cache/kept-drawings.ts";
import { ground, holeOf, measured } from "../draw/fixture.ts";
import { words } from "../../src/site/language/words.ts";

let folder = "";
let count = 0;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-kept-"));
});
beforeEach(() => {
  process.env["MARRAM_CACHE"] = join(folder, `cache-${count++}`);
  setCodeVersion("1");
});
afterEach(() => setCodeVersion(undefined));
afterAll(async () => {
  delete process.env["MARRAM_CACHE"];
  await rm(folder, { recursive: true });
});

const options: PlateOptions = { composition: "phone", idPrefix: "t", unit: "yards", words: words("en").draw };
const entries = async (): Promise<number> =>
  (await readdir(process.env["MARRAM_CACHE"]!, { recursive: true, withFileTypes: true }).catch(() => [])).filter(
    (entry) => entry.isFile(),
  ).length;

/** The seventh hole of the fixture, changed and measured again. */
function seventh(change: (hole: Hole) => Hole = (hole) => hole): MeasuredHole {
  const { course } = measured();
  const changed: MeasuredCourse = measureCourse({
    ...course,
    holes: course.holes.map((hole) => (hole.number === 7 ? change(hole) : hole)),
  });
  return holeOf(changed, 7);
}
const moved = (feature: Feature): Feature =>
  feature.kind === "green" && feature.geometry.type === "Polygon"
    ? {
        ...feature,
        geometry: {
          type: "Polygon",
          coordinates: feature.geometry.coordinates.map((ring) => ring.map(([x, y]) => [x! + 1e-6, y!])),
        },
      }
    : feature;

describe("a plate", () => {
  test("is the very drawing, made or kept", () => {
    const hole = seventh();
    const grid = ground(hole);
    const withGround = { ...options, ground: { grid, intervalMetres: 1, contours: [] } };
    for (const one of [options, withGround, { ...options, unit: "metres" as const }]) {
      const plain = drawPlate(seventh(), one);
      expect(keptPlate(seventh(), one)).toEqual(plain);
      expect(keptPlate(seventh(), one)).toEqual(plain);
    }
  });

  test.each<[string, (hole: Hole) => Hole]>([
    [
      "a word in the tip",
      (hole) => ({ ...hole, tip: { ...hole.tip, markdown: `${hole.tip.markdown} Mind the wind.` } }),
    ],
    [
      "lines that moved down in the file",
      (hole) => ({
        ...hole,
        features: hole.features.map((feature) => ({
          ...feature,
          place: { ...feature.place, line: feature.place.line + 9 },
        })),
      }),
    ],
    [
      "a notice",
      (hole) => ({
        ...hole,
        notices: [{ from: undefined, until: "2027-01-01", text: "Winter green", holes: undefined, place: hole.place }],
      }),
    ],
  ])("is not drawn again for %s", async (_, change) => {
    keptPlate(seventh(), options);
    const before = await entries();
    expect(before).toBeGreaterThan(0);
    keptPlate(seventh(change), options);
    expect(await entries()).toBe(before);
  });

  test.each<[string, (hole: Hole) => Hole]>([
    ["a green moved by the breadth of a hand", (hole) => ({ ...hole, features: hole.features.map(moved) })],
    ["another name", (hole) => ({ ...hole, name: "Another" })],
    ["another par", (hole) => ({ ...hole, par: { men: 5, women: 5 } })],
    [
      "another aim in the tip",
      (hole) => ({ ...hole, tip: { ...hole.tip, markdown: ":aim[lighthouse] and :aim[cairn] and :aim[mast]" } }),
    ],
    [
      "a photo that says where it was taken",
      (hole) => ({
        ...hole,
        photos: [
          {
            file: "p.jpg",
            alt: "A",
            caption: undefined,
            credit: undefined,
            focus: undefined,
            place: hole.place,
            taken: { at: undefined, from: "tee", towards: undefined },
          },
        ],
      }),
    ],
  ])("is drawn again for %s, as it is drawn anew", (_, change) => {
    keptPlate(seventh(), options);
    expect(keptPlate(seventh(change), options).svg).toBe(drawPlate(seventh(change), options).svg);
  });

  test("is drawn again for other ground, other options and other code", async () => {
    const hole = seventh();
    const grid = ground(hole);
    const higher = { ...grid, heights: grid.heights.map((height, i) => (i === 0 ? height + 0.5 : height)) };
    const on = (heights: typeof grid): PlateOptions => ({
      ...options,
      ground: { grid: heights, intervalMetres: 1, contours: [] },
    });
    const seen = [
      options,
      on(grid),
      on(higher),
      { ...options, idPrefix: "u" },
      { ...options, composition: "desk" as const },
    ];
    for (const [i, one] of seen.entries()) {
      keptPlate(seventh(), one);
      expect(await entries()).toBe(i + 1);
    }
    setCodeVersion("2");
    keptPlate(seventh(), options);
    expect(await entries()).toBe(seen.length + 1);
  });

  test("is not kept while somebody works on the code", async () => {
    setCodeVersion(undefined);
    keptPlate(seventh(), options);
    expect(await entries()).toBe(0);
  });
});

test("a course's map is the very drawing, and another under another address", async () => {
  const course = measured();
  const at = (base: string) => ({
    idPrefix: "m",
    unit: "yards" as const,
    words: words("en").draw,
    size: "phone" as const,
    href: ({ hole }: MeasuredHole) => `${base}${hole.number}/`,
  });
  expect(keptCourse(course, at("/a/"), "/a/")).toEqual(drawCourse(course, at("/a/")));
  expect(keptCourse(course, at("/a/"), "/a/")).toEqual(drawCourse(course, at("/a/")));
  expect(keptCourse(course, at("/b/"), "/b/")).toEqual(drawCourse(course, at("/b/")));
  expect(drawnCourse(course).holes[0]!.hole.tip.markdown).not.toContain(" ,");
});

test("results come back as they were: undefined, NaN, maps and typed arrays", () => {
  const value = { a: undefined, b: Number.NaN, c: new Map([["d", new Float32Array([1, Number.NaN])]]) };
  expect(kept("test", [1], () => value)).toEqual(value);
  expect(kept("test", [1], () => ({ ...value, b: 2 }))).toEqual(value);
  expect(kept("test", [2], () => ({ ...value, b: 2 }))).toEqual({ ...value, b: 2 });
  // Numbers that JSON writes alike are told apart.
  expect([
    kept("n", [{ x: Number.NaN }], () => "NaN"),
    kept("n", [{ x: null }], () => "null"),
    kept("n", [{ x: Infinity }], () => "Infinity"),
  ]).toEqual(["NaN", "null", "Infinity"]);
});

test("the code's version is another for another line of code or another package, and no other for a page", async () => {
  const root = join(folder, "code");
  await mkdir(join(root, "src/draw/deep"), { recursive: true });
  await mkdir(join(root, "src/pages"));
  await writeFile(join(root, "src/draw/deep/a.ts"), "1");
  await writeFile(join(root, "package-lock.json"), "{}");
  const first = codeVersionOf(root);
  await cp(root, join(folder, "elsewhere"), { recursive: true });
  expect(codeVersionOf(join(folder, "elsewhere"))).toBe(first);
  await writeFile(join(root, "src/pages/b.ts"), "2");
  expect(codeVersionOf(root)).toBe(first);
  await writeFile(join(root, "src/draw/deep/a.ts"), "2");
  const second = codeVersionOf(root);
  await writeFile(join(root, "package-lock.json"), "{ }");
  expect(new Set([first, second, codeVersionOf(root)]).size).toBe(3);
});

test("what nobody asked for in sixty days is swept out; asking renews it", async () => {
  const days = (n: number): Date => new Date(Date.now() - n * 24 * 3600 * 1000);
  for (const key of ["old0", "asked", "new0"]) await keep(key, Buffer.from(key));
  const path = (key: string): string => join(process.env["MARRAM_CACHE"]!, key.slice(0, 2), key);
  for (const key of ["old0", "asked"]) await utimes(path(key), days(61), days(61));
  expect(await cached("asked")).toBeDefined();
  expect((await stat(path("asked"))).mtimeMs).toBeGreaterThan(days(1).getTime());
  await sweepCache();
  expect([
    await cached("old0"),
    Buffer.from((await cached("asked"))!).toString(),
    Buffer.from((await cached("new0"))!).toString(),
  ]).toEqual([undefined, "asked", "new0"]);
});

describe("a folder that keeps nothing", () => {
  const unusable = async (): Promise<void> => {
    const file = join(folder, "a-file");
    await writeFile(file, "");
    process.env["MARRAM_CACHE"] = join(file, "below");
  };

  test("is done without, and said in one line however often it is met", async () => {
    await unusable();
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    try {
      let made = 0;
      for (let again = 0; again < 3; again++) expect(kept("sum", [1], () => ++made)).toBe(again + 1);
      await keep("0123456789", new Uint8Array(3));
      expect(await cached("0123456789")).toBeUndefined();
      await sweepCache();
      expect(said.mock.calls).toEqual([
        [
          expect.stringMatching(
            /^Nothing can be kept between builds in .*below \(ENOTDIR\): this goes on without, and takes longer\. Set MARRAM_CACHE to a folder that can be written\.$/,
          ),
        ],
      ]);
    } finally {
      said.mockRestore();
    }
  });

  test("or keeps it spoilt, makes it anew", async () => {
    expect(kept("sum", [2], () => "made")).toBe("made");
    const [file] = (await readdir(process.env["MARRAM_CACHE"]!, { recursive: true, withFileTypes: true })).filter(
      (entry) => entry.isFile(),
    );
    await writeFile(join(file!.parentPath, file!.name), "spoilt");
    expect(kept("sum", [2], () => "again")).toBe("again");
    expect(kept("sum", [2], () => "not a third time")).toBe("again");
  });
});
