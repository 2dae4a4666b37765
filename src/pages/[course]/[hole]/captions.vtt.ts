/** A hole's tip as captions of its flyover. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { Club } from "../../../course/types.ts";
import { webVtt } from "../../../flyover/webvtt.ts";
import type { MeasuredCourse, MeasuredHole } from "../../../measure/types.ts";
import { holeFlyover } from "../../../site/film.ts";
import { currentGuide } from "../../../site/guide.ts";
import { words } from "../../../site/words.ts";

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

export const GET: APIRoute<Props> = ({ props: { club, course, measured } }) =>
  new Response(webVtt(holeFlyover(club, course, measured).data.cues, words(club.language).film.title(measured.hole.number, measured.hole.name)), {
    headers: { "Content-Type": "text/vtt; charset=utf-8" },
  });
