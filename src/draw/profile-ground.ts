/** The ground under a line of play, and what lies on it: what a section draws and tells. */
import { COVER_ORDER, type GroundCover } from "../course/kinds.ts";
import { contains } from "../geo/area.ts";
import { boxAround, type Box } from "../geo/box.ts";
import { pointAt, type Line } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import { areasOf } from "../measure/place.ts";
import { seenFrom } from "../measure/seen.ts";
import type { MeasuredHole } from "../measure/types.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { heightAt } from "../terrain/sample.ts";

/** What lies on top at a place of the line. */
export type Surface = "fairway" | "green" | "bunker" | "water" | "scrub" | "wood" | "tee" | "other";

export interface SectionPoint {
  /** Metres along the line of play; below 0 behind the tee, above the length beyond the green's middle. */
  readonly stationMetres: number;
  readonly point: Point;
  readonly heightMetres: number;
  readonly surface: Surface;
}

const SURFACE_OF: Readonly<Record<Exclude<GroundCover, "none">, Surface>> = {
  rough: "other",
  heath: "other",
  strand: "other",
  scrub: "scrub",
  wood: "wood",
  rock: "other",
  water: "water",
  fairway: "fairway",
  tee: "tee",
  green: "green",
  bunker: "bunker",
  built: "other",
};

interface SurfaceArea {
  readonly surface: Surface;
  readonly area: Area;
  readonly box: Box;
}

/** The topmost first. */
function surfacesOf(hole: MeasuredHole): SurfaceArea[] {
  const placed = [...hole.placed.values()];
  return COVER_ORDER.flatMap((cover) => {
    const surface = SURFACE_OF[cover];
    if (surface === "other") return [];
    const areas = placed.filter((one) => one.cover === cover).flatMap(areasOf);
    return areas.map((area): SurfaceArea => ({ surface, area, box: boxAround(area[0]!) }));
  }).reverse();
}

/**
 * The ground from behind a line's start to beyond its end, where it is known; undefined
 * where the ground at either end of the line is not, or more than a tenth between is not.
 */
export function sectionAlong(
  hole: MeasuredHole,
  grid: HeightGrid,
  line: Line,
  {
    behindMetres,
    beyondMetres,
    spacingMetres,
  }: { readonly behindMetres: number; readonly beyondMetres: number; readonly spacingMetres: number },
): SectionPoint[] | undefined {
  const start = heightAt(grid, line.points[0]!);
  const end = heightAt(grid, line.points[line.points.length - 1]!);
  if (start === undefined || end === undefined) return undefined;
  const surfaces = surfacesOf(hole);
  const pieces = Math.ceil((behindMetres + line.lengthMetres + beyondMetres) / spacingMetres);
  const section: SectionPoint[] = [];
  for (let k = 0; k <= pieces; k++) {
    const stationMetres = -behindMetres + ((behindMetres + line.lengthMetres + beyondMetres) * k) / pieces;
    const point = pointAt(line, stationMetres);
    const heightMetres = heightAt(grid, point);
    if (heightMetres === undefined) continue;
    const [x, y] = point;
    const surface =
      surfaces.find(
        ({ box, area }) => x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3] && contains(area, point),
      )?.surface ?? "other";
    section.push({ stationMetres, point, heightMetres, surface });
  }
  return section.length > 0.9 * pieces ? filled(section) : undefined;
}

/** Water wider than this lies level; a height model shows its bed. */
const LEAST_LEVEL_WATER_METRES = 12;

/** The section with broad water filled to the lower of its two shores. */
function filled(section: readonly SectionPoint[]): SectionPoint[] {
  const level = [...section];
  for (const [a, b] of stretchesOf(section, ({ surface }) => surface === "water")) {
    const [near, far] = [section[a]!, section[b]!];
    if (far.stationMetres - near.stationMetres < LEAST_LEVEL_WATER_METRES) continue;
    const shore = Math.min(near.heightMetres, far.heightMetres);
    for (let i = a; i <= b; i++) if (level[i]!.heightMetres < shore) level[i] = { ...level[i]!, heightMetres: shore };
  }
  return level;
}

/** Stretches of one surface: first and last index, both included. */
export function stretchesOf(
  section: readonly SectionPoint[],
  is: (point: SectionPoint, index: number) => boolean,
): (readonly [number, number])[] {
  const stretches: (readonly [number, number])[] = [];
  let from = -1;
  section.forEach((point, i) => {
    const inside = is(point, i);
    if (inside && from < 0) from = i;
    if (from >= 0 && (!inside || i === section.length - 1)) {
      stretches.push([from, inside ? i : i - 1]);
      from = -1;
    }
  });
  return stretches;
}

/** Of each point whether a golfer standing at the tee marker sees its ground. */
export function seenAlong(
  hole: MeasuredHole,
  grid: HeightGrid,
  marker: Point,
  section: readonly SectionPoint[],
): boolean[] {
  return section.map(
    ({ stationMetres, point }) => stationMetres < 15 || seenFrom(hole, grid, marker, point) !== false,
  );
}
