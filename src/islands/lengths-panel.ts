/**
 * The ladder of full shots: each with the length its driver gives, each to be typed over and taken back.
 * Fetched when it is opened.
 */
import * as attr from "../contract/attributes.ts";
import { carryToday, type DayConditions } from "../flight/effective.ts";
import { fromUnit, inUnit, type LengthUnit } from "../geo/units.ts";
import {
  outOfOrder,
  RUNG_IDS,
  type DerivedRungId,
  type OwnLengths,
  type Rung,
  type RungId,
} from "../measure/ladder.ts";
import type { IslandWords } from "../words/island-words.ts";
import type { UnitWords } from "../words/words.ts";
import { golferOf } from "./driven.ts";
import { limitsOf, readField } from "./conditions-model.ts";
import { withLength } from "./lengths-store.ts";

interface Row {
  readonly input: HTMLInputElement | undefined;
  /** The driver's, which has its field above. */
  readonly text: HTMLElement;
  readonly today: HTMLElement;
  readonly own: HTMLElement;
  readonly takeBack: HTMLButtonElement;
  readonly note: HTMLElement;
}

/** The day down the hole; undefined in still air. */
export interface DayDown {
  readonly day: DayConditions;
  readonly bearingDegrees: number;
}

const made = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>>,
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
};

export class LengthsPanel {
  private readonly words: IslandWords["conditions"];
  private readonly say: IslandWords["lengths"];
  private readonly unitWords: UnitWords;
  private readonly lengths: () => OwnLengths;
  private readonly change: (next: OwnLengths) => void;
  private readonly rows: ReadonlyMap<RungId, Row>;
  private readonly carryHead = made("th", { scope: "col" });
  private readonly todayHead: HTMLElement;
  private readonly needsDriver: HTMLElement;
  private readonly told = made("p", { role: "status", class: "ladder-told", [attr.ladderTold]: "" });
  private readonly news = made("p", { role: "status", class: "visually-hidden" });
  private readonly all: HTMLButtonElement;
  private units: LengthUnit = "yards";
  /** The field being typed in, which is not written over. */
  private typing: RungId | undefined;

  /** @param lengths what the golfer has given by hand now */
  constructor(
    place: HTMLElement,
    words: IslandWords["conditions"],
    say: IslandWords["lengths"],
    unitWords: UnitWords,
    lengths: () => OwnLengths,
    change: (next: OwnLengths) => void,
  ) {
    this.words = words;
    this.say = say;
    this.unitWords = unitWords;
    this.lengths = lengths;
    this.change = change;
    this.rows = new Map(RUNG_IDS.map((id) => [id, this.row(id)]));
    this.todayHead = made("th", { scope: "col", [attr.ladderToday]: "" }, say.today);
    this.needsDriver = made("p", { class: "small" }, say.needsDriver);
    this.all = made("button", { type: "button", class: "button", [attr.ladderAll]: "" }, say.takeBackAll);
    this.all.addEventListener("click", () => {
      this.change({});
      this.news.textContent = say.allTakenBack;
      this.rows.get("fairway-wood")?.input?.focus();
    });
    const head = made("tr", {}, made("th", { scope: "col" }, say.shot), this.carryHead, this.todayHead);
    const body = made(
      "tbody",
      {},
      ...[...this.rows].map(([id, { input, text, today, own, takeBack, note }]) =>
        made(
          "tr",
          { [attr.rung]: id },
          made("th", { scope: "row" }, say.shots[id], own),
          made("td", {}, ...(input ? [made("span", { class: "ladder-field" }, input, takeBack), note] : [text])),
          today,
        ),
      ),
    );
    const table = made(
      "table",
      { class: "ladder" },
      made("caption", { class: "visually-hidden" }, say.caption),
      made("thead", {}, head),
      body,
    );
    // Wide lettering on a narrow phone makes it wider than the page.
    const scroller = made(
      "div",
      { class: "scroller", tabindex: "0", role: "group", "aria-label": say.caption },
      table,
    );
    place.append(
      this.needsDriver,
      scroller,
      this.told,
      this.news,
      this.all,
      made("p", { class: "small soft" }, `${say.rule} ${say.kept}`),
    );
  }

  private row(id: RungId): Row {
    const noteId = `ladder-${id}-note`;
    const row: Row = {
      input:
        id === "driver"
          ? undefined
          : made("input", {
              type: "text",
              inputmode: "decimal",
              autocomplete: "off",
              size: "4",
              "aria-describedby": noteId,
            }),
      text: made("span", { class: "ladder-driver" }),
      today: made("td", { [attr.ladderToday]: "" }),
      own: made("small", { class: "ladder-own", hidden: "" }, this.say.own),
      takeBack: made("button", { type: "button", class: "ladder-back", hidden: "" }),
      note: made("small", { class: "field-note", id: noteId }),
    };
    const { input } = row;
    if (id === "driver" || input === undefined) return row;
    input.addEventListener("input", () => this.typed(id, row));
    // Left as it was typed where it is refused; else the whole number of the unit.
    input.addEventListener("change", () => {
      if (input.getAttribute("aria-invalid") !== "true") this.changed(id, undefined, this.lengths());
    });
    row.takeBack.addEventListener("click", () => {
      this.changed(id, undefined, withLength(this.lengths(), id, undefined));
      this.news.textContent = this.say.takenBack({ shot: this.say.shots[id] });
      input.focus();
    });
    return row;
  }

  private changed(id: RungId, typing: RungId | undefined, next: OwnLengths): void {
    this.typing = typing;
    const row = this.rows.get(id);
    if (row) this.refuse(id, row, undefined);
    this.change(next);
  }

  /** An emptied field gives its length back to the driver. */
  private typed(id: DerivedRungId, row: Row): void {
    const reading = readField(row.input?.value ?? "", "carry", this.units);
    if (!reading.ok) return this.refuse(id, row, reading.reason);
    this.changed(
      id,
      id,
      withLength(this.lengths(), id, reading.value === undefined ? undefined : fromUnit(reading.value, this.units)),
    );
  }

  private refuse(id: RungId, { input, note }: Row, reason: "not-a-number" | "outside" | undefined): void {
    input?.setAttribute("aria-invalid", String(reason !== undefined));
    note.classList.toggle("refused", reason !== undefined);
    const { least, most } = limitsOf("carry", this.units);
    note.textContent =
      reason === undefined
        ? ""
        : (reason === "outside" ? this.words.outside : this.words.notANumber)({
            name: this.say.shots[id],
            least,
            most,
            unit: this.unitWords[this.units].symbol,
          });
  }

  show(ladder: readonly Rung[], units: LengthUnit, down: DayDown | undefined): void {
    if (units !== this.units) this.typing = undefined;
    this.units = units;
    const { symbol, many } = this.unitWords[units];
    const whole = (metres: number | undefined): string =>
      metres === undefined ? "" : String(Math.round(inUnit(metres, units)));
    const known = ladder.some(({ carryMetres }) => carryMetres !== undefined);
    this.carryHead.textContent = this.say.carry({ unit: symbol });
    this.todayHead.hidden = down === undefined || !known;
    this.needsDriver.hidden = ladder[0]?.carryMetres !== undefined;
    this.all.hidden = !ladder.some(({ id, own }) => own && id !== "driver");
    for (const { id, carryMetres, derivedMetres, own } of ladder) {
      const row = this.rows.get(id);
      if (row === undefined) continue;
      row.text.textContent = carryMetres === undefined ? "–" : whole(carryMetres);
      if (row.input !== undefined) {
        row.input.setAttribute("aria-label", this.say.field({ shot: this.say.shots[id], unit: many }));
        if (
          this.typing !== id &&
          (document.activeElement !== row.input || row.input.getAttribute("aria-invalid") !== "true")
        ) {
          row.input.value = whole(carryMetres);
          this.refuse(id, row, undefined);
        }
      }
      row.own.hidden = !own || id === "driver";
      row.takeBack.hidden = row.own.hidden;
      row.takeBack.replaceChildren(
        derivedMetres === undefined ? this.say.takeBackPlain : this.say.takeBack({ length: whole(derivedMetres) }),
        made("span", { class: "visually-hidden" }, `, ${this.say.shots[id]}`),
      );
      row.today.hidden = this.todayHead.hidden;
      const today =
        down && carryMetres !== undefined
          ? carryToday(
              { levelCarryMetres: carryMetres, riseMetres: 0, bearingDegrees: down.bearingDegrees },
              down.day,
              { driverMetres: golferOf(ladder[0]?.carryMetres) },
            )
          : undefined;
      row.today.textContent = today?.ok ? whole(today.carry.metres) : "–";
    }
    const order = outOfOrder(ladder).map(({ longer, shorter }) =>
      this.say.outOfOrder({ longer: this.say.shots[longer], shorter: this.say.shots[shorter] }),
    );
    const said = order.join(" ");
    if (this.told.textContent !== said) this.told.textContent = said;
  }
}
