/** Numbers as people read them: whole yards or metres, feet or metres for heights. */
import { feetFromMetres, wholeIn, type LengthUnit, type Rounding } from "../geo/units.ts";
import type { UnitWords } from "../words/words.ts";

/** A figure ready for a page, in one unit. */
export interface Formatted {
  /** The number alone: `192`. */
  readonly value: string;
  /** The unit's symbol: `yd`, `m` or `ft`. */
  readonly unit: string;
  /** Number and symbol, held together by a no-break space. */
  readonly text: string;
  /** Number and unit in full, for a screen reader: `192 yards`. */
  readonly spoken: string;
}

function formatted(number: number, words: UnitWords[keyof UnitWords]): Formatted {
  // A figure that is not a number must never reach a page, whatever went wrong before.
  if (!Number.isFinite(number)) throw new RangeError(`A figure must be a finite number, not ${number}.`);
  const value = String(number);
  return {
    value,
    unit: words.symbol,
    text: `${value}\u00a0${words.symbol}`,
    spoken: words.spoken({ number: value, count: number }),
  };
}

/**
 * A horizontal length as a whole number of the unit, the resolution lengths are published
 * in (World Handicap System, Appendix G).
 *
 * @throws RangeError when the length is not finite
 */
export const formatLength = (
  metres: number,
  unit: LengthUnit,
  words: UnitWords,
  rounding: Rounding = "nearest",
): Formatted => formatted(wholeIn(metres, unit, rounding), words[unit]);

/** A height difference, without its sign: feet where lengths are in yards. */
export const formatHeight = (metres: number, unit: LengthUnit, words: UnitWords): Formatted =>
  unit === "yards"
    ? formatted(Math.round(Math.abs(feetFromMetres(metres))), words.feet)
    : formatted(Math.round(Math.abs(metres)), words.metres);

/** Both units, the reader's first: `192 yards, 176 metres`. */
export function spokenBoth(
  metres: number,
  unit: LengthUnit,
  words: UnitWords,
  rounding: Rounding = "nearest",
): string {
  const other: LengthUnit = unit === "yards" ? "metres" : "yards";
  return `${formatLength(metres, unit, words, rounding).spoken}, ${formatLength(metres, other, words, rounding).spoken}`;
}
