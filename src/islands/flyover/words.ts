/** What the flyover's player says after it has been asked for; the rest stands on its page. */
import type { Failure } from "../map/failure.ts";

export interface FilmPlayerWords {
  readonly play: string;
  readonly pause: string;
  /** With {time}, {length} and {chapter} left for the browser to fill in. */
  readonly placeIs: string;
  /** `data` and `webgl` also stand on the page, for the time before these words are there. */
  readonly failed: Readonly<Record<Failure, string>>;
}
