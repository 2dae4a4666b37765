/** What opening a map takes and gives, whichever map it is. */
import type { Golfer } from "./golfer.ts";
import type { MapFailure } from "./failure.ts";
import type { Speech } from "./words.ts";

export interface OpenMap {
  /** The golfer changed tee or unit. */
  setGolfer(golfer: Golfer): void;
  /** Puts the keyboard on the map. */
  focus(): void;
}

export interface OpenMapInput {
  readonly slot: HTMLElement;
  /** As it came: the map reads it. */
  readonly data: unknown;
  /** Where the data came from: addresses within it are relative to it. */
  readonly address: URL;
  readonly golfer: Golfer;
  readonly speech: Speech;
  /** Families as CSS knows them, for names on the map. */
  readonly fonts: readonly string[];
  /** Aborted when the map is not wanted any more, still loading or open: then all of it goes. */
  readonly signal: AbortSignal;
  readonly close: () => void;
  readonly fail: (failure: MapFailure) => void;
}
