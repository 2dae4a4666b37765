/** Swipes and thirds of a green, without a page. */
import { expect, test } from "vitest";
import { thirdMetres } from "../../src/measure/third.ts";
import { swipeOf, type Touch } from "../../src/islands/swipe.ts";

const at = (x: number, y: number, milliseconds: number): Touch => ({ x, y, milliseconds });
const WIDTH = 390;

test.each([
  ["left", at(300, 400, 0), at(180, 420, 250), "next"],
  ["right", at(100, 400, 0), at(220, 380, 250), "prev"],
  ["down the page", at(200, 300, 0), at(240, 600, 300), undefined],
  ["aslant", at(200, 300, 0), at(300, 380, 300), undefined],
  ["too short", at(200, 300, 0), at(145, 300, 200), undefined],
  ["a slow drag", at(300, 400, 0), at(100, 400, 900), undefined],
  ["from the left edge, which goes back", at(10, 400, 0), at(200, 400, 200), undefined],
  ["from the right edge", at(385, 400, 0), at(200, 400, 200), undefined],
])("a touch %s", (_, from, to, way) => {
  expect(swipeOf(from, to, WIDTH)).toBe(way);
});

test("a third's middle lies a sixth of the green from its edge; the middle third keeps the green's own middle", () => {
  const green = { front: 150, middle: 163, back: 180 };
  expect(thirdMetres("front", green)).toBeCloseTo(155, 9);
  expect(thirdMetres("back", green)).toBeCloseTo(175, 9);
  expect(thirdMetres("middle", green)).toBe(163);
});
