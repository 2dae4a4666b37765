/** What the live map of a course fetches. */
import type { APIRoute, GetStaticPaths } from "astro";
import { courseData } from "../../islands/hole-data.ts";
import { groundData } from "../../components/ground-data.ts";
import { photoData } from "../../components/photo-data.ts";
import { currentGuide } from "../../site/guide.ts";

export const getStaticPaths = (async () => {
  const { club, courses } = currentGuide();
  return Promise.all(courses.map(async (measured) => ({
    params: { course: measured.course.id },
    props: { data: { ...courseData(measured, club.units, (hole) => `${hole}/`), ...groundData(measured, ""), ...(await photoData(measured, "")) } },
  })));
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props["data"]);
