/** The demo's files changed by chance, a sample. `npm run faults -- content` tries 10,000. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { mutateContent } from "./content.ts";
import { seeded } from "./random.ts";

test("each change is refused with a place, or the guide can be made with all its holes", async () => {
  const folder = await mkdtemp(join(tmpdir(), "marram-content-"));
  try {
    const { tried, lost, refused } = await mutateContent(folder, 60, seeded(18));
    expect(lost).toEqual([]);
    expect(refused).toBeGreaterThan(tried / 6);
    expect(refused).toBeLessThan(tried);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
