/**
 * Reach and carry worked out another way: the corridor as a polygon, cut with the hazard by
 * a general geometry library (Turf), distances by the exact geodesic (geographiclib, Karney
 * 2013). It shares no code with `src/measure` but the tee's line of play and the areas that
 * a burn's width covers, which are given to both.
 */
import { feature, featureCollection, intersect, polygon, union } from "@turf/turf";
import geographiclib from "geographiclib-geodesic";
import type { MultiPolygon, Polygon, Position as XY } from "geojson";
import type { Position } from "../../../src/geo/position.ts";

const wgs84 = geographiclib.Geodesic.WGS84;

/** The corridor goes on this far past the middle of the green. */
const BEYOND_METRES = 45;
const JOIN_METRES = 6;
/** A radius of 40 m as a polygon with corners this far apart stays within 0.1 mm of it. */
const ARC_DEGREES = 0.25;

export interface Expected {
  readonly reachMetres: number;
  readonly farMetres: number;
  readonly stations: readonly [number, number];
}

/** Metres east and north of a place by geodesic distance and azimuth: distances from it are exact. */
export function about(centre: Position): (position: Position) => XY {
  return ([longitude, latitude]) => {
    const { s12, azi1 } = wgs84.Inverse(centre[1], centre[0], latitude, longitude);
    const azimuth = (azi1! * Math.PI) / 180;
    return [s12! * Math.sin(azimuth), s12! * Math.cos(azimuth)];
  };
}

const plus = ([x, y]: XY, [dx, dy]: XY, by: number): XY => [x! + dx! * by, y! + dy! * by];
const unit = ([ax, ay]: XY, [bx, by]: XY): XY => {
  const length = Math.hypot(bx! - ax!, by! - ay!);
  return [(bx! - ax!) / length, (by! - ay!) / length];
};
const right = ([x, y]: XY): XY => [y!, -x!];
const inner = (a: XY, b: XY): number => a[0]! * b[0]! + a[1]! * b[1]!;

/** To a micrometre: edges that two parts share to the last bit but one are beyond what the library joins. */
const onGrid = ([x, y]: XY): XY => [Math.round(x! * 1e6) / 1e6, Math.round(y! * 1e6) / 1e6];

/** The corridor as a polygon: a rectangle a leg, a fan on the outside of each bend. */
export function corridorPolygon(line: readonly XY[], width: number): Polygon | MultiPolygon {
  const parts: XY[][] = [];
  const legs = line.slice(1).map((end, i) => ({ start: line[i]!, end, d: unit(line[i]!, end) }));
  legs.forEach(({ start, end, d }, i) => {
    const far = i === legs.length - 1 ? plus(end, d, BEYOND_METRES) : end;
    const n = right(d);
    parts.push([
      plus(start, n, -width),
      plus(far, n, -width),
      plus(far, n, width),
      plus(start, n, width),
      plus(start, n, -width),
    ]);
    const before = legs[i - 1];
    if (!before) return;
    const turn = Math.atan2(before.d[0]! * d[1]! - before.d[1]! * d[0]!, inner(before.d, d));
    const outside = turn > 0 ? right(before.d) : plus([0, 0], right(before.d), -1);
    const begin = Math.atan2(outside[1]!, outside[0]!);
    const steps = Math.max(2, Math.ceil(Math.abs(turn) / ((ARC_DEGREES * Math.PI) / 180)));
    const fan: XY[] = [start];
    for (let k = 0; k <= steps; k++) {
      const angle = begin + (turn * k) / steps;
      fan.push([start[0]! + width * Math.cos(angle), start[1]! + width * Math.sin(angle)]);
    }
    parts.push([...fan, start]);
  });
  return parts
    .map((ring): Polygon => ({ type: "Polygon", coordinates: [ring.map(onGrid)] }))
    .reduce<Polygon | MultiPolygon>(
      (whole, part) => union(featureCollection([feature(whole), feature(part)]))!.geometry,
      { type: "Polygon", coordinates: [parts[0]!.map(onGrid)] },
    );
}

/** Station of a point by the nearest place of the line, the last leg going on beyond the green. */
export function stationAlong(line: readonly XY[], point: XY): number {
  let [best, least, before] = [0, Infinity, 0];
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const length = Math.hypot(b[0]! - a[0]!, b[1]! - a[1]!);
    const d = unit(a, b);
    const t = inner([point[0]! - a[0]!, point[1]! - a[1]!], d);
    const clamped = Math.max(0, Math.min(i === line.length - 1 ? length + BEYOND_METRES : length, t));
    const distance = Math.hypot(point[0]! - a[0]! - d[0]! * clamped, point[1]! - a[1]! - d[1]! * clamped);
    if (distance < least) [best, least] = [before + clamped, distance];
    before += length;
  }
  return best;
}

/** Distance from the origin to a straight piece. */
function toPiece([ax, ay]: XY, [bx, by]: XY): number {
  const [dx, dy] = [bx! - ax!, by! - ay!];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, -(ax! * dx + ay! * dy) / square));
  return Math.hypot(ax! + dx * t, ay! + dy * t);
}

/** Whether the origin, where one stands, lies in a polygon. */
const holdsOrigin = (rings: readonly XY[][]): boolean =>
  rings.every((ring, i) => {
    let inside = false;
    for (let k = 1; k < ring.length; k++) {
      const [[x1, y1], [x2, y2]] = [ring[k - 1]! as [number, number], ring[k]! as [number, number]];
      if (y1 > 0 !== y2 > 0 && 0 < x1 + (-y1 / (y2 - y1)) * (x2 - x1)) inside = !inside;
    }
    return inside === (i === 0);
  });

/** A run's least and greatest distance and the stations it spans, outline points a third of a metre apart. */
function runOf(rings: readonly XY[][], line: readonly XY[]): Expected {
  let [reach, far, from, to] = [Infinity, 0, Infinity, -Infinity];
  for (const ring of rings) {
    for (let i = 1; i < ring.length; i++) {
      const [a, b] = [ring[i - 1]!, ring[i]!];
      reach = Math.min(reach, toPiece(a, b));
      far = Math.max(far, Math.hypot(a[0]!, a[1]!));
      const steps = Math.max(1, Math.ceil(Math.hypot(b[0]! - a[0]!, b[1]! - a[1]!) * 3));
      for (let k = 0; k <= steps; k++) {
        const station = stationAlong(line, [
          a[0]! + ((b[0]! - a[0]!) * k) / steps,
          a[1]! + ((b[1]! - a[1]!) * k) / steps,
        ]);
        [from, to] = [Math.min(from, station), Math.max(to, station)];
      }
    }
  }
  return { reachMetres: holdsOrigin(rings) ? 0 : reach, farMetres: far, stations: [from, to] };
}

/** The library gives up on a few crossings it cannot tell from none; `undefined` where it does. */
export function unlessGivenUp<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof Error && error.message.startsWith("Unable to complete output ring")) return undefined;
    throw error;
  }
}

/**
 * What is expected of a hazard in a corridor, in order of play; `undefined` where two runs
 * lie so near the limit for joining that sampled stations cannot settle it.
 *
 * @param areas rings of the ground it covers, in metres about the tee
 */
export function expectedRuns(
  line: readonly XY[],
  corridor: Polygon | MultiPolygon,
  areas: readonly XY[][][],
): Expected[] | undefined {
  const runs = areas.flatMap((area) => {
    const shared = intersect(
      featureCollection<Polygon | MultiPolygon>([feature(corridor), polygon(area.map((ring) => ring.map(onGrid)))]),
    );
    if (!shared) return [];
    const parts = shared.geometry.type === "Polygon" ? [shared.geometry.coordinates] : shared.geometry.coordinates;
    return parts.map((rings) => runOf(rings, line));
  });
  runs.sort((a, b) => a.stations[0] - b.stations[0]);
  const joined: Expected[] = [];
  for (const run of runs) {
    const last = joined[joined.length - 1];
    const gap = last ? run.stations[0] - last.stations[1] : Infinity;
    if (Math.abs(gap - JOIN_METRES) < 0.4) return undefined;
    if (last && gap < JOIN_METRES) {
      joined[joined.length - 1] = {
        reachMetres: Math.min(last.reachMetres, run.reachMetres),
        farMetres: Math.max(last.farMetres, run.farMetres),
        stations: [last.stations[0], Math.max(last.stations[1], run.stations[1])],
      };
    } else joined.push(run);
  }
  return joined;
}
