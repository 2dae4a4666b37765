/** The green along a line of approach. */
import { areaSquareMetres, chords, innerPoint, type Chord } from "../geo/area.ts";
import type { Area, Point } from "../geo/position.ts";
import { along, directionTo, distanceMetres, rightOf } from "../geo/vector.ts";

export interface GreenAlong {
  readonly front: Point;
  readonly middle: Point;
  readonly back: Point;
  readonly sides: readonly [left: Point, right: Point];
  readonly depthMetres: number;
  readonly widthMetres: number;
  readonly areaSquareMetres: number;
  /** Unit direction of the approach. */
  readonly approach: Point;
}

/** The chord that holds a distance, or the nearest one. */
function chordAt(all: readonly Chord[], at: number): Chord {
  const gap = ([enter, exit]: Chord): number => Math.max(enter - at, at - exit, 0);
  return all.reduce((best, chord) => (gap(chord) < gap(best) ? chord : best));
}

/**
 * Front, middle and back of a green approached from a point.
 *
 * The line of approach runs from the point through the green's centre of gravity; front
 * and back are where it crosses the edge, and the middle halves them, which is how the
 * World Handicap System's rating teams find the centre of a green (Course Rating System
 * Manual, section 6). Width is measured square to it through that middle.
 */
export function greenFrom(green: Area, from: Point): GreenAlong {
  const centre = innerPoint(green);
  const approach = directionTo(from, centre);
  const toCentre = distanceMetres(from, centre);
  const [enter, exit] = chordAt(chords([green], from, approach), toCentre);
  const middle = along(from, approach, (enter + exit) / 2);
  const right = rightOf(approach);
  const [leftEdge, rightEdge] = chordAt(chords([green], middle, right), 0);
  return {
    front: along(from, approach, enter),
    middle,
    back: along(from, approach, exit),
    sides: [along(middle, right, leftEdge), along(middle, right, rightEdge)],
    depthMetres: exit - enter,
    widthMetres: rightEdge - leftEdge,
    areaSquareMetres: areaSquareMetres(green),
    approach,
  };
}
