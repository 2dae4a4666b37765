/** What a feature is called on a page. */
import type { MeasuredHole } from "../measure/types.ts";
import type { Words } from "./words.ts";

/** A feature's name, else what it is. */
export function featureName(hole: MeasuredHole, id: string, words: Words): string {
  const feature = hole.placed.get(id)?.feature;
  return feature?.name ?? (feature && words.kinds[feature.kind]) ?? words.unnamedHazard;
}

/** The same within a sentence: a name as it is, a kind as the language has it there. */
export function featureInSentence(hole: MeasuredHole, id: string, words: Words): string {
  const name = featureName(hole, id, words);
  return hole.placed.get(id)?.feature.name ? name : words.inSentence(name);
}
