/**
 * Reads what the build wrote and the browser fetched: a value is what its type says, or a
 * fault names the place. Small, because it travels with a page. A reader gives the value back
 * as it is, with whatever else is in it, so that a build may add to what it writes.
 */

/** What came is not what this build's pages read: a stale or a damaged file. */
export class UnreadableData extends Error {
  constructor(at: string, found: unknown, expected: string) {
    super(
      `${at} is ${shown(found)}, not ${expected}. Reload the page; where that does not help, build the guide anew.`,
    );
    this.name = "UnreadableData";
  }
}

/** @throws UnreadableData naming `at`: file and place in it, `hole.json tees[0].marker` */
export type Read<T> = (value: unknown, at: string) => T;

const MOST_SHOWN = 40;

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? String(value);
  return text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}…` : text;
}

const simple =
  <T>(is: (value: unknown) => value is T, expected: string): Read<T> =>
  (value, at) => {
    if (!is(value)) throw new UnreadableData(at, value, expected);
    return value;
  };

export const number = simple(
  (value): value is number => typeof value === "number" && Number.isFinite(value),
  "a number",
);
export const text = simple((value): value is string => typeof value === "string", "a text");
export const truth = simple((value): value is boolean => typeof value === "boolean", "true or false");

const anObject = simple(
  (value): value is Record<string, unknown> => typeof value === "object" && value !== null && !Array.isArray(value),
  "an object",
);
const aList = simple((value): value is unknown[] => Array.isArray(value), "a list");

export const oneOf = <const T extends string | number | true>(...allowed: readonly T[]): Read<T> =>
  simple(
    (value): value is T => allowed.some((one) => one === value),
    allowed.map((one) => JSON.stringify(one)).join(" or "),
  );

/** A part that may be left out. */
export const maybe =
  <T>(one: Read<T>): Read<T | undefined> =>
  (value, at) =>
    value === undefined ? undefined : one(value, at);

export const orNull =
  <T>(one: Read<T>): Read<T | null> =>
  (value, at) =>
    value === null ? null : one(value, at);

/** @param least how many there are at least */
export const listOf =
  <T>(one: Read<T>, least = 0): Read<readonly T[]> =>
  (value, at) => {
    const list = aList(value, at);
    if (list.length < least) throw new UnreadableData(at, value, `a list of at least ${least}`);
    list.forEach((part, i) => one(part, `${at}[${i}]`));
    return list as readonly T[];
  };

/** A list with a meaning to each of its places. */
export const tuple =
  <T extends readonly unknown[]>(...parts: { readonly [K in keyof T]: Read<T[K]> }): Read<T> =>
  (value, at) => {
    const list = aList(value, at);
    if (list.length !== parts.length) throw new UnreadableData(at, value, `a list of ${parts.length}`);
    parts.forEach((part, i) => part(list[i], `${at}[${i}]`));
    return list as unknown as T;
  };

/** Values by names that the content gives. */
export const byName =
  <T>(one: Read<T>): Read<Readonly<Record<string, T>>> =>
  (value, at) => {
    const named = anObject(value, at);
    for (const [name, part] of Object.entries(named)) one(part, `${at}.${name}`);
    return named as Readonly<Record<string, T>>;
  };

/** Every part of a type: one that it gets and its reader lacks does not compile. */
export const object = <T extends object>(parts: { readonly [K in keyof T]-?: Read<T[K]> }): Read<T> => {
  const all = Object.entries<Read<unknown>>(parts);
  return (value, at) => {
    const named = anObject(value, at);
    for (const [name, part] of all) part(named[name], `${at}.${name}`);
    return named as T;
  };
};

/**
 * A whole file: its version first, since the rest of another version cannot be told from damage.
 *
 * @param file its name, for the fault
 */
export const file =
  <T extends { readonly version: number }>(name: string, version: T["version"], whole: Read<T>) =>
  (value: unknown): T => {
    const found = anObject(value, name)["version"];
    if (found !== version)
      throw new UnreadableData(`The version of ${name}`, found, `${version}, which this page reads`);
    return whole(value, name);
  };
