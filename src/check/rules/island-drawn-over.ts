import { areasOf } from "../../measure/place.ts";
import { centroid, contains } from "../../geo/area.ts";
import { at, perHole } from "../rule.ts";

/**
 * A pond drawn over its island without a hole in it: by the drawing the green or a tee
 * lies in the water, and no carry over it would be true. An error, since golfers stake
 * balls on that figure.
 */
export const islandDrawnOver = perHole({
  name: "island-drawn-over",
  severity: "error",
  about: "A green or a tee marker lies inside water: the pond is drawn over its island, without a hole in it.",
  look: (hole) => {
    const spots = [...hole.placed.values()].flatMap((one) => {
      if (one.shared) return [];
      if (one.feature.kind === "green")
        return areasOf(one).map((area) => ({ one, what: "the green", point: centroid(area) }));
      const { shape } = one;
      return one.feature.kind === "tee-marker" && shape.type === "points"
        ? [{ one, what: `the tee marker ${one.feature.id}`, point: shape.points[0]! }]
        : [];
    });
    return [...hole.placed.values()]
      .filter(({ cover }) => cover === "water")
      .flatMap((water) =>
        spots
          .filter(({ point }) => areasOf(water).some((area) => contains(area, point)))
          .map(({ what }) =>
            at(
              water.shared ? spots[0]!.one.feature.place : water.feature.place,
              `${water.feature.id} covers ${what}, so it would lie in the water and no carry over it would be true. ` +
                "Draw the island as a hole in the polygon: a second ring inside the first (RFC 7946, 3.1.6).",
            ),
          ),
      );
  },
});
