/**
 * Plain figures, and the way to wind and own carry. This part is small and always there;
 * the dial and the flight code are fetched when the golfer opens them, when a wind or a
 * length is kept from earlier, or when the hole is cut in another third than the table's middle.
 */
import * as attr from "../contract/attributes.ts";
import { CONDITIONS_KEY, isSet, LENGTHS_KEY, PLAIN_KEY, readConditions } from "./conditions-store.ts";
import { isPlain, keptPlain, setPlain, showPlain } from "./plain.ts";
import { currentSettings, SETTINGS_EVENT } from "./settings.ts";
import { stored } from "./settings-store.ts";

showPlain(keptPlain());
document.addEventListener("click", ({ target }) => {
  if (!(target instanceof Element) || target.closest(`[${attr.plainSwitch}]`) === null) return;
  const button = target.closest<HTMLElement>(`[${attr.plainSwitch}]`)!;
  const before = button.getBoundingClientRect().top;
  setPlain(!isPlain());
  // What is above grows or shrinks; the button stays under the finger.
  window.scrollBy({ top: button.getBoundingClientRect().top - before, behavior: "instant" });
});
window.addEventListener("storage", ({ key, newValue }) => {
  if (key === PLAIN_KEY) showPlain(newValue === "yes");
});

const panel = document.querySelector<HTMLDetailsElement>(`[${attr.conditions}]`);
if (panel !== null) {
  let asked: Promise<void> | undefined;
  const load = (): Promise<void> =>
    (asked ??= import("./conditions-panel.ts").then(({ startPanel }) => startPanel(panel)));
  const soon = (): void =>
    void load().catch(() => {
      asked = undefined;
      const note = panel.querySelector(`[${attr.conditionsNow}]`);
      if (note !== null) note.textContent = panel.getAttribute(attr.failed) ?? "";
    });
  panel.addEventListener("toggle", () => panel.open && soon());
  panel.querySelector("summary")?.addEventListener("pointerenter", soon, { once: true });
  if (isSet(readConditions(stored(CONDITIONS_KEY), Date.now())) || stored(LENGTHS_KEY) !== null || isElsewhere())
    whenIdle(soon);
  document.addEventListener(SETTINGS_EVENT, () => isElsewhere() && soon());
}

/** Whether the table's middle row is not where the hole is cut. */
function isElsewhere(): boolean {
  return (currentSettings()?.third ?? "middle") !== "middle" && document.querySelector(`[${attr.middle}]`) !== null;
}

function whenIdle(work: () => void): void {
  if ("requestIdleCallback" in window) window.requestIdleCallback(work, { timeout: 2000 });
  else setTimeout(work, 300);
}
