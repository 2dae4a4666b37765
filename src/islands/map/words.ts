/** What maps are worded with. */
import type { IslandWords } from "../../words/island-words.ts";

export type MapWords = IslandWords["liveMap"];

/** What a map can do besides being moved: buttons that stay pressed. */
export type Tool = keyof MapWords["tools"];

/** Kinds that are said; of others only their names. */
export type SaidKind = keyof MapWords["read"]["kinds"];

/** One kind of feature, in each place where it is said. */
export type KindWords = MapWords["read"]["kinds"][SaidKind];

/** All that a map is worded with. */
export interface Speech extends Pick<IslandWords, "units" | "thirds" | "locale"> {
  readonly say: MapWords;
}

/** Joins what is told so far with what comes next. */
export type Link = (said: { readonly list: string; readonly next: string }) => string;

/** Things told one after another: "a; b; c". At least one. */
export const chained = (link: Link, things: readonly string[]): string =>
  things.reduce((list, next) => link({ list, next }));
