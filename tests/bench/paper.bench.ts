/**
 * Time and size of paper: the demo's book of eighteen holes, its card and its tee signs, each by the command
 * as a club runs it.
 */
import { spawn } from "node:child_process";
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { BenchLine } from "./line.ts";

const COMMAND = fileURLToPath(new URL("../../src/commands/paper.ts", import.meta.url));

const RUNS = [
  { name: "pocket book, 18 holes", kind: "book", args: [], note: "aim within 20 s on two cores, under 5 MB" },
  {
    name: "pocket book in one ink, as a booklet",
    kind: "book",
    args: ["--ink", "--booklet", "a4"],
    note: "aim under 5 MB",
  },
  { name: "scorecard", kind: "card", args: ["--course-handicap", "14"], note: "" },
  { name: "tee signs, 18 holes", kind: "signs", args: ["--site", "https://links.example.org"], note: "" },
] as const;

async function timed(args: readonly string[]): Promise<number> {
  const started = performance.now();
  await new Promise<void>((resolve, reject) => {
    const child = spawn(process.execPath, [COMMAND, ...args], { stdio: ["ignore", "ignore", "pipe"] });
    let said = "";
    child.stderr.on("data", (chunk: Buffer) => (said += chunk));
    child.on("error", reject);
    child.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error(`${args.join(" ")} ended with ${code}:\n${said.slice(-2000)}`)),
    );
  });
  return (performance.now() - started) / 1000;
}

export async function paperBench(): Promise<BenchLine[]> {
  const folder = await mkdtemp(join(tmpdir(), "marram-bench-"));
  try {
    const lines: BenchLine[] = [];
    for (const { name, kind, args, note } of RUNS) {
      const file = join(folder, `${lines.length}.pdf`);
      const seconds = await timed([kind, "--out", file, ...args]);
      lines.push({
        name,
        value: seconds,
        unit: "s",
        note: `${((await stat(file)).size / 1e6).toFixed(2)} MB${note ? `; ${note}` : ""}`,
      });
    }
    return lines;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
