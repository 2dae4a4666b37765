/** Whose figures the map shows. */
import type { LengthUnit } from "../../geo/units.ts";

export interface Golfer {
  /** Tee set id; undefined where the golfer has not chosen. */
  readonly tee: string | undefined;
  readonly unit: LengthUnit;
}

export function readGolfer(slot: HTMLElement): Golfer {
  return { tee: slot.dataset["tee"], unit: slot.dataset["unit"] === "metres" ? "metres" : "yards" };
}

export function watchGolfer(slot: HTMLElement, changed: (golfer: Golfer) => void): void {
  const observer = new MutationObserver(() => changed(readGolfer(slot)));
  observer.observe(slot, { attributes: true, attributeFilter: ["data-tee", "data-unit"] });
}
