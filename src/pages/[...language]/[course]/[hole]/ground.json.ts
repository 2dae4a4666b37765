/** Landing ground of every drive length, fetched when a golfer gives a carry. */
import type { APIRoute } from "astro";
import { groundData } from "../../../../site/files/ground-data.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";
import { words } from "../../../../site/language/words.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = ({ props: { club, course, measured } }) =>
  Response.json(groundData(course, measured, club.units, words(club.language)));
