/** A hole's plate for wide screens, fetched where there is room for it; the page itself holds the phone's. */
import type { APIRoute, GetStaticPaths } from "astro";
import { plateSvg } from "../../../components/drawings.ts";
import type { MeasuredCourse, MeasuredHole } from "../../../measure/types.ts";
import { currentGuide } from "../../../site/guide.ts";

type Props = {
  course: MeasuredCourse;
  measured: MeasuredHole;
};

export const getStaticPaths = (() =>
  currentGuide().courses.flatMap((course) =>
    course.holes.map((measured) => ({
      params: { course: course.course.id, hole: `${measured.hole.number}` },
      props: { course, measured },
    })),
  )) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = ({ props: { course, measured } }) =>
  new Response(plateSvg(currentGuide().club, course, measured, "desk"), { headers: { "Content-Type": "image/svg+xml" } });
