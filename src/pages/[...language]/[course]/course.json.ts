/** What the live map of a course fetches. */
import type { APIRoute } from "astro";
import { courseData } from "../../../islands/hole-data.ts";
import { groundData } from "../../../components/ground-data.ts";
import { photoData } from "../../../components/photo-data.ts";
import { sharedFolder } from "../../../components/links.ts";
import { coursePaths, type CourseProps } from "../../../site/static-paths.ts";

export const getStaticPaths = coursePaths;

export const GET: APIRoute<CourseProps> = async ({ props: { club, course } }) => {
  const tiles = sharedFolder(club, course.course.id, "");
  return Response.json({ ...courseData(course, club.units, (hole) => `${hole}/`), ...groundData(course, tiles), ...(await photoData(course, tiles)) });
};
