/** What links to the guide show, and what search engines read. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { jsonForScript } from "../../src/tell/structured-data.ts";
import { robotsTxt, sitemapXml } from "../../src/site/build/sitemap.ts";
import { shareCard } from "../../src/site/pictures/share-card.ts";
import { sfntFromWoff } from "../../src/site/pictures/woff.ts";
import { words } from "../../src/site/language/words.ts";
import { measured } from "../draw/fixture.ts";

describe("a font unpacked", () => {
  const { resolve } = createRequire(import.meta.url);
  const font = async (face: string) =>
    sfntFromWoff(await readFile(resolve(`@fontsource/besley/files/besley-${face}.woff`)));
  const sum = (bytes: Buffer): number => {
    let total = 0;
    for (let i = 0; i < bytes.length; i += 4)
      total = (total + Buffer.concat([bytes.subarray(i, i + 4), Buffer.alloc(3)]).readUInt32BE(0)) >>> 0;
    return total;
  };

  // OpenType specification, "Calculating checksums": a table's is the sum of its 32-bit words,
  // and the whole file's with the adjustment in `head` is 0xB1B0AFBA.
  test.each(["latin-400-normal", "latin-600-normal", "latin-400-italic", "latin-ext-600-normal"])(
    "%s holds its checksums",
    async (face) => {
      const sfnt = await font(face);
      const count = sfnt.readUInt16BE(4);
      expect(count).toBeGreaterThan(8);
      for (let i = 0; i < count; i++) {
        const at = 12 + 16 * i;
        const tag = sfnt.toString("latin1", at, at + 4);
        const table = Buffer.from(
          sfnt.subarray(sfnt.readUInt32BE(at + 8), sfnt.readUInt32BE(at + 8) + sfnt.readUInt32BE(at + 12)),
        );
        if (tag === "head") table.writeUInt32BE(0, 8);
        expect(sum(table), tag).toBe(sfnt.readUInt32BE(at + 4));
      }
    },
  );

  test("other bytes are refused", () => {
    expect(() => sfntFromWoff(Buffer.from("wOF2".padEnd(60, "\0")))).toThrow("its first four bytes must be wOFF");
  });
});

describe("a share card", () => {
  let cache: string;
  beforeAll(async () => {
    cache = await mkdtemp(join(tmpdir(), "marram-cards-"));
  });
  afterAll(() => rm(cache, { recursive: true, force: true }));

  const drawn = async (name: string, kept: string) => {
    process.env["MARRAM_CACHE"] = join(cache, kept);
    const course = measured((hole) => ({ ...hole, name }));
    return shareCard("yards", course, course.holes[0]!, words("en"));
  };

  test("is 1200 by 630, the same bytes each time, and letters the name", async () => {
    const one = await drawn("Skerry", "a");
    expect(Buffer.compare(one, await drawn("Skerry", "b"))).toBe(0);
    expect(Buffer.compare(one, await drawn("Skerry", "a"))).toBe(0);
    expect(await sharp(one).metadata()).toMatchObject({ width: 1200, height: 630, format: "jpeg" });
    const block = { left: 60, top: 530, width: 500, height: 50 };
    const inked = async (card: Uint8Array): Promise<number> => {
      const grey = await sharp(card).extract(block).greyscale().raw().toBuffer();
      return grey.filter((value) => value < 90).length;
    };
    // Longer names take more ink; a renderer without its fonts draws none.
    const [short, long] = [await inked(one), await inked(await drawn("Skerry Skerry", "c"))];
    expect(short).toBeGreaterThan(500);
    expect(long).toBeGreaterThan(1.6 * short);
  });
});

test("a sitemap lists addresses in order, and its own is in robots.txt", () => {
  expect(sitemapXml(["https://a.example/", "https://a.example/b/?c&d"])).toContain(
    "<url><loc>https://a.example/</loc></url>\n  <url><loc>https://a.example/b/?c&amp;d</loc></url>",
  );
  expect(robotsTxt("https://a.example/sitemap.xml")).toMatch(
    /^User-agent: \*\nAllow: \/\n\nSitemap: https:\/\/a\.example\/sitemap\.xml\n$/,
  );
});

test("data in a page cannot end its own element", () => {
  const text = jsonForScript({ name: "</script><script>alert(1)</script><!--" });
  expect(text).not.toContain("<");
  expect(JSON.parse(text)).toEqual({ name: "</script><script>alert(1)</script><!--" });
});
