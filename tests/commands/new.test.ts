/** `npm run new` from nothing to a website. */
import { mkdir, mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { builtPages } from "../../src/site/build/page-check.ts";
import { run } from "../support/run.ts";

const NEW = "src/commands/new.ts";
const GOOD = [
  "--name",
  "Our Golf Club",
  "--course",
  "Our Links",
  "--holes",
  "9",
  "--tees",
  "Blue,White,Red",
  "--at",
  "lat=56.5,lon=-9",
];
let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-new-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test("a new club of nine holes is checked and built as it stands", async () => {
  const club = join(folder, "our-club");
  const { code, stdout, stderr } = await run(NEW, ["--folder", club, ...GOOD]);
  expect([code, stderr]).toEqual([0, ""]);
  expect(stdout.replaceAll(club, "CLUB")).toMatchInlineSnapshot(`
    "11 files written to CLUB. The shapes of the holes are placeholders.
    Look at it now:
      npm run build -- --content CLUB --out CLUB-site
      npm run serve -- --out CLUB-site
    Then open the files in CLUB: each says what to change. npm run check -- --content CLUB tells what is left to do.
    "
  `);
  expect((await readdir(club, { recursive: true })).filter((name) => /\.(yaml|md)$/.test(name))).toHaveLength(11);

  const checked = await run("src/commands/check.ts", ["--content", club]);
  expect([checked.code, checked.stderr]).toEqual([0, ""]);
  expect(checked.stdout).toMatch(/1 course, 9 holes\.\n$/);

  const out = join(folder, "site");
  const built = await run("src/commands/build.ts", ["--content", club, "--out", out]);
  expect(built.code, built.stderr).toBe(0);
  const pages = await builtPages(out);
  for (let hole = 1; hole <= 9; hole++) expect(pages).toContain(`our-links/${hole}/`);
  expect(await readFile(join(out, "our-links/1/index.html"), "utf8")).toContain("This text stands for the tip");
  // Placeholders are told on every page that shows them.
  // A club of one course has its cover at the top.
  for (const page of [...["1/", "1/flyover/", "card/", "map/", "figures/"].map((one) => `our-links/${one}`), ""])
    expect(await readFile(join(out, `${page}index.html`), "utf8")).toMatch(
      /<aside class="draft"[^>]*><p><strong>Draft: shapes are placeholders/,
    );
});

test("a folder that is not empty is left alone", async () => {
  const taken = join(folder, "taken");
  await mkdir(taken);
  await writeFile(join(taken, "minutes.txt"), "Mind the greens.");
  const { code, stderr } = await run(NEW, ["--folder", taken, ...GOOD]);
  expect(code).toBe(1);
  expect(stderr.replaceAll(taken, "TAKEN")).toMatchInlineSnapshot(`
    "The club's folder cannot be TAKEN: it is not empty, and nothing in it is to be lost. Name a new folder: --folder ../our-club.
    "
  `);
  expect(await readdir(taken)).toEqual(["minutes.txt"]);
  const onFile = await run(NEW, ["--folder", join(taken, "minutes.txt"), ...GOOD]);
  expect(onFile.code).toBe(1);
  expect(onFile.stderr).toContain("that is a file or a link");
});

test("the options' own mistakes, and nothing is written", async () => {
  const none = join(folder, "none");
  const told = async (...args: string[]): Promise<string> => (await run(NEW, args)).stderr.split("\n")[0]!;
  expect([
    await told(),
    await told("--folder", none),
    await told("--folder", none, "--name", "Club"),
    await told("--folder", none, ...GOOD.slice(0, -1), "somewhere"),
    await told("--folder", none, "--hole", "9"),
  ]).toMatchInlineSnapshot(`
    [
      "--folder is missing: where is the club's folder to be? Write --folder ../our-club.",
      "--name is missing. The club's name: write --name "Our Golf Club".",
      "--at is missing. Where the first tee is, as a map gives it (56.5012, -9.0123, or the map's share link): write --at "56.5012, -9.0123".",
      "The position "somewhere" cannot be read. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.",
      "Unknown option '--hole'.",
    ]
  `);
  expect(await readdir(folder)).not.toContain("none");
});

test("a folder that is there and empty will do", async () => {
  const empty = join(folder, "empty");
  await mkdir(empty);
  expect((await run(NEW, ["--folder", empty, ...GOOD])).code).toBe(0);
  expect((await readdir(empty)).sort()).toEqual(["club.yaml", "our-links"]);
});
