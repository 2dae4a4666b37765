/** A candidate that is to go to a page. */
import type { Candidate } from "../normalise/candidate.ts";
import type { PageAt } from "../pages/pages.ts";
import type { Lie } from "./shape.ts";

export interface Incoming {
  readonly candidate: Candidate;
  readonly at: PageAt;
  readonly guessed: boolean;
  readonly reason: string;
  /** How it lies to its hole's line of play; undefined for the course's own and for lines. */
  readonly lie: Lie | undefined;
  /** Its key in the ledger. */
  readonly key: string | undefined;
}

/** @param reason why it belongs there; what it is taken for by a word is said first */
export const incomingOf = (
  candidate: Candidate,
  at: PageAt,
  {
    guessed,
    reason,
    lie,
    key = candidate.key,
  }: { readonly guessed: boolean; readonly reason: string; readonly lie?: Lie; readonly key?: string | undefined },
): Incoming => ({
  candidate,
  at,
  guessed: guessed || candidate.guess !== undefined,
  reason: candidate.guess === undefined ? reason : `${candidate.guess}; ${reason}`,
  lie,
  key,
});
