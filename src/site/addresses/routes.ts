/**
 * Addresses of the guide's pages, from the guide's own root: `tarvay/7/`. A page puts the
 * path the guide is served from before them.
 *
 * A club with one course opens on that course's cover; one with several lists them at the
 * root and keeps each cover in the course's own folder. Pages in the club's first language
 * stand at the root, those of each further one at the same addresses below its folder.
 */
import type { Club } from "../../course/types.ts";
import { currentGuide, type Guide } from "../load/guide.ts";

/** What addresses depend on. */
export interface Addressed {
  readonly club: Pick<Club, "languages">;
  readonly courses: readonly {
    readonly course: { readonly id: string; readonly holes: readonly { readonly number: number }[] };
  }[];
}

/** A club seen in one of its languages. */
export type Spoken = Pick<Club, "language" | "languages">;

/**
 * What stands before the addresses of a language's pages: `de/`; nothing for the first language, and for one
 * the guide is not published in.
 */
export const languageFolder = ({ language, languages }: Spoken): string =>
  language === languages[0] || !languages.includes(language) ? "" : `${language.toLowerCase()}/`;

/** The cover of a course; the root itself for a club's only course. */
export const coverPath = (courseId: string, guide: Addressed = currentGuide()): string =>
  guide.courses.length === 1 ? "" : coursePath(courseId);

/** The folder of a course, under which its other pages lie. */
export const coursePath = (courseId: string): string => `${courseId}/`;
export const holePath = (courseId: string, hole: number): string => `${courseId}/${hole}/`;
/** Stills, captions and film of a hole, and of the whole round. */
export const flyoverPath = (courseId: string, hole: number): string => `${holePath(courseId, hole)}flyover/`;
export const tourPath = (courseId: string): string => `${courseId}/tour/`;
export const cardPath = (courseId: string): string => `${courseId}/card/`;
export const mapPath = (courseId: string): string => `${courseId}/map/`;
export const figuresPath = (courseId: string): string => `${courseId}/figures/`;

/** The pocket book, to be printed. */
export const bookPath = (courseId: string): string => `${courseId}/book/`;

/** Every page a guide must have, root first; `404.html` is beside them. */
export function pagePaths(guide: Addressed | Guide): string[] {
  const several = guide.courses.length > 1;
  const inOne = [
    "",
    ...guide.courses.flatMap(({ course: { id, holes } }) => [
      ...(several ? [coverPath(id, guide)] : []),
      ...holes.flatMap(({ number }) => [holePath(id, number), flyoverPath(id, number)]),
      tourPath(id),
      cardPath(id),
      mapPath(id),
      figuresPath(id),
      bookPath(id),
    ]),
  ];
  const { languages } = guide.club;
  return languages.flatMap((language) => inOne.map((path) => `${languageFolder({ language, languages })}${path}`));
}

/** A base path as the whole guide writes it: one slash at each end. */
export const tidyBase = (base: string): string =>
  `/${base
    .split("/")
    .filter((step) => step !== "")
    .join("/")}/`.replace("//", "/");
