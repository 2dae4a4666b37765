/** The demo's own text files, changed by chance: each change is refused with a place, or the guide can be made. */
import { cp, link, mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { readContent } from "../../src/read/content.ts";
import { loadChecked } from "../../src/site/load/checked.ts";
import { PROJECT } from "../support/run.ts";
import { damaged, type Random } from "./random.ts";

const DEMO = join(PROJECT, "content");

/** A copy of the demo without its ground, which takes seconds to read and is no text. */
async function copyDemo(folder: string): Promise<string[]> {
  const texts: string[] = [];
  for (const entry of await readdir(DEMO, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const file = path.slice(DEMO.length + 1);
    if (entry.isDirectory()) {
      await mkdir(join(folder, file), { recursive: true });
      continue;
    }
    if (/\.(?:md|yaml)$/.test(file)) {
      const text = (await readFile(path, "utf8")).replace(/^ground:.*\n(?:[ \t].*\n)*/m, "");
      await writeFile(join(folder, file), text);
      texts.push(file);
    } else {
      await link(path, join(folder, file)).catch(() => cp(path, join(folder, file)));
    }
  }
  return texts.sort();
}

/** As a slip of the hand, or of a program: bytes, lines, figures. */
function mutant(bytes: Buffer, random: Random): Buffer {
  if (random.chance(0.3)) return damaged(bytes, random);
  const lines = bytes.toString("utf8").split("\n");
  const at = random.below(lines.length);
  switch (random.below(6)) {
    case 0:
      lines.splice(at, 1);
      break;
    case 1:
      lines.splice(at, 0, lines[random.below(lines.length)]!);
      break;
    case 2:
      lines[at] = ` ${lines[at]}`;
      break;
    case 3:
      lines[at] = lines[at]!.replace(/-?\d+(?:\.\d+)?/, () =>
        random.pick(["0", "-1", "1e999", ".nan", "999999", "null", "''", "1.5", "0x10", "2026-13-40"]),
      );
      break;
    case 4:
      lines[at] = lines[at]!.replace(/[[\]{}:,"'#&*!|>-]/, () =>
        random.pick(["[", "]", "{", "}", ":", ",", '"', "'", "#", "&a", "*a", "!", "|", ">", "---", "..."]),
      );
      break;
    default:
      lines[at] = random.pick([
        "---",
        "...",
        "<<: *x",
        "features: []",
        "hole: 3",
        "\tx: 1",
        "? y",
        "- z",
        "name:",
        "%YAML 1.1",
      ]);
  }
  return Buffer.from(lines.join("\n"));
}

export interface ContentFaults {
  readonly tried: number;
  readonly lost: readonly string[];
  readonly refused: number;
}

export async function mutateContent(folder: string, count: number, random: Random): Promise<ContentFaults> {
  const texts = await copyDemo(folder);
  const whole = await readContent(folder);
  if (whole.club === undefined) throw new Error(`The demo itself is refused: ${whole.diagnostics[0]?.message}`);
  const holes = whole.club.courses.flatMap((course) => course.holes).length;
  const lost: string[] = [];
  let refused = 0;
  for (let i = 0; i < count; i++) {
    const file = random.pick(texts);
    const bytes = await readFile(join(folder, file));
    const changed = mutant(bytes, random);
    await writeFile(join(folder, file), changed);
    const say = (what: string): void => void lost.push(`${file}, mutant ${i}: ${what}`);
    try {
      const { club, diagnostics } = await readContent(folder);
      const errors = diagnostics.filter(({ severity }) => severity === "error");
      for (const { line, column, message } of errors) {
        if (line < 1 || column < 1 || message.includes("\n") || !/[.?]$/.test(message))
          say(`no sentence with a place: ${line}:${column}: ${message}`);
      }
      if (club === undefined) {
        refused++;
        if (errors.length === 0) say("refused without a word");
      } else if (club.courses.flatMap((course) => course.holes).length !== holes) {
        say("a hole went missing without an error");
      } else {
        await loadChecked(folder, "2026-06-01");
      }
    } catch (error) {
      say(error instanceof Error ? (error.stack ?? error.message) : String(error));
    }
    await writeFile(join(folder, file), bytes);
  }
  return { tried: count, lost, refused };
}
