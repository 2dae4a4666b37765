/** `bring --write` and `new` broken off at some of their writes. `npm run faults -- folders` tries all of them. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { breakBring, breakNew } from "./folders.ts";

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), "marram-folders-"))));
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each([
  ["bring --write", breakBring, 6],
  ["new", breakNew, 13],
] as const)("%s leaves the folder as it was, or finished at the next start", async (_, breaking, every) => {
  const { tried, lost } = await breaking(folder, every);
  expect(lost).toEqual([]);
  expect(tried).toBeGreaterThan(4);
});
