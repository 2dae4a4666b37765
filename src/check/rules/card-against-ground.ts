import { metresFromYards } from "../../geo/units.ts";
import { at, perHole } from "../rule.ts";

/**
 * The greater of the two: a survey's own error, and what a card in whole yards and a moved marker explain.
 * Common practice, no source.
 */
const TOLERANCE_SHARE = 0.02;
const TOLERANCE_METRES = metresFromYards(3);

export const cardAgainstGround = perHole({
  name: "card-against-ground",
  severity: "warning",
  about: "The printed card's length and the measured one differ by more than 2% and 3 yards.",
  look: ({ hole, tees }, { say }) =>
    tees.flatMap(({ tee, lengthMetres, cardMetres }) => {
      if (cardMetres === undefined) return [];
      const off = cardMetres - lengthMetres;
      if (Math.abs(off) <= Math.max(TOLERANCE_METRES, TOLERANCE_SHARE * lengthMetres) + 1e-9) return [];
      return [
        at(
          hole.place,
          `The card says ${say.length(cardMetres)} from the ${tee.name} tee, but the line of play measures ${say.length(lengthMetres)}. Write the measured length under card, or move the marker, the line of play or the green.`,
        ),
      ];
    }),
});
