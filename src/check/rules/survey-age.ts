import { coursePlace, type Rule } from "../rule.ts";

/**
 * Greens and bunkers move; ratings are renewed within 10 years, for a new course 5 (published, Rules of
 * Handicapping, Appendix G).
 */
export const SURVEY_YEARS = 5;

export const surveyAge: Rule = {
  name: "survey-age",
  severity: "note",
  about: "The survey is older than 5 years, or its date is not given.",
  run: ({ measured, today }) => {
    const { surveyed } = measured.course;
    const place = coursePlace(measured);
    if (surveyed === undefined)
      return [{ place, message: "The date of the survey is not given. Write for example surveyed: 2026-05-14." }];
    if (surveyed > today)
      return [
        { place, message: `The survey is dated ${surveyed}, which is after today, ${today}. Correct surveyed.` },
      ];
    const [year, rest] = [Number(surveyed.slice(0, 4)) + SURVEY_YEARS, surveyed.slice(4)];
    if (`${year}${rest}` >= today) return [];
    return [
      {
        place,
        message: `The survey of ${surveyed} is more than ${SURVEY_YEARS} years old. Have the markers, greens and bunkers measured again, and write the new date under surveyed.`,
      },
    ];
  },
};
