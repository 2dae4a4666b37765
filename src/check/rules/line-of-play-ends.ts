import { contains } from "../../geo/area.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { drawnLine, greenOf } from "../../measure/hole.ts";
import { at, perHole, type Finding } from "../rule.ts";

/** A line is drawn to a teeing ground's middle, which may be this far from its marker. Common practice, no source. */
export const TEE_REACH_METRES = 20;

export const lineOfPlayEnds = perHole({
  name: "line-of-play-ends",
  severity: "warning",
  about: "The line of play does not begin at the furthest-back tee, or does not end on the green.",
  look: (hole, { say }) => {
    const findings: Finding[] = [];
    const line = drawnLine(hole.placed, hole.hole);
    const green = greenOf(hole.placed, hole.hole);
    const feature = [...hole.placed.values()].find(({ feature: { kind } }) => kind === "line-of-play")!.feature;
    const [first, last] = [line[0]!, line[line.length - 1]!];
    const back = hole.tees.reduce(
      (best, one) => (best && best.lengthMetres >= one.lengthMetres ? best : one),
      hole.tees[0],
    );
    if (back) {
      const off = distanceMetres(first, back.marker);
      const nearest = Math.min(...hole.tees.map(({ marker }) => distanceMetres(first, marker)));
      if (off > TEE_REACH_METRES) {
        const turned = distanceMetres(last, back.marker) <= TEE_REACH_METRES;
        findings.push(
          at(
            feature.place,
            turned
              ? `${feature.id}: the line of play begins at the green. Turn its positions round, so that it runs from the ${back.tee.name} tee to the green.`
              : `${feature.id}: the line of play begins ${say.length(off)} from the ${back.tee.name} marker, the furthest back${nearest <= TEE_REACH_METRES ? ", at another tee" : ""}. Move its first position to that marker.`,
          ),
        );
      }
    }
    if (!contains(green, last)) {
      findings.push(
        at(
          feature.place,
          `${feature.id}: the line of play ends off the green. Move its last position to the middle of the green.`,
        ),
      );
    }
    return findings;
  },
});
