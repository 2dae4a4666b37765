import { describe, expect, test } from "vitest";
import { READING, cuesOf } from "../../src/flyover/captions.ts";
import { timestamp, webVtt } from "../../src/flyover/webvtt.ts";

const TIP =
  "Aim at the light. It is 192\u00a0yd to be dry, and the bank beyond it kicks everything towards the green; short of it there is nothing but kelp, so take one more club than you think.\nLeave the putt below the hole.";

describe("captions", () => {
  const cues = cuesOf(TIP, 1);

  test("say the whole tip, in order, word for word", () => {
    expect(cues.map(({ text }) => text.replaceAll("\n", " ")).join(" ")).toBe(TIP.replaceAll("\n", " "));
  });

  test("stay as long as they take to read, and never overlap", () => {
    cues.forEach(({ startSeconds, endSeconds, text }, i) => {
      expect(endSeconds - startSeconds).toBeGreaterThanOrEqual(
        Math.max(READING.leastSeconds, text.length / READING.charactersPerSecond) - 1e-9,
      );
      if (i > 0) expect(startSeconds).toBeGreaterThan(cues[i - 1]!.endSeconds);
    });
  });

  test("have at most two lines of about 42 characters, broken between words", () => {
    for (const { text } of cues) {
      const lines = text.split("\n");
      expect(lines.length).toBeLessThanOrEqual(2);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(READING.lineCharacters + 10);
    }
  });

  test("a number with a point in it does not end a sentence", () => {
    expect(cuesOf("The green falls 2.5 per cent. Stay below.").map(({ text }) => text)).toEqual([
      "The green falls 2.5 per cent.",
      "Stay below.",
    ]);
  });

  test("no line ends between a figure and its unit", () => {
    const told = cuesOf(
      "Play for the left half, past the bunker on the left at 319\u00a0yd, which leaves a full wedge of 100\u00a0yd to the flag over the burn.",
    );
    const lines = told.flatMap(({ text }) => text.split("\n"));
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line).not.toMatch(/\d$|^yd/);
  });

  test("nothing to say has no captions", () => expect(cuesOf("")).toEqual([]));
});

describe("WebVTT", () => {
  // Times as in the examples of the W3C's WebVTT document (read in summaries): minutes and seconds two digits, three
  // decimals, hours optional.
  test("timestamps", () => {
    expect([0, 4, 74.815, 3599.9996, 3600].map(timestamp)).toEqual([
      "00:00.000",
      "00:04.000",
      "01:14.815",
      "01:00:00.000",
      "01:00:00.000",
    ]);
    for (const bad of [-1, NaN, Infinity]) expect(() => timestamp(bad)).toThrow(RangeError);
  });

  test("a file has its signature, numbered cues and a blank line between them", () => {
    expect(
      webVtt(
        [
          { startSeconds: 1, endSeconds: 2.5, text: "Aim left" },
          { startSeconds: 3, endSeconds: 5, text: "A & B <c>\n\n--> no" },
        ],
        "Hole 1\n--> x",
      ),
    ).toBe(
      "WEBVTT Hole 1 x\n\n1\n00:01.000 --> 00:02.500\nAim left\n\n2\n00:03.000 --> 00:05.000\nA &amp; B &lt;c&gt;\n--&gt; no\n",
    );
  });
});
