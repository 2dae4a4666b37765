/** The table's row for the third of the green the hole is cut in, in place of its row for the middle. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import { shotOf, writeShot } from "../contract/values.ts";
import { inUnit, type LengthUnit } from "../geo/units.ts";
import type { GreenShots, ShotNumbers } from "../contract/ground-data.ts";
import { todayOf } from "./conditions-model.ts";
import { answeredParts, writeParts } from "./conditions-today.ts";
import type { IslandWords } from "../words/island-words.ts";
import { inThird } from "./own-shots-model.ts";
import type { Third } from "../measure/third.ts";

/** Less run than this is none, as on the built page. */
const LEAST_RUN_METRES = 0.5;

export interface ThirdFigures {
  readonly shot: ShotNumbers;
  /** In whole units, as the table writes its own. */
  readonly distance: string;
  readonly plays: ReturnType<typeof answeredParts>;
  readonly run: string;
}

/** What the table says of a third. Pure. */
export function thirdFigures(
  green: GreenShots,
  third: Third,
  still: DayConditions,
  units: LengthUnit,
  words: IslandWords["conditions"],
): ThirdFigures {
  const shot = inThird(green, third);
  const answer = todayOf(shot, still);
  const whole = (metres: number): string => String(Math.round(inUnit(metres, units)));
  return {
    shot,
    distance: whole(shot[0]),
    plays: answeredParts(answer, units, words),
    run: answer.ok && answer.runMetres >= LEAST_RUN_METRES ? whole(answer.runMetres) : "–",
  };
}

/**
 * Puts the third's row in the middle's place, in every group of a table that has one; the
 * built row is hidden, not lost, and comes back with the middle.
 *
 * @param name the third's, as the settings have it
 */
export function showThird(
  table: HTMLTableElement,
  third: Third,
  name: string,
  still: DayConditions,
  units: LengthUnit,
  words: IslandWords["conditions"],
): void {
  for (const middle of table.querySelectorAll<HTMLTableRowElement>(`tr[${attr.middle}]:not([${attr.thirdRow}])`)) {
    const next = middle.nextElementSibling;
    const before = next?.hasAttribute(attr.thirdRow) ? next : undefined;
    const rows = [middle.previousElementSibling, middle, before?.nextElementSibling ?? next];
    const [front, centre, back] = rows.map((row) => shotOf(row?.getAttribute(attr.shot)));
    const green: GreenShots | undefined =
      third !== "middle" && front && centre && back ? [front, centre, back] : undefined;
    middle.toggleAttribute("hidden", green !== undefined);
    // The same row is not worked out again with every turn of the wind.
    const key = JSON.stringify([green, third, units]);
    if (before?.getAttribute(attr.thirdRow) === key) continue;
    before?.remove();
    if (green !== undefined) middle.after(rowOf(middle, key, name, thirdFigures(green, third, still, units, words)));
  }
}

function rowOf(
  middle: HTMLTableRowElement,
  key: string,
  name: string,
  { shot, distance, plays, run }: ThirdFigures,
): HTMLTableRowElement {
  const row = middle.cloneNode(true) as HTMLTableRowElement;
  row.removeAttribute("hidden");
  row.removeAttribute(attr.ownRow);
  row.setAttribute(attr.thirdRow, key);
  row.setAttribute(attr.shot, writeShot(shot));
  row.classList.add("chosen");
  const [heading, length, played, , rolled] = row.cells;
  if (heading) heading.textContent = name;
  if (length) length.textContent = distance;
  if (played) writeParts(played, plays.figure, plays.notes);
  // After the golfer's own drive the table tells no run.
  if (rolled && !middle.hasAttribute(attr.ownRow)) rolled.textContent = run;
  return row;
}
