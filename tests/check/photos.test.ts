/** The wording of what the check says of photos and notices, from real files, with file and line. */
import sharp from "sharp";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadChecked } from "../../src/site/load/checked.ts";
import { hole, linesOf, placesOf, plant, withClub, writeInto } from "../fixtures/marked.ts";
import { camera } from "../support/photos.ts";

let cache = "";
beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), "marram-cache-"));
  process.env["MARRAM_CACHE"] = cache;
});
afterAll(async () => {
  delete process.env["MARRAM_CACHE"];
  await rm(cache, { recursive: true });
});

const OURS = /^(?:photo|notice)-/;

test("photos and notices are remarked on where they are written", async () => {
  await withClub(async (folder) => {
    await writeInto(folder, "course-1/photos/tee.jpg", await camera({ width: 900, height: 1300, orientation: 6 }));
    await writeInto(
      folder,
      "course-1/photos/green.jpg",
      await sharp({ create: { width: 1300, height: 900, channels: 3, background: "#507830" } })
        .jpeg()
        .toBuffer(),
    );
    await writeInto(folder, "course-1/photos/old/left over.jpg", "anything");
    await writeInto(folder, "course-1/photos/.DS_Store", "the system's own");
    const expected = await plant(folder, [
      {
        file: hole(1),
        from: "card:",
        to: 'photos:\n  - { file: ¶green.jpg, alt: "green.jpg" }\n  - { file: tee.jpg, alt: "The tee above the pond" }\ncard:',
      },
      {
        file: hole(2),
        from: "card:",
        to: 'notices:\n  - ¶{ from: 2026-10-01, until: 2026-10-31, text: "Temporary green." }\n  - { until: 2026-11-25, text: "Path closed." }\ncard:',
      },
    ]);
    const { diagnostics } = await loadChecked(folder, "2026-11-25");
    const ours = diagnostics.filter(({ rule }) => OURS.test(rule));
    // The stored 900 by 1300 is 1300 by 900 once turned, so it is wide enough.
    expect(placesOf(ours)).toEqual(
      [...expected, `${hole(1)}:8:13`, `${hole(1)}:8:13`, "course-1/photos/old/left over.jpg:1:1"].sort(),
    );
    expect(linesOf(ours)).toMatchInlineSnapshot(`
      [
        "course-1/holes/01-hole.md:7:13: The alternative text of green.jpg is "green.jpg", which tells nobody what is seen. Write what a golfer would see, such as alt: "From the white tee across the inlet to the green".",
        "course-1/holes/01-hole.md:8:13: tee.jpg is stored on its side with a mark that says how to turn it; the guide has turned it. If it stands wrong on the page, turn it in a picture program and save it again.",
        "course-1/holes/01-hole.md:8:13: tee.jpg says in its file where it was taken. The guide takes that out of what it publishes; the original in the folder still has it.",
        "course-1/holes/02-hole.md:7:5: The notice "Temporary green." ended on 2026-10-31 and is shown no more. Remove it, or write new dates.",
        "course-1/photos/old/left over.jpg:1:1: No page shows this file. Name it on a hole page, photos: and below it - { file: old/left over.jpg, alt: "What it shows" }, or take it out of the folder.",
      ]
    `);
  });
});

test("a photo that cannot be shown is a mistake at its name, and nothing is built", async () => {
  await withClub(async (folder) => {
    const whole = await camera({ width: 1300, height: 900, orientation: 1 });
    await writeInto(folder, "course-1/photos/tee.jpg", whole.subarray(0, whole.length - 400));
    const expected = await plant(folder, [
      { file: hole(3), from: "card:", to: 'photos:\n  - { file: ¶tee.jpg, alt: "The tee above the pond" }\ncard:' },
    ]);
    const { guide, diagnostics } = await loadChecked(folder, "2026-11-25");
    expect(guide).toBeUndefined();
    expect(placesOf(diagnostics.filter(({ severity }) => severity === "error"))).toEqual(expected);
  });
});

test("a small photo is told by its width", async () => {
  await withClub(async (folder) => {
    await writeInto(
      folder,
      "course-1/photos/tee.jpg",
      await sharp({ create: { width: 640, height: 480, channels: 3, background: "#507830" } })
        .jpeg()
        .toBuffer(),
    );
    await plant(folder, [
      { file: hole(3), from: "card:", to: 'photos:\n  - { file: tee.jpg, alt: "The tee above the pond" }\ncard:' },
    ]);
    const { diagnostics } = await loadChecked(folder, "2026-11-25");
    expect(linesOf(diagnostics.filter(({ rule }) => OURS.test(rule)))).toMatchInlineSnapshot(`
      [
        "course-1/holes/03-hole.md:7:13: tee.jpg is 640 pixels wide and will look soft: expected at least 1200. Put the original there, not a copy from a message or a web page.",
      ]
    `);
  });
});
