/** What OSM's tags on a line of play say of its hole: number, par, stroke index, lengths. */
import { slugFrom } from "../../course/schema/features.ts";
import { metresFromYards, yardsFromMetres, type LengthUnit } from "../../geo/units.ts";

/** One number, or one each. */
export type Perhaps = number | { readonly men: number; readonly women: number };

export interface CardTags {
  readonly name: string | undefined;
  readonly par: Perhaps | undefined;
  /** OSM's `handicap`. */
  readonly strokeIndex: Perhaps | undefined;
  /** Printed lengths by tee set; the unit is undefined where the file does not say, as OSM's wiki does not. */
  readonly lengths: Readonly<Record<string, { readonly value: number; readonly unit: LengthUnit | undefined }>>;
  /** What could not be used, in words. */
  readonly faults: readonly string[];
}

const whole = (value: unknown, from: number, to: number): number | undefined => {
  const n = Number(typeof value === "string" ? value.trim() : value);
  return Number.isInteger(n) && n >= from && n <= to ? n : undefined;
};

const UNITS: Readonly<Record<string, LengthUnit | undefined>> = {
  "": undefined,
  m: "metres",
  metres: "metres",
  meters: "metres",
  yd: "yards",
  yds: "yards",
  yards: "yards",
};

/** @param tees the course's tee sets; OSM's colours are looked up among their ids and names */
export function cardTagsOf(
  tidy: ReadonlyMap<string, string | number | boolean>,
  name: string | undefined,
  tees: readonly { readonly id: string; readonly name: string }[],
): CardTags {
  const faults: string[] = [];
  const lengths: Record<string, { value: number; unit: LengthUnit | undefined }> = {};
  const number = (key: string, from: number, to: number): number | undefined => {
    const value = tidy.get(key);
    const read = value === undefined ? undefined : whole(value, from, to);
    if (value !== undefined && read === undefined)
      faults.push(`${key} is ${JSON.stringify(value)}: expected a whole number from ${from} to ${to}`);
    return read;
  };
  for (const [key, value] of tidy) {
    const [, what, colour] = /^(par|handicap|dist):(.+)$/.exec(key) ?? [];
    if (key === "dist" && tees.length !== 1)
      faults.push(`dist is ${JSON.stringify(value)} without saying from which tees: write it on the card by hand`);
    if (key !== "dist" && what === undefined) continue;
    if (what !== "dist" && (colour === "men" || colour === "women")) continue;
    const tee =
      key === "dist"
        ? tees.length === 1
          ? tees[0]
          : undefined
        : tees.find((one) => [one.id, slugFrom(one.name)].includes(slugFrom(colour!)));
    if (key === "dist" && tee === undefined) continue;
    if (tee === undefined)
      faults.push(`${key} is ${JSON.stringify(value)}, and the course has no tee set ${JSON.stringify(colour)}`);
    else if (what === "par" || what === "handicap") {
      if (String(value) !== String(tidy.get(what)))
        faults.push(
          `${key} is ${JSON.stringify(value)}: a page has ${what === "par" ? "par" : "strokeIndex"} for men and women, not for tees; write it by hand if it differs`,
        );
    } else {
      const found = /^(\d+(?:\.\d+)?)\s*([a-z]*)$/i.exec(String(value).trim());
      const unit = found?.[2]?.toLowerCase() ?? "";
      if (!found || !Object.hasOwn(UNITS, unit)) faults.push(`${key} is ${JSON.stringify(value)}, which is no length`);
      else lengths[tee.id] = { value: Number(found[1]), unit: UNITS[unit] };
    }
  }
  const perhaps = (key: string, from: number, to: number): Perhaps | undefined => {
    const [men, women] = [number(`${key}:men`, from, to), number(`${key}:women`, from, to)];
    return men !== undefined && women !== undefined ? { men, women } : number(key, from, to);
  };
  return {
    name: name?.trim().slice(0, 80),
    par: perhaps("par", 3, 6),
    strokeIndex: perhaps("handicap", 1, 18),
    lengths,
    faults,
  };
}

/** The card in whole yards. Lengths of unknown unit are left out, unless one is given for them. */
export function cardYards(
  { lengths }: CardTags,
  unit: LengthUnit | undefined,
): { card: Record<string, number>; unknown: string[] } {
  const card: Record<string, number> = {};
  const unknown: string[] = [];
  for (const [tee, { value, unit: stated }] of Object.entries(lengths)) {
    const own = stated ?? unit;
    if (own === undefined) {
      unknown.push(tee);
      continue;
    }
    const yards = Math.round(yardsFromMetres(own === "yards" ? metresFromYards(value) : value));
    if (yards >= 20 && yards <= 1200) card[tee] = yards;
  }
  return { card, unknown };
}
