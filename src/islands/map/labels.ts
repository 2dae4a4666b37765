/**
 * Where names stand: one point each, inside its feature. Made here rather than by the map,
 * which would repeat a polygon's name in every tile it touches.
 */
import type { FeatureCollection, Point as GeoPoint, Position } from "geojson";
import type { Area, Point } from "../../geo/position.ts";
import type { LonLat, MapFeatures } from "../../contract/map-data.ts";
import type { Side } from "../../measure/types.ts";
import { areaSquareMetres, innerPoint } from "../../geo/area.ts";
import { frameAt } from "../../geo/frame.ts";
import { lineThrough, locate, pointAt } from "../../geo/line.ts";

export interface LabelProperties {
  readonly text: string;
  /** Smaller goes first when two names want one place. */
  readonly rank: number;
  /** A point, or an area too small to hold its name: the name stands beside it. */
  readonly small: boolean;
  readonly bunker: boolean;
  /** Side of the line of play it lies on, so that its name stands away from the hole. */
  readonly side: Side;
}

/** An area larger than this, some 45 m square, holds its own name on a phone. */
const HOLDS_NAME_SQUARE_METRES = 2000;

export type Labels = FeatureCollection<GeoPoint, LabelProperties>;

/** @param line the line of play, where the map shows one hole */
export function nameLabels(features: MapFeatures, origin: LonLat, line: readonly LonLat[] | undefined): Labels {
  const frame = frameAt(origin);
  const play = line && lineThrough(line.map((position) => frame.toPlane(position)));
  const plane = (positions: readonly Position[]): Point[] =>
    positions.map(([longitude, latitude]) => frame.toPlane([longitude!, latitude!]));
  return {
    type: "FeatureCollection",
    features: features.features.flatMap(({ geometry, properties }) => {
      if (properties.name === undefined) return [];
      const within = (area: Area): Spot => ({
        point: innerPoint(area),
        small: areaSquareMetres(area) < HOLDS_NAME_SQUARE_METRES,
      });
      const spot = ((): Spot => {
        switch (geometry.type) {
          case "Point":
            return { point: plane([geometry.coordinates])[0], small: true };
          case "MultiPoint":
            return { point: plane(geometry.coordinates.slice(0, 1))[0], small: true };
          case "LineString":
            return { point: middleOf(plane(geometry.coordinates)), small: true };
          case "MultiLineString":
            return { point: middleOf(plane(geometry.coordinates[0] ?? [])), small: true };
          case "Polygon":
            return within(geometry.coordinates.map(plane));
          case "MultiPolygon":
            return within(largest(geometry.coordinates.map((area) => area.map(plane))));
        }
      })();
      if (spot.point === undefined) return [];
      const [longitude, latitude] = frame.toPosition(spot.point);
      return [
        {
          type: "Feature" as const,
          properties: {
            text: properties.name,
            rank: properties.hazard === true ? 0 : properties.kind === "landmark" ? 1 : 2,
            small: spot.small,
            bunker: properties.kind === "bunker",
            side: play !== undefined && locate(play, spot.point).offset < 0 ? "left" : "right",
          },
          geometry: { type: "Point" as const, coordinates: [longitude, latitude] },
        },
      ];
    }),
  };
}

interface Spot {
  readonly point: Point | undefined;
  readonly small: boolean;
}

function middleOf(points: readonly Point[]): Point | undefined {
  if (points.length < 2) return points[0];
  const line = lineThrough(points);
  return pointAt(line, line.lengthMetres / 2);
}

const largest = (areas: readonly Area[]): Area =>
  areas.reduce((best, area) => (areaSquareMetres(area) > areaSquareMetres(best) ? area : best));
