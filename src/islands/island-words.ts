/** What islands say, in the page's language: one small file, fetched when the first of them is opened. */
import { readIslandWords, type IslandWords } from "../words/island-words.ts";

let fetched: Promise<IslandWords> | undefined;

/** @throws when the file cannot be fetched; the next call tries again */
export function islandWords(): Promise<IslandWords> {
  fetched ??= fetchWords().catch((reason: unknown) => {
    fetched = undefined;
    throw reason;
  });
  return fetched;
}

async function fetchWords(): Promise<IslandWords> {
  const response = await fetch(`${import.meta.env.BASE_URL}words-${document.documentElement.lang}.json`);
  if (!response.ok) throw new Error(`The words of this page answered ${response.status}`);
  return readIslandWords((await response.json()) as { readonly locale: string });
}
