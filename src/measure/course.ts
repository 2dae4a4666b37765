/** All figures of a course. */
import type { Course, Feature } from "../course/types.ts";
import { boxAround } from "../geo/box.ts";
import { frameAt, wrapDegrees, type Frame } from "../geo/frame.ts";
import type { Position } from "../geo/position.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { measureHole } from "./hole.ts";
import { placeFeature, positionsOf } from "./place.ts";
import { coverSettler } from "./surveyed-water.ts";
import type { MeasuredCourse, PlacedFeature } from "./types.ts";

/**
 * The frame of a course: its origin is the middle of the box around its holes, rounded to
 * a thousandth of a degree so that a moved bunker does not move every figure's last bit.
 * Longitudes are taken as turns from the first one, so a course may lie across 180 degrees.
 */
export function frameOf(course: Course): Frame {
  const positions: Position[] = course.holes.flatMap((hole) => hole.features.flatMap(positionsOf));
  const first = positions[0]?.[0] ?? 0;
  const [west, south, east, north] = boxAround(
    positions.map(([longitude, latitude]) => [first + wrapDegrees(longitude - first), latitude] as const),
  );
  const round = (value: number): number => Math.round(value * 1000) / 1000;
  return frameAt([round(wrapDegrees((west + east) / 2)), round((south + north) / 2)]);
}

/**
 * Measures every hole of a course in one frame.
 *
 * @param ground heights in that frame, where the course has a DEM; without it the heights
 *   written in the coordinates are used, and without those nothing is said of rise
 */
export function measureCourse(course: Course, ground?: HeightGrid): MeasuredCourse {
  const frame = frameOf(course);
  const lay = (features: readonly Feature[], shared: boolean): PlacedFeature[] =>
    features.map((feature) => placeFeature(feature, frame, shared));
  const shared = lay(course.features, true);
  const own = course.holes.map(({ features }) => lay(features, false));
  const settled = coverSettler([...shared, ...own.flat()]);
  const byId = (features: readonly PlacedFeature[]): Map<string, PlacedFeature> =>
    new Map(features.map((one) => [one.feature.id, settled(one)]));
  const placed = byId(shared);
  return {
    course,
    frame,
    placed,
    ground,
    holes: course.holes.map((hole, i) => measureHole(course, hole, frame, byId(own[i]!), placed, ground)),
  };
}
