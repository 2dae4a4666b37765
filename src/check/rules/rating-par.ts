import { coursePlace, type Finding, type Rule } from "../rule.ts";

export const ratingPar: Rule = {
  name: "rating-par",
  severity: "warning",
  about: "The par beside a tee set's ratings is not the sum of its holes' pars.",
  run: ({ measured }) => {
    const findings: Finding[] = [];
    for (const tee of measured.course.tees) {
      const holes = measured.holes.filter(({ tees }) => tees.some((one) => one.tee.id === tee.id));
      // A set that is not on every hole is rated with others' markers; its sum says nothing.
      if (holes.length !== measured.holes.length) continue;
      for (const { gender, par } of tee.ratings) {
        const sum = holes.reduce((total, { hole }) => total + hole.par[gender], 0);
        if (sum !== par) {
          findings.push({
            place: coursePlace(measured),
            message: `${tee.name} tees, ${gender}: par is given as ${par}, but the holes' pars add up to ${sum}. Write par: ${sum}, or correct a hole's par.`,
          });
        }
      }
    }
    return findings;
  },
};
