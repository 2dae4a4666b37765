/** The words a tip's figures speak: those of the language the tip itself is in. */
import type { Club, Hole } from "../../course/types.ts";
import { otherLanguage } from "../language/language-view.ts";
import type { FigureWords } from "../../words/words.ts";
import { lexiconFor } from "../../check/claims/lexicons.ts";
import { words } from "../language/words.ts";

export const tipWords = (club: Club, hole: Hole): FigureWords =>
  words(otherLanguage(club, hole, "tip") ?? club.language).tell;

/** Whether what tips in a language say is compared with the ground: the check knows claims in some languages only. */
export const tipsAreChecked = (language: string): boolean => lexiconFor(language) !== undefined;
