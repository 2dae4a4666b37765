/** A language's words as pages, drawings and islands hold them. */
import type { Catalogue } from "./catalogue-type.ts";
import type { CompiledGroup } from "./compiled.ts";
import { speak } from "./speak.ts";

export interface Words extends Catalogue {
  /** Primary language subtag. */
  readonly language: string;
  /** Several things in a sentence: `a, b and c`. */
  readonly list: (items: readonly string[]) => string;
}

/** What stands on a plan of a hole or a course. */
export type PlateWords = Catalogue["draw"];
/** What stands on a drawing of the ground. */
export type GroundDrawingWords = Catalogue["drawGround"];
/** What stands on the drawing that explains reach and carry. */
export type ReachCarryWords = Catalogue["figures"]["drawing"];
/** How a figure in a tip explains itself. */
export type FigureWords = Catalogue["tell"];
/** What units are called. */
export type UnitWords = FigureWords["units"];

export function wordsOf(language: string, locale: string, compiled: CompiledGroup): Words {
  const conjunction = new Intl.ListFormat(locale, { type: "conjunction" });
  return { ...speak<Catalogue>(compiled, locale), language, list: (items) => conjunction.format(items) };
}
