/** The ground under a line of play, and what lies on it: what a section draws and tells. */
import type { FeatureKind } from "../course/types.ts";
import { contains } from "../geo/area.ts";
import { boxAround } from "../geo/box.ts";
import { pointAt, type Line } from "../geo/line.ts";
import type { Area, Point } from "../geo/position.ts";
import { areasOf } from "../measure/place.ts";
import { seenFrom } from "../measure/seen.ts";
import type { MeasuredHole, PlacedFeature } from "../measure/types.ts";
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

const SURFACE_OF: Readonly<Partial<Record<FeatureKind, Surface>>> = {
  fairway: "fairway", green: "green", bunker: "bunker", water: "water", stream: "water", "penalty-area-red": "water",
  "penalty-area-yellow": "water", scrub: "scrub", wood: "wood", "teeing-ground": "tee",
};

/** The later lies on the earlier. */
const ORDER: readonly Surface[] = ["scrub", "wood", "water", "fairway", "tee", "green", "bunker"];

/** A penalty area whose ground is gorse, heath or grass holds no water. */
const DRY: ReadonlySet<unknown> = new Set(["scrub", "heath", "wood", "grassland", "sand", "bare_rock"]);

interface Cloth {
  readonly surface: Surface;
  readonly area: Area;
  readonly box: readonly [number, number, number, number];
}

function clothsOf(hole: MeasuredHole): Cloth[] {
  const cloths: Cloth[] = [];
  for (const one of hole.placed.values()) {
    const surface = surfaceOf(one);
    if (surface) for (const area of areasOf(one)) cloths.push({ surface, area, box: boxAround(area[0]!) });
  }
  return cloths.sort((a, b) => ORDER.indexOf(b.surface) - ORDER.indexOf(a.surface));
}

function surfaceOf({ feature }: PlacedFeature): Surface | undefined {
  const surface = SURFACE_OF[feature.kind];
  return surface === "water" && DRY.has(feature.tags["natural"]) ? undefined : surface;
}

/**
 * The ground from behind a line's start to beyond its end, where it is known; undefined
 * where the ground at either end of the line is not, or more than a tenth between is not.
 */
export function sectionAlong(
  hole: MeasuredHole,
  grid: HeightGrid,
  line: Line,
  { behindMetres, beyondMetres, spacingMetres }: { readonly behindMetres: number; readonly beyondMetres: number; readonly spacingMetres: number },
): SectionPoint[] | undefined {
  const start = heightAt(grid, line.points[0]!);
  const end = heightAt(grid, line.points[line.points.length - 1]!);
  if (start === undefined || end === undefined) return undefined;
  const cloths = clothsOf(hole);
  const pieces = Math.ceil((behindMetres + line.lengthMetres + beyondMetres) / spacingMetres);
  const section: SectionPoint[] = [];
  for (let k = 0; k <= pieces; k++) {
    const stationMetres = -behindMetres + ((behindMetres + line.lengthMetres + beyondMetres) * k) / pieces;
    const point = pointAt(line, stationMetres);
    const heightMetres = heightAt(grid, point);
    if (heightMetres === undefined) continue;
    const [x, y] = point;
    const surface = cloths.find(({ box, area }) => x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3] && contains(area, point))?.surface ?? "other";
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
export function stretchesOf(section: readonly SectionPoint[], is: (point: SectionPoint, index: number) => boolean): (readonly [number, number])[] {
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
export function seenAlong(hole: MeasuredHole, grid: HeightGrid, marker: Point, section: readonly SectionPoint[]): boolean[] {
  return section.map(({ stationMetres, point }) => stationMetres < 15 || seenFrom(hole, grid, marker, point) !== false);
}
