/**
 * Sentences as clubs write them, each with what it claims of its hole and whether that is
 * so. Labelled by hand for five invented holes (corpus-holes.ts), before the matcher was
 * written; the tuning part was then worked with, the held-out part was not.
 *
 * A claim is written as its key: `kind`, then `@side` and `#amount` where it has them, with
 * `!` before a denied one.
 */
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

export { TUNING } from "./corpus-tuning.ts";
export { HELD_OUT } from "./corpus-held-out.ts";
