import { describe, expect, test } from "vitest";
import { readingEase, syllables, wordsOfTip } from "../../src/check/tip-words.ts";
import { sharedSquareMetres } from "../../src/geo/overlap.ts";
import type { Area, Point } from "../../src/geo/position.ts";

describe("words and sentences", () => {
  test("a figure is one word and ends no sentence", () => {
    expect(wordsOfTip("It is :carry[burn]{tee=back n=2} to carry. Go!")).toMatchObject({
      sentences: 2,
      words: ["It", "is", "figure", "to", "carry", "Go"],
    });
  });
  test("paragraphs without a stop are sentences", () => {
    expect(wordsOfTip("Short\n\nand sweet").sentences).toBe(2);
  });
});

describe("syllables", () => {
  test.each([
    ["the", 1],
    ["bunker", 2],
    ["green", 1],
    ["machair", 2],
    ["played", 1],
    ["needed", 2],
    ["little", 2],
    ["obstruction", 3],
    ["horses", 2],
  ] as const)("%s has %i", (word, count) => {
    expect(syllables(word)).toBe(count);
  });
});

test("reading ease by hand: 206.835 - 1.015 x 6 / 1 - 84.6 x 6 / 6 = 116.145", () => {
  // R. Flesch 1948; constants from memory.
  expect(readingEase(wordsOfTip("The cat sat on the mat."))).toBeCloseTo(116.145, 6);
});

describe("shared ground", () => {
  const square = (x: number, y: number, size: number): Area => {
    const ring: Point[] = [
      [x, y],
      [x + size, y],
      [x + size, y + size],
      [x, y + size],
      [x, y],
    ];
    return [ring];
  };
  test.each([
    ["overlapping", square(0, 0, 10), square(6, 7, 10), 12],
    ["one inside the other", square(0, 0, 10), square(2, 2, 3), 9],
    ["the other inside the one", square(2, 2, 3), square(0, 0, 10), 9],
    ["apart", square(0, 0, 10), square(11, 0, 5), 0],
    ["a corner's touch", square(0, 0, 10), square(10, 10, 5), 0],
    ["in the other's hole", [...square(0, 0, 10), ...square(2, 2, 6)], square(3, 3, 2), 0],
  ] as const)("%s", (_, a, b, squareMetres) => {
    expect(sharedSquareMetres(a, b)).toBeCloseTo(squareMetres, 9);
  });
  test("crossing bars that hold none of each other's corners", () => {
    const bar = (x0: number, y0: number, x1: number, y1: number): Area => [
      [
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
        [x0, y0],
      ],
    ];
    expect(sharedSquareMetres(bar(-10, -1, 10, 1), bar(-1, -10, 1, 10))).toBeCloseTo(4, 9);
  });
});
