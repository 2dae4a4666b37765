import { distanceMetres } from "../../geo/vector.ts";
import { at, type Finding, type Rule } from "../rule.ts";

/** Straight, from the green's middle to the nearest marker of the next hole. Common practice, no source. */
export const LONG_WALK_METRES = 250;
/** So far that two holes are likely to be in each other's place. */
export const WRONG_ORDER_METRES = 500;

export const walkToNextTee: Rule = {
  name: "walk-to-next-tee",
  severity: "note",
  about: "The next tee is more than 250 m from the green; beyond 500 m the holes may be in the wrong order.",
  run: ({ measured, say }) => {
    const findings: Finding[] = [];
    for (let i = 1; i < measured.holes.length; i++) {
      const [hole, next] = [measured.holes[i - 1]!, measured.holes[i]!];
      const green = hole.tees[0]?.green.middle;
      if (!green || next.tees.length === 0) continue;
      const walk = Math.min(...next.tees.map(({ marker }) => distanceMetres(green, marker)));
      if (walk <= LONG_WALK_METRES) continue;
      const far = walk > WRONG_ORDER_METRES;
      findings.push(
        at(
          next.hole.place,
          `The nearest tee of hole ${next.hole.number} is ${say.length(walk)} from the green of hole ${hole.hole.number}. ${far ? "Look whether the two holes' geometry stands in the right files." : "If the walk is right, leave it."}`,
          far ? "warning" : "note",
        ),
      );
    }
    return findings;
  },
};
