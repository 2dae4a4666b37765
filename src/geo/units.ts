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

/** Metres from a number written in the given unit. */
export const fromUnit = (value: number, unit: LengthUnit): number =>
  unit === "yards" ? metresFromYards(value) : value;

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (radiansValue: number): number => (radiansValue * 180) / Math.PI;
