/** Reach and carry of a hazard from where a ball is struck. */
import { isBoundary, isHazard } from "../course/kinds.ts";
import type { Feature } from "../course/types.ts";
import type { Line } from "../geo/line.ts";
import { locate } from "../geo/line.ts";
import { boxAround, grow, overlaps, type Box } from "../geo/box.ts";
import { densify } from "../geo/segment.ts";
import type { Point } from "../geo/position.ts";
import { distanceMetres } from "../geo/vector.ts";
import { BEYOND_METRES, corridorAbout, type Corridor } from "./corridor.ts";
import { areasOf, boundariesOf } from "./place.ts";
import { runsIn, stationOf, type Run } from "./runs.ts";
import type { DryLand, HazardFigures, NoCarry, PlacedFeature } from "./types.ts";

/** What ends further beyond the green's back than this is never played past (25 yd; common practice, no source). */
const BEYOND_GREEN_METRES = 22.5;

/** Shorter dry ground on the line than this is no place to land. */
const LEAST_DRY_METRES = 6;

/** A line of play still to go, and how deep the green is at its end. */
export interface Way {
  readonly line: Line;
  readonly green: { readonly depthMetres: number };
}

/**
 * Figures of one hazard on a way to play: one entry for each stretch within the corridor,
 * or one for all of it when none is. Stretches are numbered as met from here.
 */
export function hazardFigures(placed: PlacedFeature, way: Way, corridorMetres: number): HazardFigures[] {
  const paths = boundariesOf(placed);
  if (paths.length === 0) return [];
  const corridor = corridorAbout(way.line, corridorMetres);
  const runs = runsIn(corridor, areasOf(placed), paths);
  if (runs.length === 0) return [outsideCorridor(placed, paths, way)];
  return runs.map((run, i) =>
    figuresOf(placed.feature, run, { corridor, way, stretch: i + 1, stretches: runs.length }),
  );
}

interface Meeting {
  readonly corridor: Corridor;
  readonly way: Way;
  readonly stretch: number;
  readonly stretches: number;
}

function figuresOf(feature: Feature, run: Run, { corridor, way, stretch, stretches }: Meeting): HazardFigures {
  const { line } = way;
  const standing = line.points[0]!;
  const before = run.crossings.filter(({ stations }) => stations[0] < line.lengthMetres);
  const position =
    before.length > 0 ? "across" : run.crossings.length > 0 ? "beyond" : run.offsetMetres < 0 ? "left" : "right";
  // Out of bounds is not carried: what lies beyond is no ground to play from (Rules of Golf, 18.2).
  const boundary = isBoundary(feature.kind);
  const dryLand = position === "across" && !boundary ? dryLandOf(run, line) : [];
  const noCarry = boundary ? "boundary" : whyNoCarry(run, way, dryLand);
  const farMetres = distanceMetres(standing, run.furthest);
  const first = before[0];
  return {
    id: feature.id,
    stretch,
    stretches,
    position,
    inCorridor: true,
    reachMetres: distanceMetres(standing, run.nearest),
    farMetres,
    carryMetres: noCarry === undefined ? farMetres : undefined,
    noCarry,
    // Where the line never leaves it there is nothing to be past.
    carryOnLineMetres:
      boundary || first === undefined || endsCorridor(first.stations[1], line)
        ? undefined
        : distanceMetres(standing, first.to),
    dryLand,
    reachPoint: run.nearest,
    farPoint: run.furthest,
    stationMetres: run.stations,
    offsetMetres: run.offsetMetres,
    leavesMetres: line.lengthMetres - stationOf(corridor, run.furthest),
  };
}

const endsCorridor = (station: number, line: Line): boolean => station >= line.lengthMetres + BEYOND_METRES - 1e-6;

function whyNoCarry(
  { stations: [, to] }: Run,
  { line, green }: Way,
  dryLand: readonly DryLand[],
): NoCarry | undefined {
  if (dryLand.some((land) => land.green)) return "around-green";
  return to >= line.lengthMetres + green.depthMetres / 2 + BEYOND_GREEN_METRES ? "no-end" : undefined;
}

/** Ground the line of play runs dry over after it has met the hazard, up to where the stretch ends. */
function dryLandOf({ crossings, stations: [, end] }: Run, line: Line): DryLand[] {
  const standing = line.points[0]!;
  return crossings.flatMap(({ stations: [, from], to: front }, i): DryLand[] => {
    const next = crossings[i + 1];
    const until = next?.stations[0] ?? end;
    if (until - from < LEAST_DRY_METRES || from >= line.lengthMetres) return [];
    return [
      {
        frontMetres: distanceMetres(standing, front),
        backMetres: next && distanceMetres(standing, next.from),
        front,
        back: next?.from,
        green: until > line.lengthMetres,
      },
    ];
  });
}

/** Further from the line than this a hazard is out of every story. */
const WIDE_METRES = 80;

/**
 * Spacing of the points at which the outline of a hazard wide of the corridor is looked at: nothing is
 * staked on it.
 */
const WIDE_STEP_METRES = 4;

/**
 * An outline with points that near, where it comes near the hole; far pieces keep their ends only: the sea
 * may be long.
 */
function spaced(path: readonly Point[], near: Box): Point[] {
  const points: Point[] = [path[0]!];
  for (let i = 1; i < path.length; i++) {
    const piece = [path[i - 1]!, path[i]!];
    points.push(...(overlaps(boxAround(piece), near) ? densify(piece, WIDE_STEP_METRES).slice(1) : [path[i]!]));
  }
  return points;
}

/** A hazard that does not come into the corridor: its nearest and furthest points beside the hole. */
function outsideCorridor(
  { feature }: PlacedFeature,
  paths: readonly (readonly Point[])[],
  { line, green }: Way,
): HazardFigures {
  const standing = line.points[0]!;
  const near = grow(boxAround(line.points), WIDE_METRES);
  const all = paths
    .flatMap((path) => spaced(path, near))
    .map((point) => ({ point, ...locate(line, point), metres: distanceMetres(standing, point) }));
  const beside = all.filter(({ station }) => station >= 0 && station <= line.lengthMetres + BEYOND_METRES);
  const some = beside.length > 0 ? beside : all;
  const least = (size: (vertex: (typeof all)[number]) => number): (typeof all)[number] =>
    some.reduce((best, one) => (size(one) < size(best) ? one : best));
  const [nearest, far] = [least(({ metres }) => metres), least(({ metres }) => -metres)];
  const closest = least(({ offset }) => Math.abs(offset));
  const stationMetres = [least(({ station }) => station).station, least(({ station }) => -station).station] as const;
  const noCarry = isBoundary(feature.kind)
    ? "boundary"
    : stationMetres[1] >= line.lengthMetres + green.depthMetres / 2 + BEYOND_GREEN_METRES
      ? "no-end"
      : undefined;
  return {
    id: feature.id,
    stretch: 1,
    stretches: 1,
    position: closest.offset < 0 ? "left" : "right",
    inCorridor: false,
    reachMetres: nearest.metres,
    farMetres: far.metres,
    carryMetres: noCarry === undefined ? far.metres : undefined,
    noCarry,
    carryOnLineMetres: undefined,
    dryLand: [],
    reachPoint: nearest.point,
    farPoint: far.point,
    stationMetres,
    offsetMetres: closest.offset,
    leavesMetres: line.lengthMetres - far.station,
  };
}

/** Hazards further from the line than this many corridor half-widths do not count when they belong to the course. */
const SHARED_HAZARD_CORRIDORS = 2;

/** Hazards on a way to play, in order of reach: all of the hole's own, and the shared ones that come near. */
export function hazardsOn(
  placed: ReadonlyMap<string, PlacedFeature>,
  way: Way,
  corridorMetres: number,
): HazardFigures[] {
  const figures: HazardFigures[] = [];
  for (const one of placed.values()) {
    if (!isHazard(one.feature.kind)) continue;
    for (const figure of hazardFigures(one, way, corridorMetres)) {
      const near = Math.abs(figure.offsetMetres) <= corridorMetres * SHARED_HAZARD_CORRIDORS;
      const behind = figure.stationMetres[1] < 0;
      if (one.shared && !figure.inCorridor && (!near || behind)) continue;
      figures.push(figure);
    }
  }
  return figures.sort((a, b) => a.reachMetres - b.reachMetres || (a.id < b.id ? -1 : 1));
}
