/** The day's lengths written beside a table's own. */
import * as attr from "../contract/attributes.ts";
import type { DayConditions } from "../flight/effective.ts";
import { shotOf } from "../contract/values.ts";
import { inUnit, type LengthUnit } from "../geo/units.ts";
import { todayOf, type Today } from "./conditions-model.ts";
import type { IslandWords } from "../words/island-words.ts";
import type { FlightResult } from "../flight/result.ts";

export interface Shown {
  readonly day: DayConditions;
}

const whole = (metres: number, unit: LengthUnit): string => String(Math.round(inUnit(metres, unit)) + 0);

/** A spread that rounds away is still there: as on the built page. */
const spread = (metres: number, unit: LengthUnit): string => `±${Math.max(1, Math.ceil(inUnit(metres, unit) - 0.05))}`;

/** Sideways movement smaller than this is not worth a word. */
const LEAST_DRIFT_METRES = 1;

/** A cell's content: figure, spread, and which way the wind moves the ball. */
export function answeredParts(
  answer: FlightResult<Omit<Today, "runMetres">>,
  unit: LengthUnit,
  words: IslandWords["conditions"],
): { readonly figure: string; readonly notes: readonly string[] } {
  if (!answer.ok)
    return {
      figure: "–",
      notes: [
        answer.reason === "too-short"
          ? words.tooShort
          : answer.reason === "too-long"
            ? words.tooLong
            : words.unreachable,
      ],
    };
  const { lengthMetres, plusMinusMetres, driftMetres, indication } = answer;
  const drift =
    Math.abs(driftMetres) < LEAST_DRIFT_METRES
      ? []
      : [(driftMetres < 0 ? words.driftLeft : words.driftRight)({ length: whole(Math.abs(driftMetres), unit) })];
  return {
    figure: whole(lengthMetres, unit),
    notes: [spread(plusMinusMetres, unit), ...drift, ...(indication ? [words.indication] : [])],
  };
}

/** Writes a figure and its notes into a cell. */
export function writeParts(cell: Element, figure: string, notes: readonly string[]): void {
  const bold = document.createElement("b");
  bold.textContent = figure;
  cell.replaceChildren(
    bold,
    ...notes.flatMap((note) => {
      const small = document.createElement("small");
      small.textContent = note;
      return [" ", small];
    }),
  );
}

/** Fills a table's column for the day, or hides it without one; tells which carries are within the golfer's own. */
export function showToday(
  table: HTMLTableElement,
  shown: Shown | undefined,
  still: DayConditions,
  carryMetres: number | undefined,
  unit: LengthUnit,
  words: IslandWords["conditions"],
): void {
  for (const cell of table.querySelectorAll(`[${attr.today}]`)) cell.toggleAttribute("hidden", shown === undefined);
  // The middle's row is hidden where a third has taken its place.
  for (const row of table.querySelectorAll(`[${attr.shot}]:not([hidden])`)) {
    const shot = shotOf(row.getAttribute(attr.shot));
    const reach = row.querySelector(`[${attr.reach}]`);
    const asked = reach !== null && row.hasAttribute(attr.carryRow) && carryMetres !== undefined;
    if (reach !== null && !asked) reach.toggleAttribute("hidden", true);
    if (shot === undefined || (shown === undefined && !asked)) continue;
    const answer = todayOf(shot, shown?.day ?? still, carryMetres);
    const cell = row.querySelector(`td[${attr.today}]`);
    if (shown !== undefined && cell !== null) {
      const { figure, notes } = answeredParts(answer, unit, words);
      writeParts(cell, figure, notes);
    }
    if (asked) {
      // The carry must do for the worse of the two balls.
      reach.textContent =
        answer.ok && answer.lengthMetres + answer.plusMinusMetres <= carryMetres
          ? words.withinYours
          : words.beyondYours;
      reach.toggleAttribute("hidden", false);
    }
  }
}
