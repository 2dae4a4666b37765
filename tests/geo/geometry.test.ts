import { describe, expect, test } from "vitest";
import { area as turfArea, centroid as turfCentroid, polygon } from "@turf/turf";
import { areaSquareMetres, centroid, chords, contains, innerPoint } from "../../src/geo/area.ts";
import { bandAround } from "../../src/geo/band.ts";
import { frameAt } from "../../src/geo/frame.ts";
import { directionAt, lineThrough, locate, pointAt } from "../../src/geo/line.ts";
import type { Area, Point } from "../../src/geo/position.ts";
import { crossing, densify, nearestOn } from "../../src/geo/segment.ts";
import { bearingDegrees, directionOfBearing, distanceMetres, turnDegrees } from "../../src/geo/vector.ts";

const SQUARE: Area = [
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
    [0, 0],
  ],
];
const WITH_HOLE: Area = [
  ...SQUARE,
  [
    [4, 4],
    [4, 6],
    [6, 6],
    [6, 4],
    [4, 4],
  ],
];
/** A horseshoe whose centre of gravity is outside it. */
const HORSESHOE: Area = [
  [
    [0, 0],
    [30, 0],
    [30, 30],
    [24, 30],
    [24, 6],
    [6, 6],
    [6, 30],
    [0, 30],
    [0, 0],
  ],
];

describe("station and offset", () => {
  // A right-angled dogleg: 100 north, then 50 east.
  const dogleg = lineThrough([
    [0, 0],
    [0, 100],
    [50, 100],
  ]);

  test("left is negative, right positive", () => {
    expect(locate(dogleg, [-5, 40])).toEqual({ station: 40, offset: -5 });
    expect(locate(dogleg, [5, 40])).toEqual({ station: 40, offset: 5 });
  });

  test("the end legs are extended: before the tee and beyond the green", () => {
    expect(locate(dogleg, [0, -20])).toEqual({ station: -20, offset: 0 });
    expect(locate(dogleg, [80, 101]).station).toBeCloseTo(180);
    expect(pointAt(dogleg, 170)).toEqual([70, 100]);
  });

  test("outside the corner the offset is the distance to the turning point", () => {
    const { station, offset } = locate(dogleg, [-3, 104]);
    expect(station).toBeCloseTo(100);
    expect(offset).toBeCloseTo(-5);
  });

  test("locate undoes pointAt anywhere on the line", () => {
    for (let s = -10; s <= 160; s += 7) expect(locate(dogleg, pointAt(dogleg, s)).station).toBeCloseTo(s, 9);
  });

  test("direction of play changes at the turning point", () => {
    expect(bearingDegrees(directionAt(dogleg, 99))).toBeCloseTo(0);
    expect(bearingDegrees(directionAt(dogleg, 101))).toBeCloseTo(90);
    expect(turnDegrees([0, 1], [1, 0])).toBeCloseTo(90);
    expect(turnDegrees([0, 1], [-1, 0])).toBeCloseTo(-90);
  });

  test("a line of one point, or with NaN, is refused", () => {
    expect(() => lineThrough([[0, 0]])).toThrow(RangeError);
    expect(() =>
      lineThrough([
        [0, 0],
        [NaN, 1],
      ]),
    ).toThrow(RangeError);
  });

  test("bearings round trip", () => {
    for (let b = 0; b < 360; b += 17) expect(bearingDegrees(directionOfBearing(b))).toBeCloseTo(b, 9);
  });
});

describe("areas", () => {
  test("a hole is taken out", () => {
    expect(areaSquareMetres(SQUARE)).toBe(100);
    expect(areaSquareMetres(WITH_HOLE)).toBe(96);
    expect(contains(WITH_HOLE, [5, 5])).toBe(false);
    expect(contains(WITH_HOLE, [2, 5])).toBe(true);
  });

  test("the way a ring runs does not matter", () => {
    const reversed: Area = [[...SQUARE[0]!].reverse()];
    expect(areaSquareMetres(reversed)).toBe(100);
    expect(centroid(reversed)).toEqual([5, 5]);
  });

  test("a point inside is found for a horseshoe too", () => {
    expect(contains(HORSESHOE, centroid(HORSESHOE))).toBe(false);
    expect(contains(HORSESHOE, innerPoint(HORSESHOE))).toBe(true);
  });

  test("chords of a line through a horseshoe come in order, holes left out", () => {
    expect(chords([HORSESHOE], [-10, 20], [1, 0])).toEqual([
      [10, 16],
      [34, 40],
    ]);
    expect(chords([WITH_HOLE], [-10, 5], [1, 0])).toEqual([
      [10, 14],
      [16, 20],
    ]);
    expect(chords([SQUARE], [5, 5], [1, 0])).toEqual([[-5, 5]]);
    expect(chords([SQUARE], [5, 50], [1, 0])).toEqual([]);
  });

  test("chords of overlapping areas are merged", () => {
    const shifted: Area = [SQUARE[0]!.map(([x, y]): Point => [x + 5, y])];
    expect(chords([SQUARE, shifted], [-1, 5], [1, 0])).toEqual([[1, 16]]);
  });

  test("area and centroid of a small polygon agree with Turf's within its spherical error", () => {
    const frame = frameAt([-3, 56]);
    const ring = [
      [-3, 56],
      [-2.999, 56],
      [-2.9985, 56.0007],
      [-2.9995, 56.001],
      [-3, 56],
    ] as const;
    const area: Area = [ring.map(([longitude, latitude]) => frame.toPlane([longitude, latitude]))];
    const turf = polygon([ring.map(([longitude, latitude]) => [longitude, latitude])]);
    // Turf's areas are on a sphere: off by up to 0.7 % here.
    expect(Math.abs(areaSquareMetres(area) / turfArea(turf) - 1)).toBeLessThan(0.007);
    const vertexMean = turfCentroid(turf).geometry.coordinates;
    expect(distanceMetres(centroid(area), frame.toPlane([vertexMean[0]!, vertexMean[1]!]))).toBeLessThan(10);
  });

  test("the quadrilateral of a thousandth of a degree at 56 N has the area of its geodesic polygon", () => {
    const frame = frameAt([-3, 56]);
    const ring = [
      [-3, 56],
      [-2.999, 56],
      [-2.999, 56.001],
      [-3, 56.001],
      [-3, 56],
    ] as const;
    // Computed with an independent solver (geodesic sides): 6,946.8361 square metres, regression value.
    expect(areaSquareMetres([ring.map(([x, y]) => frame.toPlane([x, y]))])).toBeCloseTo(6946.8361, 3);
  });
});

describe("pieces and bands", () => {
  test("nearest place on a piece", () => {
    expect(nearestOn([0, 0], [10, 0], [3, 4])).toEqual([3, 0]);
    expect(nearestOn([0, 0], [10, 0], [-3, 4])).toEqual([0, 0]);
    expect(nearestOn([2, 2], [2, 2], [9, 9])).toEqual([2, 2]);
  });

  test("crossing pieces, touching ends, parallels", () => {
    expect(crossing([0, 0], [10, 10], [0, 10], [10, 0])).toEqual([5, 5]);
    expect(crossing([0, 0], [10, 0], [10, 0], [10, 5])).toEqual([10, 0]);
    expect(crossing([0, 0], [10, 0], [0, 1], [10, 1])).toBeUndefined();
  });

  test("densify keeps every vertex and limits the step", () => {
    const dense = densify(
      [
        [0, 0],
        [10, 0],
        [10, 3],
      ],
      4,
    );
    expect(dense).toContainEqual([10, 0]);
    for (let i = 1; i < dense.length; i++) expect(distanceMetres(dense[i - 1]!, dense[i]!)).toBeLessThanOrEqual(4);
  });

  test("a straight band has length times width, a right angle keeps its width", () => {
    expect(
      areaSquareMetres(
        bandAround(
          [
            [0, 0],
            [100, 0],
          ],
          3,
        ),
      ),
    ).toBeCloseTo(300);
    expect(
      areaSquareMetres(
        bandAround(
          [
            [0, 0],
            [50, 0],
            [50, 50],
          ],
          4,
        ),
      ),
    ).toBeCloseTo(400);
  });

  test("a hairpin does not grow a spike", () => {
    const band = bandAround(
      [
        [0, 0],
        [100, 0],
        [0, 0.01],
      ],
      2,
    );
    for (const [x] of band[0]!) expect(x).toBeLessThan(103);
  });
});
