/** Self-crossing of outlines, held to Turf's `kinks`, an independent search (https://turfjs.org/docs/api/kinks). */
import { kinks } from "@turf/turf";
import type { Position } from "geojson";
import { describe, expect, test } from "vitest";
import { crossings } from "../../src/course/schema/ring.ts";

const close = (ring: readonly Position[]): Position[] => [...ring, ring[0]!];

/** Repeatable numbers from 0 to 1: a linear congruential generator (constants of Numerical Recipes, from memory). */
function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

const turfFinds = (ring: readonly Position[]): boolean =>
  kinks({ type: "Polygon", coordinates: [ring as Position[]] }).features.length > 0;

const about = (x: number, y: number): Position => [
  Number((-9 + x / 1000).toFixed(7)),
  Number((56.5 + y / 1000).toFixed(7)),
];

describe("agrees with Turf", () => {
  test("on random rings, crossing or not", () => {
    const random = numbers(20260514);
    const seen = { crossing: 0, simple: 0 };
    for (let i = 0; i < 1500; i++) {
      const n = 4 + Math.floor(random() * 5);
      const ring = close(Array.from({ length: n }, () => about(random(), random())));
      const found = crossings([ring]).length > 0;
      seen[found ? "crossing" : "simple"]++;
      expect({ ring, found }).toEqual({ ring, found: turfFinds(ring) });
    }
    // Both answers must have been put to the test.
    expect(seen.crossing).toBeGreaterThan(300);
    expect(seen.simple).toBeGreaterThan(100);
  });

  test("on stars and ovals of many vertices", () => {
    const random = numbers(7);
    for (const n of [12, 60, 400]) {
      const oval = close(
        Array.from({ length: n }, (_, i) => {
          const radius = 0.3 + random() / 10;
          return about(0.5 + radius * Math.cos((2 * Math.PI * i) / n), 0.5 + radius * Math.sin((2 * Math.PI * i) / n));
        }),
      );
      expect(crossings([oval])).toEqual([]);
      expect(turfFinds(oval)).toBe(false);
      const swapped = [...oval];
      [swapped[4], swapped[8]] = [swapped[8]!, swapped[4]!];
      expect(crossings([swapped]).length).toBeGreaterThan(0);
      expect(turfFinds(swapped)).toBe(true);
    }
  });
});

describe("names the edges", () => {
  const edges = (ring: readonly Position[]): string[] =>
    crossings([close(ring)]).map(({ first, second, how }) => `${first.edge + 1} ${how} ${second.edge + 1}`);

  test("of a bow tie", () => {
    expect(
      edges([
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ]),
    ).toEqual(["1 cross 3"]);
  });

  test("of two separate crossings", () => {
    expect(
      edges([
        [0, 0],
        [3, 0],
        [3, 1],
        [1, -1],
        [1, 3],
        [2, 3],
        [2, -1],
        [0, 4],
      ]).length,
    ).toBeGreaterThan(1);
  });

  test("where a vertex lies on an edge", () => {
    expect(
      edges([
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 0],
        [0, 2],
      ]),
    ).toContain("1 touch 3");
  });

  test("where an edge runs back along another", () => {
    expect(
      edges([
        [0, 0],
        [2, 0],
        [4, 0],
        [2, 0],
        [2, 2],
      ]),
    ).toContain("2 touch 3");
  });
});

describe("leaves alone", () => {
  test.each<[string, readonly Position[]]>([
    [
      "a triangle",
      [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
    ],
    [
      "a concave outline",
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 1],
        [0, 4],
      ],
    ],
    [
      "vertices on a straight edge",
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [2, 2],
        [0, 2],
      ],
    ],
    [
      "a vertex written twice",
      [
        [0, 0],
        [1, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
    ],
    [
      "an outline across the 180th meridian",
      [
        [179.99, 0],
        [-179.99, 0],
        [-179.99, 1],
        [179.99, 1],
      ],
    ],
    [
      "a comb with a gap of a decimetre",
      [
        [0, 0],
        [0.01, 0],
        [0.01, 0.01],
        [0.000001, 0.01],
        [0.000001, 0.005],
        [0, 0.005],
      ],
    ],
  ])("%s", (_, ring) => {
    expect(crossings([close(ring)])).toEqual([]);
    expect(crossings([close(ring).reverse()])).toEqual([]);
  });

  test("a hole that touches its outline in a point", () => {
    const outline = close([
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ]);
    expect(
      crossings([
        outline,
        close([
          [0, 2],
          [2, 1],
          [2, 3],
        ]),
      ]),
    ).toEqual([]);
    expect(
      crossings([
        outline,
        close([
          [-1, 2],
          [2, 1],
          [2, 3],
        ]),
      ]).length,
    ).toBeGreaterThan(0);
  });
});

test("ten thousand vertices in order are sound", () => {
  const n = 10_000;
  const oval = close(
    Array.from({ length: n }, (_, i) => about(Math.cos((2 * Math.PI * i) / n), Math.sin((2 * Math.PI * i) / n))),
  );
  expect(crossings([oval])).toEqual([]);
});
