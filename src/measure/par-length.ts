/**
 * Par by length: Rules of Handicapping, Appendix F (published; read in an extract). The
 * metre column is rounded by the Rules themselves and is used as it stands, so a hole is
 * held to the column of the unit its club prints. Below 610 m of altitude; the Committee
 * may weigh elevation, lay-ups and wind.
 */
import type { Gender } from "../course/types.ts";
import { inUnit, type LengthUnit } from "../geo/units.ts";

export type ParRange = readonly [from: number, to: number];

export const PAR_RANGES: Readonly<Record<LengthUnit, Readonly<Record<Gender, Readonly<Record<number, ParRange>>>>>> = {
  yards: {
    men: { 3: [0, 260], 4: [240, 490], 5: [450, 710], 6: [670, Infinity] },
    women: { 3: [0, 220], 4: [200, 420], 5: [370, 600], 6: [570, Infinity] },
  },
  metres: {
    men: { 3: [0, 240], 4: [220, 450], 5: [410, 650], 6: [610, Infinity] },
    women: { 3: [0, 200], 4: [180, 380], 5: [340, 550], 6: [520, Infinity] },
  },
};

/** Whether a par suits a length, in whole units. */
export function parSuits(par: number, lengthMetres: number, gender: Gender, units: LengthUnit): boolean {
  const range = PAR_RANGES[units][gender][par];
  const length = Math.round(inUnit(lengthMetres, units));
  return range !== undefined && length >= range[0] && length <= range[1];
}

/** The par a hole of this length most likely has: where two suit, the one whose range it lies deeper in. */
export function parFromLength(lengthMetres: number): number {
  const { men } = PAR_RANGES.metres;
  return [3, 4, 5].find((par) => lengthMetres < (men[par]![1] + men[par + 1]![0]) / 2) ?? 6;
}
