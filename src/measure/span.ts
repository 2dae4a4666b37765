/** The gap between two features. */
import { contains } from "../geo/area.ts";
import type { Point } from "../geo/position.ts";
import { crossing, nearestOn } from "../geo/segment.ts";
import { distanceMetres } from "../geo/vector.ts";
import { areasOf, boundariesOf, pointsOf } from "./place.ts";
import type { PlacedFeature } from "./types.ts";

const pathsOf = (placed: PlacedFeature): readonly (readonly Point[])[] => {
  const boundaries = boundariesOf(placed);
  return boundaries.length > 0 ? boundaries : pointsOf(placed.shape).map((point) => [point, point]);
};

/** Metres from the edge of one feature to the edge of another; 0 where they touch, cross or one holds the other. */
export function spanMetres(a: PlacedFeature, b: PlacedFeature): number {
  const holds = (outer: PlacedFeature, inner: PlacedFeature): boolean =>
    areasOf(outer).some((area) => contains(area, pointsOf(inner.shape)[0]!));
  if (holds(a, b) || holds(b, a)) return 0;
  let least = Infinity;
  for (const one of pathsOf(a)) {
    for (const other of pathsOf(b)) {
      for (let i = 1; i < one.length; i++) {
        for (let j = 1; j < other.length; j++) {
          const [p, q, r, s] = [one[i - 1]!, one[i]!, other[j - 1]!, other[j]!];
          if (crossing(p, q, r, s)) return 0;
          // The least distance of two pieces that do not cross is at an end of one of them.
          least = Math.min(
            least,
            distanceMetres(p, nearestOn(r, s, p)),
            distanceMetres(q, nearestOn(r, s, q)),
            distanceMetres(r, nearestOn(p, q, r)),
            distanceMetres(s, nearestOn(p, q, s)),
          );
        }
      }
    }
  }
  return least;
}
