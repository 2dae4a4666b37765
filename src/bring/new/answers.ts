/** What must be known of a new club: each answer read from what somebody typed, or refused with what to type. */
import { slugFrom } from "../../course/schema/features.ts";
import { quote } from "../../course/schema/wording.ts";
import type { LengthUnit } from "../../geo/units.ts";
import { positionFrom } from "./position.ts";

/** A tee set to begin with. */
export interface NewTee {
  readonly id: string;
  readonly name: string;
  /** `#rrggbb` */
  readonly colour: string;
}

/** What a new club's folder is made from. */
export interface NewClub {
  readonly name: string;
  readonly course: string;
  readonly holes: 9 | 18;
  /** Longest first; at least one. */
  readonly tees: readonly NewTee[];
  readonly units: LengthUnit;
  /** Where the first tee stands: longitude, latitude. */
  readonly at: readonly [longitude: number, latitude: number];
}

/** An answer that cannot be used: what is wrong, then what to type. */
export class AnswerError extends Error {
  override readonly name = "AnswerError";
}

export type Question = "name" | "course" | "holes" | "tees" | "units" | "at";

/** As typed. */
export type Answers = Readonly<Partial<Record<Question, string>>>;

/** In the order they are asked. */
export const QUESTIONS: readonly { readonly key: Question; readonly ask: string }[] = [
  { key: "name", ask: "The club's name" },
  { key: "course", ask: "The course's name" },
  { key: "holes", ask: "Holes, 9 or 18" },
  { key: "tees", ask: "Tee sets with their colours, longest first" },
  { key: "units", ask: "Distances in yards or metres" },
  { key: "at", ask: "Where the first tee is, as a map gives it (56.5012, -9.0123, or the map's share link)" },
];

/** Common words for tees, so that a colour need not be looked up. */
const COLOURS: Readonly<Record<string, string>> = {
  black: "#2b2b2b",
  blue: "#2f5d8a",
  gold: "#c9a227",
  green: "#3f7d3a",
  orange: "#d9772b",
  purple: "#6a4c93",
  red: "#b3261e",
  silver: "#a9b0b5",
  white: "#f4f4f0",
  yellow: "#e0b400",
};

const DEFAULT_TEES = "White, Yellow, Red";

/** What an empty answer stands for, given the answers before it; undefined where there must be one. */
export function defaultAnswer(key: Question, before: Answers): string | undefined {
  const defaults: Readonly<Record<Question, string | undefined>> = {
    name: undefined,
    course: before.name,
    holes: "18",
    tees: DEFAULT_TEES,
    units: "yards",
    at: undefined,
  };
  return defaults[key];
}

const name = (what: string, typed: string): string => {
  const trimmed = typed.trim();
  // eslint-disable-next-line no-control-regex
  if (trimmed === "" || trimmed.length > 200 || /[\u0000-\u001f\u007f]/.test(trimmed))
    throw new AnswerError(
      `The ${what}'s name is ${quote(typed)}: expected one line of text. Write for example ${what === "club" ? '--name "Our Golf Club"' : '--course "Our Links"'}.`,
    );
  return trimmed;
};

const holes = (typed: string): 9 | 18 => {
  const count = typed.trim();
  if (count !== "9" && count !== "18")
    throw new AnswerError(`The number of holes is ${quote(typed)}: expected 9 or 18. Write --holes 18.`);
  return count === "9" ? 9 : 18;
};

const units = (typed: string): LengthUnit => {
  const unit = typed.trim();
  if (unit !== "yards" && unit !== "metres")
    throw new AnswerError(`The unit is ${quote(typed)}: expected yards or metres. Write --units yards.`);
  return unit;
};

/** `Blue:#2f5d8a, White` */
export function readTees(typed: string): NewTee[] {
  const write = 'Write --tees "Blue:#2f5d8a,White:#f4f4f0", longest first.';
  const tees = typed.split(",").map((part): NewTee => {
    const [written = "", colour, ...more] = part.split(":").map((piece) => piece.trim());
    const id = slugFrom(written);
    if (id === "" || written.length > 60 || more.length > 0)
      throw new AnswerError(
        `A tee set is ${quote(part.trim())}: expected a name and a colour with a colon between. ${write}`,
      );
    const known = colour ?? COLOURS[written.toLowerCase()];
    if (known === undefined)
      throw new AnswerError(
        `The ${written} tees have no colour. Write ${written}:#c9a227 with six digits of your own.`,
      );
    if (!/^#[0-9a-fA-F]{6}$/.test(known))
      throw new AnswerError(
        `The colour of the ${written} tees is ${quote(known)}: expected # and six digits 0 to 9 or letters a to f. ${write}`,
      );
    return { id, name: written, colour: known.toLowerCase() };
  });
  tees.forEach(({ id, name: own }, i) => {
    if (tees.findIndex((tee) => tee.id === id) < i) throw new AnswerError(`The ${own} tees are named twice. ${write}`);
  });
  return tees;
}

/** A position as people write it or copy it from a map. */
export function readPosition(typed: string): readonly [longitude: number, latitude: number] {
  const read = positionFrom(typed);
  if (typeof read === "string")
    throw new AnswerError(
      `The position ${quote(typed)} ${read}. Write --at "56.5012, -9.0123", latitude first, south and west with a minus; degrees and minutes or a map's share link do too.`,
    );
  return [read.longitude, read.latitude];
}

/** One answer on its own, so that whoever typed it can be asked again. @throws AnswerError */
export function checkAnswer(key: Question, typed: string): void {
  READERS[key](typed);
}

const READERS = {
  name: (typed: string) => name("club", typed),
  course: (typed: string) => name("course", typed),
  holes,
  tees: readTees,
  units,
  at: readPosition,
} as const satisfies Readonly<Record<Question, (typed: string) => unknown>>;

/**
 * Asks for what is missing, again where an answer cannot be used; an empty answer takes
 * what stands in brackets.
 */
export async function askFor(
  given: Answers,
  question: (text: string) => Promise<string>,
  say: (text: string) => void,
): Promise<Record<Question, string>> {
  const answers: Partial<Record<Question, string>> = { ...given };
  for (const { key, ask } of QUESTIONS) {
    const standing = defaultAnswer(key, answers);
    while (answers[key] === undefined) {
      const typed =
        (await question(`${ask}${standing === undefined ? "" : ` [${standing}]`}: `)).trim() || (standing ?? "");
      try {
        checkAnswer(key, typed);
        answers[key] = typed;
      } catch (error) {
        if (!(error instanceof AnswerError)) throw error;
        say(error.message);
      }
    }
  }
  return answers as Record<Question, string>;
}

/** All answers together. @throws AnswerError */
export const readAnswers = (answers: Readonly<Record<Question, string>>): NewClub => ({
  name: READERS.name(answers.name),
  course: READERS.course(answers.course),
  holes: READERS.holes(answers.holes),
  tees: READERS.tees(answers.tees),
  units: READERS.units(answers.units),
  at: READERS.at(answers.at),
});
