/** The point of a green that counts for a golfer: its middle, or that of the third the hole is cut in. */
import { thirdMetres, type Third } from "../settings-third.ts";

type Place = readonly [number, number];

/**
 * In whatever coordinates the three are given; a green is small enough for either.
 *
 * @param green its front, middle and back along a line of approach
 */
export function thirdPoint(third: Third, { front, middle, back }: Readonly<Record<Third, Place>>): [number, number] {
  const at = (axis: 0 | 1): number => thirdMetres(third, { front: front[axis], middle: middle[axis], back: back[axis] });
  return [at(0), at(1)];
}
