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
import { openable, type Turn } from "./openable.ts";
import type { Opening } from "./opening.ts";

const slot = document.getElementById("live-map");
if (slot !== null) offer(slot);

function offer(slot: HTMLElement): void {
  const opener = document.querySelector<HTMLButtonElement>(`[${attr.liveMapOpen}], .open-map`);
  if (opener === null) return;
  const status = document.createElement("div");
  status.setAttribute("role", "status");
  opener.after(status);
  let speech: Speech | undefined;

  const said = (state: Opening<OpenMap, MapFailure>): string => {
    const written = (name: string): string => slot.getAttribute(name) ?? "";
    if (state.kind === "loading") return written(attr.loading);
    return state.kind === "failed" ? (speech?.say.failed[state.reason.failure] ?? written(attr.notLoaded)) : "";
  };

  const map = openable<OpenMap, MapFailure>({
    load(turn) {
      const speaking = islandWords().then(
        ({ liveMap, units, thirds, locale }) => (speech = { say: liveMap, units, thirds, locale }),
      );
      return open(slot, speaking, turn);
    },
    reasonOf: (cause) => (cause instanceof MapFailure ? cause : new MapFailure("data", cause)),
    show(state) {
      if (state.kind === "closed") slot.removeAttribute(attr.state);
      else slot.setAttribute(attr.state, state.kind);
      status.textContent = said(state);
      opener.disabled = state.kind === "loading";
      opener.hidden = state.kind === "ready";
      if (state.kind === "closed") opener.focus({ preventScroll: true });
      if (state.kind === "failed") console.warn("Live map:", state.reason.failure, state.reason.cause ?? "");
      if (state.kind !== "ready") return;
      slot.scrollIntoView({ block: "start", behavior: "instant" });
      state.thing.focus();
    },
  });
  opener.addEventListener("click", map.open);
  slot.addEventListener("keydown", (event) => {
    if (event.key === "Escape") map.close();
  });
  watchGolfer(slot, (golfer) => map.thing()?.setGolfer(golfer));
  opener.hidden = false;
}

async function open(
  slot: HTMLElement,
  speaking: Promise<Speech>,
  { signal, close, fail }: Turn<MapFailure>,
): Promise<OpenMap> {
  const isCourse = slot.getAttribute(attr.map) === "course";
  const address = new URL(
    slot.getAttribute(attr.source) ?? (isCourse ? "course.json" : "hole.json"),
    document.baseURI,
  );
  // Before there is a panel, so that it is laid out once.
  const styled = stylesLoaded();
  // Read when all is there: the golfer may have chosen anew in the meantime.
  const rest = (speech: Speech): Omit<OpenMapInput, "data"> => ({
    slot,
    address,
    golfer: readGolfer(slot),
    speech,
    fonts: fontsOf(slot),
    signal,
    close,
    fail,
  });
  if (isCourse) {
    const [{ openCourseMap }, data, speech] = await Promise.all([
      import("./map/course-map.ts"),
      fetched(address, signal),
      speaking,
      styled,
    ]);
    return openCourseMap({ ...rest(speech), data });
  }
  const [{ openHoleMap }, data, speech] = await Promise.all([
    import("./map/hole-map.ts"),
    fetched(address, signal),
    speaking,
    styled,
  ]);
  return openHoleMap({ ...rest(speech), data });
}
