/** A content folder as a measured guide, with everything that is wrong with it. */
import { join, resolve } from "node:path";
import { inReadingOrder, type Diagnostic } from "../../course/diagnostic.ts";
import type { PhotoFacts } from "../../course/photo-look.ts";
import { everyTip } from "../../course/tips.ts";
import type { Course, Place } from "../../course/types.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { frameOf, measureCourse } from "../../measure/course.ts";
import { positionsOf } from "../../measure/place.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { readContent } from "../../read/content.ts";
import { HeightsError, readHeights } from "../../read/heights.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { checkTip } from "../../tell/tip.ts";
import type { Guide } from "./guide.ts";
import { OrthophotoError, provePhoto } from "../pictures/orthophoto.ts";
import { findPhotos } from "./photo-facts.ts";

export interface Loaded {
  /** Undefined as long as anything is an error. */
  readonly guide: Guide | undefined;
  readonly diagnostics: readonly Diagnostic[];
  /** The courses that could be read, with those of their holes that are in order. */
  readonly sound: readonly Course[];
  /** What could be measured of them. */
  readonly measured: readonly MeasuredCourse[];
  /** The photos of the courses that could be read, by course id. */
  readonly photos: ReadonlyMap<string, PhotoFacts>;
}

/**
 * Reads, measures and checks a content folder. Courses and holes that are in order are
 * measured even when others are not, so that one run tells of all mistakes.
 */
export async function loadGuide(folder: string): Promise<Loaded> {
  const contentFolder = resolve(folder);
  const { club, sound, heightsPlaces, diagnostics: read } = await readContent(contentFolder);
  const diagnostics = [...read];
  const courses: MeasuredCourse[] = [];
  for (const course of sound) {
    if (course.holes.length === 0) continue;
    const place = heightsPlaces.get(course.id) ?? { file: `${course.id}/course.yaml`, line: 1, column: 1 };
    const heights = await groundOf(course, contentFolder, place);
    diagnostics.push(...heights.diagnostics);
    diagnostics.push(...(await photoFaults(course, contentFolder)));
    const measured = measure(course, heights.grid, place);
    diagnostics.push(...measured.diagnostics);
    if (measured.course) {
      courses.push(measured.course);
      diagnostics.push(...measured.course.holes.flatMap((hole) => tipDiagnostics(hole, club?.units ?? "yards")));
    }
  }
  const photos = await findPhotos(sound, contentFolder);
  diagnostics.push(...photos.diagnostics);
  const failed = diagnostics.some(({ severity }) => severity === "error");
  return {
    guide: failed || club === undefined ? undefined : { club, courses, contentFolder },
    diagnostics: inReadingOrder(diagnostics),
    sound,
    measured: courses,
    photos: photos.facts,
  };
}

/** Figures are asked of the ground in every language the tip is written in. */
const tipDiagnostics = (hole: MeasuredHole, units: LengthUnit): readonly Diagnostic[] =>
  everyTip(hole.hole).flatMap((tip) => checkTip(hole, units, tip));

async function photoFaults(course: Course, contentFolder: string): Promise<Diagnostic[]> {
  try {
    await provePhoto(course, contentFolder);
    return [];
  } catch (error) {
    if (!(error instanceof OrthophotoError) || course.orthophoto === undefined) throw error;
    return [{ ...course.orthophoto.place, severity: "error", rule: "photo-from-the-air", message: error.message }];
  }
}

/** Features of golf stand on the ground; the sea and the road beyond may leave it. */
const GROUNDED = new Set(["line-of-play", "tee-marker", "green"]);

async function groundOf(
  course: Course,
  contentFolder: string,
  place: Place,
): Promise<{ grid: HeightGrid | undefined; diagnostics: readonly Diagnostic[] }> {
  if (!course.ground) return { grid: undefined, diagnostics: [] };
  const frame = frameOf(course);
  const features = course.holes.flatMap((hole) => hole.features);
  const points = features.flatMap((feature) => positionsOf(feature)).map((position) => frame.toPlane(position));
  const bounds = points.reduce(
    (box, [x, y]) => ({
      west: Math.min(box.west, x),
      south: Math.min(box.south, y),
      east: Math.max(box.east, x),
      north: Math.max(box.north, y),
    }),
    { west: Infinity, south: Infinity, east: -Infinity, north: -Infinity },
  );
  const { file, crs } = course.ground;
  try {
    const { grid, notes } = await readHeights(join(contentFolder, file), {
      file,
      frame,
      bounds,
      crs,
      positions: features.filter(({ kind }) => GROUNDED.has(kind)).flatMap((feature) => positionsOf(feature)),
    });
    return {
      grid,
      diagnostics: notes.map((note) => ({ ...place, severity: "note", rule: "heights", message: `${file}: ${note}` })),
    };
  } catch (error) {
    if (!(error instanceof HeightsError)) throw error;
    return {
      grid: undefined,
      diagnostics: [{ ...place, severity: "error", rule: "heights", message: error.message }],
    };
  }
}

/**
 * The course measured, or the holes that defy it: checked content should not, but a page must not fall to a
 * bare stack trace.
 */
function measure(
  course: Course,
  ground: HeightGrid | undefined,
  place: Place,
): { course: MeasuredCourse | undefined; diagnostics: readonly Diagnostic[] } {
  try {
    return { course: measureCourse(course, ground), diagnostics: [] };
  } catch (error) {
    const diagnostics = course.holes.flatMap((hole) => {
      try {
        measureCourse({ ...course, holes: [hole] }, ground);
        return [];
      } catch (reason) {
        return [cannotMeasure(hole.place, reason)];
      }
    });
    return {
      course: undefined,
      diagnostics: diagnostics.length > 0 ? diagnostics : [cannotMeasure({ ...place, line: 1, column: 1 }, error)],
    };
  }
}

const cannotMeasure = (place: Place, reason: unknown): Diagnostic => ({
  ...place,
  severity: "error",
  rule: "measure",
  message: `This cannot be measured: ${reason instanceof Error ? reason.message : String(reason)}`,
});
