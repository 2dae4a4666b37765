/**
 * Lighthouse's marks for the built demo on its phone preset: a slow phone on a slow network,
 * both simulated. Served compressed, as static hosts do. Aim: performance 98 or more,
 * accessibility, best practices and search engines 100.
 */
import { spawnSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import lighthouse from "lighthouse";
import { chromium } from "playwright-core";
import { findBrowser } from "../support/find-browser.ts";
import { host, portOf } from "./host.ts";
import { median, type BenchLine } from "./line.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const BASE = "/guides/links/";
const RUNS = 3;

/** A port that was free a moment ago. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const port = portOf(server);
  await new Promise<void>((done) => server.close(() => done()));
  return port;
}

/** Audits that cost marks, by name, for the note beside a figure. */
function shortcomings(
  categories: Readonly<Record<string, { auditRefs: readonly { id: string; weight: number }[] }>>,
  audits: Readonly<Record<string, { score: number | null; displayValue?: string }>>,
): string[] {
  const weighed = Object.values(categories).flatMap(({ auditRefs }) => auditRefs.filter(({ weight }) => weight > 0));
  return weighed.flatMap(({ id }) => {
    const audit = audits[id];
    return audit?.score !== undefined && audit.score !== null && audit.score < 0.9
      ? [`${id} ${audit.displayValue ?? ""}`.trim()]
      : [];
  });
}

export async function lighthouseBench(): Promise<BenchLine[]> {
  const executablePath = findBrowser();
  if (executablePath === undefined)
    return [{ name: "no browser found", value: 0, unit: "", note: "run npm run test:tools" }];
  const scratch = await mkdtemp(join(tmpdir(), "marram-lighthouse-"));
  const folder = process.env["MARRAM_BENCH_SITE"] ?? join(scratch, "site");
  if (process.env["MARRAM_BENCH_SITE"] === undefined) {
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(ROOT, "src/commands/build.ts"), "--out", folder, "--base", BASE],
      { encoding: "utf8" },
    );
    if (status !== 0) throw new Error(stderr);
  }
  const served = await host({ [BASE]: folder });
  const port = await freePort();
  const browser = await chromium.launch({
    executablePath,
    args: ["--no-sandbox", `--remote-debugging-port=${port}`, "--disable-background-networking", "--no-first-run"],
  });
  const lines: BenchLine[] = [];
  try {
    for (const [name, path] of [
      ["cover", ""],
      ["hole 11", "tarvay/11/"],
      ["scorecard", "tarvay/card/"],
    ] as const) {
      const performance: number[] = [];
      const rest = new Map<string, number>();
      let faults: string[] = [];
      let timings = "";
      for (let run = 0; run < RUNS; run++) {
        const result = await lighthouse(`${served.origin}${BASE}${path}`, { port, output: "json", logLevel: "error" });
        if (result === undefined) throw new Error("Lighthouse gave no result.");
        const { categories, audits } = result.lhr;
        performance.push((categories["performance"]?.score ?? 0) * 100);
        for (const id of ["accessibility", "best-practices", "seo"])
          rest.set(id, Math.min(rest.get(id) ?? 100, (categories[id]?.score ?? 0) * 100));
        faults = [...new Set([...faults, ...shortcomings(categories, audits)])];
        timings = [
          "first-contentful-paint",
          "largest-contentful-paint",
          "total-blocking-time",
          "cumulative-layout-shift",
        ]
          .map(
            (id) =>
              `${id
                .split("-")
                .map((word) => word[0]!.toUpperCase())
                .join("")} ${(audits[id]?.displayValue ?? "?").replace("\u00a0", " ")}`,
          )
          .join(", ");
      }
      lines.push({
        name: `${name}: performance`,
        value: median(performance),
        unit: "",
        note: `of 100, middle of ${RUNS} runs (${performance.map((one) => one.toFixed(0)).join(", ")}); ${timings}`,
      });
      for (const [id, value] of rest)
        lines.push({ name: `${name}: ${id}`, value, unit: "", note: "of 100, worst run" });
      if (faults.length > 0)
        lines.push({ name: `${name}: marks lost`, value: faults.length, unit: "", note: faults.join("; ") });
    }
  } finally {
    await browser.close();
    served.close();
    await rm(scratch, { recursive: true, force: true });
  }
  return lines;
}
