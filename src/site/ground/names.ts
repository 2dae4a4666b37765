/** What a feature is called on a page. */
import type { FeatureKind } from "../../course/types.ts";
import type { MeasuredHole } from "../../measure/types.ts";
import type { Words } from "../language/words.ts";

/** A feature's name, else what it is. */
export function featureName(hole: MeasuredHole, id: string, words: Words): string {
  return named(hole, id, words.kinds) ?? words.unnamedHazard;
}

/** The same within a sentence: a name as it is, a kind as the language has it there. */
export function featureInSentence(hole: MeasuredHole, id: string, words: Words): string {
  return named(hole, id, words.kindsInSentence) ?? words.unnamedHazardInSentence;
}

function named(
  hole: MeasuredHole,
  id: string,
  kinds: Readonly<Partial<Record<FeatureKind, string>>>,
): string | undefined {
  const feature = hole.placed.get(id)?.feature;
  return feature?.name ?? (feature && kinds[feature.kind]);
}
