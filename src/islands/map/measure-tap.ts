/**
 * What one point of the map says: how far it is from the tee, how far from it to the
 * green, and what lies under it. Straight distances, in the plane the build measured in.
 */
import type { Area, Point } from "../../geo/position.ts";
import type { HazardData, HoleData, LonLat, MapFeatureProperties, TeeData } from "../hole-data.ts";
import { areaSquareMetres, contains } from "../../geo/area.ts";
import { frameAt } from "../../geo/frame.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { greenFrom } from "../../measure/green.ts";
import { distanceToLine } from "./nearest.ts";

/** A thin feature answers to a tap within this distance of it: a fingertip at the opening zoom. */
const TOUCH_METRES = 4;

export interface Reading {
  readonly position: LonLat;
  readonly tee: TeeData;
  /** Straight from the tee marker. */
  readonly fromTeeMetres: number;
  /** On to the green along its line of approach from the point; undefined on the green. */
  readonly toFrontMetres: number | undefined;
  /** On the green: to its middle as seen from the tee. */
  readonly toMiddleMetres: number;
  readonly toBackMetres: number | undefined;
  /** The two legs: tee, point, middle of the green. */
  readonly legs: readonly [LonLat, LonLat, LonLat];
  readonly under: Under | undefined;
}

/** The feature under a point. */
export interface Under {
  readonly properties: MapFeatureProperties;
  /** Its reach and carry from the tee: one entry for each stretch of it, none when it is no hazard. */
  readonly hazards: readonly HazardData[];
}

/** Reads points of one hole; making it lays the features into the plane once. */
export interface TapMeasure {
  /** @throws RangeError when the hole has no such tee set. */
  read(position: LonLat, teeId: string): Reading;
}

interface Laid {
  readonly properties: MapFeatureProperties;
  readonly areas: readonly Area[];
  readonly lines: readonly (readonly Point[])[];
  readonly sizeSquareMetres: number;
}

/** @throws RangeError when the hole has no green. */
export function tapMeasure(data: HoleData): TapMeasure {
  const frame = frameAt(data.origin);
  const laid = data.features.features.map((feature) => lay(feature, frame.toPlane));
  const green = laid.find(({ properties }) => properties.kind === "green")?.areas[0];
  if (green === undefined) throw new RangeError(`Hole ${data.hole.number} has no green to measure to.`);
  return {
    read(position, teeId) {
      const tee = data.tees.find(({ id }) => id === teeId);
      if (tee === undefined) {
        throw new RangeError(`Hole ${data.hole.number} has no ${teeId} tee: choose one of ${data.tees.map(({ id }) => id).join(", ")}.`);
      }
      const point = frame.toPlane(position);
      const ahead = contains(green, point) ? undefined : greenFrom(green, point);
      const middle = ahead?.middle ?? frame.toPlane(tee.green.middle.position);
      const [longitude, latitude] = frame.toPosition(middle);
      const under = featureUnder(laid, point);
      return {
        position,
        tee,
        fromTeeMetres: distanceMetres(frame.toPlane(tee.marker), point),
        toFrontMetres: ahead && distanceMetres(point, ahead.front),
        toMiddleMetres: distanceMetres(point, middle),
        toBackMetres: ahead && distanceMetres(point, ahead.back),
        legs: [tee.marker, position, [longitude, latitude]],
        under: under && { properties: under, hazards: tee.hazards.filter(({ id }) => id === under.id) },
      };
    },
  };
}

/** The smallest hazard or named feature at a point, so a bunker is found within its fairway. */
function featureUnder(laid: readonly Laid[], point: Point): MapFeatureProperties | undefined {
  return laid
    .filter(({ properties }) => properties.hazard || properties.name !== undefined)
    .filter(({ areas, lines, properties }) =>
      areas.some((area) => contains(area, point)) ||
      lines.some((line) => distanceToLine(line, point) <= Math.max(TOUCH_METRES, (properties.widthMetres ?? 0) / 2)))
    .sort((a, b) => a.sizeSquareMetres - b.sizeSquareMetres)[0]?.properties;
}

function lay(feature: HoleData["features"]["features"][number], toPlane: (position: LonLat) => Point): Laid {
  const { geometry, properties } = feature;
  const points = (positions: readonly (readonly number[])[]): Point[] =>
    positions.map(([longitude, latitude]) => toPlane([longitude!, latitude!]));
  const found = ((): { areas: Area[]; lines: Point[][] } => {
    switch (geometry.type) {
      case "Point": return { areas: [], lines: [points([geometry.coordinates])] };
      case "MultiPoint": return { areas: [], lines: geometry.coordinates.map((position) => points([position])) };
      case "LineString": return { areas: [], lines: [points(geometry.coordinates)] };
      case "MultiLineString": return { areas: [], lines: geometry.coordinates.map(points) };
      case "Polygon": return { areas: [geometry.coordinates.map(points)], lines: [] };
      case "MultiPolygon": return { areas: geometry.coordinates.map((area) => area.map(points)), lines: [] };
    }
  })();
  return { properties, ...found, sizeSquareMetres: found.areas.reduce((sum, area) => sum + areaSquareMetres(area), 0) };
}
