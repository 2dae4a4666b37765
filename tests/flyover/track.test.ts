import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { begunBy, cueAt, cuesByChapter } from "../../src/flyover/chapters.ts";
import { holeFlight } from "../../src/flyover/path.ts";
import type { Track } from "../../src/contract/film-data.ts";
import { flightOf, trackOf } from "../../src/flyover/track.ts";
import { lineThrough } from "../../src/geo/line.ts";

const bent = lineThrough([
  [0, 0],
  [40, 230],
  [190, 380],
  [230, 480],
]);
const hills = ([x, y]: readonly [number, number]): number => 9 * Math.sin(x / 31) * Math.cos(y / 27);
const flight = holeFlight(bent, hills, 55);

/** What a track comes to after the wire. */
const sent = (track: Track): Track => JSON.parse(JSON.stringify(track)) as Track;

describe("a flight as a track", () => {
  test("is as long, and passes through every sample within its rounding", () => {
    const track = trackOf(flight, 0.5);
    const read = flightOf(sent(track));
    expect(read.seconds).toBeCloseTo(flight.seconds, 9);
    for (let i = 0; i < track.east.length; i++) {
      const [a, b] = [read.poseAt(i * track.stepSeconds), flight.poseAt(i * track.stepSeconds)];
      for (const [one, other] of [
        [a.point[0], b.point[0]],
        [a.point[1], b.point[1]],
        [a.heightMetres, b.heightMetres],
        [a.bearingDegrees, b.bearingDegrees],
        [a.downDegrees, b.downDegrees],
      ] as const) {
        expect(Math.abs(one - other)).toBeLessThanOrEqual(0.005 + 1e-9);
      }
    }
  });

  test.each([
    [0.5, 0.05, 0.1],
    [1, 0.3, 0.5],
  ])("sampled every %d s it stays within %d m and %d degrees between samples", (step, metres, degrees) => {
    const read = flightOf(sent(trackOf(flight, step)));
    for (let t = 0; t <= flight.seconds; t += 0.07) {
      const [a, b] = [read.poseAt(t), flight.poseAt(t)];
      expect(
        Math.hypot(a.point[0] - b.point[0], a.point[1] - b.point[1], a.heightMetres - b.heightMetres),
      ).toBeLessThan(metres);
      expect(Math.abs(a.bearingDegrees - b.bearingDegrees)).toBeLessThan(degrees);
      expect(Math.abs(a.downDegrees - b.downDegrees)).toBeLessThan(degrees);
    }
  });

  test("is small", () => {
    expect(gzipSync(JSON.stringify(trackOf(flight, 0.5))).length).toBeLessThan(3 * 1024);
  });

  test("stands still before its start and after its end", () => {
    const read = flightOf(trackOf(flight, 0.5));
    expect(read.poseAt(-5)).toEqual(read.poseAt(0));
    expect(read.poseAt(1e6)).toEqual(read.poseAt(read.seconds));
  });

  test("a step that is no step is refused", () => {
    for (const step of [0, -1, NaN]) expect(() => trackOf(flight, step)).toThrow(RangeError);
  });
});

describe("what is on at a time", () => {
  const chapters = [
    { seconds: 0, title: "a" },
    { seconds: 10, title: "b" },
    { seconds: 20, title: "c" },
  ];
  const cues = [
    { startSeconds: 1, endSeconds: 4, text: "One." },
    { startSeconds: 9.5, endSeconds: 13, text: "Two," },
    { startSeconds: 20, endSeconds: 22, text: "and three." },
    { startSeconds: 23, endSeconds: 24, text: "Four." },
  ];

  test("the chapter that has begun", () => {
    expect([0, 9.99, 10, 25].map((seconds) => begunBy(chapters, seconds)?.title)).toEqual(["a", "a", "b", "c"]);
    expect(begunBy(chapters, -1)).toBeUndefined();
  });

  test("the caption between its times, its end not among them", () => {
    expect([0, 1, 3.99, 4, 12, 21].map((seconds) => cueAt(cues, seconds)?.text)).toEqual([
      undefined,
      "One.",
      "One.",
      undefined,
      "Two,",
      "and three.",
    ]);
  });

  test("every caption belongs to the one chapter its sentence begins in", () => {
    expect(cuesByChapter(chapters, cues).map((own) => own.map(({ text }) => text))).toEqual([
      ["One.", "Two,", "and three."],
      [],
      ["Four."],
    ]);
    expect(cuesByChapter([{ seconds: 5 }], cues).flat()).toHaveLength(4);
  });
});
