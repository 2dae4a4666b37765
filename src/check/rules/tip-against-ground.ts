/** One rule for each kind of claim: what a hole's tips say of it, held against what was measured. */
import { CLAIM_KINDS, type Claim, type ClaimKind } from "../claims/claim.ts";
import { findClaims } from "../claims/find.ts";
import { judge } from "../claims/judge/index.ts";
import { lexiconFor } from "../claims/lexicons.ts";
import type { Tip } from "../../course/types.ts";
import type { MeasuredHole } from "../../measure/types.ts";
import type { HoleFacts } from "../facts.ts";
import { at, type CheckContext, type Finding, type Rule } from "../rule.ts";
import { namedFor, placeInTip, tipsOf } from "../tips.ts";

/** The words of a claim as they stand in the tip. */
const quote = ({ markdown }: Tip, { offset, end }: Claim): string =>
  `"${markdown.slice(offset, end).replace(/\s+/g, " ").trim()}"`;

/** What one tip claims, and the facts with features called as it calls them. */
interface Claimed {
  readonly tip: Tip;
  readonly facts: HoleFacts;
  readonly claims: readonly Claim[];
}

/** Claims of a hole's tips, found once for all kinds of a run. */
const found = new WeakMap<CheckContext, Map<MeasuredHole, readonly Claimed[]>>();

function claimsOf(hole: MeasuredHole, context: CheckContext): readonly Claimed[] {
  const known = found.get(context) ?? new Map<MeasuredHole, readonly Claimed[]>();
  found.set(context, known);
  const before = known.get(hole);
  if (before) return before;
  const facts = context.factsOf(hole);
  const claims = tipsOf(hole, context).flatMap((one): Claimed[] => {
    // A language without a lexicon is told of once for the course (tip-language).
    const lexicon = lexiconFor(one.language);
    if (!facts || !lexicon) return [];
    const named = namedFor(facts, one);
    return [{ tip: one.tip, facts: named, claims: findClaims(one.tip.markdown, named, lexicon) }];
  });
  known.set(hole, claims);
  return claims;
}

function findings(kind: ClaimKind, { tip, facts, claims }: Claimed, { say }: CheckContext): Finding[] {
  return claims
    .filter((claim) => claim.kind === kind)
    .flatMap((claim) => {
      const { verdict, measured } = judge(claim, facts, say);
      const place = placeInTip(tip, claim.offset);
      if (verdict === "contradicts")
        return [
          at(
            place,
            `The tip says ${quote(tip, claim)}, but ${measured}. Change the words, or the drawing if it is wrong.`,
          ),
        ];
      if (verdict === "unknown")
        return [at(place, `The tip says ${quote(tip, claim)}, which cannot be confirmed: ${measured}.`, "note")];
      return [];
    });
}

export const tipAgainstGround: readonly Rule[] = (Object.keys(CLAIM_KINDS) as ClaimKind[]).map((kind) => ({
  name: `tip-says-${kind}`,
  severity: "error",
  about: `The tip's words against the ground: ${CLAIM_KINDS[kind]}.`,
  run: (context) =>
    context.measured.holes.flatMap((hole) =>
      claimsOf(hole, context).flatMap((claimed) => findings(kind, claimed, context)),
    ),
}));
