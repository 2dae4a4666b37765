/** What the player of a hole's flyover fetches. */
import type { APIRoute } from "astro";
import { holeFlyover } from "../../../../site/files/film.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = ({ props: { club, course, measured } }) =>
  Response.json(holeFlyover(club, course, measured).data);
