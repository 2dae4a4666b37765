/**
 * Data attributes as a page writes them: a name that is not in the list, or a value that no script reads,
 * does not compile.
 */
import type { LengthUnit } from "../geo/units.ts";
import type { Side } from "../measure/types.ts";
import type { Third } from "../measure/third.ts";
import * as attributes from "./attributes.ts";

export type Attribute = keyof typeof attributes;

/** A field of the day's conditions. */
export type ConditionsField = "speed" | "from" | "temperature" | "carry";

export type Setting = "tee" | "units" | "third";

/** What of the landing ground after the golfer's own drive stands in a place. */
export type OwnValue = "fairway" | "leaves" | Side | "next" | "lie" | "view";

/** Attributes with a few values only. */
interface Values {
  readonly units: LengthUnit;
  readonly unit: LengthUnit;
  readonly courseUnits: LengthUnit;
  readonly forUnit: LengthUnit;
  readonly unitChoice: LengthUnit;
  readonly third: Third;
  readonly thirdChoice: Third;
  readonly setting: Setting;
  readonly map: "hole" | "course";
  readonly keep: "now";
  readonly field: ConditionsField;
  readonly note: ConditionsField;
  readonly ownRow: Third;
  readonly ownValue: OwnValue;
  readonly ownName: OwnValue;
}

/** `true` is there without a value; `false` and undefined are not there. */
type Written = {
  readonly [Name in Attribute]?: (Name extends keyof Values ? Values[Name] : string | number) | boolean | undefined;
};

/**
 * Attributes by name, to spread into an element: `{...dataset("today", "beyondDistance")}`, `{...dataset({
 * forTee: tee.id })}`.
 */
export function dataset(...parts: readonly (Attribute | Written)[]): Record<string, string> {
  const all: [Attribute, string | number | boolean | undefined][] = parts.flatMap((part) =>
    typeof part === "string"
      ? [[part, true]]
      : (Object.entries(part) as [Attribute, string | number | boolean | undefined][]),
  );
  return Object.fromEntries(
    all.flatMap(([name, value]) =>
      value === undefined || value === false ? [] : [[attributes[name], value === true ? "" : String(value)]],
    ),
  );
}
