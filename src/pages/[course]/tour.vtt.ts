/** Captions of a whole round's flyover. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { Club } from "../../course/types.ts";
import { webVtt } from "../../flyover/webvtt.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { roundFlyover } from "../../site/film.ts";
import { currentGuide } from "../../site/guide.ts";
import { words } from "../../site/words.ts";

type Props = {
  club: Club;
  course: MeasuredCourse;
};

export const getStaticPaths = (() => {
  const { club, courses } = currentGuide();
  return courses.map((course) => ({ params: { course: course.course.id }, props: { club, course } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { club, course } }) =>
  new Response(webVtt(roundFlyover(club, course).data.cues, words(club.language).film.tourTitle(course.course.name)), {
    headers: { "Content-Type": "text/vtt; charset=utf-8" },
  });
