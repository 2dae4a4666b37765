/** A process broken off at its nth write, for every n. */
import { spawn } from "node:child_process";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { PROJECT, type Ended } from "../support/run.ts";

export interface Broken {
  /** Node's own arguments: a script of this project and what it is told. */
  readonly args: readonly string[];
  /** Only writes below it count. */
  readonly folder: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Typed into the process. */
  readonly input?: string;
}

const SHIM = join(PROJECT, "tests/faults/fault-shim.mjs");

export function runWithFault({ args, folder, env = {}, input = "" }: Broken, fault: string): Promise<Ended> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, ["--import", SHIM, ...args], {
      cwd: PROJECT,
      stdio: ["pipe", "pipe", "pipe"],
      env: {
        ...process.env,
        NO_COLOR: "1",
        FORCE_COLOR: "0",
        ASTRO_TELEMETRY_DISABLED: "1",
        ...env,
        MARRAM_FAULT: fault,
        MARRAM_FAULT_FOLDER: folder,
      },
    });
    let [stdout, stderr] = ["", ""];
    child.stdout.setEncoding("utf8").on("data", (text: string) => (stdout += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (stderr += text));
    child.stdin.on("error", () => undefined);
    child.stdin.end(input);
    child.on("error", fail);
    child.on("close", (code) => done({ code, stdout, stderr }));
  });
}

/** How many writes below the folder the whole run makes. */
export async function countWrites(broken: Broken, file: string): Promise<number> {
  const { code, stderr } = await runWithFault(broken, `count:${file}`);
  if (code !== 0) throw new Error(`Without a fault it ended with ${code}: ${stderr}`);
  return Number(await readFile(file, "utf8"));
}

export interface Case {
  readonly mode: "kill" | "full";
  readonly n: number;
  readonly ended: Ended;
}

export interface Breaking extends Broken {
  /** Puts the folder as it is before the run. */
  prepare(): Promise<void>;
  /** What this fault cost, in words; undefined when nothing. */
  judge(one: Case): Promise<string | undefined>;
}

/**
 * Breaks a run off at each of its writes, by a kill and by a full disk.
 *
 * @param scratch a file to count in, outside the folder.
 * @param every only each so many, for a sample.
 */
export async function breakOff(
  breaking: Breaking,
  scratch: string,
  every = 1,
): Promise<{ tried: number; lost: string[] }> {
  await breaking.prepare();
  const writes = await countWrites(breaking, scratch);
  if (writes === 0) throw new Error("It writes nothing below the folder: nothing would be tried.");
  const lost: string[] = [];
  let tried = 0;
  for (const mode of ["kill", "full"] as const) {
    for (let n = 1; n <= writes; n += every) {
      await breaking.prepare();
      const ended = await runWithFault(breaking, `${mode}:${n}`);
      tried++;
      if (/^ {4}at /m.test(ended.stderr))
        lost.push(`${mode} at write ${n} of ${writes}: a stack trace:\n${ended.stderr}`);
      const cost = await breaking.judge({ mode, n, ended });
      if (cost !== undefined) lost.push(`${mode} at write ${n} of ${writes}: ${cost}`);
    }
  }
  return { tried, lost };
}
