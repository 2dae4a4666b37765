/** How a green lies, in sentences: what its drawing shows, for those who read. */
import type { LengthUnit } from "../geo/units.ts";
import { directionTo, dot, rightOf } from "../geo/vector.ts";
import type { GreenLie } from "../measure/green-lie.ts";
import type { TeeFigures } from "../measure/types.ts";
import type { Words } from "../site/words.ts";
import { formatHeight, formatLength } from "../tell/format.ts";
import { LEVEL_PERCENT } from "../terrain/green-ground.ts";

/** To the nearest half: a putt feels no less. */
const percentText = (percent: number, locale: string): string =>
  new Intl.NumberFormat(locale, { style: "percent", maximumFractionDigits: 1 }).format(Math.round(percent * 2) / 200);

/** Which side of a green is higher, of rises toward the back and toward the right: the larger of the two. */
const higherSide = (away: number, right: number): "back" | "front" | "left" | "right" =>
  Math.abs(away) >= Math.abs(right) ? (away >= 0 ? "back" : "front") : right >= 0 ? "right" : "left";

export function greenSentences(lie: GreenLie, tee: TeeFigures, units: LengthUnit, words: Words): string[] {
  const say = words.green;
  const sentences: string[] = [];
  const { approach } = tee.green;
  if (lie.tiers) {
    const up = directionTo(lie.tiers.lower.centre, lie.tiers.upper.centre);
    const side = higherSide(dot(up, approach), dot(up, rightOf(approach)));
    sentences.push(say.tiers(formatHeight(lie.tiers.stepMetres, units, words.tell.units).text, say.higher[side]));
  } else if (lie.tilt.percent < LEVEL_PERCENT) {
    sentences.push(say.level);
  } else {
    const side = higherSide(lie.met.awayPercent, lie.met.rightPercent);
    sentences.push(say.slope(percentText(lie.tilt.percent, words.locale), say.higher[side]));
  }
  if (lie.falseFront) sentences.push(say.falseFront(formatLength(lie.falseFront.depthMetres, units, words.tell.units).text));
  if (lie.below && lie.below.percent >= LEVEL_PERCENT) sentences.push(say.uphill[lie.below.side]);
  return sentences;
}
