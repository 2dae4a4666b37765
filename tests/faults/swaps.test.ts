/**
 * A build's swap broken off at a third of its writes: the old guide or the new one is whole when the next
 * command starts, and nothing lies about. `npm run faults -- swaps` tries all of them.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { breakSwaps } from "./swaps.ts";

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), "marram-swaps-"))));
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each(["beside", "within"] as const)("the swap made %s the target", async (where) => {
  const { tried, lost } = await breakSwaps(folder, where, 3);
  expect(lost).toEqual([]);
  expect(tried).toBeGreaterThan(4);
});
