/** The button that lays the photo from the air over the ground. */
import type { BaseMap } from "./base-map.ts";
import type { Panel } from "./panel.ts";
import type { MapWords } from "./words.ts";

/** How the photo now stands, for a style made anew. */
export interface PhotoState {
  shown: boolean;
}

/** Not kept from map to map: its tiles are what a phone pays for. */
export function photoTool(panel: Panel, map: BaseMap, state: PhotoState, words: MapWords): void {
  panel.onTool("photo", () => {
    state.shown = !state.shown;
    map.setPhoto(state.shown);
    panel.press("photo", state.shown);
    panel.say(state.shown ? words.photoOn : words.photoOff);
  });
}
