/** How much ground two areas share. */
import { featureCollection, intersect, polygon } from "@turf/turf";
import { areaSquareMetres, contains } from "./area.ts";
import { boxAround, overlaps } from "./box.ts";
import type { Area, Point } from "./position.ts";
import { crossing } from "./segment.ts";

const asPolygon = (area: Area) => polygon(area.map((ring) => ring.map(([x, y]) => [x, y])));

/** Whether two areas meet at all: cheap, and most pairs do not. */
function meet(a: Area, b: Area): boolean {
  const box = boxAround(b[0]!);
  if (!overlaps(boxAround(a[0]!), box)) return false;
  if (contains(a, b[0]![0]!) || contains(b, a[0]![0]!)) return true;
  return a.some((ring) =>
    ring.some((from, i) => {
      const to = ring[i + 1];
      return (
        to !== undefined &&
        overlaps(boxAround([from, to]), box) &&
        b.some((other) => other.some((p, j) => j > 0 && crossing(from, to, other[j - 1]!, p)))
      );
    }),
  );
}

/**
 * Square metres two areas of the plane have in common. Turf clips in whatever plane it is
 * given, so metres serve as well as degrees.
 */
export function sharedSquareMetres(a: Area, b: Area): number {
  if (!meet(a, b)) return 0;
  const common = intersect(featureCollection([asPolygon(a), asPolygon(b)]));
  if (!common) return 0;
  const areas = common.geometry.type === "Polygon" ? [common.geometry.coordinates] : common.geometry.coordinates;
  return areas.reduce(
    (sum, rings) => sum + areaSquareMetres(rings.map((ring) => ring.map(([x, y]): Point => [x!, y!]))),
    0,
  );
}

/** The same of two features' areas. */
export const sharedByAll = (a: readonly Area[], b: readonly Area[]): number =>
  a.reduce((sum, one) => sum + b.reduce((part, other) => part + sharedSquareMetres(one, other), 0), 0);
