/** Walking a page with the Tab key. */
import type { Page } from "playwright-core";

export interface Stop {
  /** Number given to the element by {@link reachable}; undefined for one it did not count. */
  readonly id: string | undefined;
  /** The element in a few words. */
  readonly shown: string;
  /** Whether it looks different with the focus than without. */
  readonly marked: boolean;
  /** Whether nothing of it is in view, or all of it lies under something else. */
  readonly covered: boolean;
}

/** Everything the keyboard must reach, numbered in the page itself. One radio button stands for its group. */
export async function reachable(page: Page): Promise<{ readonly id: string; readonly shown: string }[]> {
  await page.evaluate(LOOK);
  return page.evaluate(() => {
    const groups = new Set<string>();
    return [
      ...document.querySelectorAll<HTMLElement | SVGElement>(
        "a[href], button, input, select, textarea, summary, [tabindex]",
      ),
    ]
      .filter(
        (element) => element.tabIndex >= 0 && !element.matches(":disabled") && element.closest("[inert]") === null,
      )
      .filter((element) => element.checkVisibility({ visibilityProperty: true }))
      .filter((element) => {
        if (!(element instanceof HTMLInputElement) || element.type !== "radio") return true;
        if (groups.has(element.name)) return false;
        groups.add(element.name);
        return true;
      })
      .map((element, i) => {
        element.setAttribute("data-stop", `${i}`);
        element.setAttribute("data-look", lookOf(element));
        return {
          id: `${i}`,
          shown: `${element.tagName} ${element.getAttribute("href") ?? element.textContent.trim().slice(0, 40)}`,
        };
      });
  });
}

declare const lookOf: (element: Element) => string;

/** Outline, lines and fills of an element and what is in it: what a mark of focus changes. */
const LOOK = `globalThis.lookOf = (element) => [element, ...element.querySelectorAll("*")].map((one) => {
  const { outlineStyle, outlineWidth, boxShadow, stroke, strokeWidth, fill, backgroundColor, borderColor } = getComputedStyle(one);
  return [outlineStyle === "none" ? "" : outlineStyle + outlineWidth, boxShadow, stroke, strokeWidth, fill, backgroundColor, borderColor].join();
}).join(";")`;

/** Tabs from the top of the page until focus leaves it or comes round again, or `most` stops were made. */
export async function focusStops(page: Page, most: number): Promise<Stop[]> {
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    scrollTo({ top: 0, behavior: "instant" });
  });
  const stops: Stop[] = [];
  for (let i = 0; i < most; i++) {
    await page.keyboard.press("Tab");
    const stop = await page.evaluate(() => {
      const element = document.activeElement;
      if (element === null || element === document.body || element === document.documentElement) return undefined;
      const { left, top, right, bottom } = element.getBoundingClientRect();
      const seen = [0.1, 0.3, 0.5, 0.7, 0.9].some((across) =>
        [0.1, 0.5, 0.9].some((down) => {
          const hit = document.elementFromPoint(left + (right - left) * across, top + (bottom - top) * down);
          return (
            hit !== null &&
            (element.contains(hit) ||
              (hit.contains(element) && hit !== document.body && hit !== document.documentElement) ||
              hit.closest("label")?.contains(element) === true)
          );
        }),
      );
      return {
        id: element.getAttribute("data-stop") ?? undefined,
        shown: `${element.tagName} ${element.getAttribute("href") ?? element.textContent.trim().slice(0, 40)}`,
        marked: element.getAttribute("data-look") !== lookOf(element),
        covered: !seen,
      };
    });
    if (stop === undefined || (stop.id !== undefined && stops.some(({ id }) => id === stop.id))) break;
    stops.push(stop);
  }
  return stops;
}
