/** What of a film belongs to a time, and what to a chapter. */
import type { Cue } from "../contract/film-data.ts";

/** The last of some things that have begun by a time; undefined before the first. */
export function begunBy<Timed extends { readonly seconds: number }>(
  things: readonly Timed[],
  seconds: number,
): Timed | undefined {
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
    if (whole)
      at = Math.max(
        0,
        chapters.findLastIndex(({ seconds }) => seconds <= cue.startSeconds),
      );
    sorted[at]?.push(cue);
    whole = SENTENCE_END.test(cue.text);
  }
  return sorted;
}
