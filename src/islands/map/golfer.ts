/** Whose figures the map shows: what the page shows, or where it has no settings, what the slot says. */
import type { LengthUnit } from "../../geo/units.ts";
import { currentSettings, SETTINGS_EVENT } from "../settings.ts";

export interface Golfer {
  /** Tee set id; undefined where neither page nor slot names one. */
  readonly tee: string | undefined;
  readonly units: LengthUnit;
}

export const readGolfer = (slot: HTMLElement): Golfer =>
  currentSettings() ?? { tee: slot.dataset["tee"], units: slot.dataset["units"] === "metres" ? "metres" : "yards" };

export function watchGolfer(slot: HTMLElement, changed: (golfer: Golfer) => void): void {
  document.addEventListener(SETTINGS_EVENT, () => changed(readGolfer(slot)));
}
