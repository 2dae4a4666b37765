/**
 * Polylines in the plane, and the two coordinates golf measures with: station (distance
 * along) and offset (distance to the right, left negative).
 */
import type { Point } from "./position.ts";
import { along, cross, directionTo, distanceMetres, dot } from "./vector.ts";

/** A polyline of at least two points with the station of each. */
export interface Line {
  readonly points: readonly Point[];
  /** Station of each point in metres; the first is 0, the last the length. */
  readonly stations: readonly number[];
  readonly lengthMetres: number;
}

export interface StationOffset {
  /** Metres along the line; negative before its start, above the length beyond its end. */
  readonly station: number;
  /** Metres to the right of the line; negative to the left. */
  readonly offset: number;
}

/** @throws RangeError with fewer than two points or a coordinate that is not finite. */
export function lineThrough(points: readonly Point[]): Line {
  if (points.length < 2) throw new RangeError(`A line needs at least two points, not ${points.length}.`);
  if (!points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))) {
    throw new RangeError("A line needs finite coordinates.");
  }
  const stations = [0];
  for (let i = 1; i < points.length; i++) {
    stations.push(stations[i - 1]! + distanceMetres(points[i - 1]!, points[i]!));
  }
  return { points, stations, lengthMetres: stations[stations.length - 1]! };
}

/** Index of the leg that holds a station; the end legs also serve beyond the ends. */
export function legAt(line: Line, station: number): number {
  const last = line.points.length - 2;
  for (let i = 0; i < last; i++) if (station < line.stations[i + 1]!) return i;
  return last;
}

/** Unit direction of play at a station. */
export function directionAt(line: Line, station: number): Point {
  const leg = legAt(line, station);
  return directionTo(line.points[leg]!, line.points[leg + 1]!);
}

/** The point at a station; the end legs are extended beyond the ends. */
export function pointAt(line: Line, station: number): Point {
  const leg = legAt(line, station);
  return along(
    line.points[leg]!,
    directionTo(line.points[leg]!, line.points[leg + 1]!),
    station - line.stations[leg]!,
  );
}

/** Station and offset of a point: its nearest place on the line, whose end legs are extended. */
export function locate(line: Line, point: Point): StationOffset {
  const legs = line.points.length - 1;
  let best: StationOffset = { station: 0, offset: Infinity };
  let bestDistance = Infinity;
  for (let i = 0; i < legs; i++) {
    const start = line.points[i]!;
    const direction = directionTo(start, line.points[i + 1]!);
    const toPoint: Point = [point[0] - start[0], point[1] - start[1]];
    const length = line.stations[i + 1]! - line.stations[i]!;
    let t = dot(toPoint, direction);
    if (i > 0) t = Math.max(0, t);
    if (i < legs - 1) t = Math.min(length, t);
    const distance = distanceMetres(point, along(start, direction, t));
    if (distance < bestDistance) {
      bestDistance = distance;
      // The sign comes from the leg; the size from the nearest place, so it is true at corners too.
      best = { station: line.stations[i]! + t, offset: cross(direction, toPoint) > 0 ? -distance : distance };
    }
  }
  return best;
}
