/** What else stands under the map: the hole as it opens, the golfer's own shots, where the golfer is. */
import type { LengthUnit } from "../../geo/units.ts";
import type { TeeData } from "../../contract/hole-data.ts";
import type { Third } from "../../measure/third.ts";
import type { HazardAhead } from "./ahead.ts";
import type { Reading } from "./measure-tap.ts";
import type { OwnLanding } from "./own-landing.ts";
import type { Figure, ReadOut, Wording } from "./read-out.ts";
import type { ShotChain } from "./shots.ts";
import type { Whereabouts } from "./whereabouts.ts";
import type { MapWords, Speech } from "./words.ts";
import { formatLength } from "../../tell/format.ts";
import { aheadLine, greenFigures, greenSaid, isThere, wordings } from "./read-out.ts";

/** Before anything is tapped: what to do, what the tee shot meets, the golfer's own drive. */
export function openingOut(
  ahead: readonly HazardAhead[],
  own: OwnLanding | undefined,
  third: Third,
  unit: LengthUnit,
  speech: Speech,
): ReadOut {
  const { say } = speech;
  const { short, one } = wordings(unit, speech);
  const lines = (length: Wording): string[] =>
    [
      say.holeHint,
      own && ownLine(own, third, say.own.said, say.own.saidOff, length),
      own?.next && ownLine(own.next, third, say.own.nextSaid, say.own.nextSaidOff, length),
      aheadLine(say.read.aheadFromTee, ahead, say, length),
    ].filter(isThere);
  return { figures: [], unit: speech.units[unit].symbol, lines: lines(short), spoken: lines(one).join(" ") };
}

type ByThird = MapWords["own"]["said"];

function ownLine(
  { driveMetres, fairwayMetres, leavesMetres }: OwnLanding,
  third: Third,
  said: ByThird,
  saidOff: ByThird,
  length: Wording,
): string {
  return (fairwayMetres > 0 ? said : saidOff)[third]({
    drive: length(driveMetres),
    width: length(fairwayMetres),
    left: length(leavesMetres),
  });
}

export interface ShotsTold {
  readonly chain: ShotChain;
  readonly tee: TeeData;
  readonly third: Third;
  /** What the last shot comes down in, if worth naming. */
  readonly under: string | undefined;
  /** Whether no more can be laid. */
  readonly full: boolean;
}

export function shotsOut(
  { chain: { legs, left }, tee, third, under, full }: ShotsTold,
  unit: LengthUnit,
  speech: Speech,
): ReadOut {
  const { chain: say, read } = speech.say;
  const { value, both } = wordings(unit, speech);
  const last = legs[legs.length - 1];
  const hint = say.hint({ tee: tee.name });
  const there = under === undefined ? undefined : read.under({ what: under });
  const most = full ? say.most : undefined;
  const figures: Figure[] = [
    ...legs.map(({ metres }, i) => ({ label: say.shot({ number: i + 1 }), value: value(metres) })),
    ...(left === undefined || last === undefined ? [] : [{ label: say.left, value: value(left.metres) }]),
  ];
  return {
    figures,
    unit: speech.units[unit].symbol,
    lines: [
      last === undefined ? hint : undefined,
      there,
      left === undefined ? say.onGreenSaid : undefined,
      most,
    ].filter(isThere),
    spoken:
      last === undefined
        ? hint
        : [
            say.shotSaid({ number: legs.length, length: both(last.metres) }),
            there,
            left === undefined ? say.onGreenSaid : say.leftSaid[third]({ length: both(left.metres) }),
            most,
          ]
            .filter(isThere)
            .join(" "),
  };
}

/** @param reading of the golfer's own place, on the course and known well enough */
export function meOut(
  where: Whereabouts,
  reading: Reading | undefined,
  plainTurned: boolean,
  unit: LengthUnit,
  speech: Speech,
): ReadOut {
  const { say: words, units } = speech;
  const { me: say, read } = words;
  const { symbol } = units[unit];
  if (where.state !== "on-course" || reading === undefined) {
    const far = (metres: number): string => farText(metres, unit, speech);
    const line =
      where.state === "outside"
        ? say.outside({ length: far(where.beyondMetres), accuracy: far(where.accuracyMetres) })
        : say.coarse({ length: far(where.accuracyMetres) });
    return { figures: [], unit: symbol, lines: [line], spoken: line };
  }
  const { short, one, both } = wordings(unit, speech);
  const lines = (length: Wording): string[] =>
    [
      say.accuracy({ length: length(where.accuracyMetres) }),
      aheadLine(read.ahead, reading.ahead, words, length),
      plainTurned ? say.plain : undefined,
    ].filter(isThere);
  return {
    figures: greenFigures(reading, unit, speech),
    unit: symbol,
    lines: lines(short),
    spoken: [greenSaid(reading, words, both), ...lines(one)].join(" "),
  };
}

const METRES_PER_MILE = 1609.344;

/** A distance that may be anything: in yards or metres below 2 km, then in miles or kilometres. */
export function farText(metres: number, unit: LengthUnit, { say: { me }, units, locale }: Speech): string {
  if (metres < 2000) return formatLength(metres, unit, units).text;
  const far = metres / (unit === "yards" ? METRES_PER_MILE : 1000);
  const decimals = far < 10 ? 1 : 0;
  const number = new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  }).format(far);
  return (unit === "yards" ? me.miles : me.kilometres)({ number });
}
