import { isHazard } from "../../course/kinds.ts";
import { at, perHole } from "../rule.ts";
import { list } from "../say.ts";
import { locate } from "../../geo/line.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { pointsOf } from "../../measure/place.ts";
import { longestLine } from "../../measure/hole.ts";

/** A hazard further than this from the line of play is no business of the hole. Common practice, no source. */
export const FAR_METRES = 120;

export const farHazard = perHole({
  name: "far-hazard",
  severity: "warning",
  about: "A hazard on a hole's page lies more than 120 m from its line of play.",
  look: (hole, { say, measured }) => {
    const line = longestLine(hole);
    return [...hole.placed.values()].flatMap(({ feature, shape, shared }) => {
      if (shared || !isHazard(feature.kind)) return [];
      const points = pointsOf(shape);
      const away = Math.min(...points.map((point) => awayFrom(line, point)));
      if (away <= FAR_METRES) return [];
      const nearer = measured.holes
        .filter((other) => other !== hole && other.tees.length > 0)
        .filter((other) => points.some((point) => awayFrom(longestLine(other), point) <= FAR_METRES / 2))
        .map((other) => String(other.hole.number));
      return [
        at(
          feature.place,
          `${feature.id}: this ${feature.kind.replaceAll("-", " ")} lies ${say.length(away)} from the hole's line of play. ${nearer.length > 0 ? `It lies by hole ${list(nearer, "or")}: move it to that page.` : "Look at its coordinates, or move it to course.yaml."}`,
        ),
      ];
    });
  },
});

/** Distance from a line and its ends, not from the ends drawn out. */
function awayFrom(line: ReturnType<typeof longestLine>, point: readonly [number, number]): number {
  const { station, offset } = locate(line, point);
  if (station < 0) return distanceMetres(point, line.points[0]!);
  if (station > line.lengthMetres) return distanceMetres(point, line.points[line.points.length - 1]!);
  return Math.abs(offset);
}
