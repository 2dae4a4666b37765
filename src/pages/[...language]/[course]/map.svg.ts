/** A course's map for wide screens, fetched where there is room for it; the pages hold the phone's. */
import type { APIRoute } from "astro";
import { courseSvg } from "../../../components/drawings.ts";
import { coursePaths, type CourseProps } from "../../../site/addresses/static-paths.ts";

export const getStaticPaths = coursePaths;

export const GET: APIRoute<CourseProps> = ({ props: { club, course } }) =>
  new Response(courseSvg(club, course, "desk"), { headers: { "Content-Type": "image/svg+xml" } });
