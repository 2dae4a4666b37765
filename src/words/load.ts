/** Reads the catalogues from their files, all that is wrong with them in one error. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { formatDiagnostic, inReadingOrder } from "../course/diagnostic.ts";
import { GUIDE_LANGUAGES, type GuideLanguage } from "../course/guide-languages.ts";
import { disagreements } from "./agreement.ts";
import { readCatalogue, type Catalogue } from "./catalogue.ts";
import { compiledGroup, type CompiledGroup } from "./compiled.ts";

/** Where the catalogues lie, below Marram's own folder. */
export const WORDS_FOLDER = "src/words";

/** The words of every language, compiled: plain data. */
export type CompiledWords = Readonly<
  Record<GuideLanguage, { readonly locale: string; readonly words: CompiledGroup }>
>;

/** @param root Marram's own folder; @throws Error with a line for each fault, as `file:line:column: message` */
export function loadCatalogues(root: string, languages: readonly string[] = GUIDE_LANGUAGES): readonly Catalogue[] {
  const read = languages.map((language) => {
    const file = `${WORDS_FOLDER}/${language}.yaml`;
    return readCatalogue(language, file, textOf(join(root, file), file));
  });
  const catalogues = read.map(({ catalogue }) => catalogue);
  const [first, ...others] = catalogues;
  const faults = read.flatMap(({ faults }) => faults);
  // A message that could not be read would be missed as well.
  const all = faults.length > 0 ? faults : others.flatMap((other) => disagreements(first!, other));
  if (all.length > 0)
    throw new Error(`The guide's words cannot be read.\n${inReadingOrder(all).map(formatDiagnostic).join("\n")}`);
  return catalogues;
}

function textOf(path: string, file: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch (cause) {
    throw new Error(
      `${file}:1:1: The catalogue cannot be read. Every language in src/course/guide-languages.ts has one; copy another and translate it.`,
      { cause },
    );
  }
}

/** @throws Error as {@link loadCatalogues} */
export function loadWords(root: string): CompiledWords {
  const catalogues = loadCatalogues(root);
  const order = catalogues[0]!.words;
  return Object.fromEntries(
    catalogues.map(({ language, locale, words }) => [language, { locale, words: compiledGroup(words, order) }]),
  ) as CompiledWords;
}
