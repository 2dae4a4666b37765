/**
 * Feet that are not said to be feet. A height file without a unit is taken as metres; the
 * heights written in the course's own coordinates can prove that wrong.
 *
 * Two surveys of the same places differ by a constant (a geoid, a local datum) and by
 * noise, so the file's heights are compared with the written ones as a straight line: its
 * slope is 1 when the file is in metres and 3.2808 when it is in feet.
 */
import { METRES_PER_FOOT } from "../geo/units.ts";

/** A place with the height written in the content and the height in the file, in the file's numbers. */
export interface HeightPair {
  readonly writtenMetres: number;
  readonly inFile: number;
}

/** Fewer places than this prove nothing. */
const LEAST_PAIRS = 4;
/** Nor do places that are all as high as each other: least standard deviation, metres. */
const LEAST_SPREAD_METRES = 1;

/**
 * Whether the pairs show that the file is in feet: a correlation of at least 0.95 and a
 * slope within a tenth of 3.2808.
 */
export function looksLikeFeet(pairs: readonly HeightPair[]): boolean {
  const count = pairs.length;
  if (count < LEAST_PAIRS) return false;
  const meanWritten = pairs.reduce((sum, pair) => sum + pair.writtenMetres, 0) / count;
  const meanInFile = pairs.reduce((sum, pair) => sum + pair.inFile, 0) / count;
  let [ww, wf, ff] = [0, 0, 0];
  for (const { writtenMetres, inFile } of pairs) {
    const [w, f] = [writtenMetres - meanWritten, inFile - meanInFile];
    ww += w * w;
    wf += w * f;
    ff += f * f;
  }
  if (Math.sqrt(ww / count) < LEAST_SPREAD_METRES) return false;
  const correlation = wf / Math.sqrt(ww * ff);
  const slope = wf / ww;
  return correlation >= 0.95 && Math.abs(slope * METRES_PER_FOOT - 1) <= 0.1;
}
