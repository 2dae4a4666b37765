/** What the player of a hole's flyover fetches. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { Club } from "../../../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../../../measure/types.ts";
import { holeFlyover } from "../../../site/film.ts";
import { currentGuide } from "../../../site/guide.ts";

type Props = {
  club: Club;
  course: MeasuredCourse;
  measured: MeasuredHole;
};

export const getStaticPaths = (() => {
  const { club, courses } = currentGuide();
  return courses.flatMap((course) =>
    course.holes.map((measured) => ({
      params: { course: course.course.id, hole: `${measured.hole.number}` },
      props: { club, course, measured },
    })),
  );
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { club, course, measured } }) => Response.json(holeFlyover(club, course, measured).data);
