/**
 * The part of a language's words that islands say: one file a language, fetched by the first island that is
 * opened.
 */
import { speak } from "./speak.ts";
import type { Words } from "./words.ts";

/** Of a group, what is not on the page already. */
const only = <Group extends object, Name extends keyof Group>(
  group: Group,
  ...names: readonly Name[]
): Pick<Group, Name> => Object.fromEntries(names.map((name) => [name, group[name]])) as Pick<Group, Name>;

/**
 * @param words a language's; written as JSON the part is plain data, which {@link readIslandWords} makes
 * words of again
 */
export const islandWordsOf = ({ locale, keep, liveMap, film, ground, tell, settings }: Words) => ({
  /** By whose rules numbers are written. */
  locale,
  keep,
  liveMap,
  film: only(film.player, "play", "pause", "placeIs", "failed"),
  conditions: ground.conditions.script,
  landing: only(
    ground.landing,
    "uphill",
    "downhill",
    "fallsLeft",
    "fallsRight",
    "level",
    "clear",
    "offFairway",
    "seen",
    "hidden",
    "seesGreen",
    "greenHidden",
    "nextLeaves",
  ),
  lengths: ground.conditions.lengths,
  units: tell.units,
  /** Thirds of a green, as the settings name them. */
  thirds: settings.thirds,
});

export type IslandWords = ReturnType<typeof islandWordsOf>;

/** @param written by our own build, so its shape is taken on trust */
export const readIslandWords = (written: { readonly locale: string }): IslandWords =>
  speak<IslandWords>({ ...written }, written.locale);
