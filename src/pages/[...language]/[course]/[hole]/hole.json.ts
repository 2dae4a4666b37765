/** What the live map of a hole fetches. */
import type { APIRoute } from "astro";
import { holeData } from "../../../../islands/hole-data.ts";
import { groundData } from "../../../../components/ground-data.ts";
import { photoData } from "../../../../components/photo-data.ts";
import { sharedFolder } from "../../../../components/links.ts";
import { holePaths, type HoleProps } from "../../../../site/static-paths.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = async ({ props: { club, course, measured } }) => {
  const tiles = sharedFolder(club, course.course.id, "../");
  return Response.json({ ...holeData(measured, club.units), ...groundData(course, tiles), ...(await photoData(course, tiles)) });
};
