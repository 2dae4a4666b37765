/** The part of a dictionary that islands say, as plain data. */
import type { IslandWords } from "../islands/island-words.ts";
import type { Words } from "./words.ts";

export const islandWordsOf = ({ keep, liveMap, film, tell, settings, locale }: Words): IslandWords => {
  const { play, pause, placeIs, failed } = film.player;
  return { keep, liveMap, film: { play, pause, placeIs, failed }, units: tell.units, thirds: settings.thirds, locale };
};
