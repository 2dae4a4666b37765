/**
 * What a phone loads of each hole page, compressed, before anything is asked for. Aims: page,
 * styles and scripts within 60 KB, of it scripts within 15 KB. `tests/browser/hole-page.test.ts`
 * holds both; fonts and pictures are told beside them.
 *
 * `MARRAM_BENCH_SITE` names a guide built for `/guides/links/`.
 */
import { spawnSync } from "node:child_process";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { SWITCHES } from "../support/browser-server.ts";
import { findBrowser } from "../support/find-browser.ts";
import { host, sumOf, type Sent } from "./host.ts";
import type { BenchLine } from "./line.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const BASE = "/guides/links/";
const COURSE = "tarvay/";

const KINDS: Readonly<Record<string, readonly string[]>> = {
  page: [".html", ""],
  styles: [".css"],
  scripts: [".js"],
  fonts: [".woff2"],
  pictures: [".svg", ".webp", ".avif", ".jpg", ".png"],
};

interface Weighed {
  readonly path: string;
  readonly bytes: Readonly<Record<string, number>>;
}

export async function weightBench(): Promise<BenchLine[]> {
  const executablePath = findBrowser();
  if (executablePath === undefined)
    return [{ name: "no browser found", value: 0, unit: "", note: "run npm run test:tools" }];
  const scratch = await mkdtemp(join(tmpdir(), "marram-weight-"));
  const site = process.env["MARRAM_BENCH_SITE"] ?? join(scratch, "site");
  if (process.env["MARRAM_BENCH_SITE"] === undefined) {
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(ROOT, "src/commands/build.ts"), "--out", site, "--base", BASE],
      { cwd: ROOT, encoding: "utf8", env: { ...process.env, NODE_ENV: "production" } },
    );
    if (status !== 0) throw new Error(stderr);
  }
  const served = await host({ [BASE]: site });
  const browser = await chromium.launch({ executablePath, args: [...SWITCHES] });
  try {
    const weighed: Weighed[] = [];
    for (const hole of (await readdir(join(site, COURSE)))
      .filter((name) => /^\d+$/.test(name))
      .sort((a, b) => Number(a) - Number(b))) {
      // A page of its own context, so that nothing is in a cache.
      const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
      served.forget();
      await page.goto(`${served.origin}${BASE}${COURSE}${hole}/`, { waitUntil: "networkidle" });
      weighed.push({ path: `hole ${hole}`, bytes: byKind(served.sent) });
      await page.close();
    }
    return [
      heaviest("page, styles and scripts", weighed, ["page", "styles", "scripts"], "aim at most 60; "),
      heaviest("scripts before the map is wanted", weighed, ["scripts"], "aim at most 15; "),
      heaviest("fonts", weighed, ["fonts"], ""),
      heaviest("pictures, as far as one sees without scrolling", weighed, ["pictures"], ""),
    ];
  } finally {
    await browser.close();
    served.close();
    await rm(scratch, { recursive: true, force: true });
  }
}

const byKind = (sent: readonly Sent[]): Record<string, number> =>
  Object.fromEntries(
    Object.entries(KINDS).map(([kind, types]) => [
      kind,
      sumOf(sent.filter(({ path }) => types.includes(extname(path)))),
    ]),
  );

function heaviest(name: string, weighed: readonly Weighed[], kinds: readonly string[], aim: string): BenchLine {
  const of = ({ bytes }: Weighed): number => kinds.reduce((sum, kind) => sum + bytes[kind]!, 0);
  const most = weighed.reduce((best, one) => (of(one) > of(best) ? one : best));
  const parts =
    kinds.length === 1
      ? ""
      : ` (${kinds.map((kind) => `${kind} ${(most.bytes[kind]! / 1024).toFixed(1)}`).join(", ")})`;
  return {
    name,
    value: of(most) / 1024,
    unit: "KB",
    note: `${aim}heaviest of ${weighed.length}: ${most.path}${parts}`,
  };
}
