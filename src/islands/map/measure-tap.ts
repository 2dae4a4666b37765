/**
 * What one point of the map says: how far it is from the tee or from the golfer, how far
 * from it to the green, what lies under it and what lies ahead of it. Straight distances,
 * in the plane the build measured in.
 */
import type { Point } from "../../geo/position.ts";
import type { PlacedFeature } from "../../measure/types.ts";
import type { HazardAhead } from "./ahead.ts";
import type { HazardData, HoleData, TeeData } from "../../contract/hole-data.ts";
import type { LonLat, MapFeatureProperties } from "../../contract/map-data.ts";
import type { HolePlane } from "./hole-plane.ts";
import { areaSquareMetres, contains } from "../../geo/area.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { greenFrom } from "../../measure/green.ts";
import { pointsOf } from "../../measure/place.ts";
import { hazardsAhead } from "./ahead.ts";
import { holePlane } from "./hole-plane.ts";
import { distanceToLine } from "./nearest.ts";
import { thirdPoint, type Third } from "../../measure/third.ts";

/** A thin feature answers to a tap within this distance of it: a fingertip at the opening zoom. */
const TOUCH_METRES = 4;

export interface Reading {
  readonly position: LonLat;
  readonly tee: TeeData;
  /** Where the first leg starts: the tee marker, or where the golfer is. */
  readonly start: LonLat;
  /** Whether the start is where the golfer is. */
  readonly fromMe: boolean;
  /** Straight from the start. */
  readonly startMetres: number;
  /** On to the green along its line of approach from the point; undefined on the green. */
  readonly toFrontMetres: number | undefined;
  readonly toBackMetres: number | undefined;
  /** The third of the green that the golfer's hole is cut in. */
  readonly third: Third;
  /**
   * To the middle of that third, or of the green when it is the middle one. On the green: to the same as
   * seen from the tee.
   */
  readonly toHoleMetres: number;
  /** The two legs: start, point, and on to where {@link toHoleMetres} goes. */
  readonly legs: readonly [LonLat, LonLat, LonLat];
  readonly under: Under | undefined;
  /** From the point on; none on the green. */
  readonly ahead: readonly HazardAhead[];
}

/** The feature under a point. */
export interface Under {
  readonly properties: MapFeatureProperties;
  /** Its reach and carry from the tee: one entry for each stretch of it, none when it is no hazard. */
  readonly hazards: readonly HazardData[];
}

/** Reads points of one hole; making it lays the features into the plane once. */
export interface TapMeasure {
  readonly plane: HolePlane;
  /**
   * @param third of the green that the hole is cut in
   * @param me where the golfer is, to measure from there instead of the tee
   * @throws RangeError when the hole has no such tee set.
   */
  read(position: LonLat, teeId: string, third: Third, me?: LonLat): Reading;
  under(position: LonLat): MapFeatureProperties | undefined;
}

/** @throws RangeError when the hole has no green. */
export function tapMeasure(data: HoleData): TapMeasure {
  const plane = holePlane(data);
  const { frame, green } = plane;
  const nameable = nameableIn(data, plane);
  return {
    plane,
    read(position, teeId, third, me) {
      const tee = data.tees.find(({ id }) => id === teeId);
      if (tee === undefined) {
        throw new RangeError(
          `Hole ${data.hole.number} has no ${teeId} tee: choose one of ${data.tees.map(({ id }) => id).join(", ")}.`,
        );
      }
      const point = frame.toPlane(position);
      const start = me ?? tee.marker;
      const ahead = contains(green, point) ? undefined : greenFrom(green, point);
      const { front, middle, back } = tee.green;
      const hole =
        ahead === undefined
          ? frame.toPlane(thirdPoint(third, { front: front.position, middle: middle.position, back: back.position }))
          : thirdPoint(third, ahead);
      const under = featureUnder(nameable, point);
      return {
        position,
        tee,
        start,
        fromMe: me !== undefined,
        startMetres: distanceMetres(frame.toPlane(start), point),
        toFrontMetres: ahead && distanceMetres(point, ahead.front),
        toBackMetres: ahead && distanceMetres(point, ahead.back),
        third,
        toHoleMetres: distanceMetres(point, hole),
        legs: [start, position, plane.toLonLat(hole)],
        under: under && {
          properties: under,
          hazards: me === undefined ? tee.hazards.filter(({ id }) => id === under.id) : [],
        },
        ahead: ahead === undefined ? [] : hazardsAhead(plane, point),
      };
    },
    under: (position) => featureUnder(nameable, frame.toPlane(position)),
  };
}

interface Nameable {
  readonly properties: MapFeatureProperties;
  readonly placed: PlacedFeature;
  readonly sizeSquareMetres: number;
}

/** Hazards and named features, the smallest first, so a bunker is found within its fairway. */
const nameableIn = ({ features }: HoleData, { placed }: HolePlane): readonly Nameable[] =>
  features.features
    .filter(({ properties }) => properties.hazard === true || properties.name !== undefined)
    .map(({ properties }) => {
      const one = placed.get(properties.id)!;
      const areas = one.shape.type === "areas" ? one.shape.areas : [];
      return {
        properties,
        placed: one,
        sizeSquareMetres: areas.reduce((sum, area) => sum + areaSquareMetres(area), 0),
      };
    })
    .sort((a, b) => a.sizeSquareMetres - b.sizeSquareMetres);

const featureUnder = (nameable: readonly Nameable[], point: Point): MapFeatureProperties | undefined =>
  nameable.find(({ placed, properties }) =>
    isAt(placed, point, Math.max(TOUCH_METRES, (properties.widthMetres ?? 0) / 2)),
  )?.properties;

function isAt({ shape }: PlacedFeature, point: Point, withinMetres: number): boolean {
  switch (shape.type) {
    case "areas":
      return shape.areas.some((area) => contains(area, point));
    case "lines":
      return shape.lines.some((line) => distanceToLine(line, point) <= withinMetres);
    case "points":
      return pointsOf(shape).some((one) => distanceMetres(one, point) <= withinMetres);
  }
}
