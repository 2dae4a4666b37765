/** The button that lifts the ground, and the memory of it. */
import type { BaseMap } from "./base-map.ts";
import type { Panel } from "./panel.ts";
import { store, stored } from "../settings-store.ts";
import { EXAGGERATION } from "./relief.ts";
import type { MapWords } from "./words.ts";

const RELIEF_KEY = "marram.relief";

/** Flat unless the golfer lifted it before; and always flat at first where motion is unwelcome. */
export const keepsRelief = (): boolean =>
  stored(RELIEF_KEY) === "yes" && !matchMedia("(prefers-reduced-motion: reduce)").matches;

export function reliefTool(panel: Panel, map: BaseMap, possible: boolean, words: MapWords): void {
  let on = possible && keepsRelief();
  const times = String(EXAGGERATION);
  const show = (): void => {
    panel.press("relief", on);
    panel.note(on ? words.reliefNote({ times }) : undefined);
  };
  show();
  panel.onTool("relief", () => {
    on = !on;
    store(RELIEF_KEY, on ? "yes" : undefined);
    map.setRelief(on);
    show();
    panel.say(on ? words.reliefOn({ times }) : words.reliefOff);
  });
}
