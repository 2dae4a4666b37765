/** A reading in words: what stands under the map, and what a screen reader says. */
import { inUnit, type LengthUnit, type Rounding } from "../../geo/units.ts";
import type { HazardData } from "../../contract/hole-data.ts";
import type { MapFeatureProperties } from "../../contract/map-data.ts";
import type { Third } from "../../measure/third.ts";
import type { HazardAhead } from "./ahead.ts";
import type { Reading } from "./measure-tap.ts";
import type { LegPlay, Plays } from "./plays.ts";
import type { KindWords, MapWords, SaidKind, Speech } from "./words.ts";
import { formatHeight, formatLength, spokenBoth } from "../../tell/format.ts";
import { chained } from "./words.ts";

export interface ReadOut {
  /** Figures to show large, in order. */
  readonly figures: readonly Figure[];
  /** Short name of the unit the figures are in. */
  readonly unit: string;
  /** Further lines, the most wanted first. */
  readonly lines: readonly string[];
  /** The whole reading in sentences, in both units, the golfer's first. */
  readonly spoken: string;
}

export interface Figure {
  readonly label: string;
  readonly value: string;
  /** A word below it. */
  readonly note?: string;
  /** Of front, middle and back of the green, the one to play to. */
  readonly counts?: true;
}

/** A length in words of one kind or another. */
export type Wording = (metres: number, rounding?: Rounding) => string;

/** Number and symbol; number and name; both units' numbers and names. */
export const wordings = (
  unit: LengthUnit,
  { units }: Speech,
): Readonly<Record<"value" | "short" | "one" | "both", Wording>> => ({
  value: (metres, rounding) => formatLength(metres, unit, units, rounding).value,
  short: (metres, rounding) => formatLength(metres, unit, units, rounding).text,
  // Four hazards' figures in two units each are more than an ear holds.
  one: (metres, rounding) => formatLength(metres, unit, units, rounding).spoken,
  both: (metres, rounding) => spokenBoth(metres, unit, units, rounding),
});

export const isThere = (line: string | undefined): line is string => line !== undefined;

/** @param plays of both legs, where they are known and wanted */
export function readOut(reading: Reading, unit: LengthUnit, speech: Speech, plays?: Plays): ReadOut {
  const { tee, fromMe, startMetres, third, ahead } = reading;
  const { say, units } = speech;
  const { value, short, one, both } = wordings(unit, speech);
  const noted = (leg: LegPlay | undefined): Pick<Figure, "note"> =>
    leg?.plays === undefined ? {} : { note: say.plays.figure(playing(leg.plays, unit, speech)) };
  const [there, on] = plays?.legs ?? [];
  const start: Figure = {
    label: fromMe ? say.read.fromMe : say.read.tee({ tee: tee.name }),
    value: value(startMetres),
    ...noted(there),
  };
  return {
    figures: [
      start,
      ...greenFigures(reading, unit, speech).map((figure) =>
        figure.counts ? { ...figure, ...noted(reading.toFrontMetres === undefined ? undefined : on) } : figure,
      ),
    ],
    unit: units[unit].symbol,
    lines: [
      underLine(reading, say, short),
      aheadLine(say.read.ahead, ahead, say, short),
      playsLine(plays, third, unit, speech, short),
    ].filter(isThere),
    spoken: [
      (fromMe ? say.read.fromMeSaid : say.read.fromTeeSaid)({ tee: tee.name, length: both(startMetres) }),
      greenSaid(reading, say, both),
      underLine(reading, say, both),
      aheadLine(say.read.ahead, ahead, say, one),
      playsLine(plays, third, unit, speech, one),
    ]
      .filter(isThere)
      .join(" "),
  };
}

/** Front, the golfer's third in the middle's place as in the page's glance, and back; on the green the third alone. */
export function greenFigures(
  { toFrontMetres, toHoleMetres, toBackMetres, third }: Reading,
  unit: LengthUnit,
  speech: Speech,
): readonly Figure[] {
  const {
    say: { read },
    thirds,
  } = speech;
  const { value } = wordings(unit, speech);
  const edge = (label: string, metres: number | undefined): Figure[] =>
    metres === undefined ? [] : [{ label, value: value(metres) }];
  return [
    ...edge(read.front, toFrontMetres),
    { label: third === "middle" ? read.middle : thirds[third], value: value(toHoleMetres), counts: true },
    ...edge(read.back, toBackMetres),
  ];
}

export const greenSaid = (
  { toFrontMetres, toHoleMetres, toBackMetres, third }: Reading,
  { read }: MapWords,
  length: Wording,
): string =>
  toFrontMetres === undefined || toBackMetres === undefined
    ? read.onGreenSaid[third]({ length: length(toHoleMetres) })
    : read.greenSaid[third]({ front: length(toFrontMetres), hole: length(toHoleMetres), back: length(toBackMetres) });

const kindWords = (kind: MapFeatureProperties["kind"], { read: { kinds } }: MapWords): KindWords | undefined =>
  Object.hasOwn(kinds, kind) ? kinds[kind as SaidKind] : undefined;

/** A hazard by its name, or by what it is and its side. */
export const hazardName = ({ name, kind, position }: HazardAhead, say: MapWords): string =>
  name ?? (kindWords(kind, say) ?? say.read.hazard)[position === "beyond" ? "across" : position];

/** "Ahead: The Gully 80 yd to reach, 110 yd to carry." */
export function aheadLine(
  line: (said: { readonly hazards: string }) => string,
  ahead: readonly HazardAhead[],
  say: MapWords,
  length: Wording,
): string | undefined {
  if (ahead.length === 0) return undefined;
  const { hazardAhead, and } = say.read;
  return line({
    hazards: chained(
      and,
      ahead.map((hazard) =>
        hazardAhead({ hazard: hazardName(hazard, say), figures: reachCarry(hazard, say, length) }),
      ),
    ),
  });
}

/**
 * How far a hazard is to reach, and what must be flown because of it: past it, or to the dry land the green
 * lies on.
 */
function reachCarry({ reach, carry, toGreen }: HazardData | HazardAhead, { read }: MapWords, length: Wording): string {
  const told = { reach: length(reach.metres, "down") };
  return carry === undefined
    ? read.reach(told)
    : (toGreen ? read.reachCarryToGreen : read.reachCarry)({ ...told, carry: length(carry.metres, "up") });
}

/** What a feature is called where one stands on it: its name, its kind, or both. */
export function featureWords({ name, kind }: MapFeatureProperties, say: MapWords): string | undefined {
  const words = kindWords(kind, say);
  return name === undefined
    ? words?.alone
    : words === undefined
      ? name
      : say.read.named({ name, kind: words.bracketed });
}

function underLine({ under }: Reading, say: MapWords, length: Wording): string | undefined {
  const what = under && featureWords(under.properties, say);
  if (under === undefined || what === undefined) return undefined;
  const { read } = say;
  const { hazards } = under;
  return hazards.length === 0
    ? read.under({ what })
    : read.underHazard({
        what,
        figures: chained(
          read.then,
          hazards.map((hazard) => reachCarry(hazard, say, length)),
        ),
      });
}

type Playing = NonNullable<LegPlay["plays"]>;

/** A spread that rounds away is still there: rounded up, as on the built page. */
const playing = (
  { lengthMetres, plusMinusMetres }: Playing,
  unit: LengthUnit,
  { units }: Speech,
): { readonly length: string; readonly spread: string } => ({
  length: formatLength(lengthMetres, unit, units).value,
  spread: String(Math.max(1, Math.ceil(inUnit(plusMinusMetres, unit) - 0.05))),
});

/** The wind's sideways movement is worth a word from here. */
const LEAST_DRIFT_METRES = 1;

function playsLine(
  plays: Plays | undefined,
  third: Third,
  unit: LengthUnit,
  speech: Speech,
  length: Wording,
): string | undefined {
  if (plays === undefined) return undefined;
  const say = speech.say.plays;
  const leg = ({ riseMetres, plays: played }: LegPlay): string | undefined => {
    if (played === undefined) return undefined;
    const height = formatHeight(riseMetres, unit, speech.units);
    const rise = height.value === "0" ? say.level : (riseMetres > 0 ? say.up : say.down)({ height: height.text });
    const { driftMetres } = played;
    const pattern =
      Math.abs(driftMetres) < LEAST_DRIFT_METRES ? say.leg : driftMetres < 0 ? say.legDriftLeft : say.legDriftRight;
    return pattern({ rise, drift: length(Math.abs(driftMetres)), ...playing(played, unit, speech) });
  };
  const [there, on] = plays.legs.map(leg);
  if (there === undefined && on === undefined) return undefined;
  const degrees = String(Math.round(plays.temperatureCelsius)).replace("-", "\u2212");
  return [
    there && say.there({ leg: there }),
    on && say.onward[third]({ leg: on }),
    (plays.wind ? say.wind : say.still)({ degrees }),
    plays.legs.some((one) => one.plays?.indication) ? say.indication : undefined,
  ]
    .filter(isThere)
    .join(" ");
}
