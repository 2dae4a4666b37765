/**
 * The playing corridor as a shape on the ground: everything within its half-width of the
 * line of play, square at the tee and a little beyond the green.
 *
 *            ____________________
 *      tee  |                    `.        legs are rectangles, the outside of a bend
 *       o---|------------------.   \       is a sector of a circle about it
 *           |_________________  \   |
 *                             | bend|
 *                             |  |  |
 *                             |  o green, and BEYOND_METRES more
 */
import { boxAround, grow, type Box } from "../geo/box.ts";
import type { Line } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { between } from "../geo/segment.ts";
import { along, cross, directionTo, distanceMetres, dot, rightOf } from "../geo/vector.ts";

/** How far past the middle of the green the corridor goes on: what lies there still catches a shot too long. */
export const BEYOND_METRES = 45;

/** Rounding of plane coordinates is far below this; two points this near are one. */
const SAME_METRES = 1e-7;

/** One leg of the line, the last one with the ground beyond the green. */
export interface Leg {
  readonly start: Point;
  readonly direction: Point;
  /** Of the leg; for the last one without what lies beyond. */
  readonly lengthMetres: number;
  /** How far along the leg the corridor goes. */
  readonly corridorMetres: number;
  readonly station: number;
}

/** A piece of an outline: straight, or an arc about a turning point run through by angle. */
export type Edge =
  | { readonly type: "straight"; readonly from: Point; readonly to: Point }
  | {
      readonly type: "arc";
      readonly centre: Point;
      readonly radius: number;
      readonly start: number;
      readonly end: number;
    };

export interface Corridor {
  readonly line: Line;
  readonly halfWidthMetres: number;
  readonly legs: readonly Leg[];
  readonly box: Box;
  /** Its outline, in pieces that run along one leg or about one bend each. */
  readonly outline: readonly Edge[];
}

const corridors = new WeakMap<Line, Map<number, Corridor>>();

/** The corridor about a line of play; worked out once for a line and a width. */
export function corridorAbout(line: Line, halfWidthMetres: number): Corridor {
  const known = corridors.get(line) ?? new Map<number, Corridor>();
  corridors.set(line, known);
  const found = known.get(halfWidthMetres);
  if (found) return found;
  const last = line.points.length - 2;
  const legs = line.points.slice(0, -1).map((start, i): Leg => {
    const lengthMetres = line.stations[i + 1]! - line.stations[i]!;
    return {
      start,
      direction: directionTo(start, line.points[i + 1]!),
      lengthMetres,
      corridorMetres: i === last ? lengthMetres + BEYOND_METRES : lengthMetres,
      station: line.stations[i]!,
    };
  });
  const end = along(legs[last]!.start, legs[last]!.direction, legs[last]!.corridorMetres);
  const shell = { line, halfWidthMetres, legs, box: grow(boxAround([...line.points, end]), halfWidthMetres + 1) };
  const corridor = { ...shell, outline: outlineOf(shell) };
  known.set(halfWidthMetres, corridor);
  return corridor;
}

type Shell = Omit<Corridor, "outline">;

/** Whether a point lies in the corridor, its edge included. */
export function inCorridor({ legs, halfWidthMetres: width }: Shell, point: Point, slackMetres = SAME_METRES): boolean {
  return legs.some((leg, i) => {
    const to: Point = [point[0] - leg.start[0], point[1] - leg.start[1]];
    const t = dot(to, leg.direction);
    const within = t >= -slackMetres && t <= leg.corridorMetres + slackMetres;
    if (within && Math.abs(cross(leg.direction, to)) <= width + slackMetres) return true;
    // The outside of the bend at this leg's start: past the leg before, short of this one.
    const before = legs[i - 1];
    if (!before || t > slackMetres || dot(to, before.direction) < -slackMetres) return false;
    return Math.hypot(to[0], to[1]) <= width + slackMetres;
  });
}

/** A place on the line: the station and the distance from it, to the right positive. */
export interface Place {
  readonly station: number;
  readonly offset: number;
}

/** Which part of the line is nearest to a point: a leg, or the turning point at its start. */
function nearestPart({ legs }: Shell, point: Point): { readonly leg: number; readonly bend: boolean } {
  let best = { leg: 0, bend: false };
  let least = Infinity;
  legs.forEach((leg, i) => {
    const to: Point = [point[0] - leg.start[0], point[1] - leg.start[1]];
    const t = dot(to, leg.direction);
    const past = t >= leg.corridorMetres && i < legs.length - 1;
    const clamped = Math.min(leg.corridorMetres, Math.max(0, t));
    const distance = distanceMetres(point, along(leg.start, leg.direction, clamped));
    if (distance >= least - SAME_METRES) return;
    // Past its end it is the next turning point that is near.
    [best, least] = [past ? { leg: i + 1, bend: true } : { leg: i, bend: i > 0 && t <= 0 }, distance];
  });
  return best;
}

/** Where a point stands along the line and beside it, taken from one part of the line. */
function placeAt({ legs }: Shell, part: { readonly leg: number; readonly bend: boolean }, point: Point): Place {
  const leg = legs[part.leg]!;
  const to: Point = [point[0] - leg.start[0], point[1] - leg.start[1]];
  const right = -cross(leg.direction, to);
  if (!part.bend) return { station: leg.station + dot(to, leg.direction), offset: right };
  return { station: leg.station, offset: Math.sign(right) * Math.hypot(to[0], to[1]) };
}

/** Station and offset of a point in the corridor. */
export const placeIn = (corridor: Shell, point: Point): Place =>
  placeAt(corridor, nearestPart(corridor, point), point);

/** The same of both ends of a piece that lies nearest to one part of the line, found at its middle. */
export function placesIn(corridor: Shell, middle: Point, ends: readonly Point[]): Place[] {
  const part = nearestPart(corridor, middle);
  return ends.map((end) => placeAt(corridor, part, end));
}

/** A point's distance along a leg and to its right. */
const onLeg = ({ start, direction }: Leg, point: Point): readonly [along: number, right: number] => {
  const to: Point = [point[0] - start[0], point[1] - start[1]];
  return [dot(to, direction), -cross(direction, to)];
};

/**
 * Shares of the way from a to b, in order from 0 to 1, between which a straight piece lies
 * wholly in the corridor or wholly out of it, and nearest to one part of the line.
 */
export function cutsOf({ legs, halfWidthMetres: width }: Shell, a: Point, b: Point): number[] {
  const cuts: number[] = [];
  /** Where a value that changes evenly from a to b is zero. */
  const zero = (atA: number, atB: number): void => {
    if (atA !== atB) cuts.push(atA / (atA - atB));
  };
  const earlier: (readonly [number, number])[] = [];
  legs.forEach((leg, i) => {
    const [[ta, oa], [tb, ob]] = [onLeg(leg, a), onLeg(leg, b)];
    for (const end of [0, leg.lengthMetres, leg.corridorMetres]) zero(ta - end, tb - end);
    for (const side of [-width, 0, width]) zero(oa - side, ob - side);
    // Equally far from this leg and from one before it.
    for (const [pa, pb] of earlier) {
      zero(oa - pa, ob - pb);
      zero(oa + pa, ob + pb);
    }
    earlier.push([oa, ob]);
    if (i > 0) cuts.push(...circleCuts(leg.start, width, a, b));
  });
  return [0, ...cuts.filter((share) => share > 0 && share < 1).sort((p, q) => p - q), 1];
}

/** Shares of the way from a to b at which it crosses a circle, and before or beyond it where the piece is shorter. */
export function circleCuts(centre: Point, radius: number, a: Point, b: Point): number[] {
  const [dx, dy, fx, fy] = [b[0] - a[0], b[1] - a[1], a[0] - centre[0], a[1] - centre[1]];
  const square = dx * dx + dy * dy;
  const half = fx * dx + fy * dy;
  const under = half * half - square * (fx * fx + fy * fy - radius * radius);
  if (square === 0 || under < 0) return [];
  const root = Math.sqrt(under);
  return [(-half - root) / square, (-half + root) / square];
}

export const pointOnArc = (centre: Point, radius: number, angle: number): Point => [
  centre[0] + radius * Math.cos(angle),
  centre[1] + radius * Math.sin(angle),
];

/** The angle of a direction, moved by whole turns into the one that begins at `start`. */
export function angleFrom(start: number, [x, y]: Point): number {
  const angle = Math.atan2(y, x);
  return angle + 2 * Math.PI * Math.ceil((start - angle) / (2 * Math.PI) - 1e-12);
}

/** How far to step off an edge to see on which side of it the corridor lies. */
const STEP_METRES = 1e-5;

/** The corridor's edge: of all legs' sides and ends and all bends' arcs, what no other part of it covers. */
function outlineOf(shell: Shell): Edge[] {
  const { legs, halfWidthMetres: width } = shell;
  const edges: Edge[] = [];
  const outside = (point: Point, outward: Point): boolean => !inCorridor(shell, along(point, outward, STEP_METRES), 0);
  const straight = (a: Point, b: Point, outward: Point): void => {
    const cuts = cutsOf(shell, a, b);
    for (let i = 1; i < cuts.length; i++) {
      if (!outside(between(a, b, (cuts[i - 1]! + cuts[i]!) / 2), outward)) continue;
      edges.push({ type: "straight", from: between(a, b, cuts[i - 1]!), to: between(a, b, cuts[i]!) });
    }
  };
  legs.forEach((leg, i) => {
    const right = rightOf(leg.direction);
    const corner = (t: number, side: 1 | -1): Point => along(along(leg.start, leg.direction, t), right, side * width);
    straight(corner(0, -1), corner(leg.corridorMetres, -1), along([0, 0], right, -1));
    straight(corner(0, 1), corner(leg.corridorMetres, 1), right);
    straight(corner(0, -1), corner(0, 1), along([0, 0], leg.direction, -1));
    straight(corner(leg.corridorMetres, -1), corner(leg.corridorMetres, 1), leg.direction);
    const before = legs[i - 1];
    if (!before) return;
    const turnsLeft = cross(before.direction, leg.direction) > 0;
    // Counter-clockwise along the outside: a left turn opens to the right, from the first leg to the second.
    const [first, second] = turnsLeft
      ? [rightOf(before.direction), right]
      : [along([0, 0], right, -1), along([0, 0], rightOf(before.direction), -1)];
    const start = Math.atan2(first[1], first[0]);
    const end = angleFrom(start, second);
    const angles = [start, end];
    for (const other of legs) {
      const side = rightOf(other.direction);
      for (const offset of [-width, width]) {
        const base = along(other.start, side, offset);
        const far = along(base, other.direction, other.corridorMetres);
        for (const share of circleCuts(leg.start, width, base, far)) {
          const hit = between(base, far, share);
          const angle = angleFrom(start, [hit[0] - leg.start[0], hit[1] - leg.start[1]]);
          if (angle < end) angles.push(angle);
        }
      }
    }
    angles.sort((p, q) => p - q);
    for (let k = 1; k < angles.length; k++) {
      const middle = (angles[k - 1]! + angles[k]!) / 2;
      if (!outside(pointOnArc(leg.start, width, middle), [Math.cos(middle), Math.sin(middle)])) continue;
      edges.push({ type: "arc", centre: leg.start, radius: width, start: angles[k - 1]!, end: angles[k]! });
    }
  });
  return edges;
}
