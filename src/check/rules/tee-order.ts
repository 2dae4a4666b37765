import { metresFromYards } from "../../geo/units.ts";
import { at, perHole, type Finding } from "../rule.ts";

/** Markers abreast may be shuffled by this much. Common practice, no source. */
const ABREAST_METRES = metresFromYards(3);

export const teeOrder = perHole({
  name: "tee-order",
  severity: "warning",
  about: "A longer set's marker stands nearer to the green than a shorter set's.",
  look: ({ hole, tees, placed }, { say }) => {
    const findings: Finding[] = [];
    for (let i = 1; i < tees.length; i++) {
      const [longer, shorter] = [tees[i - 1]!, tees[i]!];
      if (shorter.lengthMetres <= longer.lengthMetres + ABREAST_METRES) continue;
      const marker = [...placed.values()].find(
        ({ feature }) => feature.kind === "tee-marker" && feature.tee === longer.tee.id,
      );
      findings.push(
        at(
          marker?.feature.place ?? hole.place,
          `The ${longer.tee.name} marker leaves ${say.length(longer.lengthMetres)} and the ${shorter.tee.name} marker ${say.length(shorter.lengthMetres)}, but ${longer.tee.name} is listed as the longer set. Look whether the two markers are swapped.`,
        ),
      );
    }
    return findings;
  },
});
