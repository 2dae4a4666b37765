/** A hole's tip as captions of its flyover. */
import type { APIRoute } from "astro";
import { webVtt } from "../../../../flyover/webvtt.ts";
import { holeFlyover } from "../../../../site/files/film.ts";
import { holePaths, type HoleProps } from "../../../../site/addresses/static-paths.ts";
import { words } from "../../../../site/language/words.ts";

export const getStaticPaths = holePaths;

export const GET: APIRoute<HoleProps> = ({ props: { club, course, measured } }) =>
  new Response(
    webVtt(
      holeFlyover(club, course, measured).data.cues,
      words(club.language).film.title({ hole: measured.hole.number, name: measured.hole.name }),
    ),
    {
      headers: { "Content-Type": "text/vtt; charset=utf-8" },
    },
  );
