/**
 * The golfer's tee, unit and third of the green: read from this device, applied to the page, kept when
 * changed. What the page shows now stands on the root element as `data-tee` and
 * `data-units`; other islands read {@link currentSettings} and listen for {@link SETTINGS_EVENT}.
 */
import * as attr from "../contract/attributes.ts";
import type { LengthUnit } from "../geo/units.ts";
import { store, stored } from "./settings-store.ts";
import { voiceIn } from "../tell/voice.ts";
import { speak } from "../words/speak.ts";
import type { CompiledGroup } from "../words/compiled.ts";
import type { Words } from "../words/words.ts";
import { teeOn, turnPage, turnPlates } from "./settings-figures.ts";
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

const isUnit = (value: string | null | undefined): value is LengthUnit => value === "yards" || value === "metres";

/** What the page shows now; undefined on a page that belongs to no course. */
export function currentSettings(): PageSettings | undefined {
  const [tee, units, third] = [attr.tee, attr.units, attr.third].map((name) =>
    document.documentElement.getAttribute(name),
  );
  return typeof tee === "string" && isUnit(units) && isThird(third) ? { tee, units, third } : undefined;
}

const root = document.documentElement;
root.classList.add("js");
const page = document.querySelector<HTMLElement>(`[${attr.courseTees}]`);
if (page !== null) start(page);
offerKeeping([...document.querySelectorAll<HTMLElement>(`[${attr.keep}]`)]);

/** The control is fetched where it stands in sight, and elsewhere when the settings are opened. */
function offerKeeping(places: readonly HTMLElement[]): void {
  // A development server has no editions.
  if (places.length === 0 || !root.hasAttribute(attr.edition)) return;
  const load = (): void =>
    void import("./keep/control.ts").then((control) => control.offerKeeping(places)).catch(() => undefined);
  if (places.some((place) => place.getAttribute(attr.keep) === "now")) setTimeout(load);
  else document.getElementById("settings")?.addEventListener("beforetoggle", load, { once: true });
}

function start(page: HTMLElement): void {
  const written = (name: string): string => page.getAttribute(name) ?? "";
  const [firstTee, courseUnits] = [written(attr.firstTee), written(attr.courseUnits)];
  const tees = written(attr.courseTees).split(" ");
  const teeKey = `marram.tee.${written(attr.course)}`;
  const own: LengthUnit = isUnit(courseUnits) ? courseUnits : "yards";
  const spoken = voiceIn(written(attr.voice));
  let wanted = stored(teeKey) ?? undefined;
  const storedUnits = stored(UNITS_KEY);
  let units = isUnit(storedUnits) ? storedUnits : own;
  const storedThird = stored(THIRD_KEY);
  let third: Third = isThird(storedThird) ? storedThird : "middle";
  // The page is built for these; only another choice needs work.
  let shown: PageSettings = { tee: firstTee, units: own, third: "middle" };

  const word = (selector: string): string => document.querySelector(selector)?.textContent?.trim() ?? "";

  const apply = (): void => {
    const next: PageSettings = { tee: teeOn(wanted, tees, firstTee), units, third };
    if (third !== shown.third) turnThird(document, third, word(`[${attr.thirdChoice}="${third}"]`));
    if (next.tee !== shown.tee || next.units !== shown.units || third !== shown.third)
      turnPage(document, next.tee, next.units, spoken);
    shown = next;
    root.setAttribute(attr.tee, next.tee);
    root.setAttribute(attr.units, next.units);
    root.setAttribute(attr.third, third);
    for (const input of document.querySelectorAll<HTMLInputElement>(`input[${attr.setting}]`)) {
      input.checked = Object.entries(next).some(
        ([name, value]) => name === input.getAttribute(attr.setting) && value === input.value,
      );
    }
  };

  const tell = (): void => {
    const status = document.getElementById("settings-status");
    if (status === null) return;
    const pattern = JSON.parse(status.getAttribute(attr.changed) ?? "") as CompiledGroup[string];
    const { changed } = speak<{ readonly changed: Words["settings"]["changedThird"] }>(
      { changed: pattern },
      spoken.locale,
    );
    status.textContent = changed({
      tee: word(`[${attr.teeChoice}="${CSS.escape(shown.tee)}"]`),
      units: word(`[${attr.unitChoice}="${shown.units}"]`),
      third: word(`[${attr.thirdChoice}="${shown.third}"]`),
    });
  };

  apply();
  for (const slot of document.querySelectorAll<HTMLElement>(`[${attr.plate}]`)) {
    offerDeskPlate(slot, () => {
      turnPlates(slot, shown.tee, shown.units);
      turnFlags(slot, third);
    });
  }
  document.addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const setting = target.getAttribute(attr.setting);
    if (setting === "tee") {
      wanted = target.value;
      store(teeKey, wanted);
    } else if (setting === "units" && isUnit(target.value)) {
      units = target.value;
      store(UNITS_KEY, units);
    } else if (setting === "third" && isThird(target.value)) {
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
    else if (key === teeKey && newValue !== null) wanted = newValue;
    else return;
    apply();
    document.dispatchEvent(new CustomEvent<PageSettings>(SETTINGS_EVENT, { detail: shown }));
  });
}
