import { describe, expect, test } from "vitest";
import { cutCues, frameTimes } from "../../src/flyover/cut.ts";

describe("a cut", () => {
  test("has as many frames as its length asks for, the first at its start", () => {
    expect(frameTimes({ fromSeconds: 10, toSeconds: 11 }, 4)).toEqual([10, 10.25, 10.5, 10.75]);
    expect(frameTimes({ fromSeconds: 0, toSeconds: 47.3 }, 25)).toHaveLength(1183);
    expect(frameTimes({ fromSeconds: 3, toSeconds: 3.001 }, 25)).toEqual([3]);
  });

  test("keeps the captions shown in it, on its own clock and within it", () => {
    const cues = [
      [1, 4, "before"],
      [3, 6, "begins before"],
      [7, 8, "within"],
      [9, 14, "ends after"],
      [10, 12, "after"],
    ] as const;
    const all = cues.map(([startSeconds, endSeconds, text]) => ({ startSeconds, endSeconds, text }));
    expect(cutCues(all, { fromSeconds: 4, toSeconds: 10 })).toEqual([
      { startSeconds: 0, endSeconds: 2, text: "begins before" },
      { startSeconds: 3, endSeconds: 4, text: "within" },
      { startSeconds: 5, endSeconds: 6, text: "ends after" },
    ]);
    expect(cutCues(all, { fromSeconds: 0, toSeconds: 20 })).toEqual(all);
  });
});
