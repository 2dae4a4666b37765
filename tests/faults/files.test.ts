/** Damaged height files and pictures, a sample. `npm run faults -- heights` and `-- pictures` try thousands. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { damageHeightFiles } from "./height-files.ts";
import { damagePictures } from "./pictures.ts";
import { seeded } from "./random.ts";

let folder: string;
beforeAll(async () => void (folder = await mkdtemp(join(tmpdir(), "marram-faults-"))));
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each([
  ["height files", damageHeightFiles],
  ["pictures", damagePictures],
] as const)("damaged %s are refused in a sentence, or read without anything made up", async (_, damage) => {
  const { tried, lost, refused } = await damage(folder, 300, seeded(18));
  expect(lost).toEqual([]);
  // Damage that is neither always nor never seen.
  expect(refused).toBeGreaterThan(tried / 4);
  expect(refused).toBeLessThan(tried);
});
