/**
 * Par by length: Rules of Handicapping, Appendix F (published; read in an extract). The
 * metre column is rounded by the Rules themselves and is used as it stands, so a hole is
 * held to the column of the unit its club prints. Below 610 m of altitude; the Committee
 * may weigh elevation, lay-ups and wind, so this only warns.
 */
import type { Gender } from "../../course/types.ts";
import { inUnit, type LengthUnit } from "../../geo/units.ts";
import { at, perHole, type Finding } from "../rule.ts";

type Range = readonly [from: number, to: number];

const RANGES: Readonly<Record<LengthUnit, Readonly<Record<Gender, Readonly<Record<number, Range>>>>>> = {
  yards: {
    men: { 3: [0, 260], 4: [240, 490], 5: [450, 710], 6: [670, Infinity] },
    women: { 3: [0, 220], 4: [200, 420], 5: [370, 600], 6: [570, Infinity] },
  },
  metres: {
    men: { 3: [0, 240], 4: [220, 450], 5: [410, 650], 6: [610, Infinity] },
    women: { 3: [0, 200], 4: [180, 380], 5: [340, 550], 6: [520, Infinity] },
  },
};

/** Whether a par suits a length, in whole units. */
export function parSuits(par: number, lengthMetres: number, gender: Gender, units: LengthUnit): boolean {
  const range = RANGES[units][gender][par];
  const length = Math.round(inUnit(lengthMetres, units));
  return range !== undefined && length >= range[0] && length <= range[1];
}

const spoken = ([from, to]: Range, units: LengthUnit): string =>
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
        const range = RANGES[units][gender][par];
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
