/** What a phone needs to put the guide on its home screen, where it opens in the language it was taken from. */
import type { APIRoute } from "astro";
import { homeHref, href } from "../../components/links.ts";
import { currentGuide, type Guide } from "../../site/load/guide.ts";
import { ICONS } from "../../site/pictures/icons.ts";
import { guideViews } from "../../site/language/language-view.ts";
import { languageParam } from "../../site/addresses/static-paths.ts";
import { words } from "../../site/language/words.ts";

export const getStaticPaths = () =>
  guideViews(currentGuide()).map(({ club, courses }) => ({
    params: { language: languageParam(club) },
    props: { club, courses },
  }));

export const GET: APIRoute<Pick<Guide, "club" | "courses">> = ({ props: { club, courses } }) => {
  const only = courses.length === 1 ? courses[0] : undefined;
  const name = only?.course.name ?? club.name;
  const manifest = {
    id: homeHref(club),
    name: `${name} · ${words(club.language).guide}`,
    short_name: name,
    description: words(club.language).guideTo({ course: name }),
    lang: club.language,
    start_url: homeHref(club),
    scope: href(""),
    display: "standalone",
    background_color: "#f7f0df",
    theme_color: "#f7f0df",
    icons: ICONS.filter(({ shape }) => shape !== "square").map(({ name: icon, sizePixels, shape }) => ({
      src: href(`icon-${icon}.png`),
      sizes: `${sizePixels}x${sizePixels}`,
      type: "image/png",
      purpose: shape === "maskable" ? "maskable" : "any",
    })),
  };
  return new Response(JSON.stringify(manifest, undefined, 2), {
    headers: { "Content-Type": "application/manifest+json" },
  });
};
