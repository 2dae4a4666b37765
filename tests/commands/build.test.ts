/** `npm run build` from content to folder, in real folders and processes. */
import { mkdir, mkdtemp, readFile, readdir, rm, truncate, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { RECORD_FILE } from "../../src/site/build/build-record.ts";
import { builtPages } from "../../src/site/build/page-check.ts";
import { writeClub } from "../fixtures/club.ts";
import { hole, plant } from "../fixtures/marked.ts";
import { fingerprint, run, type Ended } from "../support/run.ts";

const BASE = "/guides/sample/";
const BUILD = "src/commands/build.ts";

let folder: string;
let content: string;
let out: string;
let first: Ended;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-build-"));
  content = join(folder, "content");
  out = join(folder, "public/guide");
  await writeClub(content, { holes: 9 });
  await plant(content, [{ file: "club.yaml", from: "language: en", to: "language: [en, de]" }]);
  first = await run(BUILD, ["--content", content, "--out", out, "--base", BASE, "--site", "https://example.org"]);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const OF_A_COURSE = [
  ...["1", "2", "3", "4", "5", "6", "7", "8", "9"].flatMap((hole) => [
    `course-1/${hole}/`,
    `course-1/${hole}/flyover/`,
  ]),
  ...["book", "card", "figures", "map", "tour"].map((page) => `course-1/${page}/`),
];
const IN_ENGLISH = ["", ...OF_A_COURSE];
const IN_GERMAN = IN_ENGLISH.map((page) => `de/${page}`);
const ONE_COURSE = ["", "404.html", ...OF_A_COURSE, ...IN_GERMAN];

describe("a club of one course, in two languages", () => {
  test("is built: exit code, count, pages, and nothing left beside it", async () => {
    expect([first.code, first.stdout]).toEqual([0, `48 pages written to ${out}, to be served from ${BASE}.\n`]);
    // The check warns of the sample's ratings and counts its notes; neither stops a build.
    expect(first.stderr).toMatch(/^\S+:\d+:\d+: warning: White tees, men: /);
    expect(first.stderr).toMatch(/\n\d+ notes besides: npm run check tells them\.\n$/);
    expect(await builtPages(out)).toEqual(ONE_COURSE);
    expect(await readdir(join(folder, "public"))).toEqual(["guide"]);
  });

  test("has only addresses below its base, and each leads to a file", async () => {
    const files = new Set(Object.keys(await fingerprint(out)));
    const seen = new Set<string>();
    for (const page of ONE_COURSE) {
      const html = await readFile(join(out, page.endsWith(".html") ? page : `${page}index.html`), "utf8");
      for (const [, address] of html.matchAll(/\s(?:href|src|poster)="([^"]*)"/g)) {
        if (/^(?:https?:|mailto:|tel:|#)/.test(address!)) {
          // Only the page's own full address may be absolute.
          if (address!.startsWith("http")) expect(address).toMatch(/^https:\/\/example\.org\/guides\/sample\//);
          continue;
        }
        // The error page is shown at any depth, so nothing in it can be found from where it lies.
        if (page === "404.html") expect(address).toMatch(new RegExp(`^${BASE}`));
        const { pathname } = new URL(address!, `https://example.org${BASE}${page}`);
        expect(pathname).toMatch(new RegExp(`^${BASE}`));
        const path = pathname.slice(BASE.length);
        expect(files).toContain(path === "" || path.endsWith("/") ? `${path}index.html` : path);
        seen.add(path);
      }
    }
    for (const page of ONE_COURSE) if (page !== "404.html") expect(seen).toContain(page);
  });

  test("carries the notices of what it ships: every package that a script or a font comes from, linked from every page", async () => {
    const text = await readFile(join(out, "licences.txt"), "utf8");
    for (const name of [
      "@fontsource/besley",
      "@fontsource-variable/source-sans-3",
      "@fontsource/source-sans-3",
      "maplibre-gl",
    ])
      expect(text).toMatch(new RegExp(`^${name} \\d`, "m"));
    for (const page of ONE_COURSE) {
      expect(await readFile(join(out, page.endsWith(".html") ? page : `${page}index.html`), "utf8"), page).toContain(
        `href="${BASE}licences.txt"`,
      );
    }
  });

  test("has no script or style within a page, and a policy that needs none", async () => {
    for (const page of ONE_COURSE) {
      const html = await readFile(join(out, page.endsWith(".html") ? page : `${page}index.html`), "utf8");
      const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1] ?? "";
      expect(policy, page).toContain("default-src 'self'");
      expect(policy, page).not.toMatch(/unsafe-inline|unsafe-eval|https?:/);
      // Data blocks run nothing; every other script comes from a file.
      for (const [, attributes] of html.matchAll(/<script\b([^>]*)>/g)) {
        expect(attributes, page).toMatch(/\bsrc="|\btype="application\/(?:ld\+)?json"/);
      }
      expect(html, page).not.toMatch(/<style\b/);
      expect(html, page).not.toMatch(/<[^>]*\sstyle="/);
      expect(html, page).not.toMatch(/<[^>]*\son[a-z]+="/);
    }
  });

  test("names its pages to search engines, and each hole has the picture its links are shown with", async () => {
    const sitemap = await readFile(join(out, "sitemap.xml"), "utf8");
    const listed = [...sitemap.matchAll(/<loc>([^<]*)<\/loc>/g)].map(([, address]) => address!);
    const origin = `https://example.org${BASE}`;
    expect(listed.map((address) => address.slice(origin.length)).sort()).toEqual(
      (await builtPages(out)).filter((page) => page !== "404.html"),
    );
    expect(listed.every((address) => address.startsWith(origin))).toBe(true);
    expect(await readFile(join(out, "robots.txt"), "utf8")).toContain(`Sitemap: ${origin}sitemap.xml`);
    for (const address of listed) {
      const html = await readFile(join(out, address.slice(origin.length), "index.html"), "utf8");
      expect(/<link rel="canonical" href="([^"]*)"/.exec(html)?.[1]).toBe(address);
    }
    for (const page of IN_ENGLISH) {
      const alternates = [
        ["en", `${origin}${page}`],
        ["de", `${origin}de/${page}`],
        ["x-default", `${origin}${page}`],
      ];
      for (const own of [page, `de/${page}`]) {
        const html = await readFile(join(out, own, "index.html"), "utf8");
        expect(
          [...html.matchAll(/<link rel="alternate" hreflang="([^"]*)" href="([^"]*)"/g)].map(
            ([, language, address]) => [language, address],
          ),
          own,
        ).toEqual(alternates);
      }
    }
    const hole1 = await readFile(join(out, "course-1/1/index.html"), "utf8");
    const picture = /<meta property="og:image" content="([^"]*)"/.exec(hole1)?.[1] ?? "";
    expect(picture.startsWith(origin)).toBe(true);
    // A JPEG's first bytes (ITU-T T.81, B.1.1.3: SOI, then a marker).
    expect((await readFile(join(out, picture.slice(origin.length)))).subarray(0, 3)).toEqual(
      Buffer.from([0xff, 0xd8, 0xff]),
    );
    const data =
      /<script type="application\/ld\+json">(.*?)<\/script>/.exec(
        await readFile(join(out, "index.html"), "utf8"),
      )?.[1] ?? "";
    expect(JSON.parse(data)).toMatchObject({ "@type": "GolfCourse", url: origin, hasMap: `${origin}course-1/map/` });
  });

  test("has a place for a golfer's lengths though it has no heights, and none for a wind", async () => {
    const html = await readFile(join(out, "course-1/1/index.html"), "utf8");
    expect(html).toContain('data-field="carry"');
    expect(html).toContain("data-own-shots");
    expect(html).not.toMatch(/data-dial|data-field="(?:speed|from|temperature)"/);
    const { level, from } = JSON.parse(await readFile(join(out, "course-1/1/ground.json"), "utf8")) as {
      level?: boolean;
      from: Record<string, { line: unknown[] }>;
    };
    expect(level).toBe(true);
    for (const { line } of Object.values(from)) expect(line.length).toBeGreaterThanOrEqual(2);
    expect(Object.keys(from).length).toBeGreaterThan(0);
  });

  test("comes out with the same bytes again in the place of the last, whatever the environment says", async () => {
    const before = await fingerprint(out);
    expect(Object.keys(before).length).toBeGreaterThan(13);
    const settings = {
      BASE_URL: "/elsewhere/",
      SITE: "https://example.com",
      PROD: "",
      DEV: "1",
      MODE: "x",
      SSR: "",
      ASSETS_PREFIX: "x",
      NODE_ENV: "development",
      TZ: "Pacific/Chatham",
      LANG: "de_DE.UTF-8",
    };
    const again = await run(
      BUILD,
      ["--content", content, "--out", out, "--base", BASE, "--site", "https://example.org"],
      settings,
    );
    expect(again.code).toBe(0);
    expect(await fingerprint(out)).toEqual(before);
    expect(await readdir(join(folder, "public"))).toEqual(["guide"]);
  });
});

describe("content with mistakes", () => {
  let before: Record<string, string>;
  let broken: string;

  beforeAll(async () => {
    broken = join(folder, "broken");
    await writeClub(broken, { holes: 9 });
    await plant(broken, [
      { file: "club.yaml", from: "units: yards", to: "units: feet" },
      { file: hole(2), from: "par: 4", to: "par: four" },
      { file: hole(3), from: ":carry[pond]", to: ":carry[lake]" },
    ]);
    before = await fingerprint(out);
  });

  test("leaves the last guide as it was, and tells of all of them", async () => {
    const { code, stdout, stderr } = await run(BUILD, ["--content", broken, "--out", out]);
    expect(code).toBe(1);
    expect(stdout).toBe("");
    // How figures are told off is held by the tests of tips.
    expect(stderr.replaceAll(broken, "CONTENT").replace(/(:carry\[\w+\]:) .*/, "$1 …")).toMatchInlineSnapshot(`
      "CONTENT/club.yaml:4:8: units is "feet": expected yards or metres. Write units: yards.

      CONTENT/course-1/holes/02-hole.md:4:6: par is "four": expected a whole number from 3 to 6, or one each for men and women. Write par: 4 or par: { men: 4, women: 4 }.

      CONTENT/course-1/holes/03-hole.md:17:7: :carry[lake]: …
      3 mistakes in 3 files. Nothing was built.
      "
    `);
    expect(await fingerprint(out)).toEqual(before);
    expect(await readdir(join(folder, "public"))).toEqual(["guide"]);
  });

  test("writes nothing where there was nothing", async () => {
    const { code } = await run(BUILD, ["--content", broken, "--out", join(folder, "nowhere/guide")]);
    expect(code).toBe(1);
    expect(await readdir(folder)).not.toContain("nowhere");
  });

  test("stops `astro build` too", async () => {
    const target = join(folder, "plain-astro");
    const { code, stdout, stderr } = await run("node_modules/astro/bin/astro.mjs", ["build", "--outDir", target], {
      MARRAM_CONTENT: broken,
    });
    expect(code).toBe(1);
    expect(`${stdout}${stderr}`).toContain(`${broken}/course-1/holes/02-hole.md:4:6: par is "four"`);
    expect(`${stdout}${stderr}`).toContain("3 mistakes in 3 files. Nothing was built.");
    expect(await readdir(folder)).not.toContain("plain-astro");
  });

  test("50 MB of it is refused", async () => {
    const large = join(folder, "large");
    await writeClub(large, { holes: 9 });
    await truncate(join(large, hole(4)), 50_000_000);
    const { code, stderr } = await run(BUILD, ["--content", large, "--out", out]);
    expect(code).toBe(1);
    expect(stderr).toContain("course-1/holes/04-hole.md:1:1: The file is 50 MB: expected at most 4.0 MB");
    expect(await fingerprint(out)).toEqual(before);
  });
});

test("several courses are listed at the root, each with a cover of its own; an empty folder is taken", async () => {
  const several = join(folder, "several");
  const target = join(folder, "several-guide");
  await writeClub(several, { courses: 2, holes: 2 });
  await mkdir(target);
  const { code, stdout } = await run(BUILD, ["--content", several, "--out", target]);
  expect(stdout).toBe(`21 pages written to ${target}, to be served from /.\n`);
  expect(code).toBe(0);
  expect(await readdir(target)).toContain(RECORD_FILE);
  const pages = await builtPages(target);
  expect(pages).toHaveLength(22);
  for (const page of ["", "course-1/", "course-2/", "course-2/2/", "course-2/card/"]) expect(pages).toContain(page);
  const root = await readFile(join(target, "index.html"), "utf8");
  expect(root).toContain('href="/course-1/"');
  expect(root).toContain('href="/course-2/"');
});

describe("a target that is not ours", () => {
  const refused = async (...args: string[]): Promise<string> => {
    const { code, stdout, stderr } = await run(BUILD, args);
    expect(code).toBe(1);
    expect(stdout).toBe("");
    return stderr.replaceAll(folder, "FOLDER").trim();
  };

  test("is left alone", async () => {
    const mine = join(folder, "mine");
    await mkdir(mine);
    await writeFile(join(mine, "letter.txt"), "Dear");
    await writeFile(join(folder, "file"), "");
    expect(await refused("--content", content, "--out", mine)).toMatchInlineSnapshot(
      `"The guide cannot be written to FOLDER/mine: it is not empty, and what is in it was not made by Marram. Name a folder of its own: --out dist."`,
    );
    expect(await readdir(mine)).toEqual(["letter.txt"]);
    expect(await refused("--content", content, "--out", content)).toMatchInlineSnapshot(
      `"The guide cannot be written to FOLDER/content: that is the content folder. Name a folder of its own: --out dist."`,
    );
    expect(await refused("--content", content, "--out", folder)).toMatchInlineSnapshot(
      `"The guide cannot be written to FOLDER: the content folder lies in it. Name a folder of its own: --out dist."`,
    );
    expect(await refused("--content", content, "--out", join(content, "course-1/guide"))).toMatchInlineSnapshot(
      `"The guide cannot be written to FOLDER/content/course-1/guide: it lies in the content folder. Name a folder of its own: --out dist."`,
    );
    expect(await refused("--content", content, "--out", "/")).toMatchInlineSnapshot(
      `"The guide cannot be written to /: that is the root of the disk. Name a folder of its own: --out dist."`,
    );
    expect(await refused("--content", content, "--out", join(folder, "file"))).toMatchInlineSnapshot(
      `"The guide cannot be written to FOLDER/file: it is a file. Name a folder of its own: --out dist."`,
    );
    expect(await readFile(join(content, "club.yaml"), "utf8")).toContain("Sample Links");
  });
});

describe("options", () => {
  test.each([
    [["--contents", "x"]],
    [["x"]],
    [["--out"]],
    [["--base", "guides"]],
    [["--base", "/a/../b/"]],
    [["--base", "/a?b/"]],
    [["--site", "example.org"]],
    [["--site", "https://example.org/guide/"]],
  ])("%j", async (args) => {
    const { code, stdout, stderr } = await run(BUILD, args);
    expect(code).toBe(1);
    expect(stdout).toBe("");
    expect(stderr).toMatchSnapshot();
  });

  test("--help", async () => {
    const { code, stdout } = await run(BUILD, ["--help"]);
    expect(code).toBe(0);
    expect(stdout).toMatchSnapshot();
  });
});
