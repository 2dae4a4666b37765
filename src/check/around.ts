/**
 * Where a feature lies, as words see it: left or right of the line of play, across it, and
 * about the green. Kept twice: `perhaps` takes in all that the words could mean, so that a
 * tip is called wrong only when nothing is there; `surely` only what nobody would dispute,
 * so that "no bunker behind" is called wrong only by a bunker that is.
 *
 *              long-left | long  | long-right
 *              ----------+-------+-----------
 *                 left   | green |   right        v across the approach, u along it
 *              ----------+-------+-----------
 *             short-left | short | short-right
 */
import { contains } from "../geo/area.ts";
import { boxAround, grow, overlaps, type Box } from "../geo/box.ts";
import { locate, pointAt, directionAt, type Line } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import { densify } from "../geo/segment.ts";
import { along, dot, rightOf } from "../geo/vector.ts";
import { areasOf, boundariesOf, pointsOf } from "../measure/place.ts";
import type { GreenFigures, PlacedFeature } from "../measure/types.ts";

export type Depth = "short" | "long";
export type Zone = "left" | "right" | Depth | `${Depth}-left` | `${Depth}-right`;

export interface Whereabouts {
  readonly perhaps: ReadonlySet<"left" | "right">;
  readonly surely: ReadonlySet<"left" | "right">;
  readonly green: { readonly perhaps: ReadonlySet<Zone>; readonly surely: ReadonlySet<Zone> };
}

/** How far from the line of play words still mean something as beside the hole; common practice, no source. */
export const BESIDE_METRES = 150;
const SURELY_BESIDE_METRES = 60;
/** How far from the green's edge words still mean something as by the green. */
const BY_GREEN_METRES = 45;
const STEP_METRES = 6;

interface Marks {
  readonly perhaps: Set<"left" | "right">;
  readonly surely: Set<"left" | "right">;
  readonly greenPerhaps: Set<Zone>;
  readonly greenSurely: Set<Zone>;
}

/** Points that stand for a feature near a box: its outline, and its inside on a lattice of the given probes. */
function samples(placed: PlacedFeature, near: Box, probes: readonly Point[]): Point[] {
  const outline = boundariesOf(placed).flatMap((path) => {
    const points: Point[] = [];
    for (let i = 1; i < path.length; i++) {
      const piece = [path[i - 1]!, path[i]!];
      if (overlaps(boxAround(piece), near)) points.push(...densify(piece, STEP_METRES));
    }
    return points;
  });
  const inside = areasOf(placed).flatMap((area) => insideOf(area, probes));
  return placed.shape.type === "points" ? [...placed.shape.points] : [...outline, ...inside];
}

function insideOf(area: Area, probes: readonly Point[]): Point[] {
  const [west, south, east, north] = boxAround(area[0]!);
  return probes.filter(([x, y]) => x >= west && x <= east && y >= south && y <= north && contains(area, [x, y]));
}

/** Points to try the inside of areas at: beside the line every 15 m, and a lattice about the green. */
function probesOf(line: Line, { middle, approach, depthMetres, widthMetres }: GreenFigures): Point[] {
  const probes: Point[] = [];
  for (let station = 0; station <= line.lengthMetres; station += 15) {
    const right = rightOf(directionAt(line, station));
    for (const offset of [-55, -30, -12, 12, 30, 55]) probes.push(along(pointAt(line, station), right, offset));
  }
  const right = rightOf(approach);
  for (let u = -depthMetres / 2 - 40; u <= depthMetres / 2 + 40; u += 8) {
    for (let v = -widthMetres / 2 - 40; v <= widthMetres / 2 + 40; v += 8)
      probes.push(along(along(middle, approach, u), right, v));
  }
  return probes;
}

function markLine(marks: Marks, line: Line, point: Point): void {
  const { station, offset } = locate(line, point);
  if (station < -10 || station > line.lengthMetres + 2) return;
  const side = offset < 0 ? "left" : "right";
  const away = Math.abs(offset);
  if (away > 2 && away <= BESIDE_METRES) marks.perhaps.add(side);
  if (away > 3 && away <= SURELY_BESIDE_METRES && station >= 0 && station <= line.lengthMetres) marks.surely.add(side);
}

function markGreen(marks: Marks, { middle, approach, depthMetres, widthMetres }: GreenFigures, point: Point): void {
  const from: Point = [point[0] - middle[0], point[1] - middle[1]];
  const [u, v] = [dot(from, approach), dot(from, rightOf(approach))];
  const [d, w] = [depthMetres / 2, widthMetres / 2];
  const [deep, wide] = [Math.abs(u), Math.abs(v)];
  if (deep > d + BY_GREEN_METRES + 15 || wide > w + BY_GREEN_METRES) return;
  const depth: Depth = u < 0 ? "short" : "long";
  const side = v < 0 ? "left" : "right";
  // Before and behind the green only what lies out toward its corner is left or right of it.
  if (wide > (deep > d ? 0.7 : 0.3) * w && deep <= d + 20) marks.greenPerhaps.add(side);
  if (deep > 0.3 * d && (wide <= w + 2 || (deep > d && wide <= w + 15))) marks.greenPerhaps.add(depth);
  if (deep > 0.2 * d && wide > 0.2 * w) marks.greenPerhaps.add(`${depth}-${side}`);
  if (wide > w && wide <= w + 25 && deep <= d) marks.greenSurely.add(side);
  if (deep > d && deep <= d + 30 && wide <= w) marks.greenSurely.add(depth);
  if (deep > 0.6 * d && wide > 0.6 * w && deep <= d + 25 && wide <= w + 25 && (deep > d || wide > w))
    marks.greenSurely.add(`${depth}-${side}`);
}

/** Finds where features lie about one line of play and its green. */
export function whereaboutsFinder(line: Line, green: GreenFigures): (placed: PlacedFeature) => Whereabouts {
  const near = grow(boxAround(line.points), BESIDE_METRES);
  const probes = probesOf(line, green);
  return (placed) => {
    const marks: Marks = { perhaps: new Set(), surely: new Set(), greenPerhaps: new Set(), greenSurely: new Set() };
    if (overlaps(boxAround(pointsOf(placed.shape)), near)) {
      for (const point of samples(placed, near, probes)) {
        markLine(marks, line, point);
        markGreen(marks, green, point);
      }
    }
    return {
      perhaps: marks.perhaps,
      surely: marks.surely,
      green: { perhaps: marks.greenPerhaps, surely: marks.greenSurely },
    };
  };
}
