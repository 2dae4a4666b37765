/** The part of a dictionary that islands say, as plain data. */
import type { IslandWords } from "../islands/island-words.ts";
import type { Words } from "./words.ts";

export const islandWordsOf = ({ keep }: Words): IslandWords => ({ keep });
