/** The player: film, map and controls together, once it has been asked for. */
import * as attr from "../../contract/attributes.ts";
import type { Flight } from "../../flyover/types.ts";
import { readCourseData } from "../../contract/course-data.ts";
import type { MapFailure } from "../map/failure.ts";
import type { Parts } from "./parts.ts";
import type { IslandWords } from "../../words/island-words.ts";
import { readFilmData } from "../../contract/film-data.ts";
import { begunBy, cueAt } from "../../flyover/chapters.ts";
import { clockTime } from "../../flyover/clock-time.ts";
import { flightOf } from "../../flyover/track.ts";
import { clock } from "./clock.ts";
import { openFilmMap } from "./film-map.ts";

/** One press of an arrow key. */
const KEY_SECONDS = 2;
/** Stepping back within this of a chapter's start goes to the one before. */
const STEP_BACK_SECONDS = 1.5;

export interface PlayerInput {
  readonly parts: Parts;
  readonly words: IslandWords["film"];
  /** As they came: the player reads them. */
  readonly film: unknown;
  readonly course: unknown;
  readonly address: URL;
  readonly fonts: readonly string[];
  readonly signal: AbortSignal;
  readonly close: () => void;
  readonly fail: (failure: MapFailure) => void;
}

export interface Player {
  play(): void;
}

/** @throws UnreadableData for data of another version, or damaged */
export async function openPlayer({
  parts,
  words,
  film: written,
  course,
  address,
  fonts,
  signal,
  close,
  fail,
}: PlayerInput): Promise<Player> {
  const film = readFilmData(written);
  const flight: Flight = flightOf(film.track);
  const map = await openFilmMap({
    view: parts.view,
    title: parts.view.getAttribute(attr.title) ?? "",
    course: readCourseData(course),
    address,
    hole: film.hole,
    first: flight.poseAt(0),
    fonts,
    signal,
    fail,
  });
  const time = clock(
    flight.seconds,
    { request: (tick) => requestAnimationFrame(tick), cancel: (request) => cancelAnimationFrame(request) },
    () => draw(),
  );
  let drawn: number | undefined;
  let spoken = "";

  parts.place.max = flight.seconds.toFixed(2);

  function draw(): void {
    const { seconds, running } = time;
    parts.toggle.textContent = running ? words.pause : words.play;
    parts.root.setAttribute(attr.playing, String(running));
    if (seconds === drawn) return;
    drawn = seconds;
    parts.root.removeAttribute(attr.settled);
    map.show(flight.poseAt(seconds));
    const chapter = begunBy(film.chapters, seconds)?.title ?? "";
    const cue = cueAt(film.cues, seconds);
    const caption = cue?.text ?? "";
    parts.place.value = String(seconds);
    parts.time.textContent = `${clockTime(seconds)} / ${clockTime(flight.seconds)}`;
    parts.place.setAttribute(
      "aria-valuetext",
      words.placeIs({ time: clockTime(seconds), length: clockTime(flight.seconds), chapter }),
    );
    if (parts.chapter.textContent !== chapter) parts.chapter.textContent = chapter;
    if (parts.caption.textContent !== caption) parts.caption.textContent = caption;
    for (const line of [parts.caption, parts.spoken]) {
      if (cue?.language === undefined) line.removeAttribute("lang");
      else line.lang = cue.language;
    }
    parts.caption.hidden = caption === "" || !parts.captions.checked;
    if (caption !== spoken) {
      spoken = caption;
      parts.spoken.textContent = parts.announce.checked ? caption.replaceAll("\n", " ") : "";
    }
    if (!running) void settle(seconds);
  }

  /** Says when the picture of a moment is complete: for whoever wants it whole. */
  async function settle(seconds: number): Promise<void> {
    await map.settled();
    if (drawn === seconds && !signal.aborted) parts.root.setAttribute(attr.settled, String(seconds));
  }

  const step = (by: 1 | -1): void => {
    const { seconds } = time;
    const starts = film.chapters.map((chapter) => chapter.seconds);
    const to =
      by > 0
        ? starts.find((start) => start > seconds + 0.01)
        : starts.findLast((start) => start < seconds - STEP_BACK_SECONDS);
    time.seek(to ?? (by > 0 ? flight.seconds : 0));
  };
  const toggle = (): void => (time.running ? time.pause() : time.play());

  const on = (element: EventTarget, type: string, act: (event: Event) => void): void =>
    element.addEventListener(type, act, { signal });
  on(parts.toggle, "click", toggle);
  on(parts.previous, "click", () => step(-1));
  on(parts.next, "click", () => step(1));
  on(parts.close, "click", close);
  on(parts.place, "input", () => time.seek(Number(parts.place.value)));
  on(parts.speed, "change", () => time.setSpeed(Number(parts.speed.value)));
  on(parts.captions, "change", () => {
    parts.caption.hidden = parts.caption.textContent === "" || !parts.captions.checked;
  });
  // A film nobody sees does not run.
  on(document, "visibilitychange", () => {
    if (document.hidden) time.pause();
  });
  on(parts.player, "keydown", (event) => {
    if (!(event instanceof KeyboardEvent) || event.altKey || event.ctrlKey || event.metaKey) return;
    const inList = event.target instanceof HTMLSelectElement;
    const presses =
      event.target instanceof HTMLButtonElement ||
      (event.target instanceof HTMLInputElement && event.target.type === "checkbox");
    const act = ((): (() => void) | undefined => {
      switch (event.key) {
        case "Escape":
          return close;
        case " ":
          return presses || inList ? undefined : toggle;
        case "ArrowLeft":
          return inList ? undefined : () => time.seek(time.seconds - KEY_SECONDS);
        case "ArrowRight":
          return inList ? undefined : () => time.seek(time.seconds + KEY_SECONDS);
        case "PageUp":
          return () => step(-1);
        case "PageDown":
          return () => step(1);
        case "Home":
          return inList ? undefined : () => time.seek(0);
        case "End":
          return inList ? undefined : () => time.seek(flight.seconds);
        default:
          return undefined;
      }
    })();
    if (act === undefined) return;
    event.preventDefault();
    act();
  });

  time.setSpeed(Number(parts.speed.value));
  draw();
  signal.addEventListener("abort", () => time.pause());
  return { play: () => time.play() };
}
