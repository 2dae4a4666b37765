/** A part of a film: which moments its frames show, and the captions that belong to it. */
import type { Cue } from "../contract/film-data.ts";

export interface Cut {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

/** Times of a cut's frames, seconds of the whole film: at its start, and evenly on; at least one. */
export function frameTimes({ fromSeconds, toSeconds }: Cut, framesPerSecond: number): number[] {
  const count = Math.max(1, Math.round((toSeconds - fromSeconds) * framesPerSecond));
  return Array.from({ length: count }, (_, i) => fromSeconds + i / framesPerSecond);
}

/** The captions shown in a cut, on its own clock; what began before it begins with it. */
export const cutCues = (cues: readonly Cue[], { fromSeconds, toSeconds }: Cut): Cue[] =>
  cues
    .filter(({ startSeconds, endSeconds }) => startSeconds < toSeconds && endSeconds > fromSeconds)
    .map(({ startSeconds, endSeconds, text }) => ({
      startSeconds: Math.max(0, startSeconds - fromSeconds),
      endSeconds: Math.min(toSeconds, endSeconds) - fromSeconds,
      text,
    }));
