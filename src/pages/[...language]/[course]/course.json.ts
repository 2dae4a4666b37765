/** What the live map of a course fetches. */
import type { APIRoute } from "astro";
import { sharedFolder } from "../../../components/links.ts";
import { courseData } from "../../../site/files/course-data.ts";
import { courseTiles } from "../../../site/files/tiles.ts";
import { coursePaths, type CourseProps } from "../../../site/addresses/static-paths.ts";

export const getStaticPaths = coursePaths;

export const GET: APIRoute<CourseProps> = async ({ props: { club, course } }) =>
  Response.json({
    ...courseData(course, club.units, (hole) => `${hole}/`),
    ...(await courseTiles(course, sharedFolder(club, course.course.id, ""))),
  });
