/** The fields of the day's conditions on the page, and the dial: shown as they stand. */
import * as attr from "../contract/attributes.ts";
import type { ConditionsField } from "../contract/dataset.ts";
import type { Wind } from "../flight/wind.ts";
import { DialView, type DialCalls } from "./conditions-dial-view.ts";
import { compassPoint, isWind, limitsOf, speedIn } from "./conditions-model.ts";
import { isRefused, textOf, type ConditionsState } from "./conditions-state.ts";
import type { IslandWords } from "../words/island-words.ts";
import { isUnmeasuredDriver } from "./driven.ts";

/** @throws when the page lacks it: page and script are not of one build */
export function partOf<E extends Element>(panel: Element, selector: string): E {
  const found = panel.querySelector<E>(selector);
  if (found === null) throw new Error(`The wind's control has no ${selector}.`);
  return found;
}

interface Row {
  readonly input: HTMLInputElement;
  readonly note: HTMLElement;
  /** As the page has it. */
  readonly hint: string;
}

export interface FieldCalls extends DialCalls {
  readonly typed: (field: ConditionsField, text: string) => void;
  readonly left: (field: ConditionsField) => void;
}

export class ConditionsFields {
  private readonly words: IslandWords["conditions"];
  private readonly rows: ReadonlyMap<ConditionsField, Row>;
  private readonly dial: DialView | undefined;

  /** @throws when the page lacks a part */
  constructor(
    panel: Element,
    bearing: number,
    words: IslandWords["conditions"],
    { typed, left, ...dial }: FieldCalls,
  ) {
    this.words = words;
    const drawing = panel.querySelector<SVGSVGElement>(`[${attr.dial}]`);
    this.dial = drawing === null ? undefined : new DialView(drawing, bearing, dial);
    this.rows = new Map(
      [...panel.querySelectorAll<HTMLInputElement>(`input[${attr.field}]`)].map((input) => {
        const field = input.getAttribute(attr.field) as ConditionsField;
        const note = partOf<HTMLElement>(panel, `[${attr.note}="${field}"]`);
        input.addEventListener("input", () => typed(field, input.value));
        input.addEventListener("change", () => left(field));
        return [field, { input, note, hint: note.textContent ?? "" }];
      }),
    );
  }

  /** Without heights there is neither dial nor weather: lengths alone, as on the level in still air. */
  get level(): boolean {
    return this.dial === undefined;
  }

  show(state: ConditionsState): void {
    for (const [field, row] of this.rows) {
      const refused = isRefused(state, field);
      if (state.typed[field] === undefined) row.input.value = textOf(state, field);
      row.input.setAttribute("aria-invalid", String(refused));
      row.note.classList.toggle("refused", refused);
      row.note.textContent = refused ? this.refusal(state, field) : this.hintOf(state, field, row);
    }
    const { wind } = state.conditions;
    this.dial?.show(wind, this.windText(state, wind));
  }

  windText({ units }: ConditionsState, wind: Wind | undefined): string {
    if (!isWind(wind)) return this.words.still;
    return this.words.windNow({
      speed: Math.round(speedIn(wind.speedMetresPerSecond, units)),
      unit: this.unitOf("speed"),
      from: this.words.compassPoints[compassPoint(wind.fromDegrees)],
    });
  }

  /** As the page shows it beside the field. */
  private unitOf(field: ConditionsField): string {
    return field === "from"
      ? this.words.degreesUnit
      : (this.rows.get(field)?.input.nextElementSibling?.textContent ?? "");
  }

  private hintOf({ conditions: { carryMetres } }: ConditionsState, field: ConditionsField, { hint }: Row): string {
    return field === "carry" && carryMetres !== undefined && isUnmeasuredDriver(carryMetres)
      ? this.words.unmeasuredDriver
      : hint;
  }

  private refusal({ units, typed }: ConditionsState, field: ConditionsField): string {
    const { outside, notANumber, windSpeed, windFrom, temperature, carry } = this.words;
    const names: Readonly<Record<ConditionsField, string>> = { speed: windSpeed, from: windFrom, temperature, carry };
    const { least, most } = limitsOf(field, units);
    return (typed[field] === "outside" ? outside : notANumber)({
      name: names[field],
      least: String(least).replace("-", "\u2212"),
      most,
      unit: this.unitOf(field),
    });
  }
}
