/** Straight pieces, by their meaning, anywhere in the plane. */
import { describe, expect, test } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { between, crossing, densify, nearestOn } from "../../src/geo/segment.ts";
import { seeded } from "../faults/random.ts";

const random = seeded(21);
const anywhere = (): Point => [400 * random.next() - 200, 400 * random.next() - 200];
const distance = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);
const TRIALS = Array.from({ length: 100 }, (_, i) => i);

/** Twice the area of a triangle: positive where c lies left of the way from a to b. */
const side = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

test.each(TRIALS)("a share of the way: trial %i", () => {
  const [a, b, share] = [anywhere(), anywhere(), random.next()];
  const point = between(a, b, share);
  expect(distance(a, point)).toBeCloseTo(share * distance(a, b), 9);
  expect(distance(point, b)).toBeCloseTo((1 - share) * distance(a, b), 9);
});

describe("the nearest point of a piece", () => {
  test.each(TRIALS)("is on it, and none of it is nearer: trial %i", () => {
    const [a, b, point] = [anywhere(), anywhere(), anywhere()];
    const nearest = nearestOn(a, b, point);
    expect(distance(a, nearest) + distance(nearest, b)).toBeCloseTo(distance(a, b), 9);
    for (let k = 0; k <= 50; k++)
      expect(distance(point, nearest)).toBeLessThanOrEqual(distance(point, between(a, b, k / 50)) + 1e-9);
  });

  test("of a piece without length is its only point", () => {
    expect(nearestOn([7, -3], [7, -3], [1, 1])).toEqual([7, -3]);
  });
});

describe("a path with points put in", () => {
  test.each(TRIALS.slice(0, 40))(
    "keeps its corners and its course, and no piece is longer than was asked: trial %i",
    () => {
      const path = Array.from({ length: 5 }, anywhere);
      const step = 1 + 60 * random.next();
      const dense = densify(path, step);
      let at = 0;
      for (const [i, corner] of path.entries()) {
        const found = dense.findIndex((point, k) => k >= at && distance(point, corner) < 1e-9);
        expect(found).toBeGreaterThanOrEqual(0);
        if (i > 0) {
          const piece = dense.slice(at, found + 1);
          // As few as will do: one less would be too long.
          expect(piece.length - 1).toBe(Math.ceil(distance(path[i - 1]!, corner) / step));
          for (const point of piece)
            expect(distance(path[i - 1]!, point) + distance(point, corner)).toBeCloseTo(
              distance(path[i - 1]!, corner),
              9,
            );
          for (let k = 1; k < piece.length; k++)
            expect(distance(piece[k - 1]!, piece[k]!)).toBeLessThanOrEqual(step + 1e-9);
        }
        at = found;
      }
      expect(at).toBe(dense.length - 1);
    },
  );
});

describe("where two pieces cross", () => {
  test.each(TRIALS)("is on both, and told whenever the ends of each lie on both sides of the other: trial %i", () => {
    const [a, b, c, d] = [anywhere(), anywhere(), anywhere(), anywhere()];
    const found = crossing(a, b, c, d);
    expect(found !== undefined).toBe(side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0);
    if (found === undefined) return;
    expect(distance(a, found) + distance(found, b)).toBeCloseTo(distance(a, b), 9);
    expect(distance(c, found) + distance(found, d)).toBeCloseTo(distance(c, d), 9);
    // The order of pieces and of their ends is nothing.
    for (const other of [crossing(c, d, a, b), crossing(b, a, c, d), crossing(a, b, d, c)])
      expect(distance(other!, found)).toBeLessThan(1e-9);
  });

  test("an end that touches counts, at each of the four ends", () => {
    const [west, east, middle]: [Point, Point, Point] = [
      [-10, 3],
      [10, 3],
      [2, 3],
    ];
    for (const [a, b, c, d] of [
      [west, east, middle, [5, 20]],
      [west, east, [5, 20], middle],
      [middle, [5, 20], west, east],
      [[5, 20], middle, west, east],
    ] as const) {
      expect(crossing(a, b, c, d)).toEqual(middle);
    }
  });

  test("parallel pieces do not cross, one on the other neither", () => {
    expect(crossing([0, 0], [10, 5], [0, 1], [10, 6])).toBeUndefined();
    expect(crossing([0, 0], [10, 5], [2, 1], [6, 3])).toBeUndefined();
  });
});
