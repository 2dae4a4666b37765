/** What the live map of a hole fetches. */
import type { APIRoute, GetStaticPaths } from "astro";
import { holeData } from "../../../islands/hole-data.ts";
import { groundData } from "../../../components/ground-data.ts";
import { photoData } from "../../../components/photo-data.ts";
import { currentGuide } from "../../../site/guide.ts";

export const getStaticPaths = (async () => {
  const { club, courses } = currentGuide();
  const paths = await Promise.all(courses.map(async (course) => {
    const photo = await photoData(course, "../");
    return course.holes.map((measured) => ({
      params: { course: course.course.id, hole: `${measured.hole.number}` },
      props: { data: { ...holeData(measured, club.units), ...groundData(course, "../"), ...photo } },
    }));
  }));
  return paths.flat();
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props["data"]);
