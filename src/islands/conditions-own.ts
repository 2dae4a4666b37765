/** The golfer's own drive: where it comes down, and what it leaves. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import { inUnit, wholeIn, type LengthUnit } from "../geo/units.ts";
import { formatLength } from "../tell/format.ts";
import type { IslandWords } from "../words/island-words.ts";
import type { UnitWords } from "../words/words.ts";
import { writeShot } from "../contract/values.ts";
import type { NextHazard, OwnDrive } from "../contract/ground-data.ts";
import { golferOf } from "./driven.ts";
import { todayOf, type driveOf } from "./conditions-model.ts";
import { answeredParts, writeParts } from "./conditions-today.ts";
import type { PageSettings } from "./settings.ts";

/** Less slope than this underfoot is level, as on the built page. */
const LEVEL_LIE_PERCENT = 1.5;

export class OwnFigures {
  private readonly words: IslandWords["conditions"];
  private readonly landing: IslandWords["landing"];
  private readonly unitWords: UnitWords;
  /** What is written now: the same drive is not worked out again with every turn of the wind. */
  private written = "";

  constructor({ conditions, landing, units }: IslandWords) {
    this.words = conditions;
    this.landing = landing;
    this.unitWords = units;
  }

  /**
   * @param drive where it comes down; undefined hides what is the golfer's own
   * @param levelMetres what the driver carries on the level in still air
   */
  show(
    table: HTMLTableElement | null,
    drive: ReturnType<typeof driveOf>,
    levelMetres: number | undefined,
    { tee, units }: PageSettings,
    still: DayConditions,
  ): void {
    const body = table?.querySelector<HTMLElement>(`[${attr.own}]`) ?? null;
    const card = document.querySelector<HTMLElement>(`[${attr.ownLanding}]`);
    body?.toggleAttribute("hidden", drive === undefined || drive.own.green === undefined);
    card?.toggleAttribute("hidden", drive === undefined);
    if (drive === undefined) return;
    const key = `${tee} ${units} ${drive.metres} ${levelMetres}`;
    if (key === this.written) return;
    this.written = key;
    const said = (metres: number): string => formatLength(metres, units, this.unitWords).text;
    const [down, level] = [said(drive.metres), levelMetres === undefined ? undefined : said(levelMetres)];
    const text = level === undefined || level === down ? down : `${down} (${this.words.onTheLevel({ level })})`;
    if (body !== null) this.fillRows(body, drive.own, text, units, still, golferOf(levelMetres));
    if (card !== null) this.fillCard(card, drive.own, text, units);
  }

  private fillRows(
    body: HTMLElement,
    { green }: OwnDrive,
    drive: string,
    units: LengthUnit,
    still: DayConditions,
    driverMetres: number | undefined,
  ): void {
    const title = body.querySelector(`[${attr.ownTitle}]`);
    if (title !== null) title.textContent = this.words.afterYours({ drive });
    (["front", "middle", "back"] as const).forEach((name, i) => {
      const row = body.querySelector(`[${attr.ownRow}="${name}"]`);
      const shot = green?.[i];
      if (row === null || shot === undefined) return;
      row.setAttribute(attr.shot, writeShot(shot));
      const whole = (metres: number): string => String(Math.round(inUnit(metres, units)));
      const answer = todayOf(shot, still, driverMetres);
      const distance = row.querySelector(`[${attr.ownDistance}]`);
      if (distance !== null) distance.textContent = whole(shot[0]);
      const plays = row.querySelector(`[${attr.ownPlays}]`);
      if (plays === null) return;
      const { figure, notes } = answeredParts(answer, units, this.words);
      writeParts(plays, figure, notes);
    });
  }

  private fillCard(card: HTMLElement, own: OwnDrive, drive: string, units: LengthUnit): void {
    const say = this.landing;
    const whole = (metres: number): string => String(Math.round(inUnit(metres, units)));
    const set = (selector: string, text: string): void => {
      const found = card.querySelector(selector);
      if (found !== null) found.textContent = text;
    };
    set(`[${attr.ownDrive}]`, drive);
    set(`[${attr.ownValue}="fairway"]`, own.fairwayMetres > 0 ? whole(own.fairwayMetres) : say.offFairway);
    set(`[${attr.ownValue}="leaves"]`, whole(own.leavesMetres));
    for (const side of ["left", "right"] as const) {
      const trouble = own[side];
      set(`[${attr.ownValue}="${side}"]`, trouble ? whole(trouble[1]) : "");
      set(`[${attr.ownName}="${side}"]`, trouble ? trouble[0] : say.clear);
    }
    set(
      `[${attr.ownValue}="next"]`,
      (own.next ?? []).map((hazard) => nextText(hazard, units, say.nextLeaves)).join("; ") || say.clear,
    );
    const { lie } = own;
    const slope =
      lie === undefined
        ? []
        : [
            ...(Math.abs(lie[0]) >= LEVEL_LIE_PERCENT
              ? [(lie[0] > 0 ? say.uphill : say.downhill)({ percent: Math.round(Math.abs(lie[0])) })]
              : []),
            ...(Math.abs(lie[1]) >= LEVEL_LIE_PERCENT
              ? [(lie[1] > 0 ? say.fallsLeft : say.fallsRight)({ percent: Math.round(Math.abs(lie[1])) })]
              : []),
          ];
    set(`[${attr.ownValue}="lie"]`, lie === undefined ? "–" : slope.length > 0 ? slope.join(", ") : say.level);
    const view = [
      ...(own.seen === undefined ? [] : [own.seen ? say.seen : say.hidden]),
      ...(own.seesGreen === undefined ? [] : [own.seesGreen ? say.seesGreen : say.greenHidden]),
    ];
    set(`[${attr.ownValue}="view"]`, view.length > 0 ? view.join(", ") : "–");
  }
}

/** "The Burn 142–220, leaves 137": reach rounded down, carry up. */
function nextText(
  [name, reach, carry, leaves]: NextHazard,
  units: LengthUnit,
  left: IslandWords["landing"]["nextLeaves"],
): string {
  const figures = `${wholeIn(reach, units, "down")}${carry === null ? "" : `–${wholeIn(carry, units, "up")}`}`;
  return `${name} ${figures}${leaves === null ? "" : `, ${left({ length: wholeIn(leaves, units) })}`}`;
}
