/** The drawings of a page, in the page's words and the club's unit. */
import type { CompositionName } from "../draw/composition.ts";
import type { PlateGround } from "../draw/relief.ts";
import type { Still, StillOf } from "../draw/stills.ts";
import { drawHoleThumbnail } from "../draw/thumbnail.ts";
import type { Club } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { keptCourse, keptPlate, keptStills } from "../site/cache/kept-drawings.ts";
import { plateGround } from "../site/pictures/plate-ground.ts";
import { originalCourse, originalHole } from "../site/language/language-view.ts";
import { coursePath, holePath, type Spoken } from "../site/addresses/routes.ts";
import { words as wordsOf } from "../site/language/words.ts";
import { courseGround } from "./course-ground.ts";
import { holeHref, href, pageHref } from "./links.ts";

/** A hole's ground serves its plates one after another, and is costly to make. */
const grounds = new WeakMap<MeasuredHole, { ground: PlateGround | undefined }>();

function groundOf(course: MeasuredCourse, seen: MeasuredHole): PlateGround | undefined {
  // The same in every language.
  const hole = originalHole(seen);
  const found = grounds.get(hole) ?? {
    ground: plateGround(course, hole, href(`${holePath(course.course.id, hole.hole.number)}relief.webp`)),
  };
  grounds.set(hole, found);
  return found.ground;
}

/** A hole's plate; ids in it begin with `plate-` and the composition's name. */
export function plateSvg(
  club: Club,
  course: MeasuredCourse,
  hole: MeasuredHole,
  composition: CompositionName,
): string {
  const ground = groundOf(course, hole);
  return keptPlate(hole, {
    composition,
    idPrefix: `plate-${composition}`,
    unit: club.units,
    words: wordsOf(club.language).draw,
    ...(ground ? { ground } : {}),
  }).svg;
}

/** A hole shot by shot, from one tee set and in the club's unit; ids begin with `stills`. */
export function stillsOf(
  club: Club,
  course: MeasuredCourse,
  hole: MeasuredHole,
  tee: TeeFigures,
  stills: readonly StillOf[],
): Still[] {
  const ground = groundOf(course, hole);
  return keptStills(hole, tee, stills, {
    idPrefix: "stills",
    unit: club.units,
    words: wordsOf(club.language).draw,
    ...(ground ? { ground } : {}),
  });
}

const courseGrounds = new WeakMap<MeasuredCourse, { ground: PlateGround | undefined }>();

/** A course's map, each hole on it a link to its page. */
export function courseSvg(club: Club, measured: MeasuredCourse, size: "phone" | "desk"): string {
  const { id } = measured.course;
  const original = originalCourse(measured);
  const found = courseGrounds.get(original) ?? {
    ground: courseGround(measured, href(`${coursePath(id)}relief.webp`)),
  };
  courseGrounds.set(original, found);
  return keptCourse(
    measured,
    {
      idPrefix: `map-${id}-${size}`,
      unit: club.units,
      size,
      href: ({ hole }) => holeHref(club, id, hole.number),
      words: wordsOf(club.language).draw,
      ...(found.ground ? { ground: found.ground } : {}),
    },
    pageHref(club, coursePath(id)),
  ).svg;
}

/** Where the desk's map of a course is fetched. */
export const courseMapHref = (club: Spoken, courseId: string): string =>
  pageHref(club, `${coursePath(courseId)}map.svg`);

/** A hole as a small sign; decoration beside its name. */
export const thumbnailSvg = (hole: MeasuredHole): string => drawHoleThumbnail(hole, { width: 56, height: 78 });
