/** What a phone needs to put the guide on its home screen. */
import type { APIRoute } from "astro";
import { href } from "../components/links.ts";
import { currentGuide } from "../site/guide.ts";
import { ICONS } from "../site/icons.ts";
import { words } from "../site/words.ts";

export const GET: APIRoute = () => {
  const { club, courses } = currentGuide();
  const only = courses.length === 1 ? courses[0] : undefined;
  const name = only?.course.name ?? club.name;
  const manifest = {
    id: href(""),
    name: `${name} · ${words(club.language).guide}`,
    short_name: name,
    description: words(club.language).guideTo(name),
    lang: club.language,
    start_url: href(""),
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
  return new Response(JSON.stringify(manifest, undefined, 2), { headers: { "Content-Type": "application/manifest+json" } });
};
