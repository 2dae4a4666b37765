/** The drawings of a page, in the page's words and the club's unit. */
import type { CompositionName } from "../draw/composition.ts";
import { drawGreenSheet } from "../draw/green-sheet.ts";
import { drawPlate } from "../draw/plate.ts";
import { drawProfile } from "../draw/profile.ts";
import type { PlateGround } from "../draw/relief.ts";
import type { Club } from "../course/types.ts";
import type { GreenLie } from "../measure/green-lie.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../measure/types.ts";
import { plateGround } from "../site/plate-ground.ts";
import { holePath } from "../site/routes.ts";
import { words as wordsOf } from "../site/words.ts";
import { href } from "./links.ts";

/** A hole's ground serves its plates one after another, and is costly to make. */
const grounds = new WeakMap<MeasuredHole, { ground: PlateGround | undefined }>();

function groundOf(course: MeasuredCourse, hole: MeasuredHole): PlateGround | undefined {
  const found = grounds.get(hole) ?? {
    ground: plateGround(course, hole, href(`${holePath(course.course.id, hole.hole.number)}relief.webp`)),
  };
  grounds.set(hole, found);
  return found.ground;
}

/** A hole's plate; ids in it begin with `plate-` and the composition's name. */
export function plateSvg(club: Club, course: MeasuredCourse, hole: MeasuredHole, composition: CompositionName): string {
  const ground = groundOf(course, hole);
  return drawPlate(hole, {
    composition,
    idPrefix: `plate-${composition}`,
    unit: club.units,
    words: wordsOf(club.language).draw,
    ...(ground ? { ground } : {}),
  }).svg;
}

/** A hole's green by itself, from the shown tee's approach. */
export function greenSvg(club: Club, course: MeasuredCourse, hole: MeasuredHole, tee: TeeFigures, lie: GreenLie | undefined): string {
  return drawGreenSheet(hole, {
    idPrefix: "green-sheet",
    unit: club.units,
    tee: tee.tee.id,
    words: wordsOf(club.language).drawGround,
    ...(course.ground ? { ground: { grid: course.ground, lie } } : {}),
  }).svg;
}

/** The ground along the line of play; undefined where it is not known. */
export function profileSvg(club: Club, course: MeasuredCourse, hole: MeasuredHole): string | undefined {
  if (!course.ground) return undefined;
  return drawProfile(hole, course.ground, { idPrefix: "profile", unit: club.units, words: wordsOf(club.language).drawGround })?.svg;
}

/** Drawn once the drawings below exist; pages leave out what is empty. */
export const courseSvg = (): string => "";
export const thumbnailSvg = (): string => "";
