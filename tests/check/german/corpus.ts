/** The German corpus: the holes, the labels and their keys are those of ../corpus.ts. */
import type { Sentence } from "../corpus.ts";
import { GERMAN_FIRST } from "./corpus-first.ts";
import { GERMAN_SECOND } from "./corpus-second.ts";
import { GERMAN_THIRD } from "./corpus-third.ts";
import { GERMAN_TUNING } from "./corpus-tuning.ts";
import { GERMAN_TUNING_MORE } from "./corpus-tuning-more.ts";

export const germanTuning = (): readonly Sentence[] => [
  ...GERMAN_TUNING,
  ...GERMAN_TUNING_MORE,
  ...GERMAN_FIRST,
  ...GERMAN_SECOND,
  ...GERMAN_THIRD,
];
export { GERMAN_HELD_OUT } from "./corpus-held-out.ts";
