/** Time to read content, and what the shortcut for coordinates saves over the YAML parser alone. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readContent } from "../../src/read/content.ts";
import { SourceText } from "../../src/read/source-text.ts";
import { parseYaml } from "../../src/read/yaml-source.ts";
import { holePage, writeClub } from "../fixtures/club.ts";
import { median, type BenchLine } from "./line.ts";

/** Vertices of an outline that make a page of some 25 KB. */
const VERTICES = 245;

async function secondsToRead(courses: number, holes: number, times: number): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), "marram-read-"));
  try {
    await writeClub(folder, { courses, holes, vertices: VERTICES });
    const runs: number[] = [];
    for (let i = 0; i < times; i++) {
      const started = performance.now();
      const { club } = await readContent(folder);
      runs.push((performance.now() - started) / 1000);
      if (!club) throw new Error("The bench's club must be sound.");
    }
    return median(runs);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function millisecondsToParse(whole: boolean): number {
  const text = holePage(1, VERTICES).split("---\n")[1]!;
  const runs = Array.from({ length: 15 }, () => {
    const started = performance.now();
    parseYaml(new SourceText("bench.md", text), 0, text.length, whole);
    return performance.now() - started;
  });
  return median(runs);
}

export async function readBench(): Promise<readonly BenchLine[]> {
  const kilobytes = Buffer.byteLength(holePage(1, VERTICES)) / 1000;
  const page = `a page of ${kilobytes.toFixed(0)} KB`;
  const [whole, quick] = [millisecondsToParse(true), millisecondsToParse(false)];
  const [few, many] = [await secondsToRead(1, 18, 7), await secondsToRead(56, 18, 3)];
  return [
    { name: "YAML parser alone", value: whole, unit: "ms", note: page },
    {
      name: "with coordinates lifted out",
      value: quick,
      unit: "ms",
      note: `${page}, ${(whole / quick).toFixed(1)} times as fast`,
    },
    { name: "read and check 18 holes", value: few * 1000, unit: "ms", note: "median of 7" },
    {
      name: "read and check 1,008 holes",
      value: many * 1000,
      unit: "ms",
      note: `${(many / few / 56).toFixed(2)} of 56 times the 18`,
    },
  ];
}
