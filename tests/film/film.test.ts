/**
 * Films of the built demo in each format, of a hole and of the round. Apart from `npm test`, where one short
 * cut stands for them.
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

describe.each([
  ["a hole", ["--hole", "7"], "7/flyover.json"],
  ["the round", ["--round"], "tour.json"],
] as const)("a cut of two frames of %s", (_, what, data) => {
  test.each(["mp4", "webm"])("is a film as %s, with its captions beside it", async (format) => {
    const { code, stdout, stderr } = await film(
      demo,
      ...what,
      "--out",
      join(out, `cut.${format}`),
      ...SMALL,
      "--fps",
      "2",
      "--from-seconds",
      "20",
      "--to-seconds",
      "21",
    );
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    expect(stdout).toMatch(
      /2 frames, 1\.00 s of film\. Opening took [\d.]+ s, the frames [\d.]+ s: [\d.]+ s for each second of film\./,
    );
    expect(probe(join(out, `cut.${format}`))).toEqual({
      streams: [expect.objectContaining({ width: 160, height: 120, pix_fmt: "yuv420p" })],
      seconds: [0, 0.5],
    });
    const captions = readFileSync(join(out, "cut.vtt"), "utf8");
    expect(captions).toMatch(/^WEBVTT\n\n1\n00:00\.\d{3} --> /);
    expect(captions).toContain(cueAt(filmData(demo, data).cues, 20.5)!.text);
    expect(readdirSync(out).filter((name) => name.endsWith(".part"))).toEqual([]);
  });
});
