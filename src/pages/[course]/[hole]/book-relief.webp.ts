/** The shaded relief under a hole's plate in the pocket book, which shows more to the sides than the page's. */
import type { APIRoute } from "astro";
import { BOOK_COMPOSITION } from "../../../draw/paper-composition.ts";
import { reliefPicture } from "../../../site/pictures/plate-ground.ts";
import { heightsPaths, type HoleProps } from "../../../site/addresses/static-paths.ts";

export const getStaticPaths = heightsPaths;

export const GET: APIRoute<Omit<HoleProps, "club">> = async ({ props: { course, measured } }) => {
  const picture = await reliefPicture(course, measured, [BOOK_COMPOSITION]);
  return picture
    ? new Response(picture, { headers: { "Content-Type": "image/webp" } })
    : new Response(null, { status: 404 });
};
