import { isBoundary, isPrepared } from "../../course/kinds.ts";
import { crossing } from "../../geo/segment.ts";
import { boxAround, overlaps } from "../../geo/box.ts";
import { areasOf, boundariesOf } from "../../measure/place.ts";
import type { PlacedFeature } from "../../measure/types.ts";
import { at, perHole, type Finding } from "../rule.ts";
import { sharedByAll } from "../../geo/overlap.ts";

/** What a careless outline explains. Common practice, no source. */
const TOLERANCE_SQUARE_METRES = 4;

function cross(a: PlacedFeature, b: PlacedFeature): boolean {
  for (const one of boundariesOf(a)) {
    for (const other of boundariesOf(b)) {
      for (let i = 1; i < one.length; i++) {
        const box = boxAround([one[i - 1]!, one[i]!]);
        for (let j = 1; j < other.length; j++) {
          if (
            overlaps(box, boxAround([other[j - 1]!, other[j]!])) &&
            crossing(one[i - 1]!, one[i]!, other[j - 1]!, other[j]!)
          )
            return true;
        }
      }
    }
  }
  return false;
}

export const crossesBoundary = perHole({
  name: "crosses-boundary",
  severity: "warning",
  about: "A green, fairway, bunker or teeing ground reaches out of bounds.",
  look: (hole) => {
    const findings: Finding[] = [];
    const placed = [...hole.placed.values()];
    const bounds = placed.filter(({ feature }) => isBoundary(feature.kind));
    for (const one of placed) {
      if (one.shared || !isPrepared(one.feature.kind)) continue;
      for (const boundary of bounds) {
        const out =
          boundary.shape.type === "areas"
            ? sharedByAll(areasOf(one), areasOf(boundary)) > TOLERANCE_SQUARE_METRES
            : cross(one, boundary);
        if (out)
          findings.push(
            at(
              one.feature.place,
              `${one.feature.id} (${one.feature.kind.replaceAll("-", " ")}) reaches over the boundary ${boundary.feature.id}. Draw one of them again.`,
            ),
          );
      }
    }
    return findings;
  },
});
