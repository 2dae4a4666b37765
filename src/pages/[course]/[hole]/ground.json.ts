/** Landing ground of every drive length, fetched when a golfer gives a carry. */
import type { APIRoute, GetStaticPaths } from "astro";
import { groundData } from "../../../site/ground-data.ts";
import { currentGuide } from "../../../site/guide.ts";
import { words } from "../../../site/words.ts";

export const getStaticPaths = (() => {
  const { club, courses } = currentGuide();
  return courses.flatMap((course) =>
    course.holes.map((measured) => ({
      params: { course: course.course.id, hole: `${measured.hole.number}` },
      props: { course, measured, unit: club.units, language: club.language },
    })),
  );
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) =>
  Response.json(groundData(props["course"], props["measured"], props["unit"], words(props["language"])));
