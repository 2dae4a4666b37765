/** What maps are worded with in tests: English, and a language of which no word is English. */
import type { Speech } from "../../src/islands/map/words.ts";
import { words } from "../../src/site/language/words.ts";
import type { CompiledGroup } from "../../src/words/compiled.ts";
import { islandWordsOf, readIslandWords, type IslandWords } from "../../src/words/island-words.ts";

/** A language's words as a browser gets them. */
export const writtenWords = (language: string): CompiledGroup & { readonly locale: string } =>
  JSON.parse(JSON.stringify(islandWordsOf(words(language)))) as CompiledGroup & { readonly locale: string };

export const speechOf = ({ liveMap, units, thirds, locale }: IslandWords): Speech => ({
  say: liveMap,
  units,
  thirds,
  locale,
});

export const speechIn = (language: string): Speech => speechOf(readIslandWords(writtenWords(language)));

export const ENGLISH = speechIn("en");

const turned = (text: string): string => text.replaceAll(/\p{L}/gu, "ж");

/** A message with every letter as Cyrillic ж; names of arguments and of cases stay. */
function turnedMessage(message: unknown): unknown {
  if (typeof message === "string") return turned(message);
  if (!Array.isArray(message)) return message;
  return message.map((node: unknown) => {
    if (!Array.isArray(node)) return turnedMessage(node);
    const [name, kind, cases] = node as [string, number | undefined, Readonly<Record<string, unknown>> | undefined];
    if (kind === undefined) return [name];
    return [
      name,
      kind,
      cases && Object.fromEntries(Object.entries(cases).map(([one, inner]) => [one, turnedMessage(inner)])),
    ];
  });
}

/** Words in a language of which no letter is English; numbers are written as they were. */
export const foreign = (group: CompiledGroup): CompiledGroup =>
  Object.fromEntries(
    Object.entries(group).map(([name, value]) => [
      name,
      name === "locale"
        ? value
        : typeof value === "string" || Array.isArray(value)
          ? turnedMessage(value)
          : foreign(value),
    ]),
  ) as CompiledGroup;
