/** Surfaces whose heights and slopes are known exactly, and grids of them. */
import type { Area, Point } from "../../src/geo/position.ts";
import { type HeightGrid, gridOf } from "../../src/terrain/grid.ts";

export const FIELD = { west: -60, south: -60, east: 60, north: 60 } as const;

/** Rises 4 % toward the east and 3 % toward the north: 5 % in all. */
export const plane = ([x, y]: Point): number => 20 + 0.04 * x + 0.03 * y;

/** Apex 30 m high at the middle, sides falling 20 %. */
export const cone = ([x, y]: Point): number => 30 - 0.2 * Math.hypot(x, y);

export const HILL_SIGMA = 20;
/** A Gaussian hill 10 m high. */
export const hill = ([x, y]: Point): number => 10 * Math.exp(-(x * x + y * y) / (2 * HILL_SIGMA ** 2));
/** Its gradient, by the chain rule. */
export const hillGradient = ([x, y]: Point): Point => {
  const h = hill([x, y]);
  return [(-x / HILL_SIGMA ** 2) * h, (-y / HILL_SIGMA ** 2) * h];
};

export const gridOfField = (surface: (point: Point) => number | undefined, step = 1): HeightGrid =>
  gridOf(FIELD, step, surface);

/** A rectangle as an area. */
export const rectangle = (west: number, south: number, east: number, north: number): Area => [
  [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ],
];

/** A regular polygon of many sides. */
export const disc = ([x, y]: Point, radius: number, sides = 64): Area => [
  Array.from({ length: sides + 1 }, (_, k) => {
    const angle = (2 * Math.PI * (k % sides)) / sides;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const;
  }),
];
