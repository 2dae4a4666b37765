/** The lexicons there are. A tip in another language is not searched for claims. */
import { ENGLISH } from "./english/index.ts";
import type { Lexicon } from "./lexicon.ts";

const LEXICONS: readonly Lexicon[] = [ENGLISH];

/** @param language BCP 47 tag; its primary language decides */
export const lexiconFor = (language: string): Lexicon | undefined => LEXICONS.find((lexicon) => lexicon.language === language.toLowerCase().split("-")[0]);
