/**
 * Where a hazard lies in the playing corridor: the pieces of outline around that ground,
 * gathered into runs. A run is what hangs together there, joined with what follows within
 * {@link JOIN_METRES} along the line of play.
 *
 * The ground that is both hazard and corridor is bounded by the hazard's own outline where
 * that lies in the corridor, and by the corridor's where that lies in the hazard. Distance
 * from a place has its extremes on a bound, so the pieces are all that is needed.
 */
import { boxOf, contains } from "../geo/area.ts";
import { boxAround, overlaps } from "../geo/box.ts";
import type { Area, Point } from "../geo/position.ts";
import { between, nearestOn } from "../geo/segment.ts";
import { directionTo, distanceMetres } from "../geo/vector.ts";
import {
  angleFrom,
  circleCuts,
  cutsOf,
  inCorridor,
  placeIn,
  placesIn,
  pointOnArc,
  type Corridor,
  type Edge,
} from "./corridor.ts";

/** Parts of one hazard closer together than this along the line count as one. */
export const JOIN_METRES = 6;

/** Ends nearer than this meet. */
const MEET_METRES = 1e-3;

export type Interval = readonly [from: number, to: number];

/** A piece of the bound, with the stations it spans and its nearest offset from the line. */
interface Piece {
  readonly edge: Edge;
  readonly ends: readonly [Point, Point];
  readonly stations: Interval;
  readonly offset: number;
}

/** A stay of the line of play itself in a hazard. */
export interface Crossing {
  readonly stations: Interval;
  readonly from: Point;
  readonly to: Point;
}

export interface Run {
  readonly stations: Interval;
  /** Nearest to and furthest from the place asked for, of all its ground in the corridor. */
  readonly nearest: Point;
  readonly furthest: Point;
  /** Nearest offset from the line, left negative. */
  readonly offsetMetres: number;
  /** Where the line of play runs through it, in order. */
  readonly crossings: readonly Crossing[];
}

const within = (areas: readonly Area[], point: Point): boolean =>
  areas.some((area) => {
    const [west, south, east, north] = boxOf(area);
    const [x, y] = point;
    return x >= west && x <= east && y >= south && y <= north && contains(area, point);
  });

const endsOf = (edge: Edge): readonly [Point, Point] =>
  edge.type === "straight"
    ? [edge.from, edge.to]
    : [pointOnArc(edge.centre, edge.radius, edge.start), pointOnArc(edge.centre, edge.radius, edge.end)];

const middleOf = (edge: Edge): Point =>
  edge.type === "straight"
    ? between(edge.from, edge.to, 0.5)
    : pointOnArc(edge.centre, edge.radius, (edge.start + edge.end) / 2);

function pieceOf(corridor: Corridor, edge: Edge): Piece {
  const ends = endsOf(edge);
  const [a, b] = placesIn(corridor, middleOf(edge), ends);
  const nearer = Math.abs(a!.offset) <= Math.abs(b!.offset) ? a! : b!;
  const stations: Interval = [Math.min(a!.station, b!.station), Math.max(a!.station, b!.station)];
  return { edge, ends, stations, offset: nearer.offset };
}

type Segment = readonly [from: Point, to: Point];

/** The straight pieces of some paths that come near the corridor. */
function segmentsNear(paths: readonly (readonly Point[])[], { box }: Corridor): Segment[] {
  const near: Segment[] = [];
  for (const path of paths) {
    for (let i = 1; i < path.length; i++) {
      if (overlaps(boxAround([path[i - 1]!, path[i]!]), box)) near.push([path[i - 1]!, path[i]!]);
    }
  }
  return near;
}

/** What of a hazard's outline lies in the corridor. */
function ownOutline(corridor: Corridor, segments: readonly Segment[]): Piece[] {
  const pieces: Piece[] = [];
  for (const [a, b] of segments) {
    const cuts = cutsOf(corridor, a, b);
    for (let i = 1; i < cuts.length; i++) {
      const [from, to] = [cuts[i - 1]!, cuts[i]!];
      if (!inCorridor(corridor, between(a, b, (from + to) / 2))) continue;
      pieces.push(pieceOf(corridor, { type: "straight", from: between(a, b, from), to: between(a, b, to) }));
    }
  }
  return pieces;
}

/** Share of the way from a to b at which another straight piece crosses it. */
function crossingShare(a: Point, b: Point, [c, d]: Segment): number | undefined {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const denominator = rx * sy - ry * sx;
  if (denominator === 0) return undefined;
  const t = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / denominator;
  const u = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / denominator;
  return t > 0 && t < 1 && u >= 0 && u <= 1 ? t : undefined;
}

/** An edge of the corridor in parts, cut where a hazard's outline crosses it. */
function partsOf(edge: Edge, segments: readonly Segment[]): Edge[] {
  if (edge.type === "straight") {
    const cuts = segments.flatMap((segment) => crossingShare(edge.from, edge.to, segment) ?? []);
    const shares = [0, ...cuts.sort((p, q) => p - q), 1];
    return shares.slice(1).map((to, i): Edge => ({
      type: "straight",
      from: between(edge.from, edge.to, shares[i]!),
      to: between(edge.from, edge.to, to),
    }));
  }
  const { centre, radius, start, end } = edge;
  const cuts = segments.flatMap(([a, b]) =>
    circleCuts(centre, radius, a, b).flatMap((share) => {
      if (share < 0 || share > 1) return [];
      const [x, y] = between(a, b, share);
      const angle = angleFrom(start, [x - centre[0], y - centre[1]]);
      return angle < end ? [angle] : [];
    }),
  );
  const angles = [start, ...cuts.sort((p, q) => p - q), end];
  return angles.slice(1).map((to, i): Edge => ({ type: "arc", centre, radius, start: angles[i]!, end: to }));
}

/** What of the corridor's outline lies in the hazard. */
function corridorOutline(corridor: Corridor, areas: readonly Area[], segments: readonly Segment[]): Piece[] {
  const near = areas.filter((area) => overlaps(boxOf(area), corridor.box));
  if (near.length === 0) return [];
  return corridor.outline.flatMap((edge) =>
    partsOf(edge, segments)
      .filter((part) => within(near, middleOf(part)))
      .map((part) => pieceOf(corridor, part)),
  );
}

/** Where the line of play runs through areas, or meets lines that have none. */
function crossingsOf(corridor: Corridor, areas: readonly Area[], segments: readonly Segment[]): Crossing[] {
  const found: Crossing[] = [];
  for (const { start, direction, corridorMetres, station } of corridor.legs) {
    const end: Point = [start[0] + direction[0] * corridorMetres, start[1] + direction[1] * corridorMetres];
    const hits = segments.flatMap((segment) => crossingShare(start, end, segment) ?? []).sort((p, q) => p - q);
    const at = (share: number): Point => between(start, end, share);
    if (areas.length === 0) {
      for (const t of hits) {
        const s = station + t * corridorMetres;
        found.push({ stations: [s, s], from: at(t), to: at(t) });
      }
      continue;
    }
    const cuts = [0, ...hits, 1];
    for (let i = 1; i < cuts.length; i++) {
      const [a, b] = [cuts[i - 1]!, cuts[i]!];
      if (!within(areas, at((a + b) / 2))) continue;
      const stations: Interval = [station + a * corridorMetres, station + b * corridorMetres];
      const last = found[found.length - 1];
      // Through a bend or a vertex it is one stay.
      if (last && stations[0] - last.stations[1] < MEET_METRES) {
        found[found.length - 1] = { stations: [last.stations[0], stations[1]], from: last.from, to: at(b) };
      } else found.push({ stations, from: at(a), to: at(b) });
    }
  }
  return found;
}

/** Pieces that hang together end to end. */
function connected(pieces: readonly Piece[]): Piece[][] {
  const group = pieces.map((_, i) => i);
  const find = (i: number): number => {
    while (group[i] !== i) i = group[i] = group[group[i]!]!;
    return i;
  };
  const ends = pieces.flatMap((piece, i) => piece.ends.map((point) => ({ i, point })));
  ends.sort((a, b) => a.point[0] - b.point[0]);
  for (let k = 0; k < ends.length; k++) {
    for (let m = k + 1; m < ends.length && ends[m]!.point[0] - ends[k]!.point[0] <= MEET_METRES; m++) {
      if (distanceMetres(ends[k]!.point, ends[m]!.point) <= MEET_METRES) group[find(ends[k]!.i)] = find(ends[m]!.i);
    }
  }
  const groups = new Map<number, Piece[]>();
  pieces.forEach((piece, i) => groups.set(find(i), [...(groups.get(find(i)) ?? []), piece]));
  return [...groups.values()];
}

const spanOf = (pieces: readonly Piece[]): Interval => {
  let [from, to] = [Infinity, -Infinity];
  for (const { stations } of pieces) [from, to] = [Math.min(from, stations[0]), Math.max(to, stations[1])];
  return [from, to];
};

function nearestOf({ edge, ends }: Piece, standing: Point): Point {
  if (edge.type === "straight") return nearestOn(edge.from, edge.to, standing);
  return onArc(edge, directionTo(edge.centre, standing)) ?? nearer(ends, standing);
}

function furthestOf({ edge, ends }: Piece, standing: Point): Point {
  const far = edge.type === "arc" ? onArc(edge, directionTo(standing, edge.centre)) : undefined;
  return far ?? further(ends, standing);
}

function onArc(edge: Extract<Edge, { type: "arc" }>, direction: Point): Point | undefined {
  const angle = angleFrom(edge.start, direction);
  return angle <= edge.end ? pointOnArc(edge.centre, edge.radius, angle) : undefined;
}

const nearer = (points: readonly Point[], standing: Point): Point =>
  points.reduce((best, point) => (distanceMetres(standing, point) < distanceMetres(standing, best) ? point : best));

const further = (points: readonly Point[], standing: Point): Point =>
  points.reduce((best, point) => (distanceMetres(standing, point) > distanceMetres(standing, best) ? point : best));

/**
 * The runs of a hazard in a corridor, in order of play; none where it lies outside.
 *
 * @param areas the ground it covers; empty for a line without a width
 * @param paths its outline, or the lines themselves
 */
export function runsIn(corridor: Corridor, areas: readonly Area[], paths: readonly (readonly Point[])[]): Run[] {
  const standing = corridor.line.points[0]!;
  const segments = segmentsNear(paths, corridor);
  const pieces = [...ownOutline(corridor, segments), ...corridorOutline(corridor, areas, segments)];
  const parts = connected(pieces)
    .map((part) => ({ part, span: spanOf(part) }))
    .sort((a, b) => a.span[0] - b.span[0]);
  const joined: { pieces: Piece[]; span: Interval }[] = [];
  for (const { part, span } of parts) {
    const last = joined[joined.length - 1];
    if (last && span[0] < last.span[1] + JOIN_METRES) {
      last.pieces.push(...part);
      last.span = [last.span[0], Math.max(last.span[1], span[1])];
    } else joined.push({ pieces: [...part], span });
  }
  const crossings = crossingsOf(corridor, areas, segments);
  const inside = within(areas, standing);
  return joined.map(({ pieces: own, span }): Run => {
    const holds = ({ stations: [from, to] }: Crossing): boolean =>
      (from + to) / 2 >= span[0] - MEET_METRES && (from + to) / 2 <= span[1] + MEET_METRES;
    const through = crossings.filter(holds);
    const offset = own.reduce(
      (best, piece) => (Math.abs(piece.offset) < Math.abs(best) ? piece.offset : best),
      Infinity,
    );
    return {
      stations: span,
      nearest:
        inside && span[0] <= MEET_METRES
          ? standing
          : nearer(
              own.map((piece) => nearestOf(piece, standing)),
              standing,
            ),
      furthest: further(
        own.map((piece) => furthestOf(piece, standing)),
        standing,
      ),
      offsetMetres: through.length > 0 ? 0 : offset,
      crossings: through,
    };
  });
}

/** The place of a point along a line and beside it. */
export const stationOf = (corridor: Corridor, point: Point): number => placeIn(corridor, point).station;
