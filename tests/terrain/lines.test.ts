import { describe, expect, it } from "vitest";
import type { Area, Point } from "../../src/geo/position.ts";
import { clipLine } from "../../src/terrain/clip-line.ts";
import { distanceToPiece } from "../../src/geo/segment.ts";
import { simplifyLine } from "../../src/terrain/simplify-line.ts";
import { rectangle } from "./surfaces.ts";

const wave: Point[] = Array.from({ length: 500 }, (_, k) => [k / 5, 4 * Math.sin(k / 25) + 0.3 * Math.sin(k / 3)]);

describe("simplifyLine", () => {
  it("strays from no point by more than the tolerance and keeps both ends", () => {
    for (const tolerance of [0.05, 0.3, 1, 10]) {
      const thin = simplifyLine(wave, tolerance);
      expect(thin.length).toBeLessThan(wave.length);
      expect([thin[0], thin.at(-1)]).toEqual([wave[0], wave.at(-1)]);
      for (const point of wave) {
        const nearest = Math.min(...thin.slice(1).map((b, i) => distanceToPiece(thin[i]!, b, point[0], point[1])));
        expect(nearest).toBeLessThanOrEqual(tolerance + 1e-9);
      }
    }
  });

  it("takes a straight run down to its ends and leaves short or exact lines alone", () => {
    expect(
      simplifyLine(
        [
          [0, 0],
          [1, 1],
          [2, 2],
          [9, 9],
        ],
        0.01,
      ),
    ).toEqual([
      [0, 0],
      [9, 9],
    ]);
    expect(simplifyLine(wave, 0)).toEqual(wave);
    expect(
      simplifyLine(
        [
          [0, 0],
          [1, 1],
        ],
        5,
      ),
    ).toEqual([
      [0, 0],
      [1, 1],
    ]);
    expect(simplifyLine([], 5)).toEqual([]);
  });

  it("does not let a closed line collapse", () => {
    const ring: Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
      [0, 0],
    ];
    expect(simplifyLine(ring, 1)).toEqual(ring);
    expect(simplifyLine(ring, 50)).toEqual([
      [0, 0],
      [10, 10],
      [0, 0],
    ]);
  });

  it("keeps a spike past the end of a run", () => {
    expect(
      simplifyLine(
        [
          [0, 0],
          [8, 0],
          [5, 0],
        ],
        0.5,
      ),
    ).toEqual([
      [0, 0],
      [8, 0],
      [5, 0],
    ]);
  });
});

describe("clipLine", () => {
  const square = rectangle(0, 0, 10, 10);

  it("keeps the parts inside, cut at the boundary", () => {
    expect(
      clipLine(
        [
          [-5, 5],
          [15, 5],
        ],
        square,
      ),
    ).toEqual([
      [
        [0, 5],
        [10, 5],
      ],
    ]);
    expect(
      clipLine(
        [
          [-5, 5],
          [5, 5],
          [5, 15],
        ],
        square,
      ),
    ).toEqual([
      [
        [0, 5],
        [5, 5],
        [5, 10],
      ],
    ]);
    expect(
      clipLine(
        [
          [2, 2],
          [8, 2],
        ],
        square,
      ),
    ).toEqual([
      [
        [2, 2],
        [8, 2],
      ],
    ]);
    expect(
      clipLine(
        [
          [-5, 20],
          [15, 20],
        ],
        square,
      ),
    ).toEqual([]);
    expect(clipLine([], square)).toEqual([]);
  });

  it("leaves holes out", () => {
    const holed: Area = [...square, ...rectangle(4, 4, 6, 6)];
    expect(
      clipLine(
        [
          [-1, 5],
          [11, 5],
        ],
        holed,
      ),
    ).toEqual([
      [
        [0, 5],
        [4, 5],
      ],
      [
        [6, 5],
        [10, 5],
      ],
    ]);
  });

  it("keeps a ring that is inside whole, and one that leaves in one piece over its start", () => {
    const ring: Point[] = [
      [2, 2],
      [8, 2],
      [8, 8],
      [2, 8],
      [2, 2],
    ];
    expect(clipLine(ring, square)).toEqual([ring]);
    expect(clipLine(ring, rectangle(0, 0, 5, 10))).toEqual([
      [
        [5, 8],
        [2, 8],
        [2, 2],
        [5, 2],
      ],
    ]);
  });
});
