/** The shaded relief that lies under a hole's plates. */
import type { APIRoute } from "astro";
import { reliefPicture } from "../../../site/pictures/plate-ground.ts";
import { heightsPaths, type HoleProps } from "../../../site/addresses/static-paths.ts";

export const getStaticPaths = heightsPaths;

export const GET: APIRoute<Omit<HoleProps, "club">> = async ({ props: { course, measured } }) => {
  const picture = await reliefPicture(course, measured);
  return picture
    ? new Response(picture, { headers: { "Content-Type": "image/webp" } })
    : new Response(null, { status: 404 });
};
