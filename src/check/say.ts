/** Figures and lists as messages print them. */
import { feetFromMetres, inUnit, type LengthUnit } from "../geo/units.ts";

export interface Say {
  length(metres: number): string;
  /** A height difference without its sign. */
  height(metres: number): string;
}

export const sayIn = (units: LengthUnit): Say => ({
  length: (metres) => `${Math.round(inUnit(metres, units))} ${units === "yards" ? "yd" : "m"}`,
  height: (metres) =>
    units === "yards" ? `${Math.round(Math.abs(feetFromMetres(metres)))} ft` : `${Math.abs(metres).toFixed(1)} m`,
});

/** `a`, `a and b`, `a, b and c`. */
export const list = (items: readonly string[], word = "and"): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} ${word} ${items[items.length - 1]!}`;

/** `1 hole`, `2 holes`. */
export const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? "" : "s"}`;
