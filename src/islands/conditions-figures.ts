/**
 * What the day's conditions and the golfer's own lengths make of the page's figures: all of them written
 * anew from how things stand.
 */
import * as attr from "../contract/attributes.ts";
import type { GroundData } from "../contract/ground-data.ts";
import { shotOf } from "../contract/values.ts";
import type { DayConditions } from "../flight/effective.ts";
import { isTrustedWind } from "../flight/indication.ts";
import { inUnit } from "../geo/units.ts";
import { knownRungs, ladderOf } from "../measure/ladder.ts";
import { dayOf, driveOf, isWind, STATED_TEMPERATURE_CELSIUS, todayOf } from "./conditions-model.ts";
import { OwnFigures } from "./conditions-own.ts";
import type { ConditionsState } from "./conditions-state.ts";
import { NO_CONDITIONS, type Conditions } from "./conditions-store.ts";
import { showThird } from "./conditions-third.ts";
import { showToday } from "./conditions-today.ts";
import { drivenMetres, golferOf } from "./driven.ts";
import type { LengthsPanel } from "./lengths-panel.ts";
import { showOwnArc } from "./own-plate.ts";
import { OwnShots } from "./own-shots.ts";
import type { PageSettings } from "./settings.ts";
import type { IslandWords } from "../words/island-words.ts";

/** What stays the same of a hole. */
export interface HoleGround {
  /** Of the line of play, degrees. */
  readonly bearing: number;
  readonly heightMetres: number;
  /** The guide has no heights: lengths alone, as on the level in still air. */
  readonly level: boolean;
}

/** What is there to write with. */
export interface FiguresInput {
  readonly settings: PageSettings;
  /** Only distance and direction. */
  readonly plain: boolean;
  /** What the hole gives a length, fetched when one first needs it; undefined until it is there. */
  readonly ground: () => GroundData | undefined;
  readonly ladder: LengthsPanel | undefined;
  /** The wind, in words. */
  readonly wind: string;
}

/** The table of a tee set. */
const tableOf = (tee: string): HTMLTableElement | null =>
  document.querySelector<HTMLTableElement>(`table[${attr.plays}="${CSS.escape(tee)}"]`);

export class ConditionsFigures {
  private readonly hole: HoleGround;
  private readonly words: IslandWords;
  private readonly own: OwnFigures;
  private readonly ownShots: OwnShots;

  constructor(hole: HoleGround, words: IslandWords) {
    this.hole = hole;
    this.words = words;
    this.own = new OwnFigures(words);
    this.ownShots = new OwnShots(words.lengths, words.units);
  }

  /** @returns the day in a sentence; undefined where the page has no table for it */
  show(
    { conditions, lengths }: ConditionsState,
    { settings, plain, ground, ladder, wind }: FiguresInput,
  ): string | undefined {
    const { bearing, level } = this.hole;
    const { conditions: say, lengths: sayLengths, units: unitWords, thirds } = this.words;
    const { tee, units, third } = settings;
    const calm = this.dayOf(NO_CONDITIONS);
    if (calm === undefined) return undefined;
    const { carryMetres } = conditions;
    const set =
      !level && (isWind(conditions.wind) || conditions.temperatureCelsius !== undefined)
        ? this.dayOf(conditions)
        : undefined;
    const day = set ?? calm;
    const rungs = ladderOf(carryMetres, lengths);
    const known = knownRungs(rungs);
    const data = known.length > 0 ? ground() : undefined;
    const driverMetres = golferOf(carryMetres);
    // With plain figures nothing of wind, air and rise may show: a drive is then what the golfer says it is.
    const carriesMetres =
      data && carryMetres !== undefined
        ? drivenMetres(
            data,
            tee,
            { fromMetres: 0, levelMetres: carryMetres, driverMetres },
            level || plain ? undefined : day,
          )
        : undefined;
    const drive = data && carriesMetres !== undefined ? driveOf(data, tee, carriesMetres) : undefined;
    const table = tableOf(tee);
    this.own.show(table, drive, carryMetres, settings, calm);
    const from = data?.from[tee];
    this.ownShots.show(from && { from, drive, driverMetres, third }, known, settings, day, level);
    showOwnArc(
      from && data && { from, corridorMetres: data.corridorMetres, carryMetres: carriesMetres },
      units,
      sayLengths,
      unitWords,
    );
    ladder?.show(rungs, units, set && { day: set, bearingDegrees: bearing });
    if (table === null) return undefined;
    showThird(table, third, thirds[third], calm, units, say);
    showToday(table, set && { day: set }, calm, driverMetres, units, say);
    const air = say.now({ wind, temperature: conditions.temperatureCelsius ?? STATED_TEMPERATURE_CELSIUS });
    return `${air} ${this.middleText(table, settings, day, driverMetres)}${isTrustedWind(day.wind) ? "" : ` ${say.strongWind}`}`;
  }

  /**
   * The first wind would be worked out by code the browser has not made fast yet; a golfer dragging the mark
   * would feel it.
   */
  rehearse(tee: string): void {
    const day = this.dayOf({
      ...NO_CONDITIONS,
      wind: { speedMetresPerSecond: 6, fromDegrees: this.hole.bearing + 50 },
    });
    for (const row of tableOf(tee)?.querySelectorAll(`[${attr.shot}]`) ?? []) {
      const shot = shotOf(row.getAttribute(attr.shot));
      if (shot !== undefined && day !== undefined) todayOf(shot, day);
    }
  }

  private dayOf(conditions: Conditions): DayConditions | undefined {
    const answer = dayOf(conditions, this.hole.heightMetres);
    return answer.ok ? answer.day : undefined;
  }

  /** To the third of the green the hole is cut in, after the golfer's own drive where one is given. */
  private middleText(
    table: HTMLTableElement,
    { units, third }: PageSettings,
    day: DayConditions,
    driverMetres: number | undefined,
  ): string {
    const { conditions: say, thirds } = this.words;
    const rows = [...table.querySelectorAll(`[${attr.middle}][${attr.shot}]`)].filter(
      (row) => row.closest("[hidden]") === null,
    );
    const row = rows[rows.length - 1];
    const shot = shotOf(row?.getAttribute(attr.shot));
    const answer = shot && todayOf(shot, day, driverMetres);
    if (!shot || !answer?.ok) return "";
    const whole = (metres: number): string => String(Math.round(inUnit(metres, units)));
    const figures = { distance: whole(shot[0]), length: whole(answer.lengthMetres) };
    return row?.hasAttribute(attr.thirdRow)
      ? say.thirdNow({ ...figures, third: thirds[third] })
      : say.middleNow(figures);
  }
}
