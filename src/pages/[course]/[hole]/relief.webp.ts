/** The shaded relief that lies under a hole's plates. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { MeasuredCourse, MeasuredHole } from "../../../measure/types.ts";
import { currentGuide } from "../../../site/guide.ts";
import { reliefPicture } from "../../../site/plate-ground.ts";

type Props = {
  course: MeasuredCourse;
  measured: MeasuredHole;
};

export const getStaticPaths = (() =>
  currentGuide().courses.flatMap((course) =>
    course.ground
      ? course.holes.map((measured) => ({
          params: { course: course.course.id, hole: `${measured.hole.number}` },
          props: { course, measured },
        }))
      : [],
  )) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { course, measured } }) => {
  const picture = await reliefPicture(course, measured);
  return picture ? new Response(picture, { headers: { "Content-Type": "image/webp" } }) : new Response(null, { status: 404 });
};
