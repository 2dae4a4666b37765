/** The photo from the air for the live map, Web Mercator tiles. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { Course } from "../../../../../course/types.ts";
import { currentGuide } from "../../../../../site/load/guide.ts";
import { coursePhoto, photoTile } from "../../../../../site/pictures/orthophoto.ts";
import type { Tile } from "../../../../../terrain/web-mercator.ts";

type Props = {
  course: Course;
  tile: Tile;
};

export const getStaticPaths = (async () => {
  const { courses, contentFolder } = currentGuide();
  const paths = [];
  for (const { course } of courses) {
    for (const tile of (await coursePhoto(course, contentFolder))?.tiles ?? []) {
      paths.push({
        params: { course: course.id, z: `${tile.z}`, x: `${tile.x}`, y: `${tile.y}` },
        props: { course, tile },
      });
    }
  }
  return paths;
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { course, tile } }) => {
  const bytes = await photoTile(course, currentGuide().contentFolder, tile);
  return bytes
    ? new Response(bytes, { headers: { "Content-Type": "image/webp" } })
    : new Response(null, { status: 404 });
};
