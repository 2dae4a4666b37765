/** What data attributes hold that is more than one word, as it is written and as it is read. */
import type { Third } from "../measure/third.ts";
import type { ShotNumbers } from "./ground-data.ts";

function parsed(written: string): unknown {
  try {
    return JSON.parse(written);
  } catch {
    return undefined;
  }
}

/** A length, or the lengths that a total is of. */
export type Metres = number | readonly number[];

/** Metres of a figure of a fixed tee, or by tee set, to the millimetre: a coarser one could turn a whole unit. */
export const writeMetres = (metres: Metres | Readonly<Record<string, Metres>>): string =>
  JSON.stringify(metres, (_, value: unknown) => (typeof value === "number" ? Math.round(value * 1000) / 1000 : value));

/** The metres written for a tee set, or of a fixed tee; undefined for a tee set that has no such figure. */
export function metresFor(written: string, tee: string): Metres | undefined {
  const value = parsed(written);
  if (isMetres(value)) return value;
  if (typeof value !== "object" || value === null) return undefined;
  const entries: [string, unknown][] = Object.entries(value);
  const found = entries.find(([id]) => id === tee)?.[1];
  return isMetres(found) ? found : undefined;
}

const isMetres = (value: unknown): value is Metres =>
  typeof value === "number" ||
  (Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === "number"));

export const writeShot = (shot: ShotNumbers): string => JSON.stringify(shot);

/** Undefined where it does not hold three finite numbers. */
export function shotOf(written: string | null | undefined): ShotNumbers | undefined {
  const value = parsed(written ?? "");
  return Array.isArray(value) &&
    value.length === 3 &&
    value.every((one) => typeof one === "number" && Number.isFinite(one))
    ? (value as unknown as ShotNumbers)
    : undefined;
}

/** Six numbers apart by spaces. */
type Six = readonly [number, number, number, number, number, number];

function sixOf(written: string | null): Six | undefined {
  const numbers = (written ?? "").split(" ").map(Number);
  return numbers.length === 6 && numbers.every(Number.isFinite) && written !== ""
    ? (numbers as unknown as Six)
    : undefined;
}

/** A plate's place on the measuring plane: x of the sheet is `a·x + c·y + e`, y is `b·x + d·y + f`. */
export type Plane = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** @param rounded how the drawing writes a coordinate */
export const writePlane = ([a, b, c, d, e, f]: Plane, rounded: (value: number) => string): string =>
  [...[a, b, c, d].map((part) => part.toFixed(5)), ...[e, f].map(rounded)].join(" ");

/** Undefined where it does not hold six finite numbers. */
export const planeOf: (written: string | null) => Plane | undefined = sixOf;

/** Where a flag stands in its drawing when the hole is cut in each third. */
export type FlagPlaces = Readonly<Record<Third, readonly [x: number, y: number]>>;

/** @param rounded how the drawing writes a coordinate */
export const writeFlag = ({ front, middle, back }: FlagPlaces, rounded: (value: number) => string): string =>
  [...front, ...middle, ...back].map(rounded).join(" ");

/** Undefined where it does not hold six finite numbers. */
export function flagOf(written: string | null): FlagPlaces | undefined {
  const six = sixOf(written);
  return six && { front: [six[0], six[1]], middle: [six[2], six[3]], back: [six[4], six[5]] };
}
