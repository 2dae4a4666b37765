/** The second club built once: what differs from the demo, from content to pages. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { builtPages } from "../../src/site/build/page-check.ts";
import { builtGuide } from "../support/demo.ts";
import { PROJECT } from "../support/run.ts";
import { filesOf } from "../support/site.ts";

let out: string;

beforeAll(async () => {
  out = await builtGuide(join(PROJECT, "tests/clubs/sallowmere"));
});

/** What a page says, without what only scripts read. */
const said = async (path: string): Promise<string> => {
  const html = await readFile(join(out, path, "index.html"), "utf8");
  return html
    .replaceAll(/<(script|template)\b[\s\S]*?<\/\1>/g, "")
    .replaceAll(/<[^>]*>/g, " ")
    .replaceAll(/\s+/g, " ");
};

describe("Sallowmere", () => {
  test("has a page for each of nine holes in both languages", async () => {
    const pages = await builtPages(out);
    for (const language of ["", "de/"]) {
      expect(pages.filter((path) => new RegExp(`^${language}mill-course/\\d+/$`).test(path)).length).toBe(9);
    }
  });

  test("shows a par for men and one for women where they differ", async () => {
    expect(await said("mill-course/5")).toMatch(/Par 4 ?\/ ?5/);
    expect(await said("mill-course/4")).not.toMatch(/Par \d ?\/ ?\d/);
  });

  test("shows figures in metres first", async () => {
    const tip = (await said("mill-course/1")).match(/How to play it .*? Fly the hole/)?.[0];
    expect(tip).toMatch(/\d m\b/);
    expect(tip).not.toMatch(/\d yd\b/);
  });

  test("leaves the club's own language where there is no translation, and says the tip in German where there is", async () => {
    expect(await said("de/mill-course/1")).toContain("Glockenwiese");
    expect(await said("de/mill-course/2")).toContain("Rookery");
  });

  test("lays its height tiles south of the equator and east of Greenwich", () => {
    const tiles = filesOf(join(out, "mill-course/ground")).flatMap(
      (file) => /^(\d+)\/(\d+)\/(\d+)\.webp$/.exec(file)?.slice(1).map(Number) ?? [],
    );
    expect(tiles.length).toBeGreaterThan(0);
    for (let i = 0; i < tiles.length; i += 3) {
      const [zoom, column, row] = tiles.slice(i, i + 3) as [number, number, number];
      // Web Mercator (OGC 17-083r4, WebMercatorQuad): columns count from 180° W, rows from the north.
      expect((column + 1) / 2 ** zoom).toBeGreaterThan(0.5);
      expect((row + 1) / 2 ** zoom).toBeGreaterThan(0.5);
    }
  });
});
