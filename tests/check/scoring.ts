/** How well the matcher does on labelled sentences. */
import { findClaims } from "../../src/check/claims/find.ts";
import type { Claim, ClaimKind, Verdict } from "../../src/check/claims/claim.ts";
import { ENGLISH } from "../../src/check/claims/english/index.ts";
import type { Lexicon } from "../../src/check/claims/lexicon.ts";
import { judge } from "../../src/check/claims/judge/index.ts";
import { sayIn } from "../../src/check/say.ts";
import type { Sentence } from "./corpus.ts";
import { corpusFacts } from "./corpus-holes.ts";

const NUMBER_IN_KEY: ReadonlySet<ClaimKind> = new Set<ClaimKind>([
  "length",
  "par",
  "stroke-index",
  "clubs-more",
  "clubs-less",
  "tiers",
  "bunker-count",
  "hazard-distance",
]);

/** A claim in short: `!bunker@short-left`, `par#4`. */
export function claimKey({ kind, denied, side, number }: Claim): string {
  const amount = number !== undefined && (NUMBER_IN_KEY.has(kind) || side === "across") ? `#${number}` : "";
  return `${denied ? "!" : ""}${kind}${side === undefined ? "" : `@${side}`}${amount}`;
}

export interface Miss {
  readonly sentence: Sentence;
  readonly key: string;
  readonly found: Verdict | "nothing";
  readonly labelled: Verdict | "nothing";
}

export interface Score {
  readonly sentences: number;
  /** Of what was called a contradiction, the share that is one. */
  readonly precision: number;
  /** Of the labelled contradictions, the share that was called one. */
  readonly recall: number;
  readonly called: number;
  readonly labelled: number;
  /** Of all labelled claims, the share found with the labelled verdict. */
  readonly claimRecall: number;
  readonly claims: number;
  /** Of all found claims, the share that is labelled so. */
  readonly claimPrecision: number;
  readonly wrong: readonly Miss[];
  readonly missed: readonly Miss[];
  readonly others: readonly Miss[];
}

const say = sayIn("yards");

/** @param lexicon of the language the sentences are in */
export function score(sentences: readonly Sentence[], lexicon: Lexicon = ENGLISH): Score {
  const facts = corpusFacts();
  let [called, right, labelled, caught, claims, claimsRight, found] = [0, 0, 0, 0, 0, 0, 0];
  const wrong: Miss[] = [];
  const missed: Miss[] = [];
  const others: Miss[] = [];
  for (const sentence of sentences) {
    const hole = facts[sentence.hole];
    const verdicts = new Map(
      findClaims(sentence.text, hole, lexicon).map((claim) => [claimKey(claim), judge(claim, hole, say).verdict]),
    );
    for (const [key, verdict] of verdicts) {
      found++;
      const label = sentence.claims[key] ?? "nothing";
      const miss: Miss = { sentence, key, found: verdict, labelled: label };
      if (verdict === "contradicts") {
        called++;
        if (label === "contradicts") right++;
        else wrong.push(miss);
      } else if (label !== verdict) others.push(miss);
    }
    for (const [key, label] of Object.entries(sentence.claims)) {
      claims++;
      const verdict = verdicts.get(key) ?? "nothing";
      if (verdict === label) claimsRight++;
      if (label === "contradicts") {
        labelled++;
        if (verdict === "contradicts") caught++;
        else missed.push({ sentence, key, found: verdict, labelled: label });
      } else if (verdict === "nothing") others.push({ sentence, key, found: verdict, labelled: label });
    }
  }
  return {
    sentences: sentences.length,
    precision: called === 0 ? 1 : right / called,
    recall: labelled === 0 ? 1 : caught / labelled,
    called,
    labelled,
    claimRecall: claims === 0 ? 1 : claimsRight / claims,
    claims,
    claimPrecision: found === 0 ? 1 : claimsRight / found,
    wrong,
    missed,
    others,
  };
}

export const told = ({ sentence, key, found, labelled }: Miss): string =>
  `${sentence.hole}: "${sentence.text}" ${key}: found ${found}, labelled ${labelled}`;
