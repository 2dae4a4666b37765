import { isPenaltyArea, type FeatureKind } from "../../course/kinds.ts";
import { areasOf } from "../../measure/place.ts";
import type { PlacedFeature } from "../../measure/types.ts";
import { at, perHole, type Finding } from "../rule.ts";
import { sharedByAll } from "../../geo/overlap.ts";

/**
 * Pairs that cannot lie on one another, and the square metres a careless outline explains.
 * Common practice, no source. A penalty area may hold a bunker and reach over a fairway's
 * edge, and where it is dry a green may reach into it.
 */
const PAIRS: readonly (readonly [FeatureKind, FeatureKind, number])[] = [
  ["bunker", "green", 4],
  ["bunker", "water", 4],
  ["bunker", "teeing-ground", 4],
  ["bunker", "building", 1],
  ["green", "water", 4],
  ["green", "penalty-area-yellow", 10],
  ["green", "penalty-area-red", 10],
  ["green", "building", 1],
  ["green", "wood", 10],
  ["green", "teeing-ground", 4],
  ["fairway", "water", 20],
  ["fairway", "building", 4],
  ["fairway", "fairway", 20],
  ["teeing-ground", "water", 4],
];

const isLine = ({ shape }: PlacedFeature): boolean => shape.type !== "areas";

export const impossibleOverlap = perHole({
  name: "impossible-overlap",
  severity: "warning",
  about: "Two features lie on one another that cannot, such as a bunker on a green or a fairway over water.",
  look: (hole) => {
    const findings: Finding[] = [];
    // A stream drawn as a line with a width runs through a fairway as it should.
    const all = [...hole.placed.values()].filter((one) => !isLine(one));
    const of = (kind: FeatureKind): PlacedFeature[] =>
      all.filter(({ feature, cover }) => feature.kind === kind && (!isPenaltyArea(kind) || cover === "water"));
    for (const [one, other, tolerance] of PAIRS) {
      for (const a of of(one)) {
        for (const b of of(other)) {
          // Each pair once: of two of a kind the first by id speaks; of two shared ones the course's own page has to.
          if (one === other && a.feature.id >= b.feature.id) continue;
          if (a.shared && b.shared) continue;
          const shared = sharedByAll(areasOf(a), areasOf(b));
          if (shared <= tolerance) continue;
          const own = a.shared ? b : a;
          findings.push(
            at(
              own.feature.place,
              `${a.feature.id} (${one.replaceAll("-", " ")}) and ${b.feature.id} (${other.replaceAll("-", " ")}) share ${Math.round(shared)} square metres, which cannot be. Draw one of the outlines again.`,
            ),
          );
        }
      }
    }
    return findings;
  },
});
