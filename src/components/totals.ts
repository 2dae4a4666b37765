/** Sums of a course for its cover: par and length by tee set. */
import type { PerGender, TeeSet } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";

/** Sum of par for each gender. */
export const parOf = (holes: readonly MeasuredHole[]): PerGender => ({
  men: holes.reduce((sum, { hole }) => sum + hole.par.men, 0),
  women: holes.reduce((sum, { hole }) => sum + hole.par.women, 0),
});

/**
 * Length of a tee set over some holes; undefined when it is not used on one of them.
 */
export function lengthOf(holes: readonly MeasuredHole[], teeId: string): number | undefined {
  let sum = 0;
  for (const { tees } of holes) {
    const figures = tees.find(({ tee }) => tee.id === teeId);
    if (!figures) return undefined;
    sum += figures.lengthMetres;
  }
  return sum;
}

/** Tee sets with their length over the whole course; those not used on every hole are left out. */
export function courseTees({ course, holes }: MeasuredCourse): { tee: TeeSet; lengthMetres: number }[] {
  return course.tees.flatMap((tee) => {
    const lengthMetres = lengthOf(holes, tee.id);
    return lengthMetres === undefined ? [] : [{ tee, lengthMetres }];
  });
}

/** Length by tee set over some holes, for a figure that turns with the tee. */
export const lengthsOf = (holes: readonly MeasuredHole[], tees: readonly TeeSet[]): Record<string, number> =>
  Object.fromEntries(tees.flatMap(({ id }) => {
    const metres = lengthOf(holes, id);
    return metres === undefined ? [] : [[id, Math.round(metres * 1000) / 1000]];
  }));
