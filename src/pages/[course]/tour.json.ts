/** What the player of a whole round's flyover fetches. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { Club } from "../../course/types.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { roundFlyover } from "../../site/film.ts";
import { currentGuide } from "../../site/guide.ts";

type Props = {
  club: Club;
  course: MeasuredCourse;
};

export const getStaticPaths = (() => {
  const { club, courses } = currentGuide();
  return courses.map((course) => ({ params: { course: course.course.id }, props: { club, course } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { club, course } }) => Response.json(roundFlyover(club, course).data);
