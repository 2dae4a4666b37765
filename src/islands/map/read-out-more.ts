/** What else stands under the map: the hole as it opens, the golfer's own shots, where the golfer is. */
import type { LengthUnit } from "../../geo/units.ts";
import type { TeeData } from "../hole-data.ts";
import type { HazardAhead } from "./ahead.ts";
import type { Reading } from "./measure-tap.ts";
import type { OwnLanding } from "./own-landing.ts";
import type { Figure, ReadOut } from "./read-out.ts";
import type { ShotChain } from "./shots.ts";
import type { Whereabouts } from "./whereabouts.ts";
import { ENGLISH_UNITS, formatLength, spokenBoth } from "../../tell/format.ts";
import { aheadLine } from "./read-out.ts";
import { fill, WORDS } from "./words.ts";

type Length = (metres: number) => string;

const said = (unit: LengthUnit): Length => (metres) => formatLength(metres, unit).spoken;
const short = (unit: LengthUnit): Length => (metres) => formatLength(metres, unit).text;

const isThere = (line: string | undefined): line is string => line !== undefined;

/** Before anything is tapped: what to do, what the tee shot meets, the golfer's own drive. */
export function openingOut(ahead: readonly HazardAhead[], own: OwnLanding | undefined, unit: LengthUnit): ReadOut {
  const lines = (length: Length): string[] =>
    [WORDS.holeHint, own && ownLine(own, length), aheadLine(WORDS.read.aheadFromTee, ahead, length)].filter(isThere);
  return { figures: [], unit: ENGLISH_UNITS[unit].symbol, lines: lines(short(unit)), spoken: lines(said(unit)).join(" ") };
}

function ownLine({ driveMetres, fairwayMetres, leavesMetres }: OwnLanding, length: Length): string {
  const say = WORDS.own;
  return fill(fairwayMetres > 0 ? say.said : say.saidOff, { drive: length(driveMetres), width: length(fairwayMetres), left: length(leavesMetres) });
}

/** @param under what the last shot comes down in, if worth naming */
export function shotsOut(chain: ShotChain, tee: TeeData, under: string | undefined, full: boolean, unit: LengthUnit): ReadOut {
  const say = WORDS.chain;
  const { legs, left } = chain;
  const value = (metres: number): string => formatLength(metres, unit).value;
  const last = legs[legs.length - 1];
  const there = under === undefined ? undefined : fill(WORDS.read.under, { what: under });
  const figures: Figure[] = [
    ...legs.map(({ metres }, i) => ({ label: fill(say.shot, { number: i + 1 }), value: value(metres) })),
    ...(left === undefined || last === undefined ? [] : [{ label: say.left, value: value(left.metres) }]),
  ];
  return {
    figures,
    unit: ENGLISH_UNITS[unit].symbol,
    lines: [last === undefined ? fill(say.hint, { tee: tee.name }) : undefined, there, left === undefined ? say.onGreenSaid : undefined, full ? say.most : undefined].filter(isThere),
    spoken: last === undefined
      ? fill(say.hint, { tee: tee.name })
      : [
          fill(say.shotSaid, { number: legs.length, length: spokenBoth(last.metres, unit) }),
          there,
          left === undefined ? say.onGreenSaid : fill(say.leftSaid, { length: spokenBoth(left.metres, unit) }),
          full ? say.most : undefined,
        ].filter(isThere).join(" "),
  };
}

/** @param reading of the golfer's own place, on the course and known well enough */
export function meOut(where: Whereabouts, reading: Reading | undefined, plainTurned: boolean, unit: LengthUnit): ReadOut {
  const say = WORDS.me;
  const symbol = ENGLISH_UNITS[unit].symbol;
  if (where.state !== "on-course" || reading === undefined) {
    const line = where.state === "outside"
      ? fill(say.outside, { length: farText(where.beyondMetres, unit), accuracy: farText(where.accuracyMetres, unit) })
      : fill(say.coarse, { length: farText(where.accuracyMetres, unit) });
    return { figures: [], unit: symbol, lines: [line], spoken: line };
  }
  const value = (metres: number | undefined, label: string): Figure[] =>
    metres === undefined ? [] : [{ label, value: formatLength(metres, unit).value }];
  const { front, middle, back, ahead, greenSaid, onGreenSaid } = WORDS.read;
  const { toFrontMetres, toMiddleMetres, toBackMetres } = reading;
  const lines = (length: Length): string[] => [
    fill(say.accuracy, { length: length(where.accuracyMetres) }),
    aheadLine(ahead, reading.ahead, length),
    plainTurned ? say.plain : undefined,
  ].filter(isThere);
  const length: Length = (metres) => spokenBoth(metres, unit);
  const green = toFrontMetres === undefined || toBackMetres === undefined
    ? fill(onGreenSaid, { length: length(toMiddleMetres) })
    : fill(greenSaid, { front: length(toFrontMetres), middle: length(toMiddleMetres), back: length(toBackMetres) });
  return {
    figures: [...value(toFrontMetres, front), ...value(toMiddleMetres, middle), ...value(toBackMetres, back)],
    unit: symbol,
    lines: lines(short(unit)),
    spoken: [green, ...lines(said(unit))].join(" "),
  };
}

const METRES_PER_MILE = 1609.344;

/** A distance that may be anything: in yards or metres below 2 km, then in miles or kilometres. */
export function farText(metres: number, unit: LengthUnit): string {
  if (metres < 2000) return formatLength(metres, unit).text;
  const number = metres / (unit === "yards" ? METRES_PER_MILE : 1000);
  return fill(unit === "yards" ? WORDS.me.miles : WORDS.me.kilometres, { number: number < 10 ? number.toFixed(1) : Math.round(number) });
}
