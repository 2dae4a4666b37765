/** What comes of holding a claim against the facts. */
import type { HoleFacts } from "../../facts.ts";
import type { Say } from "../../say.ts";
import type { Claim, Verdict } from "../claim.ts";

export interface Judgement {
  readonly verdict: Verdict;
  /** What was measured, or what is missing: a sentence without its full stop. */
  readonly measured: string;
}

export type Judge = (claim: Claim, facts: HoleFacts, say: Say) => Judgement;

export const UNKNOWN_HEIGHTS: Judgement = { verdict: "unknown", measured: "the heights here are not known" };

/**
 * A verdict from two tests. What is neither clearly so nor clearly not so is left to the
 * writer's taste, and agrees. A denied claim swaps the two.
 *
 * @param isSo undisputed: the words fit
 * @param isNotSo undisputed: the words do not fit
 */
export function between(claim: Claim, isSo: boolean, isNotSo: boolean, measured: string): Judgement {
  return { verdict: (claim.denied ? isSo : isNotSo) ? "contradicts" : "agrees", measured };
}
