/** What a line of play says of its hole, as the fields of a page. Pure. */
import type { LengthUnit } from "../../geo/units.ts";
import type { Candidate } from "./candidate.ts";
import { cardYards } from "./card-tags.ts";

/** By the path of a field on the page, with dots: `card.white`. */
export type Fields = Readonly<Record<string, unknown>>;

export interface SaidOfHole {
  readonly name: string | undefined;
  readonly par: unknown;
  readonly strokeIndex: unknown;
  /** Whole yards by tee set. */
  readonly card: Readonly<Record<string, number>>;
  readonly notes: readonly string[];
}

/** What a line of play says, in the units of a page; lengths whose unit nobody knows are left out and asked for. */
export function saidBy(line: Candidate | undefined, distUnit: LengthUnit | undefined): SaidOfHole {
  const said = line?.card;
  if (line === undefined || said === undefined)
    return { name: undefined, par: undefined, strokeIndex: undefined, card: {}, notes: [] };
  const { card, unknown } = cardYards(said, distUnit);
  const ask =
    unknown.length === 0
      ? []
      : [
          `${line.from} gives lengths for ${unknown.join(", ")} without a unit, and OpenStreetMap sets none. Look whether they are yards or metres and say --dist-unit yards or --dist-unit metres; the card was left as it is.`,
        ];
  return {
    name: said.name,
    par: said.par,
    strokeIndex: said.strokeIndex,
    card,
    notes: [...ask, ...said.faults.map((fault) => `${line.from}: ${fault}.`)],
  };
}

export const fieldsOf = ({ name, par, strokeIndex, card }: SaidOfHole): Fields =>
  Object.fromEntries(
    Object.entries({
      name,
      par,
      strokeIndex,
      ...Object.fromEntries(Object.entries(card).map(([tee, yards]) => [`card.${tee}`, yards])),
    }).filter(([, value]) => value !== undefined),
  );
