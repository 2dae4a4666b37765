/** What the settings script reads from a page: which tees it knows and how figures are worded. */
import { dataset } from "../contract/dataset.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { Voice } from "../tell/voice.ts";
import { words as wordsOf, type Words } from "../site/language/words.ts";

export const voiceOf = ({ locale, tell: { units, up, down, level } }: Pick<Words, "locale" | "tell">): Voice => ({
  locale,
  units,
  up,
  down,
  level,
});

/** Attributes for the element that holds a page's figures. */
export function settingsData(
  courseId: string,
  tees: readonly string[],
  firstTee: string,
  units: LengthUnit,
  words: Words,
): Readonly<Record<string, string>> {
  return dataset({
    course: courseId,
    courseTees: tees.join(" "),
    firstTee,
    courseUnits: units,
    voice: JSON.stringify(voiceOf(words)),
  });
}

/** Attributes for a text that may stand in another language than its page: what is in it is worded in its own. */
export const inLanguage = (language: string | undefined): Readonly<Record<string, string>> =>
  language === undefined
    ? {}
    : { lang: language, ...dataset({ ownVoice: JSON.stringify(voiceOf(wordsOf(language))) }) };

/** Attributes for the live map's slot: what is said before the map's own words are there. */
export const liveMapData = ({ liveMap }: Words): Readonly<Record<string, string>> =>
  dataset({ loading: liveMap.loading, notLoaded: liveMap.failed.data });
