/**
 * Penalty areas around water that is surveyed for itself: stakes stand round a burn or a
 * pond, and only the burn or the pond is wet. Where nothing is surveyed in an area whose
 * tags leave its ground open, the area itself is the water.
 */
import { leavesGroundOpen } from "../course/ground-cover.ts";
import { contains } from "../geo/area.ts";
import { boxAround, overlaps, type Box } from "../geo/box.ts";
import type { Point } from "../geo/position.ts";
import { densify } from "../geo/segment.ts";
import { areasOf } from "./place.ts";
import type { PlacedFeature } from "./types.ts";

/** A pond lies in an area when this share of its shore does; the sea that an area ends at does not. */
const LEAST_SHARE = 0.5;

/** A burn may be drawn with few points: it is looked at this closely. */
const STEP_METRES = 5;

interface Water {
  readonly path: readonly Point[];
  readonly box: Box;
  readonly isStream: boolean;
}

const watersOf = ({ feature, shape, cover }: PlacedFeature): Water[] => {
  if (cover !== "water" || leavesGroundOpen(feature) || shape.type === "points") return [];
  const paths = shape.type === "lines" ? shape.lines : shape.areas.map(([shore]) => shore!);
  return paths.map((path) => ({
    path: densify(path, STEP_METRES),
    box: boxAround(path),
    isStream: shape.type === "lines",
  }));
};

/** @param all everything that may lie in a penalty area: a course's shared features and those of all its holes */
export function coverSettler(all: Iterable<PlacedFeature>): (one: PlacedFeature) => PlacedFeature {
  const waters = [...all].flatMap(watersOf);
  return (one) => {
    if (!leavesGroundOpen(one.feature) || one.shape.type !== "areas") return one;
    const holds = ({ path, box, isStream }: Water): boolean =>
      areasOf(one).some((area) => {
        if (!overlaps(boxAround(area[0]!), box)) return false;
        const within = path.filter((point) => contains(area, point)).length;
        return isStream ? within > 0 : within >= LEAST_SHARE * path.length;
      });
    return waters.some(holds) ? { ...one, cover: "none" } : one;
  };
}
