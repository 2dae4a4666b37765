/** The shaded relief under a hole's plate in the pocket book, which shows more to the sides than the page's. */
import type { APIRoute, GetStaticPaths } from "astro";
import { BOOK_COMPOSITION } from "../../../draw/paper-composition.ts";
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
  const picture = await reliefPicture(course, measured, [BOOK_COMPOSITION]);
  return picture ? new Response(picture, { headers: { "Content-Type": "image/webp" } }) : new Response(null, { status: 404 });
};
