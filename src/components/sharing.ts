/** What a page hands to those who link to it. */
import type { Club } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import { coverPath, holePath, mapPath } from "../site/addresses/routes.ts";
import { SHARE_FILE } from "../site/pictures/share-size.ts";
import type { Words } from "../site/language/words.ts";
import { golfCourseData, jsonForScript } from "../tell/structured-data.ts";
import { pageHref } from "./links.ts";
import { firstParagraph } from "./markdown.ts";

export interface SharedPicture {
  readonly address: string;
  readonly alt: string;
}

/**
 * A hole's share card. There is one only where the guide knows its own address, since links elsewhere need
 * it whole.
 */
export const sharedPicture = (club: Club, courseId: string, { hole }: MeasuredHole, words: Words): SharedPicture => ({
  address: pageHref(club, `${holePath(courseId, hole.number)}${SHARE_FILE}`),
  alt: words.draw.plateTitle({ hole: hole.number, name: hole.name }),
});

/** JSON-LD of a course for its cover. */
export function courseJson(club: Club, measured: MeasuredCourse, words: Words, site: URL | undefined): string {
  const { id, name, description } = measured.course;
  const full = (path: string): string | undefined => site && new URL(pageHref(club, path), site).href;
  const first = measured.holes[0];
  return jsonForScript(
    golfCourseData(club, measured, firstParagraph(description) || words.guideTo({ course: name }), {
      page: full(coverPath(id)),
      map: full(mapPath(id)),
      picture: first && full(`${holePath(id, first.hole.number)}${SHARE_FILE}`),
    }),
  );
}
