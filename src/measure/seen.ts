/** What is seen from where on a hole, over the ground and the woods that stand on it. */
import { groundKind } from "../course/ground-cover.ts";
import { kindFacts } from "../course/kinds.ts";
import type { Area, Point } from "../geo/position.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { coverFrom, lineOfSight, visibleShare } from "../terrain/sight.ts";
import { areasOf } from "./place.ts";
import { greenOf } from "./hole.ts";
import type { MeasuredHole, TeeFigures } from "./types.ts";

/** A flagstick's length. The Rules recommend at least 7 feet (2.13 m); from memory. */
export const FLAGSTICK_METRES = 2.13;

/** Woods, hedges and buildings whose height the club states. */
function coverOf(hole: MeasuredHole): (point: Point) => number {
  const stands: { area: Area; heightMetres: number }[] = [];
  for (const one of hole.placed.values()) {
    const { heightMetres } = one.feature;
    if (heightMetres === undefined || !kindFacts(groundKind(one.feature)).hides) continue;
    for (const area of areasOf(one)) stands.push({ area, heightMetres });
  }
  return coverFrom(stands);
}

/**
 * Whether the ground at a point (or what rises `targetMetres` above it) is seen by a standing golfer;
 * undefined where heights are unknown.
 */
export function seenFrom(
  hole: MeasuredHole,
  grid: HeightGrid,
  from: Point,
  to: Point,
  targetMetres = 0,
): boolean | undefined {
  return lineOfSight(grid, from, to, { targetMetres, coverMetres: coverOf(hole) })?.visible;
}

export interface SightFromTee {
  /** Share of the green's surface that is seen, 0 to 1. */
  readonly greenShare: number | undefined;
  /** The top of a flagstick in the middle of the green. */
  readonly flag: boolean | undefined;
  /** Share of each hazard's ground seen, by feature id, for hazards with an outline. */
  readonly hazardShares: Readonly<Record<string, number>>;
}

/** What a golfer sees from a tee marker. */
export function sightFromTee(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): SightFromTee {
  const options = { coverMetres: coverOf(hole) };
  const hazardShares: Record<string, number> = {};
  for (const { id, inCorridor } of tee.hazards) {
    if (!inCorridor || hazardShares[id] !== undefined) continue;
    const [area] = areasOf(hole.placed.get(id)!);
    const sight = area && visibleShare(grid, tee.marker, area, { ...options, spacingMetres: 4 });
    if (sight) hazardShares[id] = sight.share;
  }
  return {
    greenShare: visibleShare(grid, tee.marker, greenOf(hole.placed, hole.hole), options)?.share,
    flag: seenFrom(hole, grid, tee.marker, tee.green.middle, FLAGSTICK_METRES),
    hazardShares,
  };
}
