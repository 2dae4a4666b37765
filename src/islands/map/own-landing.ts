/**
 * Where the golfer's own drive comes down, and the longest stroke after it: a carry of the given length along the line
 * of play, as an arc across the shot corridor, and the fairway there. What wind, air and slope make of
 * the carry is worked out before: see own-drives.ts.
 */
import type { Point } from "../../geo/position.ts";
import type { TeeData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import type { HolePlane } from "./hole-plane.ts";
import { directionAt, lineThrough, pointAt } from "../../geo/line.ts";
import { along, rightOf } from "../../geo/vector.ts";
import { fairwayAt } from "../../measure/fairway.ts";
import { areasOfKind } from "../../measure/place.ts";
import { thirdMetres, type Third } from "../../measure/third.ts";

export interface OwnLanding {
  /** What the stroke carries. */
  readonly driveMetres: number;
  /** Across the corridor, left to right. */
  readonly arc: readonly LonLat[];
  /** The part of it that is fairway; undefined off the fairway. */
  readonly fairwayArc: readonly LonLat[] | undefined;
  /** Square to the line of play; 0 off the fairway. */
  readonly fairwayMetres: number;
  /** On along the line of play to the middle of the golfer's third of the green, or of the green. */
  readonly leavesMetres: number;
  /** Of a drive: the golfer's longest stroke after it, where that too is short of the hole. */
  readonly next?: OwnLanding;
}

const PARTS = 16;

/**
 * Undefined when the drive is as long as the way to the hole.
 *
 * @param nextMetres what the golfer's longest stroke after the drive carries, where it is known
 */
export function ownLanding(
  plane: HolePlane,
  tee: TeeData,
  third: Third,
  driveMetres: number,
  nextMetres?: number,
): OwnLanding | undefined {
  const drive = strokeLanding(plane, tee, third, 0, driveMetres);
  const next =
    drive && nextMetres !== undefined ? strokeLanding(plane, tee, third, driveMetres, nextMetres) : undefined;
  return drive && next ? { ...drive, next } : drive;
}

/** Where a stroke from a station of the line of play comes down on it. */
function strokeLanding(
  plane: HolePlane,
  tee: TeeData,
  third: Third,
  fromMetres: number,
  strokeMetres: number,
): OwnLanding | undefined {
  const line = lineThrough(tee.line.map((position) => plane.frame.toPlane(position)));
  const { front, middle, back } = tee.green;
  // The line ends in the middle of the green.
  const past = thirdMetres(third, { front: front.metres, middle: middle.metres, back: back.metres }) - middle.metres;
  const station = fromMetres + strokeMetres;
  if (!(strokeMetres > 0) || station >= line.lengthMetres + Math.min(0, past)) return undefined;
  const centre = pointAt(line, station);
  const facing = directionAt(line, station);
  const right = rightOf(facing);
  // On one leg this is the circle about where it is struck; past a bend, one as wide, about a point as far back.
  const at = (offset: number): Point =>
    along(along(centre, right, offset), facing, Math.sqrt(strokeMetres ** 2 - offset ** 2) - strokeMetres);
  const arc = (from: number, to: number): LonLat[] =>
    Array.from({ length: PARTS + 1 }, (_, i) => plane.toLonLat(at(from + ((to - from) * i) / PARTS)));
  const half = Math.min(plane.corridorMetres, strokeMetres);
  const fairway = fairwayAt(line, station, areasOfKind(plane.placed.values(), "fairway"));
  return {
    driveMetres: strokeMetres,
    arc: arc(-half, half),
    fairwayArc:
      fairway.leftMetres === undefined || fairway.rightMetres === undefined
        ? undefined
        : arc(-Math.min(half, fairway.leftMetres), Math.min(half, fairway.rightMetres)),
    fairwayMetres: fairway.widthMetres,
    leavesMetres: line.lengthMetres + past - station,
  };
}
