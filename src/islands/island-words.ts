/** What islands say, in the page's language: one small file, fetched when the first of them is opened. */
import type { UnitWords } from "../tell/format.ts";
import type { FilmPlayerWords } from "./flyover/words.ts";
import type { PanelWords } from "./conditions-words.ts";
import type { KeepWords } from "./keep/words.ts";
import type { LengthsWords } from "./lengths-words.ts";
import type { MapWords } from "./map/words.ts";
import type { Third } from "../measure/third.ts";

export interface IslandWords {
  readonly keep: KeepWords;
  readonly liveMap: MapWords;
  readonly film: FilmPlayerWords;
  readonly conditions: PanelWords;
  readonly lengths: LengthsWords;
  readonly units: UnitWords;
  /** Thirds of a green, as the settings name them. */
  readonly thirds: Readonly<Record<Third, string>>;
  /** Language tag for writing numbers. */
  readonly locale: string;
}

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
  // Our own build wrote the file, so its shape is taken on trust.
  return await response.json() as IslandWords;
}
