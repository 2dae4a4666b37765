import { describe, expect, test } from "vitest";
import { editDistance, nearestNames } from "../../src/course/schema/nearest.ts";

describe("edit distance", () => {
  test.each([
    // kitten to sitting is the textbook example of V. Levenshtein's distance (from memory).
    ["kitten", "sitting", 3],
    ["", "abc", 3],
    ["abc", "", 3],
    ["same", "same", 0],
    // A swap of neighbours counts once.
    ["bunekr", "bunker", 1],
    ["ca", "abc", 3],
  ])("%s to %s is %i", (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
    expect(editDistance(b, a)).toBe(distance);
  });
});

describe("nearest names", () => {
  const names = ["hole", "name", "par", "strokeIndex", "card", "photos", "features"];
  test.each([
    ["pra", ["par"]],
    ["Par", ["par"]],
    ["strokeindex", ["strokeIndex"]],
    ["stroke", ["strokeIndex"]],
    ["feature", ["features"]],
    ["colour", []],
    ["", []],
    ["x".repeat(10_000), []],
  ])("of %s", (typed, expected) => {
    expect(nearestNames(typed, names)).toEqual(expected);
  });

  test("come nearest first, at most three", () => {
    expect(nearestNames("bunkr-1", ["bunker-3", "bunker-1", "bunker-4", "bunker-2", "green"])).toEqual([
      "bunker-1",
      "bunker-2",
      "bunker-3",
    ]);
  });
});
