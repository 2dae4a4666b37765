/** What the live map of a course fetches: `course.json` beside its pages. */
import type { PerGender } from "../course/types.ts";
import {
  bounds,
  DATA_VERSION,
  lonLat,
  mapData,
  metresByTee,
  perGender,
  type Bounds,
  type LonLat,
  type MapData,
} from "./map-data.ts";
import { file, listOf, number, object, text } from "./reading.ts";

export interface CourseHoleData {
  readonly number: number;
  readonly name: string;
  readonly par: PerGender;
  /** The hole page's address relative to the data file. */
  readonly path: string;
  /** Line of play from the default tee set, or the longest on the hole's card. */
  readonly line: readonly LonLat[];
  /** By tee set id. */
  readonly lengthMetres: Readonly<Record<string, number>>;
}

export interface CourseData extends MapData {
  /** Around every hole's own features. */
  readonly bounds: Bounds;
  readonly holes: readonly CourseHoleData[];
}

/** @throws UnreadableData when it is of another version, or damaged */
export const readCourseData = file<CourseData>(
  "course.json",
  DATA_VERSION,
  object<CourseData>({
    ...mapData,
    bounds,
    holes: listOf(
      object<CourseHoleData>({
        number,
        name: text,
        par: perGender,
        path: text,
        line: listOf(lonLat),
        lengthMetres: metresByTee,
      }),
    ),
  }),
);
