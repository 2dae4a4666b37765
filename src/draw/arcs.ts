/** Where arcs and ticks stand: measured on the ground, then laid on a sheet by whoever draws them. */
import { fromUnit, inUnit, type LengthUnit } from "../geo/units.ts";
import type { Point } from "../geo/position.ts";
import { directionAt, locate, pointAt, type Line } from "../geo/line.ts";
import { distanceMetres } from "../geo/vector.ts";
import type { TeeFigures } from "../measure/types.ts";

/** Arcs stand at every multiple of this, in the plate's unit. */
export const ARC_STEP = 50;
/** No arc beyond this: few strokes from a tee end there. */
const FURTHEST_ARC = 300;
/** What ticks on the line say is left. */
export const LEFT_TICKS = [200, 150, 100] as const;

/** An arc about the tee across the playing corridor: ends in the plane, from left to right of play. */
export interface Arc {
  readonly value: number;
  readonly metres: number;
  readonly left: Point;
  readonly right: Point;
  readonly middle: Point;
}

/** Station at which the line of play is a straight distance from the tee; undefined when it never is. */
function stationAtDistance(line: Line, from: Point, metres: number): number | undefined {
  for (let station = 1; station <= line.lengthMetres; station += 1) {
    if (distanceMetres(from, pointAt(line, station)) < metres) continue;
    let [low, high] = [station - 1, station];
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2;
      if (distanceMetres(from, pointAt(line, middle)) < metres) low = middle;
      else high = middle;
    }
    return high;
  }
  return undefined;
}

/** What an arc is laid by: the line of play and its standing point. */
export interface ArcTee {
  readonly line: Line;
  readonly marker: Point;
}

/**
 * Where an arc meets the corridor's edges and the line of play; undefined when the line never is so far from
 * the tee.
 */
export function arcAt(
  { line, marker }: ArcTee,
  metres: number,
  corridorMetres: number,
): (Omit<Arc, "value"> & { readonly station: number }) | undefined {
  const station = stationAtDistance(line, marker, metres);
  if (station === undefined) return undefined;
  const middle = pointAt(line, station);
  const ahead = directionAt(line, station);
  const bearing = Math.atan2(middle[1] - marker[1], middle[0] - marker[0]);
  const onArc = (angle: number): Point => [marker[0] + Math.cos(angle) * metres, marker[1] + Math.sin(angle) * metres];
  // Outwards in small steps until the corridor's edge; past a corner the nearest leg rules.
  const edge = (turn: 1 | -1): Point => {
    const step = (turn * 0.5) / metres;
    let angle = bearing;
    for (let i = 0; i < 400; i++) {
      if (Math.abs(locate(line, onArc(angle + step)).offset) > corridorMetres) break;
      angle += step;
    }
    return onArc(angle);
  };
  // Angles grow to the left of a line that runs away from the tee.
  const turned = ahead[0] * Math.cos(bearing) + ahead[1] * Math.sin(bearing) >= 0;
  const [left, right] = turned ? [edge(1), edge(-1)] : [edge(-1), edge(1)];
  return { metres, left, right, middle, station };
}

/** The arcs of a tee set: every 50 from 100 (from 50 on a hole reached in one), short of the green. */
export function arcsOf(tee: TeeFigures, unit: LengthUnit, corridorMetres: number): Arc[] {
  const arcs: Arc[] = [];
  const first = inUnit(tee.lengthMetres, unit) < 260 ? ARC_STEP : 2 * ARC_STEP;
  for (let value = first; value <= FURTHEST_ARC; value += ARC_STEP) {
    const arc = arcAt(tee, fromUnit(value, unit), corridorMetres);
    if (arc === undefined || arc.station > tee.green.frontMetres - 4) break;
    const { metres, left, right, middle } = arc;
    arcs.push({ value, metres, left, right, middle });
  }
  return arcs;
}

/** Where what is left to the green's middle is just so much: the last such place on the line. */
export function leftPoints(tee: TeeFigures, unit: LengthUnit): { value: number; at: Point; ahead: Point }[] {
  const { line, green } = tee;
  const result: { value: number; at: Point; ahead: Point }[] = [];
  for (const value of LEFT_TICKS) {
    const metres = fromUnit(value, unit);
    for (let station = line.lengthMetres; station > 40; station -= 0.5) {
      const at = pointAt(line, station);
      if (distanceMetres(at, green.middle) < metres) continue;
      // Refined by the last half metre along the line.
      let [near, far] = [station + 0.5, station];
      for (let i = 0; i < 20; i++) {
        const middle = (near + far) / 2;
        if (distanceMetres(pointAt(line, middle), green.middle) < metres) near = middle;
        else far = middle;
      }
      result.push({ value, at: pointAt(line, far), ahead: directionAt(line, far) });
      break;
    }
  }
  return result;
}
