/**
 * Reach and carry.
 *
 * Everything is read in the coordinates of play: the boundary of a hazard is straightened
 * into station and offset along the line of play, where the shot corridor is a plain strip
 * |offset| <= half-width. What lies in the strip is grouped into stretches (a burn that
 * crosses twice makes two), and each stretch has its own reach and carry.
 *
 *      offset  ^        .-----.            corridor edge
 *     --------+|-------/  (2)  \---------------------------
 *       tee --o----(1)---------------------------> station
 *     ---------|------------------------------------------
 *              |  reach(1)  carry(1)       reach(2) at the edge of the strip
 */
import { chords } from "../geo/area.ts";
import { boxAround, grow, overlaps } from "../geo/box.ts";
import { locate, type Line, type StationOffset } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { between, densify, nearestOn } from "../geo/segment.ts";
import { distanceMetres } from "../geo/vector.ts";
import { areasOf, boundariesOf } from "./place.ts";
import type { HazardFigures, PlacedFeature } from "./types.ts";

/** Spacing of the points a boundary is straightened at. */
const STEP_METRES = 4;
/** Parts of one hazard closer together than this along the line count as one. */
const JOIN_METRES = 6;
/** Far points within this of each other along the line are equally far. */
const LEVEL_METRES = 0.5;
/** How far behind the green's middle a hazard still matters. */
const BEYOND_METRES = 45;
/** Lines along which an area's inside is sought in the corridor. */
const SCAN_LINES = 11;

/** A straightened vertex: where it is on the ground and in play. */
interface Vertex extends StationOffset {
  readonly point: Point;
}

/** A piece of boundary that lies within the corridor. */
interface Piece {
  readonly from: Vertex;
  readonly to: Vertex;
}

function straighten(line: Line, path: readonly Point[], corridor: number): Vertex[] {
  const near = grow(boxAround(line.points), corridor + BEYOND_METRES);
  const dense: Point[] = [path[0]!];
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    // Far pieces keep their ends only: the sea may be long.
    dense.push(...(overlaps(boxAround([a, b]), near) ? densify([a, b], STEP_METRES).slice(1) : [b]));
  }
  return dense.map((point) => ({ point, ...locate(line, point) }));
}

function blend(a: Vertex, b: Vertex, share: number): Vertex {
  return {
    point: between(a.point, b.point, share),
    station: a.station + (b.station - a.station) * share,
    offset: a.offset + (b.offset - a.offset) * share,
  };
}

/** The part of a boundary piece with min <= value <= max, where value runs linearly along it. */
function clip(piece: Piece, value: (v: Vertex) => number, min: number, max: number): Piece | undefined {
  const [a, b] = [value(piece.from), value(piece.to)];
  let [start, end] = [0, 1];
  if (a === b) return a >= min && a <= max ? piece : undefined;
  for (const limit of [min, max]) {
    const share = (limit - a) / (b - a);
    const entering = limit === min ? b > a : b < a;
    if (entering) start = Math.max(start, share);
    else end = Math.min(end, share);
  }
  return start > end ? undefined : { from: blend(piece.from, piece.to, start), to: blend(piece.from, piece.to, end) };
}

function piecesWithin(vertices: readonly Vertex[], line: Line, corridor: number): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 1; i < vertices.length; i++) {
    const whole: Piece = { from: vertices[i - 1]!, to: vertices[i]! };
    const inStrip = clip(whole, (v) => v.offset, -corridor, corridor);
    const inPlay = inStrip && clip(inStrip, (v) => v.station, 0, line.lengthMetres + BEYOND_METRES);
    if (inPlay) pieces.push(inPlay);
  }
  return pieces;
}

type Interval = readonly [start: number, end: number];

function merge(intervals: readonly Interval[]): Interval[] {
  const merged: [number, number][] = [];
  for (const [start, end] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = merged[merged.length - 1];
    if (last && start <= last[1] + JOIN_METRES) last[1] = Math.max(last[1], end);
    else merged.push([start, end]);
  }
  return merged;
}

const stationsOf = ({ from, to }: Piece): Interval => [Math.min(from.station, to.station), Math.max(from.station, to.station)];

/** Figures of one hazard from the start of a line of play: one entry per stretch within the corridor, or one for all of it when none is. */
export function hazardFigures(placed: PlacedFeature, line: Line, corridorMetres: number): HazardFigures[] {
  const standing = line.points[0]!;
  const middle = line.points[line.points.length - 1]!;
  const boundaries = boundariesOf(placed).map((path) => straighten(line, path, corridorMetres));
  if (boundaries.length === 0) return [];

  const pieces = boundaries.flatMap((vertices) => piecesWithin(vertices, line, corridorMetres));
  const end = line.lengthMetres + BEYOND_METRES;
  const inside = (offset: number): Interval[] =>
    areasOf(placed).length === 0
      ? []
      : chords([boundaries.map((vertices) => vertices.map(({ station, offset: o }): Point => [station, o]))], [0, offset], [1, 0])
          .map(([from, to]): Interval => [Math.max(0, from), Math.min(end, to)])
          .filter(([from, to]) => to > from);
  const scans = Array.from({ length: SCAN_LINES }, (_, i) => corridorMetres * ((2 * i) / (SCAN_LINES - 1) - 1));
  const stretches = merge([...pieces.map(stationsOf), ...scans.flatMap(inside)]);
  const onLine = inside(0);
  const crossings = pieces.filter(({ from, to }) => (from.offset > 0) !== (to.offset > 0));

  if (stretches.length === 0) return [outsideCorridor(placed.feature.id, boundaries, standing, middle, line)];

  return stretches.map((stretch, i): HazardFigures => {
    const holds = (station: number): boolean => station >= stretch[0] - 1e-6 && station <= stretch[1] + 1e-6;
    const own = pieces.filter((piece) => stationsOf(piece).every(holds));
    const chordsOnLine = onLine.filter(([from, to]) => holds((from + to) / 2));
    const across = chordsOnLine.length > 0 || crossings.some((piece) => holds(stationsOf(piece)[0]) && own.includes(piece));
    const reachPoint = own.reduce<Point | undefined>((best, { from, to }) => {
      const candidate = nearestOn(from.point, to.point, standing);
      return best && distanceMetres(standing, best) <= distanceMetres(standing, candidate) ? best : candidate;
    }, undefined);
    const far = furthest(own.flatMap(({ from, to }) => [from, to]), standing);
    const offset = own
      .flatMap(({ from, to }) => [from.offset, to.offset])
      .reduce((best, o) => (Math.abs(o) < Math.abs(best) ? o : best), Infinity);
    const reach = reachPoint ?? standing;
    const carry = far?.point ?? middle;
    return {
      id: placed.feature.id,
      stretch: i + 1,
      stretches: stretches.length,
      position: across ? "across" : offset < 0 ? "left" : "right",
      inCorridor: true,
      reachMetres: distanceMetres(standing, reach),
      carryMetres: distanceMetres(standing, carry),
      carryOnLineMetres: chordsOnLine.length > 0 ? Math.max(...chordsOnLine.map(([, to]) => to)) : undefined,
      reachPoint: reach,
      carryPoint: carry,
      stationMetres: stretch,
      offsetMetres: across || !Number.isFinite(offset) ? 0 : offset,
      leavesMetres: distanceMetres(carry, middle),
    };
  });
}

/** The point to be past: the far station, and of several there the one furthest from where one stands. */
function furthest(vertices: readonly Vertex[], standing: Point): Vertex | undefined {
  const last = Math.max(...vertices.map(({ station }) => station));
  return vertices
    .filter(({ station }) => station > last - LEVEL_METRES)
    .reduce<Vertex | undefined>(
      (best, vertex) => (best && distanceMetres(standing, best.point) >= distanceMetres(standing, vertex.point) ? best : vertex),
      undefined,
    );
}

function outsideCorridor(
  id: string,
  boundaries: readonly (readonly Vertex[])[],
  standing: Point,
  middle: Point,
  line: Line,
): HazardFigures {
  const vertices = boundaries.flat();
  const inPlay = vertices.filter(({ station }) => station >= 0 && station <= line.lengthMetres + BEYOND_METRES);
  const some = inPlay.length > 0 ? inPlay : vertices;
  const least = <T>(items: readonly T[], size: (item: T) => number): T =>
    items.reduce((best, item) => (size(item) < size(best) ? item : best));
  const nearest = least(some, ({ point }) => distanceMetres(standing, point));
  const far = furthest(some, standing)!;
  const beside = least(some, ({ offset }) => Math.abs(offset));
  return {
    id,
    stretch: 1,
    stretches: 1,
    position: beside.offset < 0 ? "left" : "right",
    inCorridor: false,
    reachMetres: distanceMetres(standing, nearest.point),
    carryMetres: distanceMetres(standing, far.point),
    carryOnLineMetres: undefined,
    reachPoint: nearest.point,
    carryPoint: far.point,
    stationMetres: [least(some, ({ station }) => station).station, far.station],
    offsetMetres: beside.offset,
    leavesMetres: distanceMetres(far.point, middle),
  };
}
