/**
 * Offers the live map where a page has a place for it, and loads it only when asked.
 *
 *   <div id="live-map" data-map="hole|course" data-source="hole.json" data-tee="yellow" data-units="yards"
 *        data-loading="…" data-not-loaded="…"></div>
 *   <button type="button" data-live-map-open aria-controls="live-map" hidden>…</button>
 *
 * `data-state` on the slot says where it stands: absent, then `loading`, `ready` or `failed`.
 * When it fails the plate stays and one line says why. All words but the slot's own two
 * come with the map.
 */
import * as attr from "../contract/attributes.ts";
import type { OpenMap, OpenMapInput } from "./map/open-map.ts";
import type { Speech } from "./map/words.ts";
import { islandWords } from "./island-words.ts";
import { MapFailure } from "./map/failure.ts";
import { fetched, fontsOf } from "./map/page-side.ts";
import { readGolfer, watchGolfer } from "./map/golfer.ts";
import { stylesLoaded } from "./map/styles.ts";

const slot = document.getElementById("live-map");
if (slot !== null) offer(slot);

function offer(slot: HTMLElement): void {
  const opener = document.querySelector<HTMLButtonElement>(`[${attr.liveMapOpen}], .open-map`);
  if (opener === null) return;
  const status = document.createElement("div");
  status.setAttribute("role", "status");
  opener.after(status);
  let map: OpenMap | undefined;
  let speech: Speech | undefined;

  const say = (state: "loading" | "ready" | "failed" | undefined, line: string): void => {
    if (state === undefined) slot.removeAttribute(attr.state);
    else slot.setAttribute(attr.state, state);
    status.textContent = line;
    opener.disabled = state === "loading";
    opener.hidden = state === "ready";
  };
  const close = (): void => {
    map?.remove();
    map = undefined;
    say(undefined, "");
    opener.focus({ preventScroll: true });
  };
  const fail = ({ failure, cause }: MapFailure): void => {
    map?.remove();
    map = undefined;
    console.warn("Live map:", failure, cause ?? "");
    say("failed", speech?.say.failed[failure] ?? slot.getAttribute(attr.notLoaded) ?? "");
  };

  const show = async (): Promise<void> => {
    say("loading", slot.getAttribute(attr.loading) ?? "");
    const speaking = islandWords().then(({ liveMap, units, thirds, locale }) => (speech = { say: liveMap, units, thirds, locale }));
    try {
      map = await open(slot, speaking, close, fail);
      say("ready", "");
      slot.scrollIntoView({ block: "start", behavior: "instant" });
      map.focus();
    } catch (cause) {
      fail(cause instanceof MapFailure ? cause : new MapFailure("data", cause));
    }
  };
  opener.addEventListener("click", () => {
    if (slot.getAttribute(attr.state) !== "loading") void show();
  });
  slot.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && map !== undefined) close();
  });
  watchGolfer(slot, (golfer) => map?.setGolfer(golfer));
  opener.hidden = false;
}

async function open(slot: HTMLElement, speaking: Promise<Speech>, close: () => void, fail: (failure: MapFailure) => void): Promise<OpenMap> {
  const isCourse = slot.getAttribute(attr.map) === "course";
  const address = new URL(slot.getAttribute(attr.source) ?? (isCourse ? "course.json" : "hole.json"), document.baseURI);
  // Before there is a panel, so that it is laid out once.
  const styled = stylesLoaded();
  // Read when all is there: the golfer may have chosen anew in the meantime.
  const rest = (speech: Speech): Omit<OpenMapInput, "data"> => ({ slot, address, golfer: readGolfer(slot), speech, fonts: fontsOf(slot), close, fail });
  if (isCourse) {
    const [{ openCourseMap }, data, speech] = await Promise.all([import("./map/course-map.ts"), fetched(address), speaking, styled]);
    return openCourseMap({ ...rest(speech), data });
  }
  const [{ openHoleMap }, data, speech] = await Promise.all([import("./map/hole-map.ts"), fetched(address), speaking, styled]);
  return openHoleMap({ ...rest(speech), data });
}
