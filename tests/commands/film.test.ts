/**
 * The film command: one short cut, and what it says when it cannot. Each format and the round: `npm run
 * test:film`.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, inject, test } from "vitest";
import { cueAt } from "../../src/flyover/chapters.ts";
import { film, filmData, probe, SMALL } from "../support/film.ts";

const demo = inject("demo");
const out = mkdtempSync(join(tmpdir(), "marram-film-"));
afterAll(() => rmSync(out, { recursive: true, force: true }));

test("a cut of one frame is a film, with captions in the language asked for beside it", async () => {
  const { code, stderr } = await film(
    demo,
    "--hole",
    "7",
    "--language",
    "de",
    "--out",
    join(out, "deutsch.mp4"),
    ...SMALL,
    "--fps",
    "1",
    "--from-seconds",
    "20",
    "--to-seconds",
    "21",
  );
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  expect(probe(join(out, "deutsch.mp4"))).toEqual({
    streams: [expect.objectContaining({ width: 160, height: 120, pix_fmt: "yuv420p" })],
    seconds: [0],
  });
  const captions = readFileSync(join(out, "deutsch.vtt"), "utf8");
  expect(captions).toMatch(/^WEBVTT\n\n1\n00:00\.\d{3} --> /);
  expect(captions).toContain(cueAt(filmData(demo, "7/flyover.json", "de").cues, 20.5)!.text);
  expect(readdirSync(out)).toEqual(["deutsch.mp4", "deutsch.vtt"]);
});

describe("what it is asked wrongly", () => {
  test.each([
    [[], /Say what to film: --hole 7, or --round\./],
    [["--hole", "7", "--round", "--out", "a.mp4"], /Say what to film/],
    [["--hole", "7"], /--out is missing/],
    [["--hole", "7", "--out", "a.avi"], /ends in \.mp4 or \.webm\. Write --out film\.mp4\./],
    [["--hole", "77", "--out", "a.mp4"], /has no such hole\. Write --hole 1\./],
    [["--hole", "7", "--out", "a.mp4", "--size", "161x120"], /even pixels.*Write --size 1280x720\./],
    [
      ["--hole", "7", "--out", "a.mp4", "--fps", "0"],
      /--fps is "0": expected a number from 1 to 120\. Write --fps 25\./,
    ],
    [
      ["--hole", "7", "--out", "a.mp4", "--from-seconds", "9", "--to-seconds", "9"],
      /Nothing lies between 9 and 9 seconds/,
    ],
    [["--hole", "7", "--out", "a.mp4", "--course", "moor"], /There is no course "moor".*Write --course /],
    [["--hole", "7", "--out", "a.mp4", "--language", "fr"], /no pages in it\. Write --language en or --language de\./],
    [["--hole", "7", "--out", "nowhere/a.mp4"], /mkdir -p nowhere/],
    [
      ["--hole", "7", "--out", "a.mp4", "--built", join(out, "none")],
      /There is no built guide in .*Run: npm run build/,
    ],
  ])("%j is told what to type", async (options, words) => {
    const { code, stderr } = await film(demo, ...options);
    expect(code).toBe(1);
    expect(stderr).toMatch(words);
    expect(stderr).not.toMatch(/\n\s+at /);
  });
});
