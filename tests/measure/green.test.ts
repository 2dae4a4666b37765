/** A green approached from anywhere: its front, back and sides by their meaning, on greens of every shape. */
import { describe, expect, test } from "vitest";
import { areaSquareMetres, contains } from "../../src/geo/area.ts";
import type { Point } from "../../src/geo/position.ts";
import { greenFrom } from "../../src/measure/green.ts";
import { seeded } from "../faults/random.ts";

/** A green about a place, its edge nearer here and further there. */
function greenAbout([x, y]: Point, random: ReturnType<typeof seeded>): Point[] {
  return closed(
    Array.from({ length: 24 }, (_, i): Point => {
      const [angle, radius] = [(i * 2 * Math.PI) / 24, 9 + 8 * random.next()];
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
}

const closed = (ring: readonly Point[]): Point[] => [...ring, ring[0]!];

/** Positive to the left of a direction. */
const leftOf = ([dx, dy]: Point, [x, y]: Point): number => dx * y - dy * x;
const minus = ([x1, y1]: Point, [x0, y0]: Point): Point => [x1 - x0, y1 - y0];
const along = ([dx, dy]: Point, [x, y]: Point): number => dx * x + dy * y;

/** Least distance from a point to a ring. */
const toEdge = ([x, y]: Point, ring: readonly Point[]): number =>
  Math.min(
    ...ring.slice(1).map(([x2, y2], i) => {
      const [x1, y1] = ring[i]!;
      const share = Math.max(
        0,
        Math.min(1, ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / ((x2 - x1) ** 2 + (y2 - y1) ** 2)),
      );
      return Math.hypot(x - x1 - share * (x2 - x1), y - y1 - share * (y2 - y1));
    }),
  );

describe("from anywhere, of any shape", () => {
  const random = seeded(3);
  test.each(Array.from({ length: 60 }, (_, i) => i))("trial %i", () => {
    const [middleX, middleY] = [200 * random.next() - 100, 200 * random.next() - 100];
    const ring = greenAbout([middleX, middleY], random);
    const angle = 2 * Math.PI * random.next();
    const from: Point = [middleX + 180 * Math.cos(angle), middleY + 180 * Math.sin(angle)];
    const green = greenFrom([ring], from);
    const {
      approach,
      front,
      middle,
      back,
      sides: [left, right],
    } = green;

    // Front, middle and back lie in this order on one straight line from the player; the middle halves the others.
    const [f, m, b] = [front, middle, back].map((point) => along(approach, minus(point, from))) as [
      number,
      number,
      number,
    ];
    expect(f).toBeLessThan(m);
    expect(m).toBeLessThan(b);
    expect(m).toBeCloseTo((f + b) / 2, 9);
    for (const point of [front, middle, back])
      expect(Math.abs(leftOf(approach, minus(point, from)))).toBeLessThan(1e-6);
    expect(green.depthMetres).toBeCloseTo(b - f, 9);

    // Left is left of the way one comes, right is right of it, both square to it through the middle.
    expect(leftOf(approach, minus(left, middle))).toBeGreaterThan(0);
    expect(leftOf(approach, minus(right, middle))).toBeLessThan(0);
    for (const side of [left, right]) expect(Math.abs(along(approach, minus(side, middle)))).toBeLessThan(1e-6);
    expect(green.widthMetres).toBeCloseTo(Math.hypot(...minus(left, right)), 9);

    // All four stand on the edge, and the middle on the green.
    for (const point of [front, back, left, right]) expect(toEdge(point, ring)).toBeLessThan(1e-6);
    expect(contains([ring], middle)).toBe(true);
    expect(green.areaSquareMetres).toBeCloseTo(areaSquareMetres([ring]), 9);
  });
});

test("where the line of approach meets the green twice, the stretch with its middle counts", () => {
  // A bar in front, a larger one behind a gap of 4 m, joined at the right.
  const ring = closed([
    [-20, 0],
    [20, 0],
    [20, 30],
    [-20, 30],
    [-20, 10],
    [15, 10],
    [15, 6],
    [-20, 6],
  ]);
  const { front, back } = greenFrom([ring], [0, -150]);
  expect(front[1]).toBeCloseTo(10, 6);
  expect(back[1]).toBeCloseTo(30, 6);
});
