/**
 * No test waits for a time, holds one against the clock, or has a limit of its own: a busy machine would
 * turn it red.
 */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { PROJECT } from "./run.ts";

/** What stands in code, and why it may not. */
const FORBIDDEN: readonly (readonly [RegExp, string])[] = [
  [/waitForTimeout|\bsleep\(|setTimeout\((?:resolve|done|\w+),\s*[\d_]+\)/, "a fixed wait"],
  [/\btimeout: *\d/, "a limit of its own"],
  [/^\s*\},\s*(?:\d[\d_]{3,}|[A-Z_]+_MS)\);?/m, "a limit of its own"],
  [/(?:testTimeout|hookTimeout):/, "a limit of its own"],
  [/performance\.now\(\)|process\.cpuUsage/, "the clock"],
];

const faultsIn = (code: string): string[] =>
  FORBIDDEN.flatMap(([pattern, why]) => {
    const found = pattern.exec(code);
    return found === null ? [] : [`line ${code.slice(0, found.index).split("\n").length}: ${why}: ${found[0].trim()}`];
  });

describe("the check itself", () => {
  test.each([
    "await page.waitForTimeout(300);",
    "await new Promise((resolve) => setTimeout(resolve, 500));",
    "test('a', async () => {\n  x();\n}, 60_000);",
    "  }, PATIENCE_MS);",
    "await expect.poll(a, { timeout: 40_000 }).toBe(1);",
    "vi.setConfig({ testTimeout: 180_000 });",
    "const before = performance.now();",
  ])("sees %j", (code) => {
    expect(faultsIn(code)).toHaveLength(1);
  });

  test.each([
    "await page.waitForFunction(() => ready);",
    "setTimeout(() => {\n  throw new Error('planted');\n});",
    "expect(drawn(0, 100, 150_000)).toEqual([]);",
  ])("leaves %j alone", (code) => {
    expect(faultsIn(code)).toEqual([]);
  });
});

test("no test has any", () => {
  const files = readdirSync(join(PROJECT, "tests"), { recursive: true, encoding: "utf8" }).filter(
    (file) =>
      file.endsWith(".ts") &&
      !file.includes("node_modules") &&
      !file.startsWith("bench") &&
      !/support\/patience\b/.test(file),
  );
  expect(files.length).toBeGreaterThan(100);
  expect(
    files.flatMap((file) =>
      faultsIn(readFileSync(join(PROJECT, "tests", file), "utf8")).map((fault) => `${file}: ${fault}`),
    ),
  ).toEqual([]);
});
