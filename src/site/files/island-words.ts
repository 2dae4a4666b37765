/** The part of a dictionary that islands say, as plain data. */
import type { LandingPatterns } from "../../islands/conditions-words.ts";
import type { IslandWords } from "../../islands/island-words.ts";
import type { Words } from "../words.ts";

export const islandWordsOf = ({ keep, liveMap, film, ground, tell, settings, locale }: Words): IslandWords => {
  const { play, pause, placeIs, failed } = film.player;
  const { script, lengths } = ground.conditions;
  return {
    keep,
    liveMap,
    film: { play, pause, placeIs, failed },
    conditions: { ...script, landing: landingPatterns(ground) },
    lengths,
    units: tell.units,
    thirds: settings.thirds,
    locale,
  };
};

/** How landing ground is told, with `{}` where the number goes. */
function landingPatterns({ landing }: Words["ground"]): LandingPatterns {
  const { uphill, downhill, fallsLeft, fallsRight, level, clear, offFairway, seen, hidden, seesGreen, greenHidden, nextLeaves } = landing;
  return {
    uphill: uphill("{}"), downhill: downhill("{}"), fallsLeft: fallsLeft("{}"), fallsRight: fallsRight("{}"),
    level, clear, offFairway, seen, hidden, seesGreen, greenHidden, nextLeaves: nextLeaves("{}"),
  };
}
