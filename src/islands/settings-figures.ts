/** Turns the figures of a page to a golfer's tee and unit. No storage, no events. */
import { fromUnit, type LengthUnit } from "../geo/units.ts";
import { formatHeight, formatLength, spokenBoth, type Formatted, type UnitWords } from "../tell/format.ts";

/** How figures are worded: a page carries it in its own language. */
export interface Voice {
  readonly units: UnitWords;
  /** Patterns of a rise with `{}` for the height, and the word for none. */
  readonly up: string;
  readonly down: string;
  readonly level: string;
}

/** Stands where a tee set has no such figure. */
const NONE = "–";

/** A length, or the lengths that a total is of. */
export type Metres = number | readonly number[];

/**
 * The metres an element carries for a tee: `data-metres` holds one figure, for a figure of
 * a fixed tee, or an object of figures by tee set. A list is a total's. Undefined for a tee
 * that has no such figure.
 */
export function metresFor(written: string, tee: string): Metres | undefined {
  let value: unknown;
  try {
    value = JSON.parse(written);
  } catch {
    return undefined;
  }
  if (isMetres(value)) return value;
  if (typeof value !== "object" || value === null) return undefined;
  const entries: [string, unknown][] = Object.entries(value);
  const found = entries.find(([id]) => id === tee)?.[1];
  return isMetres(found) ? found : undefined;
}

const isMetres = (value: unknown): value is Metres =>
  typeof value === "number" || (Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === "number"));

/**
 * A length in whole units. A total is the sum of its holes' whole units, as on a printed
 * card, so that a column adds up as it is read.
 */
export function wholeLength(metres: Metres, units: LengthUnit, words: UnitWords): Formatted {
  if (typeof metres === "number") return formatLength(metres, units, words);
  const sum = metres.reduce((total, one) => total + Number(formatLength(one, units, words).value), 0);
  return formatLength(fromUnit(sum, units), units, words);
}

/** The tee to show: the golfer's where the page has it, else the page's own first. */
export const teeOn = (wanted: string | undefined, tees: readonly string[], first: string): string =>
  wanted !== undefined && tees.includes(wanted) ? wanted : first;

/** A rise in words: "12 ft up". */
export function riseText(metres: number, units: LengthUnit, voice: Voice): string {
  const height = formatHeight(metres, units, voice.units);
  return height.value === "0" ? voice.level : (metres > 0 ? voice.up : voice.down).replace("{}", height.text);
}

const write = (within: Element, selector: string, text: string): void => {
  for (const part of within.querySelectorAll(selector)) part.textContent = text;
};

/** Writes one `[data-metres]` element anew, and the figures of each tee set in the popover it opens. */
export function rewrite(element: Element, tee: string, units: LengthUnit, voice: Voice): void {
  const written = element.getAttribute("data-metres") ?? "";
  const metres = metresFor(written, tee);
  const isRise = element.getAttribute("data-figure") === "rise";
  const textOf = (value: Metres | undefined): string => {
    if (value === undefined) return NONE;
    return isRise && typeof value === "number" ? riseText(value, units, voice) : wholeLength(value, units, voice.units).text;
  };
  write(element, "[data-shown]", textOf(metres));
  if (!isRise) {
    const length = metres === undefined ? undefined : wholeLength(metres, units, voice.units);
    write(element, "[data-value]", length?.value ?? NONE);
    write(element, "[data-unit]", length?.unit ?? "");
    write(element, "[data-spoken]", typeof metres === "number" ? spokenBoth(metres, units, voice.units) : "");
    write(element, "[data-spoken-unit]", length?.spoken.slice(length.value.length) ?? "");
  }
  const meaning = element.getAttribute("popovertarget");
  const popover = meaning === null ? null : element.ownerDocument.getElementById(meaning);
  for (const one of popover?.querySelectorAll("[data-tee]") ?? []) {
    write(one, "b", textOf(metresFor(written, one.getAttribute("data-tee") ?? "")));
  }
}

/** Shows the groups of a plate that belong to a tee set and a unit. */
export function turnPlates(root: ParentNode, tee: string, units: LengthUnit): void {
  for (const element of root.querySelectorAll("[data-for-unit]")) {
    element.toggleAttribute("hidden", element.getAttribute("data-for-unit") !== units);
  }
  for (const group of root.querySelectorAll(".plate-tee, .plate-unit")) {
    const [ofTee, ofUnits] = [group.getAttribute("data-tee"), group.getAttribute("data-unit")];
    const shown = (ofTee === null || ofTee === tee) && (ofUnits === null || ofUnits === units);
    if (shown) group.removeAttribute("display");
    else group.setAttribute("display", "none");
  }
}

/** What stands in another language than its page speaks it: the nearest voice around a figure is its own. */
function voicesOf(page: Voice): (element: Element) => Voice {
  const parsed = new Map<Element, Voice>();
  return (element) => {
    const around = element.closest("[data-own-voice]");
    if (around === null) return page;
    // The page and this script are of one build.
    const voice = parsed.get(around) ?? JSON.parse(around.getAttribute("data-own-voice") ?? "") as Voice;
    parsed.set(around, voice);
    return voice;
  };
}

/** Turns a whole page: figures, blocks that belong to a tee, highlighted rows and columns. */
export function turnPage(root: ParentNode, tee: string, units: LengthUnit, voice: Voice): void {
  const voiceFor = voicesOf(voice);
  for (const element of root.querySelectorAll("[data-metres]")) rewrite(element, tee, units, voiceFor(element));
  for (const element of root.querySelectorAll("[data-for-tee]")) {
    element.toggleAttribute("hidden", element.getAttribute("data-for-tee") !== tee);
  }
  turnPlates(root, tee, units);
  for (const element of root.querySelectorAll("[data-tee-row]")) {
    element.classList.toggle("chosen", element.getAttribute("data-tee-row") === tee);
  }
  for (const element of root.querySelectorAll("[data-tee-column]")) {
    element.classList.toggle("chosen-column", element.getAttribute("data-tee-column") === tee);
  }
  for (const element of root.querySelectorAll("[data-word-yards]")) {
    element.textContent = element.getAttribute(`data-word-${units}`);
  }
}
