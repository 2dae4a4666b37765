/** What maps are worded with in tests: English, and a language of which no word is English. */
import type { IslandWords } from "../../src/islands/island-words.ts";
import type { Speech } from "../../src/islands/map/words.ts";
import { islandWordsOf } from "../../src/site/files/island-words.ts";
import { english } from "../../src/site/words-english.ts";

/** Through JSON, as a browser gets it. */
export const throughJson = (words: IslandWords): IslandWords => JSON.parse(JSON.stringify(words)) as IslandWords;

export const speechOf = ({ liveMap, units, thirds, locale }: IslandWords): Speech => ({ say: liveMap, units, thirds, locale });

export const ENGLISH = speechOf(throughJson(islandWordsOf(english)));

/** Every letter that is no {name} as Cyrillic ж. */
export function foreign<Words>(words: Words): Words {
  const turned = (value: unknown): unknown => {
    if (typeof value === "string") return value.replaceAll(/\{\w+\}|\p{L}/gu, (found) => (found.startsWith("{") ? found : "ж"));
    if (Array.isArray(value)) return value.map(turned);
    return typeof value === "object" && value !== null ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one)])) : value;
  };
  return turned(words) as Words;
}
