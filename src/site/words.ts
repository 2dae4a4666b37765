/** The dictionaries there are, and which one serves a language. Their shape is in words-shape.ts. */
import { GUIDE_LANGUAGES, guideLanguageOf, type GuideLanguage } from "../course/guide-languages.ts";
import { english } from "./words-english.ts";
import { german } from "./words-german.ts";
import type { Words } from "./words-shape.ts";

export type { CautionKind } from "../course/kinds.ts";
export type { FigureDefinition, Words } from "./words-shape.ts";

const DICTIONARIES: Readonly<Record<GuideLanguage, Words>> = { en: english, de: german };

/** Tags of the languages there are words in. */
export const LANGUAGES: readonly string[] = GUIDE_LANGUAGES;

/** The dictionary for a BCP 47 language tag, by its primary language; English where there is none. */
export const words = (language: string): Words => DICTIONARIES[guideLanguageOf(language) ?? "en"];
