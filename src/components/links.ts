/** Addresses of the guide's pages under the path it is served from. */
import {
  bookPath,
  cardPath,
  coursePath,
  coverPath,
  figuresPath,
  flyoverPath,
  holePath,
  languageFolder,
  mapPath,
  tourPath,
  type Spoken,
} from "../site/addresses/routes.ts";

/** An address within the guide, from the site's own root: `tarvay/7/` under the base path. */
export function href(path: string): string {
  const base = import.meta.env.BASE_URL;
  return `${base.endsWith("/") ? base : `${base}/`}${path.replace(/^\/+/, "")}`;
}

/** A page's address in the language a club is seen in. */
export const pageHref = (club: Spoken, path: string): string => href(`${languageFolder(club)}${path}`);

/**
 * From a language's file to where all languages share pictures of a course.
 *
 * @param up from the file's folder to the course's
 */
export function sharedFolder(club: Spoken, courseId: string, up: "" | "../"): string {
  const folder = languageFolder(club);
  return folder === "" ? up : `${up}../../${coursePath(courseId)}`;
}

/**
 * A page's addresses in each language for search engines; none where there is but one, or where the guide
 * does not know its own address.
 */
export function alternatesOf(
  club: Spoken,
  path: string,
  site: URL | undefined,
): { readonly hreflang: string; readonly address: string }[] {
  if (site === undefined || club.languages.length < 2) return [];
  const all = club.languages.map((language) => ({
    hreflang: language,
    address: new URL(pageHref({ ...club, language }, path), site).href,
  }));
  return [...all, { hreflang: "x-default", address: all[0]!.address }];
}

export const homeHref = (club: Spoken): string => pageHref(club, "");
export const coverHref = (club: Spoken, courseId: string): string => pageHref(club, coverPath(courseId));
export const holeHref = (club: Spoken, courseId: string, hole: number): string =>
  pageHref(club, holePath(courseId, hole));
export const cardHref = (club: Spoken, courseId: string): string => pageHref(club, cardPath(courseId));
export const mapHref = (club: Spoken, courseId: string): string => pageHref(club, mapPath(courseId));
export const figuresHref = (club: Spoken, courseId: string): string => pageHref(club, figuresPath(courseId));
export const flyoverHref = (club: Spoken, courseId: string, hole: number): string =>
  pageHref(club, flyoverPath(courseId, hole));
export const tourHref = (club: Spoken, courseId: string): string => pageHref(club, tourPath(courseId));
export const bookHref = (club: Spoken, courseId: string): string => pageHref(club, bookPath(courseId));
