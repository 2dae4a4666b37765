/**
 * Time and peak memory of a whole build for 18, 180 and 1,000 holes, beside a bare Astro
 * site of as many pages that only renders the same Markdown. Clubs are generated in a
 * temporary folder. Ratios of one run are what counts; seconds depend on the machine.
 */
import { spawn } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile, readdir, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { writeClub } from "../fixtures/club.ts";
import type { BenchLine } from "./line.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const PEAK = fileURLToPath(new URL("./peak-memory.mjs", import.meta.url));

interface Run {
  readonly seconds: number;
  readonly peakMebibytes: number;
}

/** Runs a Node program to its end and takes its time and peak resident memory. */
async function timed(folder: string, args: readonly string[], cwd = folder): Promise<Run> {
  const peakFile = join(folder, `peak-${Math.random().toString(36).slice(2)}`);
  const started = performance.now();
  await new Promise<void>((resolve, reject) => {
    const child = spawn(process.execPath, ["--import", PEAK, ...args], {
      cwd,
      stdio: ["ignore", "pipe", "pipe"],
      env: {
        ...process.env,
        PEAK_MEMORY_FILE: peakFile,
        MARRAM_CACHE: join(folder, "cache"),
        ASTRO_TELEMETRY_DISABLED: "1",
      },
    });
    let said = "";
    child.stdout.on("data", (chunk: Buffer) => (said += chunk));
    child.stderr.on("data", (chunk: Buffer) => (said += chunk));
    child.on("error", reject);
    child.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`${args.join(" ")} ended with ${code}:\n${said.slice(-2000)}`)),
    );
  });
  const seconds = (performance.now() - started) / 1000;
  return { seconds, peakMebibytes: Number(await readFile(peakFile, "utf8")) / 1024 };
}

/** A site that lists the same Markdown as one collection and renders each body, nothing else. */
async function bareSite(folder: string, content: string): Promise<void> {
  await mkdir(join(folder, "src/pages"), { recursive: true });
  await mkdir(join(folder, "holes"), { recursive: true });
  await symlink(join(ROOT, "node_modules"), join(folder, "node_modules"));
  for (const course of await readdir(content, { withFileTypes: true })) {
    if (!course.isDirectory()) continue;
    await cp(join(content, course.name, "holes"), join(folder, "holes", course.name), { recursive: true });
  }
  await writeFile(join(folder, "package.json"), '{ "type": "module" }');
  await writeFile(join(folder, "astro.config.mjs"), "export default { trailingSlash: 'always' };\n");
  await writeFile(
    join(folder, "src/content.config.ts"),
    `import { defineCollection } from "astro:content";
import { glob } from "astro/loaders";
export const collections = { holes: defineCollection({ loader: glob({ pattern: "**/*.md", base: "./holes" }) }) };
`,
  );
  await writeFile(
    join(folder, "src/pages/[...slug].astro"),
    `---
import { getCollection, render } from "astro:content";
export async function getStaticPaths() {
  return (await getCollection("holes")).map((hole) => ({ params: { slug: hole.id }, props: { hole } }));
}
const { Content } = await render(Astro.props.hole);
---
<html lang="en"><head><title>{Astro.props.hole.data.name}</title></head><body><Content /></body></html>
`,
  );
}

async function pair(courses: number, holes: number): Promise<{ ours: Run; bare: Run }> {
  const folder = await mkdtemp(join(tmpdir(), "marram-bench-"));
  try {
    const content = join(folder, "content");
    await writeClub(content, { courses, holes, vertices: 120 });
    const bareFolder = join(folder, "bare");
    await bareSite(bareFolder, content);
    const bare = await timed(bareFolder, [join(ROOT, "node_modules/astro/bin/astro.mjs"), "build", "--silent"]);
    const ours = await timed(
      folder,
      [join(ROOT, "src/commands/build.ts"), "--content", content, "--out", join(folder, "dist")],
      ROOT,
    );
    return { ours, bare };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

export async function buildBench(): Promise<BenchLine[]> {
  const lines: BenchLine[] = [];
  // 1,000 holes are 56 courses, the last ones included whole: 1,008 pages.
  for (const courses of [1, 10, 56]) {
    const { ours, bare } = await pair(courses, 18);
    const holes = courses * 18;
    lines.push(
      {
        name: `build ${holes} holes`,
        value: ours.seconds,
        unit: "s",
        note: `bare Astro site ${bare.seconds.toFixed(1)} s, ratio ${(ours.seconds / bare.seconds).toFixed(2)}; ${((1000 * ours.seconds) / holes).toFixed(0)} ms a hole; aim at most 2 times the bare site`,
      },
      {
        name: `peak memory, ${holes} holes`,
        value: ours.peakMebibytes,
        unit: "MiB",
        note: `bare Astro site ${bare.peakMebibytes.toFixed(0)} MiB`,
      },
    );
  }
  return lines;
}
