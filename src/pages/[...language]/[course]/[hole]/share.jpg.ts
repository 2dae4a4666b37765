/** The picture a link to a hole is shown with; made where the guide knows its address, which such links need. */
import type { APIRoute } from "astro";
import { shareCard } from "../../../../site/pictures/share-card.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";
import { words } from "../../../../site/language/words.ts";

export const getStaticPaths = () => (import.meta.env.SITE === undefined ? [] : holePaths());

export const GET: APIRoute<HoleProps> = async ({ props: { club, course, measured } }) =>
  new Response(await shareCard(club.units, course, measured, words(club.language)), {
    headers: { "Content-Type": "image/jpeg" },
  });
