/**
 * Plain figures, and the way to wind and own carry. This part is small and always there;
 * the dial and the flight code are fetched when the golfer opens them, or when a wind is
 * kept from earlier.
 */
import { CONDITIONS_KEY, isSet, PLAIN_KEY, readConditions } from "./conditions-store.ts";
import { store, stored } from "./settings-store.ts";

const root = document.documentElement;

function showPlain(plain: boolean): void {
  root.toggleAttribute("data-plain", plain);
  for (const button of document.querySelectorAll("[data-plain-switch]")) button.setAttribute("aria-pressed", String(plain));
  for (const element of document.querySelectorAll("[data-plain-only]")) element.toggleAttribute("hidden", !plain);
}

let plain = stored(PLAIN_KEY) === "yes";
showPlain(plain);
document.addEventListener("click", ({ target }) => {
  if (!(target instanceof Element) || target.closest("[data-plain-switch]") === null) return;
  const button = target.closest<HTMLElement>("[data-plain-switch]")!;
  const before = button.getBoundingClientRect().top;
  plain = !plain;
  store(PLAIN_KEY, plain ? "yes" : undefined);
  showPlain(plain);
  // What is above grows or shrinks; the button stays under the finger.
  window.scrollBy({ top: button.getBoundingClientRect().top - before, behavior: "instant" });
});
window.addEventListener("storage", ({ key, newValue }) => {
  if (key !== PLAIN_KEY) return;
  plain = newValue === "yes";
  showPlain(plain);
});

const panel = document.querySelector<HTMLDetailsElement>("[data-conditions]");
if (panel !== null) {
  let asked: Promise<void> | undefined;
  const load = (): Promise<void> => (asked ??= import("./conditions-panel.ts").then(({ startPanel }) => startPanel(panel)));
  const soon = (): void => void load().catch(() => {
    asked = undefined;
    const note = panel.querySelector("[data-conditions-now]");
    if (note !== null) note.textContent = (JSON.parse(panel.dataset["words"] ?? "{}") as { failed?: string }).failed ?? "";
  });
  panel.addEventListener("toggle", () => panel.open && soon());
  panel.querySelector("summary")?.addEventListener("pointerenter", soon, { once: true });
  if (isSet(readConditions(stored(CONDITIONS_KEY), Date.now()))) whenIdle(soon);
}

function whenIdle(work: () => void): void {
  if ("requestIdleCallback" in window) window.requestIdleCallback(work, { timeout: 2000 });
  else setTimeout(work, 300);
}
