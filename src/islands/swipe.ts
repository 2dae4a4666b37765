/**
 * A swipe with one finger to the left or right turns to the next or previous hole, as the
 * links of the bar do. Not on what moves sideways itself, nor from the screen's edges, which
 * belong to the phone, nor while the page is enlarged.
 */
import * as attr from "../contract/attributes.ts";

/** The least way and the longest time of a swipe, and how much more across than along it must be. */
const LEAST_PIXELS = 64;
const LONGEST_MILLISECONDS = 600;
const FLATNESS = 2.5;
const EDGE_PIXELS = 28;

const OWN_WAYS = `#live-map[${attr.state}], .scroller, .panel, [popover], input, select, textarea, summary`;

export interface Touch {
  readonly x: number;
  readonly y: number;
  readonly milliseconds: number;
}

/** Which way a touch went; undefined for what is no swipe. */
export function swipeOf(from: Touch, to: Touch, width: number): "next" | "prev" | undefined {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const inside = from.x >= EDGE_PIXELS && from.x <= width - EDGE_PIXELS;
  const quick = to.milliseconds - from.milliseconds <= LONGEST_MILLISECONDS;
  if (!inside || !quick || Math.abs(dx) < LEAST_PIXELS || Math.abs(dx) < FLATNESS * Math.abs(dy)) return undefined;
  return dx < 0 ? "next" : "prev";
}

let from: Touch | undefined;

const touchOf = ({ changedTouches: [touch], timeStamp }: TouchEvent): Touch | undefined =>
  touch && { x: touch.clientX, y: touch.clientY, milliseconds: timeStamp };

if (typeof document !== "undefined") {
  document.addEventListener(
    "touchstart",
    (event) => {
      const { target, touches } = event;
      const free = target instanceof Element && target.closest(OWN_WAYS) === null;
      from = touches.length === 1 && free && (visualViewport?.scale ?? 1) < 1.05 ? touchOf(event) : undefined;
    },
    { passive: true },
  );
  document.addEventListener("touchcancel", () => (from = undefined), { passive: true });
  document.addEventListener(
    "touchend",
    (event) => {
      const to = touchOf(event);
      const way = from && to && swipeOf(from, to, innerWidth);
      from = undefined;
      // Marking words goes sideways too.
      if (way === undefined || getSelection()?.isCollapsed === false) return;
      document.querySelector<HTMLAnchorElement>(`.bar a[rel=${way}]`)?.click();
    },
    { passive: true },
  );
}
