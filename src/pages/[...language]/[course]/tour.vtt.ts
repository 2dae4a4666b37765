/** Captions of a whole round's flyover. */
import type { APIRoute } from "astro";
import { webVtt } from "../../../flyover/webvtt.ts";
import { roundFlyover } from "../../../site/files/film.ts";
import { coursePaths, type CourseProps } from "../../../site/addresses/static-paths.ts";
import { words } from "../../../site/language/words.ts";

export const getStaticPaths = coursePaths;

export const GET: APIRoute<CourseProps> = ({ props: { club, course } }) =>
  new Response(
    webVtt(roundFlyover(club, course).data.cues, words(club.language).film.tourTitle({ course: course.course.name })),
    {
      headers: { "Content-Type": "text/vtt; charset=utf-8" },
    },
  );
