/** What the live map of a hole fetches. */
import type { APIRoute } from "astro";
import { sharedFolder } from "../../../../components/links.ts";
import { holeData } from "../../../../site/files/hole-data.ts";
import { courseTiles } from "../../../../site/files/tiles.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = async ({ props: { club, course, measured } }) =>
  Response.json({
    ...holeData(measured, club.units),
    ...(await courseTiles(course, sharedFolder(club, course.course.id, "../"))),
  });
