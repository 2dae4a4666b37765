/** The relief picture under a course's map, where the course has a height model. */
import type { APIRoute, GetStaticPaths } from "astro";
import { courseRelief } from "../../components/course-ground.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { currentGuide } from "../../site/load/guide.ts";

type Props = {
  measured: MeasuredCourse;
};

export const getStaticPaths = (() =>
  currentGuide().courses.flatMap((measured) =>
    measured.ground === undefined ? [] : [{ params: { course: measured.course.id }, props: { measured } }],
  )) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { measured } }) =>
  new Response(await courseRelief(measured), { headers: { "Content-Type": "image/webp" } });
