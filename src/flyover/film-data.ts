/**
 * What the player fetches: `flyover.json` beside a hole's page, `tour.json` beside a
 * course's. Words are the page's own, put in where the data is made.
 */
import type { Position } from "../geo/position.ts";
import type { Cue } from "./captions.ts";
import type { Track } from "./track.ts";
import type { Chapter } from "./types.ts";

/** Raised when a reader of the older shape could misread the newer one. */
export const FILM_VERSION = 1;

/** A place in the film one can step to. */
export interface FilmChapter {
  readonly seconds: number;
  readonly title: string;
  readonly kind: Chapter["kind"] | "hole";
}

export interface FilmData {
  readonly version: typeof FILM_VERSION;
  /** The hole flown; absent on a tour. */
  readonly hole?: number;
  /** Origin of the course's frame, in whose plane the track lies. */
  readonly origin: Position;
  readonly track: Track;
  readonly chapters: readonly FilmChapter[];
  readonly cues: readonly Cue[];
}

/** The last of some things that have begun by a time; undefined before the first. */
export function begunBy<Timed extends { readonly seconds: number }>(things: readonly Timed[], seconds: number): Timed | undefined {
  let found: Timed | undefined;
  for (const thing of things) if (thing.seconds <= seconds + 1e-6) found = thing;
  return found;
}

/** The caption on screen at a time. */
export const cueAt = (cues: readonly Cue[], seconds: number): Cue | undefined =>
  cues.find(({ startSeconds, endSeconds }) => startSeconds <= seconds && seconds < endSeconds);

/** Ends a sentence, and a quotation that does. */
const SENTENCE_END = /[.!?…]["'”’)]?$/;

/**
 * Captions by the chapter they begin in, chapters without any left empty; what is said
 * before the first chapter belongs to it. A sentence stays whole, in the chapter it begins in.
 */
export function cuesByChapter(chapters: readonly { readonly seconds: number }[], cues: readonly Cue[]): Cue[][] {
  const sorted: Cue[][] = chapters.map(() => []);
  let at = 0;
  let whole = true;
  for (const cue of cues) {
    if (whole) at = Math.max(0, chapters.findLastIndex(({ seconds }) => seconds <= cue.startSeconds));
    sorted[at]?.push(cue);
    whole = SENTENCE_END.test(cue.text);
  }
  return sorted;
}
