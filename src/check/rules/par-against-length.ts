/**
 * Par held against length, by the guidelines in `measure/par-length.ts`; the Committee may weigh more, so
 * this only warns.
 */
import type { LengthUnit } from "../../geo/units.ts";
import { PAR_RANGES, parSuits, type ParRange } from "../../measure/par-length.ts";
import { at, perHole, type Finding } from "../rule.ts";

const spoken = ([from, to]: ParRange, units: LengthUnit): string =>
  from === 0 ? `up to ${to} ${units}` : to === Infinity ? `${from} ${units} and more` : `${from} to ${to} ${units}`;

export const parAgainstLength = perHole({
  name: "par-against-length",
  severity: "warning",
  about: "A hole's par does not suit its length by the guidelines of the World Handicap System (Appendix F).",
  look: ({ hole, tees }, { club: { units }, say }) => {
    const findings: Finding[] = [];
    for (const { tee, lengthMetres } of tees) {
      for (const { gender } of tee.ratings) {
        const par = hole.par[gender];
        if (parSuits(par, lengthMetres, gender, units)) continue;
        const fitting = [3, 4, 5, 6].filter((one) => parSuits(one, lengthMetres, gender, units));
        const range = PAR_RANGES[units][gender][par];
        findings.push(
          at(
            hole.place,
            `Par ${par} for ${gender} at ${say.length(lengthMetres)} from the ${tee.name} tee: the World Handicap System suggests ${range ? spoken(range, units) : "no such par"} for it, and par ${fitting.join(" or ")} for this length. Write another par, or silence the rule and say why.`,
          ),
        );
      }
    }
    return findings;
  },
});
