/** The film command on the built site: a short cut of a flyover, and what it says when it cannot. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { findOrInstallEncoder } from "../../src/commands/film/encoder.ts";
import type { FilmData } from "../../src/contract/film-data.ts";
import { cueAt } from "../../src/flyover/chapters.ts";
import { run } from "../support/run.ts";

const { folder } = inject("site");
const out = mkdtempSync(join(tmpdir(), "marram-film-"));
afterAll(() => rmSync(out, { recursive: true, force: true }));

const film = (...options: string[]) => run("src/commands/film.ts", ["--built", folder, ...options]);

/** FFmpeg brings its probe; both are found, or installed as the command itself would, or the test fails. */
beforeAll(() => void findOrInstallEncoder(() => undefined), 300_000);

describe("a cut of two frames", () => {
  test.each(["mp4", "webm"])("is a film as %s, with its captions beside it", async (format) => {
    const { code, stdout, stderr } = await film("--hole", "7", "--out", join(out, `cut.${format}`), "--size", "160x120", "--fps", "2", "--from-seconds", "20", "--to-seconds", "21");
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(/2 frames, 1\.00 s of film\. Opening took [\d.]+ s, the frames [\d.]+ s: [\d.]+ s for each second of film\./);
    const probed = spawnSync("ffprobe", ["-v", "error", "-select_streams", "v", "-show_entries", "stream=width,height,pix_fmt:frame=pts_time", "-of", "json", join(out, `cut.${format}`)], { encoding: "utf8" });
    const { streams, frames } = JSON.parse(probed.stdout) as { streams: unknown[]; frames: { pts_time: string }[] };
    expect(streams).toEqual([expect.objectContaining({ width: 160, height: 120, pix_fmt: "yuv420p" })]);
    expect(frames.map(({ pts_time: seconds }) => Number(seconds))).toEqual([0, 0.5]);
    const course = readdirSync(folder).find((name) => existsSync(join(folder, name, "tour.json")))!;
    const { cues } = JSON.parse(readFileSync(join(folder, course, "7/flyover.json"), "utf8")) as FilmData;
    const captions = readFileSync(join(out, "cut.vtt"), "utf8");
    expect(captions).toMatch(/^WEBVTT\n\n1\n00:00\.\d{3} --> /);
    expect(captions).toContain(cueAt(cues, 20.5)!.text);
    expect(readdirSync(out).filter((name) => name.endsWith(".part"))).toEqual([]);
  }, 400_000);
});

test("in another of the guide's languages, its captions are that language's", async () => {
  const { code, stderr } = await film("--hole", "7", "--language", "de", "--out", join(out, "deutsch.mp4"), "--size", "160x120", "--fps", "1", "--from-seconds", "20", "--to-seconds", "21");
  expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
  const course = readdirSync(folder).find((name) => existsSync(join(folder, name, "tour.json")))!;
  const { cues } = JSON.parse(readFileSync(join(folder, "de", course, "7/flyover.json"), "utf8")) as FilmData;
  expect(readFileSync(join(out, "deutsch.vtt"), "utf8")).toContain(cueAt(cues, 20.5)!.text);
}, 400_000);

describe("what it is asked wrongly", () => {
  test.each([
    [[], /Say what to film: --hole 7, or --round\./],
    [["--hole", "7", "--round", "--out", "a.mp4"], /Say what to film/],
    [["--hole", "7"], /--out is missing/],
    [["--hole", "7", "--out", "a.avi"], /ends in \.mp4 or \.webm\. Write --out film\.mp4\./],
    [["--hole", "77", "--out", "a.mp4"], /has no such hole\. Write --hole 1\./],
    [["--hole", "7", "--out", "a.mp4", "--size", "161x120"], /even pixels.*Write --size 1280x720\./],
    [["--hole", "7", "--out", "a.mp4", "--fps", "0"], /--fps is "0": expected a number from 1 to 120\. Write --fps 25\./],
    [["--hole", "7", "--out", "a.mp4", "--from-seconds", "9", "--to-seconds", "9"], /Nothing lies between 9 and 9 seconds/],
    [["--hole", "7", "--out", "a.mp4", "--course", "moor"], /There is no course "moor".*Write --course /],
    [["--hole", "7", "--out", "a.mp4", "--language", "fr"], /no pages in it\. Write --language en or --language de\./],
    [["--hole", "7", "--out", "nowhere/a.mp4"], /mkdir -p nowhere/],
    [["--hole", "7", "--out", "a.mp4", "--built", join(out, "none")], /There is no built guide in .*Run: npm run build/],
  ])("%j is told what to type", async (options, words) => {
    const { code, stderr } = await film(...options);
    expect(code).toBe(1);
    expect(stderr).toMatch(words);
    expect(stderr).not.toMatch(/\n\s+at /);
  });
});
