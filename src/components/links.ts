/** Addresses of the guide's pages under the path it is served from. */
import { bookPath, cardPath, coverPath, figuresPath, flyoverPath, holePath, mapPath, tourPath } from "../site/routes.ts";

/** An address within the guide, from the site's own root: `tarvay/7/` under the base path. */
export function href(path: string): string {
  const base = import.meta.env.BASE_URL;
  return `${base.endsWith("/") ? base : `${base}/`}${path.replace(/^\/+/, "")}`;
}

export const homeHref = (): string => href("");
export const coverHref = (courseId: string): string => href(coverPath(courseId));
export const holeHref = (courseId: string, hole: number): string => href(holePath(courseId, hole));
export const cardHref = (courseId: string): string => href(cardPath(courseId));
export const mapHref = (courseId: string): string => href(mapPath(courseId));
export const figuresHref = (courseId: string): string => href(figuresPath(courseId));
export const flyoverHref = (courseId: string, hole: number): string => href(flyoverPath(courseId, hole));
export const tourHref = (courseId: string): string => href(tourPath(courseId));
export const bookHref = (courseId: string): string => href(bookPath(courseId));
