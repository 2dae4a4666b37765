/**
 * What the player fetches: `flyover.json` beside a hole's page, `tour.json` beside a
 * course's. Words are the page's own, put in where the data is made.
 */
import type { Position } from "../geo/position.ts";
import { file, listOf, maybe, number, object, oneOf, text, tuple, UnreadableData, type Read } from "./reading.ts";

/** Raised when a reader of the older shape could misread the newer one. */
export const FILM_VERSION = 1;

/** A flight in numbers that compress well: `src/flyover/track.ts` writes and reads it. */
export interface Track {
  readonly stepSeconds: number;
  /** East, north and height in centimetres; bearing and downward angle in hundredths of a degree. */
  readonly east: readonly number[];
  readonly north: readonly number[];
  readonly height: readonly number[];
  readonly bearing: readonly number[];
  readonly down: readonly number[];
}

/** A caption and when it is shown. */
export interface Cue {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly text: string;
  /** BCP 47 tag, where it is in another language than the captions around it. */
  readonly language?: string;
}

/** A place in the film one can step to. */
export interface FilmChapter {
  readonly seconds: number;
  readonly title: string;
  readonly kind: "tee" | "landing" | "approach" | "green" | "hole";
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

const column = listOf(number, 1);
const position: Read<Position> = tuple(number, number);

const wholeTrack = object<Track>({
  stepSeconds: number,
  east: column,
  north: column,
  height: column,
  bearing: column,
  down: column,
});

/** A column shorter than the others would end the flight in the air. */
const track: Read<Track> = (value, at) => {
  const read = wholeTrack(value, at);
  const [first, ...others] = [read.east, read.north, read.height, read.bearing, read.down] as const;
  others.forEach((one) => {
    if (one.length !== first.length)
      throw new UnreadableData(
        at,
        others.map(({ length }) => length),
        `five columns of ${first.length}`,
      );
  });
  return read;
};

/** @throws UnreadableData when it is of another version, or damaged */
export const readFilmData = file<FilmData>(
  "the film",
  FILM_VERSION,
  object<FilmData>({
    version: oneOf(FILM_VERSION),
    hole: maybe(number),
    origin: position,
    track,
    chapters: listOf(
      object<FilmChapter>({
        seconds: number,
        title: text,
        kind: oneOf("tee", "landing", "approach", "green", "hole"),
      }),
    ),
    cues: listOf(object<Cue>({ startSeconds: number, endSeconds: number, text, language: maybe(text) })),
  }),
);
