/** The lexicons there are. A tip in another language is not searched for claims. */
import { primarySubtag } from "../../course/guide-languages.ts";
import { ENGLISH } from "./english/index.ts";
import { GERMAN } from "./german/index.ts";
import type { Lexicon } from "./lexicon.ts";

const LEXICONS: readonly Lexicon[] = [ENGLISH, GERMAN];

/** Primary subtags of the languages whose claims are understood. */
export const LEXICON_LANGUAGES: readonly string[] = LEXICONS.map(({ language }) => language);

/** @param language BCP 47 tag; its primary language decides */
export const lexiconFor = (language: string): Lexicon | undefined =>
  LEXICONS.find((lexicon) => lexicon.language === primarySubtag(language));
