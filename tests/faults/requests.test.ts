/** `serve` under requests that no browser sends. `npm run faults -- requests` throws 5,000. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { seeded } from "./random.ts";
import { attackServe } from "./serve-under-fire.ts";

test("a sample of malformed requests: each is answered or cut off, nothing is given away, and the server stays up", async () => {
  const folder = await mkdtemp(join(tmpdir(), "marram-requests-"));
  try {
    const { tried, lost, statuses } = await attackServe(folder, 400, seeded(18));
    expect(lost).toEqual([]);
    expect(tried).toBe(400);
    // The sample reaches every kind of refusal.
    expect([...statuses.keys()]).toEqual(expect.arrayContaining([200, 206, 400, 404, 405, 416, 421]));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
