/** A course's map for wide screens, fetched where there is room for it; the pages hold the phone's. */
import type { APIRoute, GetStaticPaths } from "astro";
import { courseSvg } from "../../components/drawings.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { currentGuide } from "../../site/guide.ts";

type Props = {
  measured: MeasuredCourse;
};

export const getStaticPaths = (() =>
  currentGuide().courses.map((measured) => ({ params: { course: measured.course.id }, props: { measured } }))) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { measured } }) =>
  new Response(courseSvg(currentGuide().club, measured, "desk"), { headers: { "Content-Type": "image/svg+xml" } });
