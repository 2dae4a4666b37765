/**
 * A hole's figures. All lengths are horizontal metres in the course's {@link Frame};
 * heights are metres in the content's own vertical datum, only ever used as differences.
 */
import type { Frame } from "../geo/frame.ts";
import type { Line } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import type { GroundCover } from "../course/kinds.ts";
import type { Course, Feature, Hole, TeeSet } from "../course/types.ts";

/** A feature laid into the plane. */
export type Shape =
  | { readonly type: "points"; readonly points: readonly Point[] }
  | { readonly type: "lines"; readonly lines: readonly (readonly Point[])[] }
  | { readonly type: "areas"; readonly areas: readonly Area[] };

export interface PlacedFeature {
  readonly feature: Feature;
  readonly shape: Shape;
  /** What lies there: its kind's, or what its tags and the water surveyed in it say. */
  readonly cover: GroundCover;
  /** Mean of the heights written in its coordinates, or undefined where it has none. */
  readonly heightMetres: number | undefined;
  /** Written in course.yaml, not in the hole's own page. */
  readonly shared: boolean;
}

export type Side = "left" | "right";

/** A turning point of the line of play. */
export interface Bend {
  /** Metres from the standing point along the line. */
  readonly stationMetres: number;
  /** How far the line turns, degrees, always positive. */
  readonly angleDegrees: number;
  readonly side: Side;
  readonly point: Point;
}

/** A hazard as seen from one standing point. */
export interface HazardFigures {
  readonly id: string;
  /** A hazard that meets the corridor more than once (a burn crossing twice) has an entry for each: this one's number from 1, in order of play. */
  readonly stretch: number;
  readonly stretches: number;
  /** `across` when the line of play itself runs through it. */
  readonly position: Side | "across";
  /** Whether any of it lies within the shot corridor. */
  readonly inCorridor: boolean;
  /**
   * Straight distance from the standing point to its nearest edge within the corridor
   * (to its nearest edge anywhere when none of it is in the corridor).
   */
  readonly reachMetres: number;
  /** Straight distance that is safely past it: to the far crossing of the corridor, or its far station when beside the line. */
  readonly carryMetres: number;
  /** For a hazard across the line: the far crossing on the line itself. */
  readonly carryOnLineMetres: number | undefined;
  /** Where reach and carry are read, for leaders on the plate. */
  readonly reachPoint: Point;
  readonly carryPoint: Point;
  /** First and last station of the part in the corridor (all of it when none is). */
  readonly stationMetres: readonly [number, number];
  /** Its nearest offset from the line: negative left, positive right, 0 when across. */
  readonly offsetMetres: number;
  /** From its far end (carry point) to the middle of the green. */
  readonly leavesMetres: number;
}

/** The green along one line of approach. */
export interface GreenFigures {
  /** The standing point's own distances, along the line of play. */
  readonly frontMetres: number;
  readonly middleMetres: number;
  readonly backMetres: number;
  /** Front edge to back edge on the line of approach. */
  readonly depthMetres: number;
  /** Edge to edge square to it, through the middle. */
  readonly widthMetres: number;
  readonly areaSquareMetres: number;
  readonly front: Point;
  readonly middle: Point;
  readonly back: Point;
  /** Ends of the width, left then right. */
  readonly sides: readonly [Point, Point];
  /** Unit direction of the last leg. */
  readonly approach: Point;
}

/** What a fairway offers at one station of the line of play. */
export interface FairwayFigures {
  readonly stationMetres: number;
  /** 0 where the line leaves the fairway. */
  readonly widthMetres: number;
  /** Fairway to the left and right of the line; undefined where the line is off it. */
  readonly leftMetres: number | undefined;
  readonly rightMetres: number | undefined;
  /** Left and right edge, where there is fairway. */
  readonly edges: readonly [Point, Point] | undefined;
}

/** A hole from one tee set. */
export interface TeeFigures {
  readonly tee: TeeSet;
  readonly marker: Point;
  /** Tee marker through the remaining turning points to the middle of the green. */
  readonly line: Line;
  readonly lengthMetres: number;
  readonly cardMetres: number | undefined;
  /** Green above (+) or below (-) the tee, where heights are known. */
  readonly riseMetres: number | undefined;
  readonly bends: readonly Bend[];
  readonly green: GreenFigures;
  /** In order of reach. Every hazard of the hole, whether in the corridor or not. */
  readonly hazards: readonly HazardFigures[];
}

export interface MeasuredHole {
  readonly course: Course;
  readonly hole: Hole;
  readonly frame: Frame;
  /** The hole's own features and the shared ones near it, by id. */
  readonly placed: ReadonlyMap<string, PlacedFeature>;
  readonly corridorMetres: number;
  /** One per tee set on the hole's card, longest first. */
  readonly tees: readonly TeeFigures[];
}

export interface MeasuredCourse {
  readonly course: Course;
  readonly frame: Frame;
  readonly holes: readonly MeasuredHole[];
  /** Shared features, placed. */
  readonly placed: ReadonlyMap<string, PlacedFeature>;
  /** The ground in the course's frame, where the course has a height model. */
  readonly ground: HeightGrid | undefined;
}
