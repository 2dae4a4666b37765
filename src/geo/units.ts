/**
 * Units at the edge. Everything inside Marram is SI (metres, radians only inside
 * formulas, degrees for bearings); yards and feet appear only where people read.
 */

/** The international yard in metres, exact (1959 agreement). */
export const METRES_PER_YARD = 0.9144;

/** The international foot in metres, exact. */
export const METRES_PER_FOOT = 0.3048;

/** What a club shows its distances in first. */
export type LengthUnit = "yards" | "metres";

export const metresFromYards = (yards: number): number => yards * METRES_PER_YARD;
export const yardsFromMetres = (metres: number): number => metres / METRES_PER_YARD;
export const feetFromMetres = (metres: number): number => metres / METRES_PER_FOOT;

/** A length in the given unit, unrounded. */
export const inUnit = (metres: number, unit: LengthUnit): number =>
  unit === "yards" ? yardsFromMetres(metres) : metres;

/**
 * How a length becomes a whole number: what must be flown is rounded up and where trouble
 * begins down, so that whoever trusts the figure stays dry; everything else to the nearest.
 */
export type Rounding = "nearest" | "up" | "down";

/** Less than this past a whole number is the whole number: the resolution figures are held to. */
const RESOLUTION_METRES = 0.01;

/** A length as a whole number of the unit. */
export function wholeIn(metres: number, unit: LengthUnit, rounding: Rounding = "nearest"): number {
  const [value, slack] = [inUnit(metres, unit), inUnit(RESOLUTION_METRES, unit)];
  if (rounding === "up") return Math.ceil(value - slack) + 0;
  if (rounding === "down") return Math.floor(value + slack) + 0;
  // Halves away from zero would print -0; adding zero turns it into 0.
  return Math.round(value) + 0;
}

/** Metres from a number written in the given unit. */
export const fromUnit = (value: number, unit: LengthUnit): number =>
  unit === "yards" ? metresFromYards(value) : value;

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (radiansValue: number): number => (radiansValue * 180) / Math.PI;
