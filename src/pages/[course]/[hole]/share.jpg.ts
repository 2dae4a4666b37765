/** The picture a link to a hole is shown with; made where the guide knows its address, which such links need. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { MeasuredCourse, MeasuredHole } from "../../../measure/types.ts";
import { currentGuide } from "../../../site/guide.ts";
import { shareCard } from "../../../site/share-card.ts";
import { words } from "../../../site/words.ts";

type Props = {
  course: MeasuredCourse;
  measured: MeasuredHole;
};

export const getStaticPaths = (() =>
  import.meta.env.SITE === undefined
    ? []
    : currentGuide().courses.flatMap((course) =>
        course.holes.map((measured) => ({
          params: { course: course.course.id, hole: `${measured.hole.number}` },
          props: { course, measured },
        })),
      )) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { course, measured } }) => {
  const { club } = currentGuide();
  return new Response(await shareCard(club.units, course, measured, words(club.language)), { headers: { "Content-Type": "image/jpeg" } });
};
