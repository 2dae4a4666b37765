/** Holes on ground given as a formula: what tests of drawings and pages of the ground start from. */
import type { Course, Feature, Hole } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredCourse } from "../../src/measure/types.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "./flat-course.ts";

/** A par 4 of 400 m due north, 350 m from the forward tee, a burn across it at 150 m and a pot right at 220 m. */
export const PAR_FOUR: readonly Feature[] = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 400],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
  pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward" }),
  areaFeature("green", "green", box(-10, 385, 10, 415)),
  areaFeature("fairway", "fairway", box(-12, 170, 18, 380)),
  areaFeature("burn", "penalty-area-red", box(-80, 140, 80, 150), { name: "Burn" }),
  areaFeature("pot", "bunker", box(20, 215, 28, 228), { name: "Pot" }),
];

/** A par 3 of 150 m over an inlet from 40 to 130 m. */
export const PAR_THREE: readonly Feature[] = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 150],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
  areaFeature("green", "green", box(-10, 138, 10, 162)),
  areaFeature("inlet", "penalty-area-red", box(-90, 40, 90, 130), { name: "Inlet" }),
];

/** 220 m north, then 160 m east, gorse 3 m tall inside the corner. */
export const DOGLEG: readonly Feature[] = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 220],
    [160, 220],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
  areaFeature("green", "green", box(148, 212, 172, 228)),
  areaFeature("fairway", "fairway", box(-15, 120, 15, 240)),
  { ...areaFeature("gorse", "scrub", box(16, 120, 100, 190), { name: "Whins" }), heightMetres: 3 },
];

/**
 * A measured course of one hole.
 *
 * @param surface height of the ground at metres east and north of the back tee; none without it
 */
export function hilly(
  features: readonly Feature[],
  surface?: (east: number, north: number) => number | undefined,
  rest: { hole?: Partial<Hole>; course?: Partial<Course> } = {},
): MeasuredCourse {
  const measured = measureCourse(course([hole(features, { par: { men: 4, women: 4 }, ...rest.hole })], rest.course));
  if (!surface) return measured;
  const [x0, y0] = measured.holes[0]!.tees[0]!.marker;
  const ground = gridOf({ west: x0 - 200, east: x0 + 300, south: y0 - 100, north: y0 + 500 }, 2, ([x, y]) =>
    surface(x - x0, y - y0),
  );
  return measureCourse(measured.course, ground);
}
