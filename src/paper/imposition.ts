/**
 * Which pages share a sheet when a booklet is printed on both sides, folded and stapled.
 *
 * ```
 *   front of sheet 1: | 8 | 1 |     front of sheet 2: | 6 | 3 |
 *   back  of sheet 1: | 2 | 7 |     back  of sheet 2: | 4 | 5 |
 * ```
 */

/** Two pages side by side, left then right; numbers from 1. */
export type Spread = readonly [left: number, right: number];

/**
 * Sides of a saddle-stitched booklet in the order they are printed: front and back of the
 * outermost sheet, then of the next.
 *
 * @throws RangeError when the pages do not make whole sheets of four
 */
export function saddleStitch(pageCount: number): Spread[] {
  if (!Number.isInteger(pageCount) || pageCount < 4 || pageCount % 4 !== 0) {
    throw new RangeError(`A stapled booklet has a multiple of four pages, not ${pageCount}.`);
  }
  return Array.from({ length: pageCount / 4 }, (_, sheet): Spread[] => [
    [pageCount - 2 * sheet, 1 + 2 * sheet],
    [2 + 2 * sheet, pageCount - 1 - 2 * sheet],
  ]).flat();
}

/** Blank pages that a booklet needs to come out in fours. */
export const padding = (pageCount: number): number => (4 - (pageCount % 4)) % 4;
