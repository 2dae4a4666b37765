/** The terrarium encoding as its format note writes it: what tiles are held against. */
import type { Rgb } from "../../src/terrain/terrarium.ts";

/** One step of the encoding: 3.90625 mm. Encoding takes the step at or below the height. */
export const TERRARIUM_STEP_METRES = 1 / 256;

/**
 * Height in metres to colour; up to one step low.
 *
 * @throws RangeError for a height that is not a number in [-32768, 32768).
 */
export function encodeTerrarium(heightMetres: number): Rgb {
  const steps = Math.floor((heightMetres + 32768) * 256);
  if (!(steps >= 0 && steps < 2 ** 24)) {
    throw new RangeError(`Terrarium holds heights from -32768 m to below 32768 m, not ${heightMetres}.`);
  }
  return [steps >> 16, (steps >> 8) & 255, steps & 255];
}
