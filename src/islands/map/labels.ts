/**
 * Where names stand: one point each, inside its feature. Made here rather than by the map,
 * which would repeat a polygon's name in every tile it touches.
 */
import type { FeatureCollection, Point as GeoPoint, Position } from "geojson";
import type { Area, Point } from "../../geo/position.ts";
import type { LonLat, MapFeatures } from "../hole-data.ts";
import { areaSquareMetres, innerPoint } from "../../geo/area.ts";
import { frameAt } from "../../geo/frame.ts";
import { lineThrough, pointAt } from "../../geo/line.ts";

export interface LabelProperties {
  readonly text: string;
  /** Smaller goes first when two names want one place. */
  readonly rank: number;
  readonly hazard: boolean;
}

export type Labels = FeatureCollection<GeoPoint, LabelProperties>;

export function nameLabels(features: MapFeatures, origin: LonLat): Labels {
  const frame = frameAt(origin);
  const plane = (positions: readonly Position[]): Point[] => positions.map(([longitude, latitude]) => frame.toPlane([longitude!, latitude!]));
  return {
    type: "FeatureCollection",
    features: features.features.flatMap(({ geometry, properties }) => {
      if (properties.name === undefined) return [];
      const point = ((): Point | undefined => {
        switch (geometry.type) {
          case "Point": return plane([geometry.coordinates])[0];
          case "MultiPoint": return plane(geometry.coordinates.slice(0, 1))[0];
          case "LineString": return middleOf(plane(geometry.coordinates));
          case "MultiLineString": return middleOf(plane(geometry.coordinates[0] ?? []));
          case "Polygon": return innerPoint(geometry.coordinates.map(plane));
          case "MultiPolygon": return innerPoint(largest(geometry.coordinates.map((area) => area.map(plane))));
        }
      })();
      if (point === undefined) return [];
      const [longitude, latitude] = frame.toPosition(point);
      const hazard = properties.hazard === true;
      return [{
        type: "Feature" as const,
        properties: { text: properties.name, rank: hazard ? 0 : properties.kind === "landmark" ? 1 : 2, hazard },
        geometry: { type: "Point" as const, coordinates: [longitude, latitude] },
      }];
    }),
  };
}

function middleOf(points: readonly Point[]): Point | undefined {
  if (points.length < 2) return points[0];
  const line = lineThrough(points);
  return pointAt(line, line.lengthMetres / 2);
}

const largest = (areas: readonly Area[]): Area =>
  areas.reduce((best, area) => (areaSquareMetres(area) > areaSquareMetres(best) ? area : best));
