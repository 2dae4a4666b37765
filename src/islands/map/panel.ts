/** The map's furniture inside the slot the page gives it: view, cross, buttons, tools, read-out. */
import * as attr from "../../contract/attributes.ts";
import type { ViewSize } from "./camera.ts";
import type { ReadOut } from "./read-out.ts";
import type { MapWords, Tool } from "./words.ts";

/** What one kind of map has that another has not. */
export interface PanelParts {
  readonly reset: string;
  readonly keys: string;
  readonly hint: string;
  /** In the order they stand. */
  readonly tools: readonly Tool[];
}

/** A button that a reading brings with it. */
export interface Action {
  readonly text: string;
  readonly run: () => void;
}

export interface Panel {
  /** What the map draws into. */
  readonly view: HTMLElement;
  size(): ViewSize;
  readonly buttons: Readonly<Record<"zoomIn" | "zoomOut" | "reset" | "close", HTMLButtonElement>>;
  /** Id of the sentence that tells the keys. */
  readonly keysId: string;
  /** Calls when a tool is pressed; how it then stands is {@link Panel.press}'s. */
  onTool(tool: Tool, run: () => void): void;
  press(tool: Tool, pressed: boolean): void;
  showReading(reading: ReadOut, quietly?: boolean): void;
  /** A line in place of a reading; spoken too. */
  showLine(text: string): void;
  /** Says without showing. */
  say(text: string): void;
  /** The buttons under the reading; the keyboard stays on one that stays, or goes to `after` when its own goes. */
  setActions(actions: readonly Action[], after: Tool): void;
  /** Puts the keyboard on the first of them. */
  focusAction(): void;
  /** A line in the corner of the picture; none takes it away. */
  note(text: string | undefined): void;
  remove(): void;
}

const KEYS_ID = "live-map-keys";

export function panel(slot: HTMLElement, words: MapWords, parts: PanelParts): Panel {
  const root = element("div", "live-map");
  const view = element("div", "live-map-view");
  const cross = element("div", "live-map-cross");
  cross.setAttribute("aria-hidden", "true");
  const buttons = {
    zoomIn: button("+", words.zoomIn),
    zoomOut: button("−", words.zoomOut),
    reset: button(parts.reset),
    close: button(words.close),
  };
  const bar = element("div", "live-map-bar");
  bar.setAttribute("role", "group");
  bar.setAttribute("aria-label", words.controls);
  bar.append(buttons.zoomIn, buttons.zoomOut, buttons.reset, buttons.close);
  const note = element("p", "live-map-note");
  note.hidden = true;
  const tools = element("div", "live-map-tools");
  tools.setAttribute("role", "group");
  tools.setAttribute("aria-label", words.whatItDoes);
  tools.hidden = parts.tools.length === 0;
  const toolButtons = new Map(
    parts.tools.map((tool) => {
      const made = button(words.tools[tool]);
      made.setAttribute("aria-pressed", "false");
      made.setAttribute(attr.tool, tool);
      tools.append(made);
      return [tool, made];
    }),
  );
  const keys = element("p", "live-map-spoken", parts.keys);
  keys.id = KEYS_ID;
  const shown = element("div", "live-map-shown");
  // The spoken line says the same in whole sentences and both units.
  shown.setAttribute("aria-hidden", "true");
  shown.append(element("p", "live-map-hint", parts.hint));
  const actionRow = element("div", "live-map-actions");
  actionRow.hidden = true;
  const reading = element("div", "live-map-reading");
  // It may scroll, so the keyboard can stand on it.
  reading.tabIndex = 0;
  reading.setAttribute("role", "group");
  reading.setAttribute("aria-label", words.reading);
  reading.append(shown, actionRow);
  const spoken = element("p", "live-map-spoken");
  spoken.setAttribute("aria-live", "polite");
  spoken.setAttribute(attr.mapSpoken, "");
  const frame = element("div", "live-map-frame");
  frame.append(view, cross, bar, note);
  const sheet = element("div", "live-map-sheet");
  sheet.append(frame, tools, reading, keys, spoken);
  root.append(sheet);
  // Under the map, where nobody could see what the keyboard is on. At once with what its
  // style sheet hides there: a plate's many parts are styled anew once, and before the map is drawn.
  const under = [...slot.children];
  for (const child of under) child.toggleAttribute("inert", true);
  slot.append(root);
  let actionTexts = "";
  return {
    view,
    size: () => ({ width: view.clientWidth, height: view.clientHeight, top: bar.offsetTop + bar.offsetHeight }),
    buttons,
    keysId: KEYS_ID,
    onTool: (tool, run) => toolButtons.get(tool)?.addEventListener("click", run),
    press: (tool, pressed) => toolButtons.get(tool)?.setAttribute("aria-pressed", String(pressed)),
    showReading(read, quietly = false) {
      shown.replaceChildren(
        ...(read.figures.length === 0 ? [] : [figureList(read)]),
        ...read.lines.map((line) => element("p", "live-map-under", line)),
      );
      if (!quietly) spoken.textContent = read.spoken;
    },
    showLine(text) {
      shown.replaceChildren(element("p", "live-map-hint", text));
      spoken.textContent = text;
    },
    say(text) {
      spoken.textContent = text;
    },
    setActions(actions, after) {
      const texts = actions.map(({ text }) => text).join("\n");
      if (texts === actionTexts) return;
      actionTexts = texts;
      const had = actionRow.contains(document.activeElement) ? document.activeElement?.textContent : undefined;
      const made = actions.map(({ text, run }) => {
        const one = button(text);
        one.addEventListener("click", run);
        return one;
      });
      actionRow.replaceChildren(...made);
      actionRow.hidden = actions.length === 0;
      if (had !== undefined)
        (made.find(({ textContent }) => textContent === had) ?? toolButtons.get(after))?.focus({
          preventScroll: true,
        });
    },
    focusAction: () => actionRow.querySelector("button")?.focus({ preventScroll: true }),
    note(text) {
      note.hidden = text === undefined;
      note.textContent = text ?? "";
    },
    remove() {
      root.remove();
      for (const child of under) child.toggleAttribute("inert", false);
    },
  };
}

function figureList({ figures, unit }: ReadOut): HTMLElement {
  const list = element("dl", "live-map-figures");
  for (const { label, value, note, counts } of figures) {
    const pair = element("div", counts ? "live-map-figure live-map-counts" : "live-map-figure");
    const figure = element("dd", "", value);
    figure.append(element("span", "live-map-unit", `\u00a0${unit}`));
    pair.append(element("dt", "", label), figure);
    if (note !== undefined) pair.append(element("dd", "live-map-plays", note));
    list.append(pair);
  }
  return list;
}

function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  className: string,
  text?: string,
): HTMLElementTagNameMap[Tag] {
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
