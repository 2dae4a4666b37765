/**
 * The day's conditions and the golfer's own lengths on a page: all that happens because of them. Fetched
 * with the flight code.
 */
import * as attr from "../contract/attributes.ts";
import { ConditionsFields, partOf } from "./conditions-fields.ts";
import { ConditionsFigures } from "./conditions-figures.ts";
import { nextConditions, type ConditionsEvent, type ConditionsState } from "./conditions-state.ts";
import { CONDITIONS_EVENT, CONDITIONS_KEY, LENGTHS_KEY, readConditions, writeConditions } from "./conditions-store.ts";
import { GroundFile } from "./ground-file.ts";
import { islandWords } from "./island-words.ts";
import type { LengthsPanel } from "./lengths-panel.ts";
import { readLengths, writeLengths } from "./lengths-store.ts";
import { isPlain, PLAIN_EVENT } from "./plain.ts";
import { currentSettings, SETTINGS_EVENT, type PageSettings } from "./settings.ts";
import { store, stored } from "./settings-store.ts";

/** @throws when the words of the page cannot be fetched */
export async function startPanel(panel: HTMLDetailsElement): Promise<void> {
  const words = await islandWords();
  const bearing = Number(panel.getAttribute(attr.bearing));
  let settings: PageSettings = currentSettings() ?? { tee: "", units: "yards", third: "middle" };
  let state: ConditionsState = { units: settings.units, ...kept(), typed: {} };
  let ladder: LengthsPanel | undefined;
  let waiting = 0;

  const fields = new ConditionsFields(panel, bearing, words.conditions, {
    units: () => state.units,
    wind: () => state.conditions.wind,
    change: (wind) => happen({ kind: "wind", wind }),
    typed: (field, text) => happen({ kind: "typed", field, text, bearing }),
    left: (field) => happen({ kind: "left", field }),
  });
  const figures = new ConditionsFigures(
    { bearing, heightMetres: Number(panel.getAttribute(attr.height)), level: fields.level },
    words,
  );
  const now = partOf<HTMLElement>(panel, `[${attr.conditionsNow}]`);
  const say = (text: string | undefined): void => {
    if (text !== undefined && now.textContent !== text) now.textContent = text;
  };
  const ground = new GroundFile(compute, () => say(words.conditions.failed));

  function kept(): Pick<ConditionsState, "conditions" | "lengths"> {
    return {
      conditions: readConditions(stored(CONDITIONS_KEY), Date.now()),
      lengths: readLengths(stored(LENGTHS_KEY)),
    };
  }

  function compute(): void {
    const wind = fields.windText(state, state.conditions.wind);
    say(figures.show(state, { settings, plain: isPlain(), ground: () => ground.now(), ladder, wind }));
  }

  function happen(event: ConditionsEvent): void {
    const before = state;
    state = nextConditions(before, event);
    if (state === before) return;
    fields.show(state);
    // The ladder hands over its lengths when a field of it is left too: it is then written anew.
    if (event.kind !== "lengths" && state.conditions === before.conditions && state.lengths === before.lengths) return;
    if (event.kind !== "stored") {
      if (state.lengths !== before.lengths) store(LENGTHS_KEY, writeLengths(state.lengths));
      store(CONDITIONS_KEY, writeConditions(state.conditions, Date.now()));
    }
    // Once for a frame, however many moves the pointer makes in it.
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(compute);
    if (event.kind !== "stored") document.dispatchEvent(new Event(CONDITIONS_EVENT));
  }

  const form = partOf(panel, "form");
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    happen({ kind: "reset" });
  });
  document.addEventListener(SETTINGS_EVENT, (event) => {
    settings = (event as CustomEvent<PageSettings>).detail;
    happen({ kind: "units", units: settings.units });
    compute();
  });
  document.addEventListener(PLAIN_EVENT, compute);
  // The guide may be open in another tab too.
  window.addEventListener("storage", ({ key }) => {
    if (key === CONDITIONS_KEY || key === LENGTHS_KEY) happen({ kind: "stored", ...kept() });
  });

  const place = partOf<HTMLDetailsElement>(panel, `[${attr.lengths}]`);
  const openLadder = (): void => {
    if (ladder !== undefined || !place.open) return;
    void import("./lengths-panel.ts")
      .then(({ LengthsPanel }) => {
        ladder ??= new LengthsPanel(
          place,
          words.conditions,
          words.lengths,
          words.units,
          () => state.lengths,
          (lengths) => happen({ kind: "lengths", lengths }),
        );
        compute();
      })
      .catch(() => say(words.conditions.failed));
  };
  place.addEventListener("toggle", openLadder);
  openLadder();
  fields.show(state);
  compute();
  const rehearse = (): void => figures.rehearse(settings.tee);
  if ("requestIdleCallback" in window) window.requestIdleCallback(rehearse);
  else setTimeout(rehearse, 200);
}
