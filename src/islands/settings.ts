/**
 * The golfer's tee, unit and third of the green: read from this device, applied to the page, kept when
 * changed. What the page shows now stands on the root element as `data-tee` and
 * `data-units`; other islands read {@link currentSettings} and listen for {@link SETTINGS_EVENT}.
 */
import type { LengthUnit } from "../geo/units.ts";
import { store, stored } from "./settings-store.ts";
import { teeOn, turnPage, turnPlates, type Voice } from "./settings-figures.ts";
import type { Third } from "../measure/third.ts";
import { isThird, turnFlags, turnThird } from "./settings-third.ts";
import { offerDeskPlate } from "./settings-plate.ts";

/** Sent on `document` after the page has turned to new settings; detail is a {@link PageSettings}. */
export const SETTINGS_EVENT = "marram:settings";

export interface PageSettings {
  readonly tee: string;
  readonly units: LengthUnit;
  /** Where the hole is cut: the third of the green. */
  readonly third: Third;
}

const UNITS_KEY = "marram.units";
const THIRD_KEY = "marram.third";
const teeKey = (course: string): string => `marram.tee.${course}`;

const isUnit = (value: string | null | undefined): value is LengthUnit => value === "yards" || value === "metres";

/** What the page shows now; undefined on a page that belongs to no course. */
export function currentSettings(): PageSettings | undefined {
  const { tee, units, third } = document.documentElement.dataset;
  return tee !== undefined && isUnit(units) && isThird(third) ? { tee, units, third } : undefined;
}

const root = document.documentElement;
root.classList.add("js");
const page = document.querySelector<HTMLElement>("[data-course-tees]");
if (page !== null) start(page);
offerKeeping([...document.querySelectorAll<HTMLElement>("[data-keep]")]);

/** The control is fetched where it stands in sight, and elsewhere when the settings are opened. */
function offerKeeping(places: readonly HTMLElement[]): void {
  // A development server has no editions.
  if (places.length === 0 || root.dataset["edition"] === undefined) return;
  const load = (): void => void import("./keep/control.ts").then((control) => control.offerKeeping(places)).catch(() => undefined);
  if (places.some(({ dataset }) => dataset["keep"] === "now")) setTimeout(load);
  else document.getElementById("settings")?.addEventListener("beforetoggle", load, { once: true });
}

function start(page: HTMLElement): void {
  const { course = "", courseTees = "", firstTee = "", courseUnits, voice = "" } = page.dataset;
  const tees = courseTees.split(" ");
  const own: LengthUnit = isUnit(courseUnits) ? courseUnits : "yards";
  // The page and this script are of one build.
  const spoken = JSON.parse(voice) as Voice;
  let wanted = stored(teeKey(course)) ?? undefined;
  const storedUnits = stored(UNITS_KEY);
  let units = isUnit(storedUnits) ? storedUnits : own;
  const storedThird = stored(THIRD_KEY);
  let third: Third = isThird(storedThird) ? storedThird : "middle";
  // The page is built for these; only another choice needs work.
  let shown: PageSettings = { tee: firstTee, units: own, third: "middle" };

  const word = (selector: string): string => document.querySelector(selector)?.textContent?.trim() ?? "";

  const apply = (): void => {
    const next: PageSettings = { tee: teeOn(wanted, tees, firstTee), units, third };
    if (third !== shown.third) turnThird(document, third, word(`[data-third-choice="${third}"]`));
    if (next.tee !== shown.tee || next.units !== shown.units || third !== shown.third) turnPage(document, next.tee, next.units, spoken);
    shown = next;
    root.dataset["tee"] = next.tee;
    root.dataset["units"] = next.units;
    root.dataset["third"] = third;
    for (const input of document.querySelectorAll<HTMLInputElement>("input[data-setting]")) {
      input.checked = Object.entries(next).some(([name, value]) => name === input.dataset["setting"] && value === input.value);
    }
  };

  const tell = (): void => {
    const status = document.getElementById("settings-status");
    if (status === null) return;
    status.textContent = (status.dataset["pattern"] ?? "")
      .replace("{tee}", word(`[data-tee-choice="${CSS.escape(shown.tee)}"]`))
      .replace("{units}", word(`[data-unit-choice="${shown.units}"]`))
      .replace("{third}", word(`[data-third-choice="${shown.third}"]`));
  };

  apply();
  for (const slot of document.querySelectorAll<HTMLElement>("[data-plate]")) {
    offerDeskPlate(slot, () => {
      turnPlates(slot, shown.tee, shown.units);
      turnFlags(slot, third);
    });
  }
  document.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    if (target.dataset["setting"] === "tee") {
      wanted = target.value;
      store(teeKey(course), wanted);
    } else if (target.dataset["setting"] === "units" && isUnit(target.value)) {
      units = target.value;
      store(UNITS_KEY, units);
    } else if (target.dataset["setting"] === "third" && isThird(target.value)) {
      third = target.value;
      store(THIRD_KEY, third);
    } else return;
    apply();
    tell();
    document.dispatchEvent(new CustomEvent<PageSettings>(SETTINGS_EVENT, { detail: shown }));
  });
  // The guide may be open in another tab too.
  window.addEventListener("storage", ({ key, newValue }) => {
    if (key === UNITS_KEY && isUnit(newValue)) units = newValue;
    else if (key === THIRD_KEY && isThird(newValue)) third = newValue;
    else if (key === teeKey(course) && newValue !== null) wanted = newValue;
    else return;
    apply();
    document.dispatchEvent(new CustomEvent<PageSettings>(SETTINGS_EVENT, { detail: shown }));
  });
}
