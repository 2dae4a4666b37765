/**
 * Handicaps under the World Handicap System: Course Handicap (Rule 6.1), Playing Handicap
 * (Rule 6.2) and the holes strokes are received on (Appendix E). A plus player's handicap
 * is negative here, as in a calculation; it is written "+2" for people.
 */
import type { Gender, Hole, Rating } from "../course/types.ts";

/** A course of neutral difficulty. */
export const NEUTRAL_SLOPE_RATING = 113;

/**
 * To the nearest whole number, halves upwards: 4.5 is 5, and -1.5 is -1, which for a plus
 * player is towards giving fewer strokes (from memory). Sums of tenths carry noise in their
 * last binary places, which must not tip a half.
 */
export const roundHalfUp = (value: number): number => Math.floor(Number((value + 0.5).toFixed(9))) + 0;

const finite = (what: string, value: number): number => {
  if (!Number.isFinite(value)) throw new RangeError(`${what} must be a number, not ${value}.`);
  return value;
};

/**
 * Course Handicap over 18 holes, unrounded: Handicap Index x (Slope Rating / 113) + (Course
 * Rating - par). Rounded only where a whole number is asked for; a Playing Handicap is
 * worked out from this value.
 *
 * @param handicapIndex negative for a plus player
 * @throws RangeError when a number is not finite
 */
export function courseHandicap(
  handicapIndex: number,
  { slopeRating, courseRating, par }: Pick<Rating, "slopeRating" | "courseRating" | "par">,
): number {
  return finite("A Handicap Index", handicapIndex) * (slopeRating / NEUTRAL_SLOPE_RATING) + (courseRating - par);
}

/**
 * Playing Handicap: the unrounded Course Handicap times the allowance, rounded once at the
 * end, halves upwards.
 *
 * @param unroundedCourseHandicap as {@link courseHandicap} gives it
 * @param allowancePercent 100 for the whole
 * @throws RangeError when a number is not finite, or the allowance is negative
 */
export function playingHandicap(unroundedCourseHandicap: number, allowancePercent = 100): number {
  if (finite("An allowance", allowancePercent) < 0)
    throw new RangeError(`An allowance must be 0 or more percent, not ${allowancePercent}.`);
  return roundHalfUp((finite("A Course Handicap", unroundedCourseHandicap) * allowancePercent) / 100);
}

/**
 * Strokes received on each hole, in the order of the holes given; negative where a plus
 * player gives one back.
 *
 * A stroke is taken on each hole in ascending order of stroke index, and past the last
 * hole from the first again: index 1 counts as 19 and 37 too. A plus player gives strokes
 * back from the highest index downwards. Nine holes with indexes of an 18-hole course keep
 * their order.
 *
 * @param handicap a whole number; negative for a plus player
 * @param strokeIndexes each hole's, in order of play; no two alike
 * @throws RangeError when the handicap is not whole or two holes share an index
 */
export function strokesReceived(handicap: number, strokeIndexes: readonly number[]): number[] {
  if (!Number.isInteger(handicap))
    throw new RangeError(`Strokes are received in whole numbers: round the handicap ${handicap} first.`);
  if (new Set(strokeIndexes).size !== strokeIndexes.length)
    throw new RangeError(`Two holes have the same stroke index: ${strokeIndexes.join(", ")}.`);
  const count = strokeIndexes.length;
  if (count === 0) return [];
  const size = Math.abs(handicap);
  const rounds = Math.floor(size / count);
  const over = size % count;
  const rank = new Map(
    [...strokeIndexes].sort((a, b) => (handicap < 0 ? b - a : a - b)).map((index, i) => [index, i]),
  );
  return strokeIndexes.map((index) => Math.sign(handicap) * (rounds + (rank.get(index)! < over ? 1 : 0)) + 0);
}

/** Strokes received on a course's holes, by the stroke indexes of a gender. */
export const strokesOn = (handicap: number, holes: readonly Pick<Hole, "strokeIndex">[], gender: Gender): number[] =>
  strokesReceived(
    handicap,
    holes.map(({ strokeIndex }) => strokeIndex[gender]),
  );

/** As players write it: `14`, `0`, `+2` for a plus player. */
export const writtenHandicap = (handicap: number): string => (handicap < 0 ? `+${-handicap}` : `${handicap + 0}`);
