/** The map's furniture inside the slot the page gives it: view, cross, buttons, read-out. */
import type { ViewSize } from "./camera.ts";
import type { ReadOut } from "./read-out.ts";
import { WORDS } from "./words.ts";

export interface PanelWords {
  readonly reset: string;
  readonly keys: string;
  readonly hint: string;
}

export interface Panel {
  /** What the map draws into. */
  readonly view: HTMLElement;
  size(): ViewSize;
  readonly buttons: Readonly<Record<"zoomIn" | "zoomOut" | "reset" | "close", HTMLButtonElement>>;
  /** Id of the sentence that tells the keys. */
  readonly keysId: string;
  showReading(reading: ReadOut): void;
  /** A line in place of a reading; spoken too. */
  showLine(text: string): void;
  remove(): void;
}

const KEYS_ID = "live-map-keys";

export function panel(slot: HTMLElement, words: PanelWords): Panel {
  const root = element("div", "live-map");
  const view = element("div", "live-map-view");
  const cross = element("div", "live-map-cross");
  cross.setAttribute("aria-hidden", "true");
  const buttons = {
    zoomIn: button("+", WORDS.zoomIn),
    zoomOut: button("−", WORDS.zoomOut),
    reset: button(words.reset),
    close: button(WORDS.close),
  };
  const bar = element("div", "live-map-bar");
  bar.setAttribute("role", "group");
  bar.setAttribute("aria-label", WORDS.controls);
  bar.append(buttons.zoomIn, buttons.zoomOut, buttons.reset, buttons.close);
  const keys = element("p", "live-map-spoken", words.keys);
  keys.id = KEYS_ID;
  const shown = element("div", "live-map-reading");
  // The spoken line says the same in whole sentences and both units.
  shown.setAttribute("aria-hidden", "true");
  shown.append(element("p", "live-map-hint", words.hint));
  const spoken = element("p", "live-map-spoken");
  spoken.setAttribute("aria-live", "polite");
  spoken.dataset["mapSpoken"] = "";
  const frame = element("div", "live-map-frame");
  frame.append(view, cross, bar);
  const sheet = element("div", "live-map-sheet");
  sheet.append(frame, shown, keys, spoken);
  root.append(sheet);
  slot.append(root);
  return {
    view,
    size: () => ({ width: view.clientWidth, height: view.clientHeight, top: bar.offsetTop + bar.offsetHeight }),
    buttons,
    keysId: KEYS_ID,
    showReading(reading) {
      const figures = element("dl", "live-map-figures");
      for (const { label, value } of reading.figures) {
        const pair = element("div", "live-map-figure");
        const figure = element("dd", "", value);
        figure.append(element("span", "live-map-unit", ` ${reading.unit}`));
        pair.append(element("dt", "", label), figure);
        figures.append(pair);
      }
      shown.replaceChildren(figures, ...(reading.under === undefined ? [] : [element("p", "live-map-under", reading.under)]));
      spoken.textContent = reading.spoken;
    },
    showLine(text) {
      shown.replaceChildren(element("p", "live-map-hint", text));
      spoken.textContent = text;
    },
    remove: () => root.remove(),
  };
}

function element<Tag extends keyof HTMLElementTagNameMap>(tag: Tag, className: string, text?: string): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  if (className !== "") made.className = className;
  if (text !== undefined) made.textContent = text;
  return made;
}

function button(text: string, label?: string): HTMLButtonElement {
  const made = element("button", "live-map-button", text);
  made.type = "button";
  if (label !== undefined) made.setAttribute("aria-label", label);
  return made;
}
