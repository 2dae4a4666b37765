/** How a page words its figures, and its script when it turns them to another tee or unit. */
import type { Metres } from "../contract/values.ts";
import { fromUnit, type LengthUnit, type Rounding } from "../geo/units.ts";
import { speak } from "../words/speak.ts";
import type { FigureWords, UnitWords } from "../words/words.ts";
import { formatHeight, formatLength, type Formatted } from "./format.ts";

/** A page carries it in its own language. */
export type Voice = Pick<FigureWords, "units" | "up" | "down" | "level"> & {
  /** By whose rules numbers are counted. */
  readonly locale: string;
};

/** @param written as JSON by the build that made the page and this script */
export function voiceIn(written: string): Voice {
  const voice = JSON.parse(written) as { readonly locale: string };
  return speak<Voice>({ ...voice }, voice.locale);
}

/**
 * A length in whole units. A total is the sum of its holes' whole units, as on a printed
 * card, so that a column adds up as it is read.
 */
export function wholeLength(
  metres: Metres,
  units: LengthUnit,
  words: UnitWords,
  rounding: Rounding = "nearest",
): Formatted {
  if (typeof metres === "number") return formatLength(metres, units, words, rounding);
  const sum = metres.reduce((total, one) => total + Number(formatLength(one, units, words).value), 0);
  return formatLength(fromUnit(sum, units), units, words);
}

/** A rise in words: "12 ft up". */
export function riseText(metres: number, units: LengthUnit, voice: Voice): string {
  const height = formatHeight(metres, units, voice.units);
  return height.value === "0" ? voice.level : (metres > 0 ? voice.up : voice.down)({ height: height.text });
}
