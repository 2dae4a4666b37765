/** A hole's plate for wide screens, fetched where there is room for it; the page itself holds the phone's. */
import type { APIRoute } from "astro";
import { plateSvg } from "../../../../components/drawings.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = ({ props: { club, course, measured } }) =>
  new Response(plateSvg(club, course, measured, "desk"), { headers: { "Content-Type": "image/svg+xml" } });
