/**
 * What a club waits after changing one tip, beside building everything for the first time,
 * and how long the check takes: the demo of 18 holes with its heights and photos, in a
 * folder of its own with a cache of its own. Processor time is what tells on a busy machine.
 */
import { spawn } from "node:child_process";
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { loadChecked } from "../../src/site/load/checked.ts";
import { CACHE_VARIABLE } from "../../src/site/cache/cache.ts";
import { median, type BenchLine } from "./line.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const USAGE = fileURLToPath(new URL("./processor-time.mjs", import.meta.url));

interface Run {
  readonly seconds: number;
  readonly processorSeconds: number;
}

async function build(folder: string): Promise<Run> {
  const usage = join(folder, "usage");
  const started = performance.now();
  await new Promise<void>((resolve, reject) => {
    const args = [
      "--import",
      USAGE,
      join(ROOT, "src/commands/build.ts"),
      "--content",
      join(folder, "content"),
      "--out",
      join(folder, "site"),
    ];
    const child = spawn(process.execPath, args, {
      cwd: ROOT,
      stdio: ["ignore", "pipe", "pipe"],
      env: {
        ...process.env,
        [CACHE_VARIABLE]: join(folder, "cache"),
        PROCESSOR_TIME_FILE: usage,
        ASTRO_TELEMETRY_DISABLED: "1",
      },
    });
    let said = "";
    child.stdout.on("data", (chunk: Buffer) => (said += chunk));
    child.stderr.on("data", (chunk: Buffer) => (said += chunk));
    child.on("error", reject);
    child.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`The build ended with ${code}:\n${said.slice(-2000)}`)),
    );
  });
  return { seconds: (performance.now() - started) / 1000, processorSeconds: Number(await readFile(usage, "utf8")) };
}

/** One more word at the end of the first hole's tip. */
async function editTip(content: string): Promise<void> {
  const courses = (await readdir(content, { withFileTypes: true })).filter((entry) => entry.isDirectory());
  const holes = join(content, courses[0]!.name, "holes");
  const page = join(holes, (await readdir(holes)).sort()[0]!);
  await writeFile(page, `${(await readFile(page, "utf8")).trimEnd()} Enjoy it.\n`);
}

export async function rebuildBench(): Promise<BenchLine[]> {
  const folder = await mkdtemp(join(tmpdir(), "marram-rebuild-"));
  try {
    const content = join(folder, "content");
    await cp(join(ROOT, "content"), content, { recursive: true });
    const cold = await build(folder);
    await editTip(content);
    const again = await build(folder);
    process.env[CACHE_VARIABLE] = join(folder, "cache");
    const checks: Run[] = [];
    for (let i = 0; i < 5; i++) {
      const [started, used] = [performance.now(), process.cpuUsage()];
      await loadChecked(content);
      const { user, system } = process.cpuUsage(used);
      checks.push({ seconds: (performance.now() - started) / 1000, processorSeconds: (user + system) / 1e6 });
    }
    const told = ({ seconds, processorSeconds }: Run): string =>
      `${seconds.toFixed(1)} s, ${processorSeconds.toFixed(1)} s of processor`;
    return [
      { name: "first build, 18 holes with heights and photos", value: cold.seconds, unit: "s", note: told(cold) },
      {
        name: "rebuild after one tip",
        value: again.seconds,
        unit: "s",
        note: `${told(again)}; ${(again.seconds / cold.seconds).toFixed(2)} of the first build, ${(again.processorSeconds / cold.processorSeconds).toFixed(2)} by processor; aim at most 0.20`,
      },
      {
        name: "check, 18 holes, first",
        value: checks[0]!.seconds,
        unit: "s",
        note: `${told(checks[0]!)}, after Node's start; aim under 1 s`,
      },
      {
        name: "check, 18 holes, again",
        value: median(checks.map(({ seconds }) => seconds)),
        unit: "s",
        note: "median of five in one process",
      },
    ];
  } finally {
    delete process.env[CACHE_VARIABLE];
    await rm(folder, { recursive: true, force: true });
  }
}
