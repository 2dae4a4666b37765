/** A reading in words: what stands under the map, and what a screen reader says. */
import { inUnit, type LengthUnit } from "../../geo/units.ts";
import type { MapFeatureProperties } from "../hole-data.ts";
import type { HazardAhead } from "./ahead.ts";
import type { Reading } from "./measure-tap.ts";
import type { LegPlay, Plays } from "./plays.ts";
import { ENGLISH_UNITS, formatHeight, formatLength, spokenBoth } from "../../tell/format.ts";
import { fill, WORDS } from "./words.ts";

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
}

/** @param plays of both legs, where they are known and wanted */
export function readOut(reading: Reading, unit: LengthUnit, plays?: Plays): ReadOut {
  const { tee, fromMe, startMetres, toFrontMetres, toMiddleMetres, toBackMetres, ahead } = reading;
  const say = WORDS.read;
  const short = (metres: number): string => formatLength(metres, unit).text;
  const both = (metres: number): string => spokenBoth(metres, unit);
  // Four hazards' figures in two units each are more than an ear holds.
  const one = (metres: number): string => formatLength(metres, unit).spoken;
  const figure = (label: string, metres: number | undefined, leg?: LegPlay): Figure[] => {
    if (metres === undefined) return [];
    const note = leg?.plays && fill(WORDS.plays.figure, playing(leg.plays, unit));
    return [{ label, value: formatLength(metres, unit).value, ...(note !== undefined && { note }) }];
  };
  const [there, on] = plays?.legs ?? [];
  const lines = [underLine(reading, short), aheadLine(say.ahead, ahead, short), playsLine(plays, unit, short)];
  const green = toFrontMetres === undefined
    ? fill(say.onGreenSaid, { length: both(toMiddleMetres) })
    : fill(say.greenSaid, { front: both(toFrontMetres), middle: both(toMiddleMetres), back: both(toBackMetres ?? toMiddleMetres) });
  return {
    figures: [
      ...figure(fromMe ? say.fromMe : fill(say.tee, { tee: tee.name }), startMetres, there),
      ...figure(say.front, toFrontMetres),
      ...figure(say.middle, toMiddleMetres, toFrontMetres === undefined ? undefined : on),
      ...figure(say.back, toBackMetres),
    ],
    unit: ENGLISH_UNITS[unit].symbol,
    lines: lines.filter(isThere),
    spoken: [
      fill(fromMe ? say.fromMeSaid : say.fromTeeSaid, { tee: tee.name, length: both(startMetres) }),
      green,
      underLine(reading, both),
      aheadLine(say.ahead, ahead, one),
      playsLine(plays, unit, one),
    ].filter(isThere).join(" "),
  };
}

const isThere = (line: string | undefined): line is string => line !== undefined;

/** A hazard by its name, or by what it is and its side. */
export function hazardName({ name, kind, position }: HazardAhead): string {
  const word = WORDS.read.kinds[kind] ?? kind;
  return name ?? fill(WORDS.read.side[position], { kind: word });
}

/** "Ahead: The Gully 80 yd to reach, 110 yd to carry." */
export function aheadLine(pattern: string, ahead: readonly HazardAhead[], length: (metres: number) => string): string | undefined {
  if (ahead.length === 0) return undefined;
  return fill(pattern, { hazards: ahead.map((hazard) => `${hazardName(hazard)} ${reachCarry(hazard, length)}`).join("; ") });
}

const reachCarry = ({ reach, carry }: Pick<HazardAhead, "reach"> & { readonly carry?: HazardAhead["carry"] }, length: (metres: number) => string): string =>
  carry === undefined
    ? fill(WORDS.read.reach, { reach: length(reach.metres) })
    : fill(WORDS.read.reachCarry, { reach: length(reach.metres), carry: length(carry.metres) });

/** What a feature is called where one stands on it: its name, its kind, or both. */
export function featureWords({ name, kind }: MapFeatureProperties): string | undefined {
  const kindWord = WORDS.read.kinds[kind];
  return name === undefined ? kindWord : kindWord === undefined ? name : fill(WORDS.read.named, { name, kind: kindWord.toLowerCase() });
}

function underLine({ under }: Reading, length: (metres: number) => string): string | undefined {
  if (under === undefined) return undefined;
  const say = WORDS.read;
  const what = featureWords(under.properties);
  if (what === undefined) return undefined;
  const { hazards } = under;
  return hazards.length === 0
    ? fill(say.under, { what })
    : fill(say.underHazard, { what, figures: hazards.map((hazard) => reachCarry(hazard, length)).join(say.then) });
}

type Playing = NonNullable<LegPlay["plays"]>;

/** A spread that rounds away is still there: rounded up, as on the built page. */
const playing = ({ lengthMetres, plusMinusMetres }: Playing, unit: LengthUnit): { readonly length: string; readonly spread: string } => ({
  length: formatLength(lengthMetres, unit).value,
  spread: String(Math.max(1, Math.ceil(inUnit(plusMinusMetres, unit) - 0.05))),
});

/** The wind's sideways movement is worth a word from here. */
const LEAST_DRIFT_METRES = 1;

function playsLine(plays: Plays | undefined, unit: LengthUnit, length: (metres: number) => string): string | undefined {
  if (plays === undefined) return undefined;
  const say = WORDS.plays;
  const leg = ({ riseMetres, plays: played }: LegPlay): string | undefined => {
    if (played === undefined) return undefined;
    const height = formatHeight(riseMetres, unit);
    const rise = height.value === "0" ? say.level : fill(riseMetres > 0 ? say.up : say.down, { height: height.text });
    const { driftMetres } = played;
    const drift = Math.abs(driftMetres) < LEAST_DRIFT_METRES ? "" : fill(driftMetres < 0 ? say.driftLeft : say.driftRight, { length: length(Math.abs(driftMetres)) });
    return fill(say.leg, { rise, drift, ...playing(played, unit) });
  };
  const [there, on] = plays.legs.map(leg);
  if (there === undefined && on === undefined) return undefined;
  const degrees = String(Math.round(plays.temperatureCelsius)).replace("-", "\u2212");
  return [
    there && fill(say.there, { leg: there }),
    on && fill(say.on, { leg: on }),
    fill(plays.wind ? say.wind : say.still, { degrees }),
  ].filter(Boolean).join(" ");
}
