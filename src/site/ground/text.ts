/** Sentences about the ground, from figures and the catalogue; one unit at a time. */
import { fromUnit, inUnit, type LengthUnit, type Rounding } from "../../geo/units.ts";
import type { OutOfBounds } from "../../measure/corner.ts";
import type { GreenLie } from "../../measure/green-lie.ts";
import type { Lie } from "../../measure/landing.ts";
import type { MeasuredHole, TeeFigures } from "../../measure/types.ts";
import { dot, rightOf } from "../../geo/vector.ts";
import { pointAt } from "../../geo/line.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { heightAt } from "../../terrain/sample.ts";
import type { GreenSide } from "../../terrain/green-ground.ts";
import { formatHeight, formatLength } from "../../tell/format.ts";
import type { Corner, Sight } from "./figures.ts";
import { featureInSentence } from "./names.ts";
import type { RiseStory } from "./rise.ts";
import type { Words } from "../language/words.ts";

/** Less slope than this underfoot is level: nobody feels it (common practice, no source). */
const LEVEL_LIE_PERCENT = 1.5;

/** Part of a green's tilt smaller than this is not worth a word. */
const LEVEL_TILT_PERCENT = 0.7;

/** More of the green than this in view is the green in view. */
const WHOLE_GREEN_SHARE = 0.75;
/** Less than this in view is not seeing it. */
const NO_GREEN_SHARE = 0.02;

/** A length to the nearest five of its unit, for "the last 60 yards". */
export function roundLength(metres: number, unit: LengthUnit, words: Words): string {
  return formatLength(fromUnit(Math.max(5, Math.round(inUnit(metres, unit) / 5) * 5), unit), unit, words.tell.units)
    .text;
}

export const lengthText = (metres: number, unit: LengthUnit, words: Words, rounding?: Rounding): string =>
  formatLength(metres, unit, words.tell.units, rounding).text;
export const heightText = (metres: number, unit: LengthUnit, words: Words): string =>
  formatHeight(metres, unit, words.tell.units).text;

/**
 * "Goes up 43 ft from tee to green, most of it between 290 and 340 yd from the tee."
 *
 * @param inOne the green is reached from the tee: the ground between is flown over, its ups and downs are nobody's
 */
export function riseSentence(
  { riseMetres, most, upMetres, downMetres }: RiseStory,
  unit: LengthUnit,
  words: Words,
  inOne = false,
): string {
  const say = words.ground.rise;
  const height = heightText(riseMetres, unit, words);
  const level = Math.abs(riseMetres) < 1;
  const parts = [level ? say.level : riseMetres > 0 ? say.up({ height }) : say.down({ height })];
  if (most?.where === "evenly") parts.push(say.evenly);
  else if (most?.where === "first") parts.push(say.mostFirst({ length: roundLength(most.lengthMetres, unit, words) }));
  else if (most?.where === "last") parts.push(say.mostLast({ length: roundLength(most.lengthMetres, unit, words) }));
  else if (most?.where === "between") {
    parts.push(
      say.mostBetween({
        from: roundLength(most.fromMetres, unit, words),
        to: roundLength(most.toMetres, unit, words),
      }),
    );
  }
  // The rise itself is one of the two; the other is news.
  const news = riseMetres > 0 ? downMetres : upMetres;
  if (news >= 2 && !inOne)
    parts.push(say.onTheWay({ up: heightText(upMetres, unit, words), down: heightText(downMetres, unit, words) }));
  return `${parts.join(", ")}.`;
}

/** What cannot be seen from the tee, and from where the drive ends; nothing where all is in view. */
export function sightSentences(
  sight: Sight,
  driveMetres: number | undefined,
  unit: LengthUnit,
  words: Words,
): string[] {
  const say = words.ground.sight;
  const sentences: string[] = [];
  const { greenShare, flag, landing, greenFromLanding } = sight;
  if (greenShare !== undefined) {
    if (greenShare <= NO_GREEN_SHARE) sentences.push(flag ? say.flagOnly : say.greenHidden);
    else if (greenShare < WHOLE_GREEN_SHARE) sentences.push(say.greenPart);
  }
  if (driveMetres === undefined) return sentences;
  const drive = lengthText(driveMetres, unit, words);
  if (landing === false) sentences.push(say.landingHidden({ drive }));
  if (greenFromLanding === false) sentences.push(say.greenHiddenAfter({ drive }));
  return sentences;
}

/** The section told: height against the tee at every hundred of the unit, and at the green. */
export function sectionSentence(
  tee: TeeFigures,
  grid: HeightGrid,
  unit: LengthUnit,
  words: Words,
): string | undefined {
  const say = words.ground.section;
  const start = heightAt(grid, tee.marker);
  if (start === undefined) return undefined;
  const step = inUnit(tee.lengthMetres, unit) < 250 ? 25 : 50;
  const parts: string[] = [];
  const tell = (metres: number): void => {
    const height = heightAt(grid, pointAt(tee.line, metres));
    if (height === undefined) return;
    const formatted = formatHeight(height - start, unit, words.tell.units);
    const told =
      formatted.value === "0"
        ? say.level
        : height > start
          ? say.up({ height: formatted.text })
          : say.down({ height: formatted.text });
    parts.push(say.at({ distance: lengthText(metres, unit, words), height: told }));
  };
  for (let value = step; fromUnit(value, unit) < tee.lengthMetres - 10; value += step) tell(fromUnit(value, unit));
  tell(tee.lengthMetres);
  return `${parts.join("; ")}.`;
}

const percent = (value: number): string => String(Math.round(Math.abs(value)));

/** "uphill 4 %, falls left 2 %". */
export function lieText(
  { awayPercent, rightPercent }: Pick<Lie, "awayPercent" | "rightPercent">,
  words: Words,
): string {
  const say = words.ground.landing;
  const parts: string[] = [];
  if (Math.abs(awayPercent) >= LEVEL_LIE_PERCENT)
    parts.push((awayPercent > 0 ? say.uphill : say.downhill)({ percent: percent(awayPercent) }));
  if (Math.abs(rightPercent) >= LEVEL_LIE_PERCENT)
    parts.push((rightPercent > 0 ? say.fallsLeft : say.fallsRight)({ percent: percent(rightPercent) }));
  return parts.length === 0 ? say.level : parts.join(", ");
}

/** The green's slope in sentences: which way it rises, its low side, tiers, false front. */
export function greenSentences(
  lie: GreenLie,
  approach: readonly [number, number],
  unit: LengthUnit,
  words: Words,
): string[] {
  const say = words.ground.green;
  const { awayPercent, rightPercent } = lie.met;
  const sentences = [
    say.lies({
      along: Math.abs(awayPercent) < LEVEL_TILT_PERCENT ? "level" : awayPercent > 0 ? "rises" : "falls",
      across: Math.abs(rightPercent) < LEVEL_TILT_PERCENT ? "level" : rightPercent > 0 ? "right" : "left",
    }),
  ];
  if (lie.falseFront) {
    sentences.push(
      say.falseFront({
        depth: lengthText(lie.falseFront.depthMetres, unit, words),
        percent: percent(lie.falseFront.percent),
      }),
    );
  }
  if (lie.tiers) {
    const up: readonly [number, number] = [
      Math.sin((lie.tiers.upDegrees * Math.PI) / 180),
      Math.cos((lie.tiers.upDegrees * Math.PI) / 180),
    ];
    sentences.push(
      say.tiers({ step: heightText(lie.tiers.stepMetres, unit, words), upper: say.tierSides[sideOf(up, approach)] }),
    );
  }
  if (lie.below) sentences.push(say.below[lie.below.side]);
  return sentences;
}

/** Which side a direction points to, as the player coming in sees it. */
function sideOf(direction: readonly [number, number], approach: readonly [number, number]): GreenSide {
  const [away, right] = [dot(direction, approach), dot(direction, rightOf(approach))];
  if (Math.abs(away) >= Math.abs(right)) return away > 0 ? "long" : "short";
  return right > 0 ? "right" : "left";
}

/** A corner line told: what it must carry, how long that plays, what it saves, and for whom it is. */
export interface CornerText {
  /** Distance alone. */
  readonly plain: readonly string[];
  /** Rests on heights. */
  readonly beyond: readonly string[];
  readonly reach: readonly string[];
}

export function cornerText(
  hole: MeasuredHole,
  { line, hardest, clearing, reachableFor }: Corner,
  unit: LengthUnit,
  words: Words,
): CornerText {
  const say = words.ground.corner;
  const { side } = line.bend;
  const last = line.obstacles.reduce<(typeof line.obstacles)[number] | undefined>(
    (best, one) => (best && best.toMetres >= one.toMetres ? best : one),
    undefined,
  );
  const saves = say.saves({ length: lengthText(line.savesMetres, unit, words) });
  const risks = line.outOfBounds.map((stay) => outOfBoundsSentence(stay, unit, words));
  if (!last) {
    return risks.length > 0
      ? { plain: [say.outOfBounds], beyond: [], reach: [...risks, say.outOfBoundsRule] }
      : {
          plain: [`${say.nothing({ side, length: lengthText(line.lengthMetres, unit, words) })}.`, saves],
          beyond: [],
          reach: [],
        };
  }
  const beyond: string[] = [];
  if (hardest && clearing?.effective) {
    const { heightMetres } = hole.placed.get(hardest.id)?.feature ?? {};
    if (heightMetres !== undefined && hardest.topMetres !== undefined) {
      const top = formatHeight(hardest.topMetres, unit, words.tell.units);
      const what = featureInSentence(hole, hardest.id, words);
      const place = hardest.topMetres >= 0 ? "above" : "below";
      beyond.push(top.value === "0" ? say.topLevel({ what }) : say.top({ what, height: top.text, place }));
    }
    const length = lengthText(clearing.effective.lengthMetres, unit, words);
    beyond.push(say.plays({ length: `${length} ${plusMinus(clearing.effective.plusMinusMetres, unit)}` }));
  }
  const straight = `${say.straight({ side, carry: lengthText(line.carryMetres, unit, words, "up"), what: featureInSentence(hole, last.id, words) })}.`;
  if (risks.length > 0)
    return { plain: [say.outOfBounds], beyond: [], reach: [...risks, say.outOfBoundsRule, straight] };
  return {
    plain: [straight, saves],
    beyond,
    reach: [
      reachableFor.length === 0
        ? say.reachableNone
        : say.reachable({ players: words.list(reachableFor.map((id) => words.ground.playersInSentence[id])) }),
      say.caution,
    ],
  };
}

/**
 * "Out over it at 150 yd, back over it at 191 yd": the first rounded down and the second up, as a reach and
 * a carry are.
 */
function outOfBoundsSentence({ outMetres, backMetres }: OutOfBounds, unit: LengthUnit, words: Words): string {
  const say = words.ground.corner;
  const out = lengthText(outMetres, unit, words, "down");
  return backMetres === undefined
    ? say.outAndNotBack({ out })
    : say.outAndBack({ out, back: lengthText(backMetres, unit, words, "up") });
}

/** Never nothing: a spread that rounds away is still there. */
export const plusMinus = (metres: number, unit: LengthUnit): string =>
  `±${Math.max(1, Math.ceil(inUnit(metres, unit) - 0.05))}`;
