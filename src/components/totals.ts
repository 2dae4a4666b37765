/** Sums of a course for its cover: par and length by tee set. */
import type { PerGender, TeeSet } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";

/** Sum of par for each gender. */
export const parOf = (holes: readonly MeasuredHole[]): PerGender => ({
  men: holes.reduce((sum, { hole }) => sum + hole.par.men, 0),
  women: holes.reduce((sum, { hole }) => sum + hole.par.women, 0),
});

/**
 * Lengths of a tee set over some holes, for their total; undefined when it is not used on
 * one of them. A total is shown as the sum of whole units, so the lengths stay apart.
 */
export function lengthsFrom(holes: readonly MeasuredHole[], teeId: string): number[] | undefined {
  const lengths = holes.map(({ tees }) => tees.find(({ tee }) => tee.id === teeId)?.lengthMetres);
  return lengths.every((length) => length !== undefined) ? lengths : undefined;
}

/** Tee sets with their lengths over the whole course; those not used on every hole are left out. */
export function courseTees({ course, holes }: MeasuredCourse): { tee: TeeSet; lengthMetres: number[] }[] {
  return course.tees.flatMap((tee) => {
    const lengthMetres = lengthsFrom(holes, tee.id);
    return lengthMetres === undefined ? [] : [{ tee, lengthMetres }];
  });
}

/** Lengths by tee set over some holes, for a total that turns with the tee. */
export const lengthsByTee = (holes: readonly MeasuredHole[], tees: readonly TeeSet[]): Record<string, number[]> =>
  Object.fromEntries(
    tees.flatMap(({ id }) => {
      const lengths = lengthsFrom(holes, id);
      return lengths === undefined ? [] : [[id, lengths]];
    }),
  );
