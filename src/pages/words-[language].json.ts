/** Words of the islands, fetched by the first of them that is opened. */
import type { APIRoute, GetStaticPaths } from "astro";
import { currentGuide } from "../site/load/guide.ts";
import { words } from "../site/language/words.ts";
import { islandWordsOf } from "../words/island-words.ts";

export const getStaticPaths = (() => {
  const { languages } = currentGuide().club;
  return languages.map((language) => ({ params: { language }, props: { language } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(islandWordsOf(words(props["language"])));
