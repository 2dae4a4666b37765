/** The dictionaries there are, and which one serves a language. Their shape is in words-shape.ts. */
import { english } from "./words-english.ts";
import { german } from "./words-german.ts";
import type { Words } from "./words-shape.ts";

export type { CautionKind } from "./caution-kind.ts";
export type { FigureDefinition, Words } from "./words-shape.ts";

const DICTIONARIES: readonly Words[] = [english, german];

/** Tags of the languages there are words in. */
export const LANGUAGES: readonly string[] = DICTIONARIES.map(({ language }) => language);

/**
 * The dictionary for a BCP 47 language tag: the exact one, else one of the same primary
 * language, else English.
 */
export function words(language: string): Words {
  const wanted = language.toLowerCase();
  const primary = wanted.split("-")[0];
  return (
    DICTIONARIES.find((dictionary) => dictionary.language === wanted) ??
    DICTIONARIES.find((dictionary) => dictionary.language === primary) ??
    english
  );
}
