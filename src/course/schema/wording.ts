/** How messages name what they found. */
import { nearestNames } from "./nearest.ts";

const LONGEST_QUOTE = 40;

/** A text in quotes, shortened, line ends made visible. */
export const quote = (text: string): string =>
  JSON.stringify(text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text);

/** A value as a message shows it: `"four"`, `3.5`, `a list`. */
export function shown(value: unknown): string {
  if (value === undefined) return "missing";
  if (value === null) return "empty";
  if (typeof value === "string") return value === "" ? "an empty text" : quote(value);
  if (typeof value === "number" || typeof value === "boolean" || typeof value === "bigint") return String(value);
  if (Array.isArray(value)) return value.length === 0 ? "an empty list" : "a list";
  return "a group of fields";
}

/** Words in a row: `a, b or c`. */
export function oneOf(names: readonly string[], joint = "or"): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} ${joint} ${names[names.length - 1]}`;
}

/** What to type instead of a name that does not exist: the nearest valid ones, or all of them. */
export function insteadOf(typed: string, valid: readonly string[]): string {
  const near = nearestNames(typed, valid);
  if (near.length > 0) return `Did you mean ${oneOf(near)}?`;
  return valid.length === 0 ? "There is none to choose from." : `Write ${oneOf(valid)}.`;
}

/** `1 position`, `2 positions`; `2 entries` where the plural is not made with an s. */
export const count = (n: number, noun: string, plural = `${noun}s`): string => `${n} ${n === 1 ? noun : plural}`;

/** `5, 7 to 9 and 12`. */
export function numbersIn(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const n of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === n - 1) last[1] = n;
    else runs.push([n, n]);
  }
  const words = runs.flatMap(([a, b]) => (b - a < 2 ? (a === b ? [`${a}`] : [`${a}`, `${b}`]) : [`${a} to ${b}`]));
  return words.join(", ").replace(/, ([^,]*)$/, " and $1");
}
