/** What is said about flyovers: a hole's, and the whole round's. */
import type { Chapter } from "../flyover/types.ts";
import type { FilmPlayerWords } from "../islands/flyover/words.ts";

export interface FilmWords {
  /** On a hole's page and on the map's: where it leads. */
  readonly flyHole: string;
  readonly flyRound: string;
  readonly title: (hole: number, name: string) => string;
  readonly tourTitle: (course: string) => string;
  /** What a page has, for search engines. */
  readonly description: (title: string) => string;
  readonly tourDescription: (course: string, holes: number) => string;
  /** Whose flight it is. */
  readonly flownFrom: (tee: string, unit: string) => string;
  readonly levelGround: string;
  readonly storyboard: string;
  readonly chapters: Readonly<Record<Chapter["kind"], string>>;
  readonly stillOf: (chapter: string, hole: number) => string;
  readonly transcript: string;
  readonly captionsFile: string;
  readonly holes: string;
  /** Said as a hole of the round begins. */
  readonly holeBegins: (hole: number, name: string, par: string, length: string) => string;
  readonly backToHole: (hole: number) => string;
  readonly backToMap: string;
  readonly previousFlight: string;
  readonly nextFlight: string;
  readonly player: FilmPlayerWords & {
    readonly label: string;
    readonly controls: string;
    readonly start: string;
    readonly startRound: string;
    readonly loading: string;
    readonly previous: string;
    readonly next: string;
    readonly place: string;
    readonly speed: string;
    readonly speedIs: (times: string) => string;
    readonly captions: string;
    readonly announce: string;
    readonly close: string;
    readonly keys: string;
    readonly view: (title: string) => string;
  };
}
