/** Plain-figures mode: one truth for the page, wherever it is switched. */
import * as attr from "../contract/attributes.ts";
import { PLAIN_KEY } from "./conditions-store.ts";
import { store, stored } from "./settings-store.ts";

/** Sent on `document` after the page has turned to or from plain figures. */
export const PLAIN_EVENT = "marram:plain";

export const isPlain = (): boolean => document.documentElement.hasAttribute(attr.plain);

/** Shows a page's parts as plain figures want them; keeps nothing. */
export function showPlain(plain: boolean): void {
  document.documentElement.toggleAttribute(attr.plain, plain);
  for (const button of document.querySelectorAll(`[${attr.plainSwitch}]`))
    button.setAttribute("aria-pressed", String(plain));
  for (const element of document.querySelectorAll(`[${attr.plainOnly}]`)) element.toggleAttribute("hidden", !plain);
  document.dispatchEvent(new Event(PLAIN_EVENT));
}

/** Turns and keeps it on this device. */
export function setPlain(plain: boolean): void {
  store(PLAIN_KEY, plain ? "yes" : undefined);
  showPlain(plain);
}

export const keptPlain = (): boolean => stored(PLAIN_KEY) === "yes";
