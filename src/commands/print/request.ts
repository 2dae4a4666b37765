/** What somebody asks of `npm run paper`, read and held against the content. */
import { guideLanguageOf } from "../../course/guide-languages.ts";
import type { Gender } from "../../course/types.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { playingHandicap, roundHalfUp } from "../../measure/handicap.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { MOST_TEES, usualTees } from "../../paper/book.ts";
import { MOST_PLAYERS, type CardPlayer } from "../../paper/card.ts";
import { isSheet, SHEETS, type SheetName } from "../../paper/sizes.ts";
import { LANGUAGES, words as wordsOf, type Words } from "../../site/language/words.ts";
import { CommandError } from "../options.ts";

const list = (names: readonly string[]): string => names.join(", ");

/** The course meant: the only one, or the one named. */
export function readCourse(courses: readonly MeasuredCourse[], wanted: string | undefined): MeasuredCourse {
  const ids = courses.map(({ course }) => course.id);
  const found =
    wanted === undefined
      ? courses.length === 1
        ? courses[0]
        : undefined
      : courses.find(({ course }) => course.id === wanted);
  if (found) return found;
  throw new CommandError(
    wanted === undefined
      ? `The club has ${courses.length} courses: say which. Write --course ${ids.join(" or --course ")}.`
      : `There is no course ${JSON.stringify(wanted)}. Write --course ${ids.join(" or --course ")}.`,
  );
}

/** Tee sets by id, comma between; the usual ones when left out. */
export function readTees(measured: MeasuredCourse, wanted: string | undefined, most = MOST_TEES): string[] {
  if (wanted === undefined) return usualTees(measured);
  const known = measured.course.tees.map(({ id }) => id);
  const asked = wanted
    .split(",")
    .map((id) => id.trim())
    .filter((id) => id !== "");
  const strange = asked.filter((id) => !known.includes(id));
  if (strange.length > 0 || asked.length === 0) {
    throw new CommandError(
      `--tees is ${JSON.stringify(wanted)}: ${strange.length > 0 ? `there is no tee set ${list(strange)}` : "no tee set is named"}. Choose from ${list(known)}. Write --tees ${known.slice(0, 2).join(",")}.`,
    );
  }
  if (new Set(asked).size > most)
    throw new CommandError(
      `--tees names ${new Set(asked).size} tee sets, and a page has room for ${most}. Write --tees ${known.slice(0, most).join(",")}.`,
    );
  return known.filter((id) => asked.includes(id));
}

export function readUnit(wanted: string | undefined, usual: LengthUnit): LengthUnit {
  if (wanted === undefined) return usual;
  if (wanted !== "yards" && wanted !== "metres")
    throw new CommandError(`--unit is ${JSON.stringify(wanted)}: expected yards or metres. Write --unit metres.`);
  return wanted;
}

export function readWords(wanted: string | undefined, usual: string): Words {
  if (wanted !== undefined && guideLanguageOf(wanted) === undefined)
    throw new CommandError(
      `--language is ${JSON.stringify(wanted)}: there are words in ${list(LANGUAGES)}. Write --language ${LANGUAGES[0]}.`,
    );
  return wordsOf(wanted ?? usual);
}

export function readSheet(
  option: string,
  wanted: string | undefined,
  allowed: readonly SheetName[],
): SheetName | undefined {
  if (wanted === undefined) return undefined;
  const name = wanted.toLowerCase();
  if (!isSheet(name) || !allowed.includes(name))
    throw new CommandError(
      `${option} is ${JSON.stringify(wanted)}: expected ${list(allowed)}. Write ${option} ${allowed[0]}.`,
    );
  return name;
}

/** A handicap as players write it: 14, 8.7, +2. */
function readHandicap(text: string): number {
  const parts = /^(\+?)(\d{1,2}(?:\.\d+)?)$/.exec(text.trim());
  if (!parts)
    throw new CommandError(
      `--course-handicap holds ${JSON.stringify(text)}: expected whole strokes, with a plus before a plus player's. Write --course-handicap 14 or --course-handicap 14,+2.`,
    );
  return parts[1] === "+" ? -Number(parts[2]) : Number(parts[2]);
}

export interface PlayersAsked {
  readonly players: readonly CardPlayer[];
  readonly allowance: number | undefined;
}

/**
 * Players of a card by their Course Handicaps, whole or not yet rounded; genders in the same order, the last
 * for the rest.
 */
export function readPlayers(
  handicaps: string | undefined,
  genders: string | undefined,
  allowance: string | undefined,
): PlayersAsked {
  const percent = allowance === undefined ? undefined : Number(allowance);
  if (percent !== undefined && !(percent > 0 && percent <= 200))
    throw new CommandError(
      `--allowance is ${JSON.stringify(allowance)}: expected percent of the Course Handicap. Write --allowance 95.`,
    );
  if (handicaps === undefined) {
    if (allowance !== undefined || genders !== undefined)
      throw new CommandError(
        "--allowance and --gender say how strokes are received, and no handicap is given. Write --course-handicap 14.",
      );
    return { players: [], allowance: undefined };
  }
  const asked = handicaps.split(",").map(readHandicap);
  if (asked.length > MOST_PLAYERS)
    throw new CommandError(
      `--course-handicap holds ${asked.length} players, and a card has rows for ${MOST_PLAYERS}. Make another card for the rest.`,
    );
  const known = (genders ?? "men").split(",").map((gender): Gender => {
    if (gender !== "men" && gender !== "women")
      throw new CommandError(
        `--gender is ${JSON.stringify(genders)}: expected men or women, whose stroke indexes count. Write --gender men or --gender men,women.`,
      );
    return gender;
  });
  return {
    players: asked.map((handicap, i) => ({
      handicap: percent === undefined ? roundHalfUp(handicap) : playingHandicap(handicap, percent),
      gender: known[i] ?? known[known.length - 1]!,
    })),
    allowance: percent,
  };
}

/** Sheets of a kind of paper. */
export const BOOKLET_SHEETS = ["a4", "letter"] as const satisfies readonly SheetName[];
export const SIGN_SHEETS = Object.keys(SHEETS) as SheetName[];
