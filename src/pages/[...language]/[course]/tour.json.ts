/** What the player of a whole round's flyover fetches. */
import type { APIRoute } from "astro";
import { roundFlyover } from "../../../site/files/film.ts";
import { coursePaths, type CourseProps } from "../../../site/addresses/static-paths.ts";

export const getStaticPaths = coursePaths;

export const GET: APIRoute<CourseProps> = ({ props: { club, course } }) =>
  Response.json(roundFlyover(club, course).data);
