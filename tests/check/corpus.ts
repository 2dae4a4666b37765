/**
 * Sentences as clubs write them, each with what it claims of its hole and whether that is
 * so. Labelled by hand for five invented holes (corpus-holes.ts). The tuning part was written
 * before the matcher and then worked with; the held-out part was written apart and not.
 *
 * A claim is written as its key: `kind`, then `@side` and `#amount` where it has them, with
 * `!` before a denied one.
 */
import { TUNING } from "./corpus-tuning.ts";
import { TUNING_MORE } from "./corpus-tuning-more.ts";
import { TUNING_THIRD } from "./corpus-tuning-third.ts";
import { TUNING_FOURTH } from "./corpus-tuning-fourth.ts";

export type HoleName = "A" | "B" | "C" | "D" | "E";

export type Label = "agrees" | "contradicts" | "unknown";

export interface Sentence {
  readonly hole: HoleName;
  readonly text: string;
  /** Empty: the sentence claims nothing that could be held against the ground. */
  readonly claims: Readonly<Record<string, Label>>;
}

// A function declaration, because the parts and this file import one another.
export function sentence(hole: HoleName, text: string, claims: Sentence["claims"] = {}): Sentence {
  return { hole, text, claims };
}

export const tuning = (): readonly Sentence[] => [...TUNING, ...TUNING_MORE, ...TUNING_THIRD, ...TUNING_FOURTH];
export { HELD_OUT } from "./corpus-held-out.ts";
