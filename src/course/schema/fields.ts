/**
 * The building blocks of the content schemas. Every field says what it expects and shows a
 * line to type; nothing is coerced, and no field is taken that the schema does not name.
 */
import * as z from "zod";

/** Words of letters and digits joined by hyphens: ids, tee sets, course folders. */
export const SLUG = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** Control characters have no place in content; a tab or a line end only in running text. */
// eslint-disable-next-line no-control-regex
const ONE_LINE = /^[^\u0000-\u001f\u007f]*\S[^\u0000-\u001f\u007f]*$/;

/** A course of eighteen holes is the most a folder may hold. */
export const MOST_HOLES = 18;

/** Stands for the field's name in what to write, where one schema serves many fields. */
export const FIELD = "{field}";

/** The message of a field: what it expects and what to type. */
export const expects = (expected: string, write: string): { error: () => string } => ({
  error: () => `expected ${expected}. Write ${write}.`,
});

/**
 * A group of fields that takes no others. The message of an unknown field carries only the
 * known names; {@link findingsFromIssues} makes a sentence for each stranger from them.
 */
export function group<Shape extends z.ZodRawShape>(shape: Shape, expected: string) {
  const names = Object.keys(shape);
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? names.join("\n")
        : `expected ${expected} with the fields ${names.join(", ")}.`,
  });
}

/** One line of text, not empty. */
export const line = (expected: string, write: string, longest = 200) =>
  z.string(expects(expected, write)).max(longest).regex(ONE_LINE);

export const slug = (expected: string, write: string) => z.string(expects(expected, write)).max(60).regex(SLUG);

export const wholeNumber = (from: number, to: number, expected: string, write: string) =>
  z.number(expects(expected, write)).int().min(from).max(to);

export const numberWithin = (from: number, to: number, expected: string, write: string) =>
  z.number(expects(expected, write)).min(from).max(to);

/** A day as `2026-05-14`; days that are not on the calendar are refused. */
export const isoDate = (expected: string, write: string) => z.string(expects(expected, write)).refine(isDay);

const isDay = (text: string): boolean => {
  const date = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
};

/** A whole number, or one for men and one for women. */
export const wholeNumberPerGender = (from: number, to: number, field: string, example: number) => {
  const expected = `a whole number from ${from} to ${to}, or one each for men and women`;
  const write = `${field}: ${example} or ${field}: { men: ${example}, women: ${example} }`;
  const whole = (gender: string) =>
    wholeNumber(from, to, `a whole number from ${from} to ${to}`, `${gender}: ${example}`);
  return z.union(
    [wholeNumber(from, to, expected, write), group({ men: whole("men"), women: whole("women") }, "a group")],
    expects(expected, write),
  );
};

/** Rules of the check a club has silenced, each with its reason. */
export const silences = () =>
  z
    .array(
      group(
        {
          rule: slug("the name of a rule as its messages show it", "rule: card-against-ground"),
          because: line("the reason", 'because: "The card is reprinted in spring"', 500),
        },
        "a silenced rule",
      ),
      expects(
        "a list of silenced rules",
        'silence: and below it - { rule: card-against-ground, because: "The card is reprinted in spring" }',
      ),
    )
    .default([]);

/** Where to aim, in words: figures fill themselves in, and differ from tee to tee. */
export const aim = () =>
  line("where to aim in a few words, without figures", 'aim: "Left edge of the far bunker"', 60).regex(/^\D+$/);

/** Files are named from the course's own folder, so a guide never takes a file from elsewhere. */
export const fileName = (expected: string, write: string) => line(expected, write, 250);

/** An address that a browser opens as a page. */
export const isWebAddress = (text: string): boolean => {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  return url !== undefined && (url.protocol === "https:" || url.protocol === "http:");
};
