/** Turns the figures of a page to a golfer's tee and unit. No storage, no events. */
import * as attr from "../contract/attributes.ts";
import { metresFor, type Metres } from "../contract/values.ts";
import type { LengthUnit, Rounding } from "../geo/units.ts";
import { spokenBoth } from "../tell/format.ts";
import { riseText, voiceIn, wholeLength, type Voice } from "../tell/voice.ts";

/** Stands where a tee set has no such figure. */
const NONE = "–";

/** The tee to show: the golfer's where the page has it, else the page's own first. */
export const teeOn = (wanted: string | undefined, tees: readonly string[], first: string): string =>
  wanted !== undefined && tees.includes(wanted) ? wanted : first;

const write = (within: Element, selector: string, text: string): void => {
  for (const part of within.querySelectorAll(selector)) part.textContent = text;
};

/** `data-round` says up or down; without it a figure goes to the nearest whole one. */
function roundingOf(element: Element): Rounding {
  const written = element.getAttribute(attr.round);
  return written === "up" || written === "down" ? written : "nearest";
}

/** Writes one `[data-metres]` element anew, and the figures of each tee set in the popover it opens. */
export function rewrite(element: Element, tee: string, units: LengthUnit, voice: Voice): void {
  const written = element.getAttribute(attr.metres) ?? "";
  const metres = metresFor(written, tee);
  const isRise = element.getAttribute(attr.figure) === "rise";
  const rounding = roundingOf(element);
  const textOf = (value: Metres | undefined): string => {
    if (value === undefined) return NONE;
    return isRise && typeof value === "number"
      ? riseText(value, units, voice)
      : wholeLength(value, units, voice.units, rounding).text;
  };
  write(element, `[${attr.shown}]`, textOf(metres));
  if (!isRise) {
    const length = metres === undefined ? undefined : wholeLength(metres, units, voice.units, rounding);
    write(element, `[${attr.value}]`, length?.value ?? NONE);
    write(element, `[${attr.unit}]`, length?.unit ?? "");
    write(
      element,
      `[${attr.spoken}]`,
      typeof metres === "number" ? spokenBoth(metres, units, voice.units, rounding) : "",
    );
    write(element, `[${attr.spokenUnit}]`, length?.spoken.slice(length.value.length) ?? "");
  }
  const meaning = element.getAttribute("popovertarget");
  const popover = meaning === null ? null : element.ownerDocument.getElementById(meaning);
  for (const one of popover?.querySelectorAll(`[${attr.tee}]`) ?? []) {
    write(one, "b", textOf(metresFor(written, one.getAttribute(attr.tee) ?? "")));
  }
}

/** Shows the groups of a plate that belong to a tee set and a unit. */
export function turnPlates(root: ParentNode, tee: string, units: LengthUnit): void {
  for (const element of root.querySelectorAll(`[${attr.forUnit}]`)) {
    element.toggleAttribute("hidden", element.getAttribute(attr.forUnit) !== units);
  }
  for (const group of root.querySelectorAll(".plate-tee, .plate-unit")) {
    const [ofTee, ofUnits] = [group.getAttribute(attr.tee), group.getAttribute(attr.unit)];
    const shown = (ofTee === null || ofTee === tee) && (ofUnits === null || ofUnits === units);
    if (shown) group.removeAttribute("display");
    else group.setAttribute("display", "none");
  }
}

/** What stands in another language than its page speaks it: the nearest voice around a figure is its own. */
function voicesOf(page: Voice): (element: Element) => Voice {
  const parsed = new Map<Element, Voice>();
  return (element) => {
    const around = element.closest(`[${attr.ownVoice}]`);
    if (around === null) return page;
    const voice = parsed.get(around) ?? voiceIn(around.getAttribute(attr.ownVoice) ?? "");
    parsed.set(around, voice);
    return voice;
  };
}

/** Turns a whole page: figures, blocks that belong to a tee, highlighted rows and columns. */
export function turnPage(root: ParentNode, tee: string, units: LengthUnit, voice: Voice): void {
  const voiceFor = voicesOf(voice);
  for (const element of root.querySelectorAll(`[${attr.metres}]`)) rewrite(element, tee, units, voiceFor(element));
  for (const element of root.querySelectorAll(`[${attr.forTee}]`)) {
    element.toggleAttribute("hidden", element.getAttribute(attr.forTee) !== tee);
  }
  turnPlates(root, tee, units);
  for (const element of root.querySelectorAll(`[${attr.teeRow}]`)) {
    element.classList.toggle("chosen", element.getAttribute(attr.teeRow) === tee);
  }
  for (const element of root.querySelectorAll(`[${attr.teeColumn}]`)) {
    element.classList.toggle("chosen-column", element.getAttribute(attr.teeColumn) === tee);
  }
  for (const element of root.querySelectorAll(`[${attr.wordYards}]`)) {
    element.textContent = element.getAttribute(units === "yards" ? attr.wordYards : attr.wordMetres);
  }
}
