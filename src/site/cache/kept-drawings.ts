/** Drawings that cost tenths of a second each, kept between builds. */
import { drawCourse } from "../../draw/course-map.ts";
import { drawGreenSheet } from "../../draw/green-sheet.ts";
import { drawPlate, type Plate, type PlateOptions } from "../../draw/plate.ts";
import { drawProfile } from "../../draw/profile.ts";
import { drawStills, type Still, type StillOf } from "../../draw/stills.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../../measure/types.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { drawnCourse, drawnHole, kept } from "./kept.ts";

/** As drawPlate. */
export function keptPlate(hole: MeasuredHole, options: PlateOptions): Plate {
  const seen = drawnHole(hole);
  const { ground, ...rest } = options;
  return kept("plate", [seen, rest, ground], () => drawPlate(seen, options));
}

/** As drawStills. */
export function keptStills(
  hole: MeasuredHole,
  tee: TeeFigures,
  stills: readonly StillOf[],
  options: Parameters<typeof drawStills>[3],
): Still[] {
  const seen = drawnHole(hole);
  const { ground, ...rest } = options;
  return kept("stills", [seen, tee.tee.id, stills, rest, ground], () => drawStills(seen, tee, stills, options));
}

/** As drawProfile. */
export function keptProfile(
  hole: MeasuredHole,
  grid: HeightGrid,
  options: Parameters<typeof drawProfile>[2],
): ReturnType<typeof drawProfile> {
  const seen = drawnHole(hole);
  return kept("profile", [seen, grid, options], () => drawProfile(seen, grid, options));
}

/** As drawGreenSheet. */
export function keptGreenSheet(
  hole: MeasuredHole,
  options: Parameters<typeof drawGreenSheet>[1],
): ReturnType<typeof drawGreenSheet> {
  const seen = drawnHole(hole);
  const { ground, ...rest } = options;
  return kept("green-sheet", [seen, rest, ground?.grid, ground?.lie], () => drawGreenSheet(seen, options));
}

type CourseOptions = Parameters<typeof drawCourse>[1];

/** As drawCourse. @param addresses tells its links apart, which are functions. */
export function keptCourse(
  course: MeasuredCourse,
  options: CourseOptions,
  addresses: string,
): ReturnType<typeof drawCourse> {
  const seen = drawnCourse(course);
  const { ground, ...rest } = options;
  return kept("course-map", [seen, rest, ground, addresses], () => drawCourse(seen, options));
}
