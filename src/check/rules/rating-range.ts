/** Ratings that cannot be, or that do not go together. */
import type { Rating, TeeSet } from "../../course/types.ts";
import { coursePlace, type Finding, type Rule } from "../rule.ts";

/** Slope Rating, published: 55 to 155 (Rules of Handicapping, definition). */
const SLOPES = [55, 155] as const;
/** How far a Course Rating strays from par on eighteen holes. Common practice, no source. */
const FROM_PAR = 12;
/** Slope per stroke between Bogey and Course Rating (published; read, state association): men 5.381, women 4.24. */
const SLOPE_PER_STROKE = { men: 5.381, women: 4.24 } as const;
const SLOPE_ROUNDING = 1.5;

function faultsOf({ gender, courseRating, bogeyRating, slopeRating, par }: Rating, holes: number): string[] {
  const said: string[] = [];
  if (slopeRating < SLOPES[0] || slopeRating > SLOPES[1])
    said.push(`the Slope Rating is ${slopeRating}, outside 55 to 155`);
  const room = (FROM_PAR * holes) / 18;
  if (Math.abs(courseRating - par) > room)
    said.push(`the Course Rating is ${courseRating}, more than ${room} strokes from the par of ${par}`);
  if (bogeyRating !== undefined) {
    if (bogeyRating <= courseRating)
      said.push(`the Bogey Rating of ${bogeyRating} is not above the Course Rating of ${courseRating}`);
    else {
      // A nine's slope is reckoned from ratings doubled to eighteen holes.
      const slope = (bogeyRating - courseRating) * SLOPE_PER_STROKE[gender] * (18 / holes);
      if (Math.abs(slope - slopeRating) > SLOPE_ROUNDING * (18 / holes))
        said.push(`Bogey and Course Rating give a Slope Rating of ${Math.round(slope)}, not ${slopeRating}`);
    }
  }
  return said;
}

const ratingFor = ({ ratings }: TeeSet, gender: Rating["gender"]): Rating | undefined =>
  ratings.find((rating) => rating.gender === gender);

export const ratingRange: Rule = {
  name: "rating-range",
  severity: "warning",
  about: "A tee set's ratings are outside what is possible, or do not go together.",
  run: ({ measured }) => {
    const place = coursePlace(measured);
    const holes = measured.holes.length > 9 ? 18 : 9;
    const findings: Finding[] = [];
    const { tees } = measured.course;
    for (const [i, tee] of tees.entries()) {
      for (const rating of tee.ratings) {
        for (const fault of faultsOf(rating, holes)) {
          findings.push({
            place,
            message: `${tee.name} tees, ${rating.gender}: ${fault}. Copy the ratings from the certificate.`,
          });
        }
        const shorter = tees
          .slice(i + 1)
          .find((other) => (ratingFor(other, rating.gender)?.courseRating ?? -Infinity) > rating.courseRating);
        if (shorter) {
          findings.push({
            place,
            severity: "note",
            message: `${tee.name} tees, ${rating.gender}: the Course Rating of ${rating.courseRating} is below the ${ratingFor(shorter, rating.gender)!.courseRating} of the ${shorter.name} tees, which are listed as shorter. Compare both with the certificate.`,
          });
        }
      }
    }
    return findings;
  },
};
