import { crossing } from "../../geo/segment.ts";
import { longestLine } from "../../measure/hole.ts";
import { at, perHole } from "../rule.ts";

/**
 * A burn that a hole is played over is a penalty area, unless the club says otherwise (Rules of Golf,
 * definition of penalty area: any body of water).
 */
export const streamInPlay = perHole({
  name: "stream-in-play",
  severity: "warning",
  about: "The line of play crosses a stream that is tagged as no penalty area, so no carry is told.",
  look: (measured, { say }) => {
    if (measured.tees.length === 0) return [];
    const { points, stations } = longestLine(measured);
    return [...measured.placed.values()].flatMap(({ feature, shape }) => {
      if (feature.kind !== "stream" || shape.type !== "lines") return [];
      const met = points.flatMap((to, i) => {
        const from = points[i - 1];
        if (from === undefined) return [];
        return shape.lines.flatMap((line) =>
          line.flatMap((b, k) => {
            const a = line[k - 1];
            const found = a && crossing(from, to, a, b);
            return found ? [stations[i - 1]! + Math.hypot(found[0] - from[0], found[1] - from[1])] : [];
          }),
        );
      });
      if (met.length === 0) return [];
      const name = feature.name ?? feature.id;
      return [
        at(
          feature.place,
          `The line of play of hole ${measured.hole.number} crosses ${name} after ${say.length(Math.min(...met))}. If it is a penalty area, add golf: water_hazard (yellow stakes) or golf: lateral_water_hazard (red) to the properties of ${feature.id}, and the guide tells its carry; if not, silence the rule and say why.`,
        ),
      ];
    });
  },
});
