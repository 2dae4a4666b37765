/** A guide's flyovers: flights with the page's words, made once for page, data and captions. */
import { cuesOf } from "../../flyover/captions.ts";
import { FILM_VERSION, type Cue, type FilmChapter, type FilmData } from "../../contract/film-data.ts";
import { groundOf, holeFilm, type HoleFilm } from "../../flyover/hole-film.ts";
import { tourOf } from "../../flyover/tour.ts";
import { trackOf } from "../../flyover/track.ts";
import type { Club } from "../../course/types.ts";
import type { MeasuredCourse, MeasuredHole, TeeFigures } from "../../measure/types.ts";
import { formatLength } from "../../tell/format.ts";
import { renderTip, shownTee } from "../../tell/tip.ts";
import { playerOfTee } from "../ground/players.ts";
import { otherLanguage } from "../language/language-view.ts";
import { tipWords } from "../text/tip-words.ts";
import { words as wordsOf } from "../language/words.ts";

/** Between poses, at most: fine enough to follow every turn of a hole within a few centimetres. */
const HOLE_STEP_SECONDS = 0.5;
/** A round is twenty times as long; half a metre between samples is not seen from a flight. */
const TOUR_STEP_SECONDS = 1;

/** A caption starts this long after the hole it belongs to. */
const LEAD_SECONDS = 1;

export interface HoleFlyover {
  /** The tee set it is flown from: the course's default, or the longest of the hole. */
  readonly tee: TeeFigures;
  readonly film: HoleFilm;
  readonly data: FilmData;
}

export interface RoundFlyover {
  readonly data: FilmData;
}

const holes = new WeakMap<MeasuredHole, HoleFlyover>();

export function holeFlyover(club: Club, course: MeasuredCourse, measured: MeasuredHole): HoleFlyover {
  const made = holes.get(measured) ?? makeHole(club, course, measured);
  holes.set(measured, made);
  return made;
}

const tipText = (club: Club, measured: MeasuredHole): string =>
  renderTip(measured, { units: club.units, idPrefix: "said", words: tipWords(club, measured.hole) }).text;

const filmed = (course: MeasuredCourse, measured: MeasuredHole, text: string): HoleFilm => {
  const tee = shownTee(measured, undefined);
  return holeFilm(measured, tee, text, playerOfTee(course.course, tee.tee).driveMetres, course.ground);
};

function makeHole(club: Club, course: MeasuredCourse, measured: MeasuredHole): HoleFlyover {
  const words = wordsOf(club.language).film;
  const film = filmed(course, measured, tipText(club, measured));
  return {
    tee: shownTee(measured, undefined),
    film,
    data: {
      version: FILM_VERSION,
      hole: measured.hole.number,
      origin: measured.frame.origin,
      track: trackOf(film.flight, HOLE_STEP_SECONDS),
      chapters: film.chapters.map(({ kind, seconds }): FilmChapter => ({
        kind,
        seconds: hundredths(seconds),
        title: words.chapters[kind],
      })),
      cues: film.cues.map((cue) => writtenCue(cue, otherLanguage(club, measured.hole, "tip"))),
    },
  };
}

const rounds = new WeakMap<MeasuredCourse, RoundFlyover>();

/** All holes in order; each begins by saying which it is. */
export function roundFlyover(club: Club, course: MeasuredCourse): RoundFlyover {
  const made = rounds.get(course) ?? makeRound(club, course);
  rounds.set(course, made);
  return made;
}

function makeRound(club: Club, course: MeasuredCourse): RoundFlyover {
  const words = wordsOf(club.language);
  const openings = course.holes.map((measured) => {
    const { number, name, par } = measured.hole;
    const length = formatLength(shownTee(measured, undefined).lengthMetres, club.units, words.tell.units).text;
    return words.film.holeBegins({
      hole: number,
      name,
      par: par.men === par.women ? par.men : `${par.men}/${par.women}`,
      length,
    });
  });
  const texts = course.holes.map((measured, i) => `${openings[i]!}\n${tipText(club, measured)}`);
  const tour = tourOf(
    course.holes.map((measured, i) => filmed(course, measured, texts[i]!).flight),
    groundOf(course.ground),
  );
  const starts = course.holes.map((_, i) => tour.parts.find(({ hole }) => hole === i)!.startSeconds);
  return {
    data: {
      version: FILM_VERSION,
      origin: course.frame.origin,
      track: trackOf(tour, TOUR_STEP_SECONDS),
      chapters: course.holes.map(({ hole }, i): FilmChapter => ({
        kind: "hole",
        seconds: hundredths(starts[i]!),
        title: words.holeTitle({ hole: hole.number, name: hole.name }),
      })),
      cues: course.holes.flatMap(({ hole }, i) => {
        // A line of the text is a caption of its own, so the opening's are the first.
        const opening = cuesOf(openings[i]!).length;
        return cuesOf(texts[i]!, starts[i]! + LEAD_SECONDS).map((cue, n) =>
          writtenCue(cue, n < opening ? undefined : otherLanguage(club, hole, "tip")),
        );
      }),
    },
  };
}

const hundredths = (seconds: number): number => Math.round(seconds * 100) / 100;

const writtenCue = ({ startSeconds, endSeconds, text }: Cue, language: string | undefined): Cue => ({
  startSeconds: hundredths(startSeconds),
  endSeconds: hundredths(endSeconds),
  text,
  ...(language === undefined ? {} : { language }),
});
