/** One rule for each kind of claim: what a tip says of its hole, held against what was measured. */
import { CLAIM_KINDS, type Claim, type ClaimKind } from "../claims/claim.ts";
import { findClaims } from "../claims/find.ts";
import { judge } from "../claims/judge/index.ts";
import { lexiconFor } from "../claims/lexicons.ts";
import type { Tip } from "../../course/types.ts";
import type { MeasuredHole } from "../../measure/types.ts";
import { at, type CheckContext, type Finding, type Rule } from "../rule.ts";

/** The words of a claim as they stand in the tip. */
const quote = ({ markdown }: Tip, { offset, end }: Claim): string => `"${markdown.slice(offset, end).replace(/\s+/g, " ").trim()}"`;

function placeOf({ markdown, place }: Tip, offset: number): Finding["place"] {
  const before = markdown.slice(0, offset);
  const line = before.split("\n").length - 1;
  const column = offset - (before.lastIndexOf("\n") + 1);
  return { file: place.file, line: place.line + line, column: (line === 0 ? place.column : 1) + column };
}

/** Claims of a tip, found once for all kinds of a run. */
const found = new WeakMap<CheckContext, Map<MeasuredHole, readonly Claim[]>>();

function claimsOf(hole: MeasuredHole, context: CheckContext): readonly Claim[] {
  const known = found.get(context) ?? new Map<MeasuredHole, readonly Claim[]>();
  found.set(context, known);
  const before = known.get(hole);
  if (before) return before;
  const facts = context.factsOf(hole);
  const lexicon = lexiconFor(context.club.language);
  const claims = facts && lexicon ? findClaims(hole.hole.tip.markdown, facts, lexicon) : [];
  known.set(hole, claims);
  return claims;
}

function findings(kind: ClaimKind, hole: MeasuredHole, context: CheckContext): Finding[] {
  const facts = context.factsOf(hole);
  if (!facts) return [];
  const { tip } = hole.hole;
  return claimsOf(hole, context)
    .filter((claim) => claim.kind === kind)
    .flatMap((claim) => {
      const { verdict, measured } = judge(claim, facts, context.say);
      const place = placeOf(tip, claim.offset);
      if (verdict === "contradicts") return [at(place, `The tip says ${quote(tip, claim)}, but ${measured}. Change the words, or the drawing if it is wrong.`)];
      if (verdict === "unknown") return [at(place, `The tip says ${quote(tip, claim)}, which cannot be confirmed: ${measured}.`, "note")];
      return [];
    });
}

export const tipAgainstGround: readonly Rule[] = (Object.keys(CLAIM_KINDS) as ClaimKind[]).map((kind) => ({
  name: `tip-says-${kind}`,
  severity: "error",
  about: `The tip's words against the ground: ${CLAIM_KINDS[kind]}.`,
  run: (context) => context.measured.holes.flatMap((hole) => findings(kind, hole, context)),
}));
