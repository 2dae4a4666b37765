/** Colours of everything drawn, as a stylesheet: pages may hold no styles of their own. */
import type { APIRoute } from "astro";
import { plateCss } from "../draw/palette.ts";

export const GET: APIRoute = () =>
  new Response(plateCss(), { headers: { "Content-Type": "text/css; charset=utf-8" } });
