/** Icons for home screens, from the guide's crest. */
import type { APIRoute, GetStaticPaths } from "astro";
import { ICONS, iconPng, type Icon } from "../site/pictures/icons.ts";

export const getStaticPaths = (() =>
  ICONS.map((icon) => ({ params: { name: icon.name }, props: { icon } }))) satisfies GetStaticPaths;

export const GET: APIRoute<{ icon: Icon }> = async ({ props: { icon } }) =>
  new Response(await iconPng(icon), { headers: { "Content-Type": "image/png" } });
