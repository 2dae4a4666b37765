/**
 * Puts the desk's plate or map in place of the phone's on wide screens. The page holds the
 * phone's, which is the smaller and serves everyone without scripts; carrying both would
 * double the page for golfers on the course.
 */

import * as attr from "../contract/attributes.ts";

/** Where the style sheet turns from one column to two. */
const WIDE = "(min-width: 56rem)";

/** Fetches and places the plate named by the slot's `data-plate`, once there is room; then calls `placed`. */
export function offerDeskPlate(slot: HTMLElement, placed: () => void): void {
  const address = slot.getAttribute(attr.plate);
  if (address === null) return;
  const wide = matchMedia(WIDE);
  const place = async (): Promise<void> => {
    const response = await fetch(address);
    if (!response.ok) return;
    const { documentElement: plate } = new DOMParser().parseFromString(await response.text(), "image/svg+xml");
    if (plate.nodeName !== "svg") return;
    slot.append(document.importNode(plate, true));
    slot.classList.add("has-desk");
    placed();
  };
  const begin = (): void => {
    if (!wide.matches) return;
    wide.removeEventListener("change", begin);
    // Offline or refused: the phone's plate stays, and is complete.
    place().catch(() => undefined);
  };
  wide.addEventListener("change", begin);
  begin();
}
