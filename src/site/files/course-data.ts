/** What the live map of a course fetches, from the measured course. */
import type { CourseData } from "../../contract/course-data.ts";
import { DATA_VERSION } from "../../contract/map-data.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { defaultAmong } from "../../measure/default-tee.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { boundsOf, isDrawn, lonLat, mapFeature, positions, rounded } from "./map-features.ts";

/** @param holePath the hole page's address relative to the course's data file */
export function courseData(
  measured: MeasuredCourse,
  units: LengthUnit,
  holePath: (holeNumber: number) => string,
): CourseData {
  const { course, frame, holes } = measured;
  const own = holes.flatMap(({ hole, placed }) =>
    [...placed.values()].filter(({ shared }) => !shared).map((feature) => ({ hole: hole.number, feature })),
  );
  const drawn = own.filter(({ feature }) => isDrawn(feature));
  return {
    version: DATA_VERSION,
    course: { id: course.id, name: course.name },
    units,
    defaultTee: course.defaultTee,
    origin: lonLat(frame.origin),
    bounds: boundsOf(own.map(({ feature: { feature } }) => feature)),
    features: {
      type: "FeatureCollection",
      features: [
        ...[...measured.placed.values()].filter(isDrawn).map((placed) => mapFeature(placed, "course")),
        ...drawn.map(({ hole, feature }) => mapFeature(feature, "course", hole)),
      ],
    },
    holes: holes.map(({ hole, tees }) => ({
      number: hole.number,
      name: hole.name,
      par: hole.par,
      path: holePath(hole.number),
      line: positions(defaultAmong(tees, course)?.line.points ?? [], frame),
      lengthMetres: Object.fromEntries(tees.map(({ tee, lengthMetres }) => [tee.id, rounded(lengthMetres, 3)])),
    })),
  };
}
