/** The words there are, and which language's serve a tag. */
import { fileURLToPath } from "node:url";
import { GUIDE_LANGUAGES, guideLanguageOf } from "../../course/guide-languages.ts";
import { loadWords, type CompiledWords } from "../../words/load.ts";
import { wordsOf, type Words } from "../../words/words.ts";

export type { Words } from "../../words/words.ts";

/** Tags of the languages there are words in. */
export const LANGUAGES: readonly string[] = GUIDE_LANGUAGES;

/**
 * The bundler gives pages their own copy of this module, which lies elsewhere than the catalogues: they are
 * read by the copy that starts the build.
 */
const KEY = Symbol.for("marram.words");

type Holder = { [KEY]?: CompiledWords | undefined };

const holder = globalThis as Holder;

/** @throws Error with a line for each fault of a catalogue */
export const readWords = (): CompiledWords =>
  (holder[KEY] = loadWords(fileURLToPath(new URL("../../../", import.meta.url))));

const spoken = new WeakMap<CompiledWords, Map<string, Words>>();

/** The words for a BCP 47 language tag, by its primary language; the first language's where there are none. */
export function words(tag: string): Words {
  const compiled = holder[KEY] ?? readWords();
  const made = spoken.get(compiled) ?? new Map<string, Words>();
  spoken.set(compiled, made);
  const language = guideLanguageOf(tag) ?? GUIDE_LANGUAGES[0];
  const found = made.get(language) ?? wordsOf(language, compiled[language].locale, compiled[language].words);
  made.set(language, found);
  return found;
}
