/** Whose figures the map shows: what the page shows, or where it has no settings, what the slot says. */
import * as attr from "../../contract/attributes.ts";
import type { LengthUnit } from "../../geo/units.ts";
import type { Third } from "../../measure/third.ts";
import { currentSettings, SETTINGS_EVENT } from "../settings.ts";

export interface Golfer {
  /** Tee set id; undefined where neither page nor slot names one. */
  readonly tee: string | undefined;
  readonly units: LengthUnit;
  /** The third of the green the hole is cut in. */
  readonly third: Third;
}

export const readGolfer = (slot: HTMLElement): Golfer =>
  currentSettings() ?? {
    tee: slot.getAttribute(attr.tee) ?? undefined,
    units: slot.getAttribute(attr.units) === "metres" ? "metres" : "yards",
    third: "middle",
  };

export function watchGolfer(slot: HTMLElement, changed: (golfer: Golfer) => void): void {
  document.addEventListener(SETTINGS_EVENT, () => changed(readGolfer(slot)));
}
