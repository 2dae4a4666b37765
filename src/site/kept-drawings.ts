/** Drawings that cost tenths of a second each, kept between builds. */
import { drawCourse } from "../draw/course-map.ts";
import { drawPlate, type Plate, type PlateOptions } from "../draw/plate.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import { drawnCourse, drawnHole, kept } from "./kept.ts";

/** As drawPlate. */
export function keptPlate(hole: MeasuredHole, options: PlateOptions): Plate {
  const seen = drawnHole(hole);
  const { ground, ...rest } = options;
  return kept("plate", [seen, rest, ground], () => drawPlate(seen, options));
}

type CourseOptions = Parameters<typeof drawCourse>[1];

/** As drawCourse. @param addresses tells its links apart, which are functions. */
export function keptCourse(course: MeasuredCourse, options: CourseOptions, addresses: string): ReturnType<typeof drawCourse> {
  const seen = drawnCourse(course);
  const { ground, ...rest } = options;
  return kept("course-map", [seen, rest, ground, addresses], () => drawCourse(seen, options));
}
