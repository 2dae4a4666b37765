/** The third of a green the hole is cut in, and where in it: the middle of that third on the line of approach. */

export type Third = "front" | "middle" | "back";

/** How far along from the front edge to the back the middle of an outer third lies. */
export const THIRD_SHARE = { front: 1 / 6, back: 5 / 6 } as const;

/**
 * A length or a coordinate for a third, from those of the green's front, middle and back.
 * The middle third's is the green's own middle, which need not lie half way.
 */
export const thirdMetres = (third: Third, { front, middle, back }: Readonly<Record<Third, number>>): number =>
  third === "middle" ? middle : front + (back - front) * THIRD_SHARE[third];

type Place = readonly [number, number];

/** The same for a place, in whatever coordinates the three are given; a green is small enough for any. */
export function thirdPoint(third: Third, { front, middle, back }: Readonly<Record<Third, Place>>): [number, number] {
  const at = (axis: 0 | 1): number =>
    thirdMetres(third, { front: front[axis], middle: middle[axis], back: back[axis] });
  return [at(0), at(1)];
}
