/**
 * What a golfer can do to the day's conditions and their own lengths, and how these then stand. Pure:
 * `conditions-panel.ts` does the rest.
 */
import type { ConditionsField } from "../contract/dataset.ts";
import type { Wind } from "../flight/wind.ts";
import { fromUnit, inUnit, type LengthUnit } from "../geo/units.ts";
import type { OwnLengths } from "../measure/ladder.ts";
import { readField, speedFrom, speedIn, type Reading } from "./conditions-model.ts";
import type { Conditions } from "./conditions-store.ts";

export type Refusal = Extract<Reading, { ok: false }>["reason"];

export interface ConditionsState {
  readonly units: LengthUnit;
  readonly conditions: Conditions;
  readonly lengths: OwnLengths;
  /**
   * Fields that stand as they were typed, each with why it is refused, if it is; the others are written from
   * the conditions.
   */
  readonly typed: Readonly<Partial<Record<ConditionsField, Refusal | "taken">>>;
}

export type ConditionsEvent =
  /** @param bearing of the hole, degrees: where a wind without a direction comes from */
  | { readonly kind: "typed"; readonly field: ConditionsField; readonly text: string; readonly bearing: number }
  | { readonly kind: "left"; readonly field: ConditionsField }
  | { readonly kind: "wind"; readonly wind: Wind | undefined }
  /** Still air of the stated temperature; lengths stay. */
  | { readonly kind: "reset" }
  | { readonly kind: "lengths"; readonly lengths: OwnLengths }
  | { readonly kind: "units"; readonly units: LengthUnit }
  /** In another tab. */
  | { readonly kind: "stored"; readonly conditions: Conditions; readonly lengths: OwnLengths };

/** The same state where an event changes nothing. */
export function nextConditions(state: ConditionsState, event: ConditionsEvent): ConditionsState {
  const changed = (conditions: Partial<Conditions>, typed: ConditionsState["typed"] = {}): ConditionsState => ({
    ...state,
    conditions: { ...state.conditions, ...conditions },
    typed,
  });
  switch (event.kind) {
    case "typed": {
      const { field, text, bearing } = event;
      const reading = readField(text, field, state.units);
      if (!reading.ok) return { ...state, typed: { ...state.typed, [field]: reading.reason } };
      const change = changeOf(state, field, reading.value, bearing);
      return change === undefined
        ? { ...state, typed: { ...state.typed, [field]: "taken" } }
        : changed(change, { [field]: "taken" });
    }
    case "left":
      // What is refused stays to be mended.
      return isRefused(state, event.field) || Object.keys(state.typed).length === 0 ? state : { ...state, typed: {} };
    case "wind":
      return changed({ wind: event.wind });
    case "reset":
      return changed({ wind: undefined, temperatureCelsius: undefined });
    case "lengths":
      return { ...state, lengths: event.lengths, typed: {} };
    case "units":
      return { ...state, units: event.units, typed: {} };
    case "stored":
      return { ...state, conditions: event.conditions, lengths: event.lengths, typed: {} };
  }
}

export const isRefused = ({ typed }: ConditionsState, field: ConditionsField): boolean =>
  typed[field] !== undefined && typed[field] !== "taken";

/** What a field's value says; undefined where it says nothing. */
function changeOf(
  { units, conditions: { wind } }: ConditionsState,
  field: ConditionsField,
  value: number | undefined,
  bearing: number,
): Partial<Conditions> | undefined {
  switch (field) {
    case "speed":
      return {
        wind:
          value === undefined
            ? undefined
            : { speedMetresPerSecond: speedFrom(value, units), fromDegrees: wind?.fromDegrees ?? bearing },
      };
    case "from":
      return value === undefined
        ? undefined
        : { wind: { speedMetresPerSecond: wind?.speedMetresPerSecond ?? 0, fromDegrees: value % 360 } };
    case "temperature":
      return { temperatureCelsius: value };
    case "carry":
      return { carryMetres: value === undefined ? undefined : fromUnit(value, units) };
  }
}

/** What a field shows where nobody types in it. */
export function textOf(
  { units, conditions: { wind, temperatureCelsius, carryMetres } }: ConditionsState,
  field: ConditionsField,
): string {
  const values: Readonly<Record<ConditionsField, number | undefined>> = {
    speed: wind && Math.round(speedIn(wind.speedMetresPerSecond, units)),
    from: wind && Math.round(wind.fromDegrees) % 360,
    temperature: temperatureCelsius,
    carry: carryMetres === undefined ? undefined : Math.round(inUnit(carryMetres, units)),
  };
  return values[field] === undefined ? "" : String(values[field]);
}
