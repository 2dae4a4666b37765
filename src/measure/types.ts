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

/** Dry ground on the line of play within a hazard's stretch: an island, a peninsula, the ground a green lies on. */
export interface DryLand {
  /** To where it begins on the line: the carry to it. */
  readonly frontMetres: number;
  /** To where the hazard meets the line again behind it; undefined where it does not in the corridor. */
  readonly backMetres: number | undefined;
  readonly front: Point;
  readonly back: Point | undefined;
  /** Whether the middle of the green lies on it. */
  readonly green: boolean;
}

/**
 * Why a hazard has no carry: a boundary is never carried; what runs on to the end of the
 * hole has no far side; what lies in front of the green and beside or behind it is not
 * passed, only the dry land within it is reached.
 */
export type NoCarry = "boundary" | "no-end" | "around-green";

/**
 * A stretch of hazard as seen from one standing point: one connected run of it in the
 * playing corridor, with gaps under 6 m along the line joined.
 *
 * A ball that comes down in the corridor nearer than `reachMetres` is not in it, nor is one
 * that comes down further than `farMetres`: both are straight distances, every point of the
 * stretch in the corridor lies between them, and both are attained.
 */
export interface HazardFigures {
  readonly id: string;
  /**
   * A hazard that meets the corridor more than once (a burn crossing twice) has an entry for each: this
   * one's number from 1, in order of play, the same from every tee set.
   */
  readonly stretch: number;
  /** How many there are from any tee set. */
  readonly stretches: number;
  /** `across` when the line of play runs through it before the green's middle, `beyond` when only past it. */
  readonly position: Side | "across" | "beyond";
  /** Whether any of it lies within the shot corridor. */
  readonly inCorridor: boolean;
  /**
   * Straight distance from the standing point to its nearest point within the corridor
   * (to its nearest edge anywhere when none of it is in the corridor); 0 from inside it.
   */
  readonly reachMetres: number;
  /** Straight distance to its furthest point within the corridor. */
  readonly farMetres: number;
  /** What a ball must fly to be past all of it: `farMetres`, where that is a carry at all. */
  readonly carryMetres: number | undefined;
  readonly noCarry: NoCarry | undefined;
  /** Straight distance to where the line of play first leaves it; undefined where it lies beside, or is a boundary. */
  readonly carryOnLineMetres: number | undefined;
  /** Dry ground on the line within the stretch, in order of play. */
  readonly dryLand: readonly DryLand[];
  /** Where reach and the far distance are read, for leaders on the plate. */
  readonly reachPoint: Point;
  readonly farPoint: Point;
  /** First and last station of the part in the corridor (all of it when none is). */
  readonly stationMetres: readonly [number, number];
  /** Its nearest offset from the line: negative left, positive right, 0 when across or beyond. */
  readonly offsetMetres: number;
  /** Along the line of play from its far point to the middle of the green; negative past it. */
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
  /** Where hazards meet the corridor, so that a stretch has one number wherever one stands. */
  readonly meetings: Meetings;
}

/** For each hazard the intervals, in metres still to play, in which it meets a corridor, in order of play. */
export type Meetings = ReadonlyMap<string, readonly (readonly [from: number, to: number])[]>;

export interface MeasuredCourse {
  readonly course: Course;
  readonly frame: Frame;
  readonly holes: readonly MeasuredHole[];
  /** Shared features, placed. */
  readonly placed: ReadonlyMap<string, PlacedFeature>;
  /** The ground in the course's frame, where the course has a height model. */
  readonly ground: HeightGrid | undefined;
}
