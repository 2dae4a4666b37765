/** A reading in words: what stands under the map, and what a screen reader says. */
import type { LengthUnit } from "../../geo/units.ts";
import type { FeatureKind } from "../../course/types.ts";
import type { Reading } from "./measure-tap.ts";
import { ENGLISH_UNITS, formatLength, spokenBoth } from "../../tell/format.ts";

export interface ReadOut {
  /** Figures to show large, in order. */
  readonly figures: readonly { readonly label: string; readonly value: string }[];
  /** Short name of the unit the figures are in. */
  readonly unit: string;
  /** What lies under the point, if anything worth naming. */
  readonly under: string | undefined;
  /** The whole reading in sentences, in both units, the golfer's first. */
  readonly spoken: string;
}

const KIND_WORDS: Partial<Record<FeatureKind, string>> = {
  bunker: "Bunker",
  "penalty-area-yellow": "Penalty area, yellow",
  "penalty-area-red": "Penalty area, red",
  water: "Water",
  "out-of-bounds": "Out of bounds",
  green: "Green",
  fairway: "Fairway",
};

export function readOut(reading: Reading, unit: LengthUnit): ReadOut {
  const { tee, fromTeeMetres, toFrontMetres, toMiddleMetres, toBackMetres } = reading;
  const onGreen = toFrontMetres === undefined;
  const lengths: readonly (readonly [label: string, metres: number | undefined])[] = [
    [`${tee.name} tee`, fromTeeMetres],
    ["Front", toFrontMetres],
    ["Middle", toMiddleMetres],
    ["Back", toBackMetres],
  ];
  const both = (metres: number): string => spokenBoth(metres, unit);
  const under = underWords(reading, (metres) => formatLength(metres, unit).text);
  const underSpoken = underWords(reading, both);
  const green = onGreen
    ? `On the green: ${both(toMiddleMetres)} from its middle.`
    : `To the green: front ${both(toFrontMetres)}; middle ${both(toMiddleMetres)}${toBackMetres === undefined ? "" : `; back ${both(toBackMetres)}`}.`;
  return {
    figures: lengths.flatMap(([label, metres]) =>
      metres === undefined ? [] : [{ label, value: formatLength(metres, unit).value }]),
    unit: ENGLISH_UNITS[unit].symbol,
    under,
    spoken: [`From the ${tee.name} tee ${both(fromTeeMetres)}.`, green, underSpoken].filter(Boolean).join(" "),
  };
}

function underWords({ under }: Reading, length: (metres: number) => string): string | undefined {
  if (under === undefined) return undefined;
  const { name, kind } = under.properties;
  const kindWords = KIND_WORDS[kind];
  const title = name === undefined ? kindWords : kindWords === undefined ? name : `${name} (${kindWords.toLowerCase()})`;
  if (title === undefined) return undefined;
  const { hazards } = under;
  if (hazards.length === 0) return `${title}.`;
  const figures = hazards.map(({ reach, carry }) => `${length(reach.metres)} to reach${carry === undefined ? "" : `, ${length(carry.metres)} to carry`}`);
  return `${title}: from the tee ${figures.join("; then ")}.`;
}
