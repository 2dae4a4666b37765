/** What the live map of a hole fetches. */
import type { APIRoute, GetStaticPaths } from "astro";
import { holeData } from "../../../islands/hole-data.ts";
import { groundData } from "../../../components/ground-data.ts";
import { currentGuide } from "../../../site/guide.ts";

export const getStaticPaths = (() => {
  const { club, courses } = currentGuide();
  return courses.flatMap((course) =>
    course.holes.map((measured) => ({
      params: { course: course.course.id, hole: `${measured.hole.number}` },
      props: { data: { ...holeData(measured, club.units), ...groundData(course, "../") } },
    })),
  );
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props["data"]);
