/** How much ground two features share. */
import { featureCollection, intersect, polygon } from "@turf/turf";
import { areaSquareMetres } from "../geo/area.ts";
import { boxAround, overlaps } from "../geo/box.ts";
import type { Area, Point } from "../geo/position.ts";

const asPolygon = (area: Area) => polygon(area.map((ring) => ring.map(([x, y]) => [x, y])));

/**
 * Square metres two areas of the plane have in common. Turf clips in whatever plane it is
 * given, so metres serve as well as degrees.
 */
export function sharedSquareMetres(a: Area, b: Area): number {
  if (!overlaps(boxAround(a[0]!), boxAround(b[0]!))) return 0;
  const common = intersect(featureCollection([asPolygon(a), asPolygon(b)]));
  if (!common) return 0;
  const areas = common.geometry.type === "Polygon" ? [common.geometry.coordinates] : common.geometry.coordinates;
  return areas.reduce((sum, rings) => sum + areaSquareMetres(rings.map((ring) => ring.map(([x, y]): Point => [x!, y!]))), 0);
}

/** The same of two features' areas. */
export const sharedByAll = (a: readonly Area[], b: readonly Area[]): number =>
  a.reduce((sum, one) => sum + b.reduce((part, other) => part + sharedSquareMetres(one, other), 0), 0);
