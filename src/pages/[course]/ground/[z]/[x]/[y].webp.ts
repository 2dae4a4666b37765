/** Heights for the live map, terrarium tiles. */
import type { APIRoute, GetStaticPaths } from "astro";
import type { MeasuredCourse } from "../../../../../measure/types.ts";
import { currentGuide } from "../../../../../site/load/guide.ts";
import { courseTiles, terrainTile, type TileAddress } from "../../../../../site/pictures/terrain.ts";

type Props = {
  course: MeasuredCourse;
  address: TileAddress;
};

export const getStaticPaths = (() =>
  currentGuide().courses.flatMap((course) =>
    courseTiles(course).map((address) => ({
      params: { course: course.course.id, z: `${address.z}`, x: `${address.x}`, y: `${address.y}` },
      props: { course, address },
    })),
  )) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { course, address } }) => {
  const tile = await terrainTile(course, address);
  return tile
    ? new Response(tile, { headers: { "Content-Type": "image/webp" } })
    : new Response(null, { status: 404 });
};
