/**
 * A golfer's full shots as a ladder of level carries, from the driver down. One carry of the
 * driver is enough: the others follow in proportion, and each may be replaced by one the
 * golfer knows.
 */
import { LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "../flight/family.ts";

/** Longest first. */
export const RUNG_IDS = [
  "driver",
  "fairway-wood",
  "hybrid",
  "long-iron",
  "mid-iron",
  "short-iron",
  "pitching-wedge",
  "sand-wedge",
] as const;

export type RungId = (typeof RUNG_IDS)[number];

/** Every rung but the driver: what is derived from it. */
export type DerivedRungId = Exclude<RungId, "driver">;

/**
 * Average carries by club on a professional men's tour, yards: published by the tour, read
 * in a golf magazine's reprint of 2013. Only their proportions to the driver are used.
 * Long irons are 3 and 4, mid irons 5 to 7, short irons 8 and 9, as the trade groups them.
 */
const TOUR_DRIVER_YARDS = 269;
const TOUR_YARDS: Readonly<Record<Exclude<DerivedRungId, "sand-wedge">, readonly number[]>> = {
  "fairway-wood": [243, 230],
  hybrid: [225],
  "long-iron": [212, 203],
  "mid-iron": [194, 183, 172],
  "short-iron": [160, 148],
  "pitching-wedge": [136],
};

/** No table of the tour has it: common practice, no source. */
const SAND_WEDGE_SHARE = 0.4;

const shareOf = (yards: readonly number[]): number =>
  yards.reduce((sum, one) => sum + one, 0) / yards.length / TOUR_DRIVER_YARDS;

/** What each rung carries as a share of the driver's carry: the mean of its clubs. */
export const SHARE_OF_DRIVER: Readonly<Record<RungId, number>> = {
  driver: 1,
  "fairway-wood": shareOf(TOUR_YARDS["fairway-wood"]),
  hybrid: shareOf(TOUR_YARDS.hybrid),
  "long-iron": shareOf(TOUR_YARDS["long-iron"]),
  "mid-iron": shareOf(TOUR_YARDS["mid-iron"]),
  "short-iron": shareOf(TOUR_YARDS["short-iron"]),
  "pitching-wedge": shareOf(TOUR_YARDS["pitching-wedge"]),
  "sand-wedge": SAND_WEDGE_SHARE,
};

/** Lengths a golfer has typed over the derived ones, metres of level carry. */
export type OwnLengths = Readonly<Partial<Record<DerivedRungId, number>>>;

export interface Rung {
  readonly id: RungId;
  /** The golfer's own where there is one, else the derived; undefined where neither is known. */
  readonly carryMetres: number | undefined;
  /** From the driver's carry; undefined without one, and below the shortest full stroke answered for. */
  readonly derivedMetres: number | undefined;
  /** Whether it stands as the golfer gave it. */
  readonly own: boolean;
}

/** Whether a carry is one that strokes are answered for: 40 to 340 yd. */
export const isCarryLength = (metres: number): boolean =>
  metres >= SHORTEST_CARRY_METRES && metres <= LONGEST_CARRY_METRES;

/**
 * The whole ladder, longest club first. The driver's own rung is what the golfer gave.
 *
 * @param driverMetres level carry of the driver; undefined where it is not known
 */
export function ladderOf(driverMetres: number | undefined, own: OwnLengths): readonly Rung[] {
  return RUNG_IDS.map((id): Rung => {
    if (id === "driver")
      return { id, carryMetres: driverMetres, derivedMetres: undefined, own: driverMetres !== undefined };
    const derived = driverMetres === undefined ? undefined : SHARE_OF_DRIVER[id] * driverMetres;
    const derivedMetres = derived !== undefined && isCarryLength(derived) ? derived : undefined;
    return { id, carryMetres: own[id] ?? derivedMetres, derivedMetres, own: own[id] !== undefined };
  });
}

/** Two rungs of which the shorter club carries at least as far as the longer. */
export interface OutOfOrder {
  readonly longer: RungId;
  readonly shorter: RungId;
}

/**
 * Each rung that carries as far as one above it, beside the nearest such; only where one of the two was
 * given by hand.
 */
export function outOfOrder(ladder: readonly Rung[]): readonly OutOfOrder[] {
  return ladder.flatMap((shorter, i): OutOfOrder[] => {
    const { carryMetres } = shorter;
    if (carryMetres === undefined) return [];
    const above = ladder
      .slice(0, i)
      .findLast((longer) => longer.carryMetres !== undefined && carryMetres >= longer.carryMetres);
    return above === undefined ? [] : [{ longer: above.id, shorter: shorter.id }];
  });
}

/** What the longest stroke after the drive carries: the driver stays on the tee. */
export const longestAfter = (driverMetres: number | undefined, own: OwnLengths): number | undefined =>
  knownRungs(ladderOf(driverMetres, own).filter(({ id }) => id !== "driver"))[0]?.carryMetres;

/** A rung whose carry is known: what can be chosen from. */
export interface KnownRung {
  readonly id: RungId;
  readonly carryMetres: number;
}

/** The rungs whose carry is known, longest carry first. */
export const knownRungs = (ladder: readonly Rung[]): readonly KnownRung[] =>
  ladder
    .flatMap(({ id, carryMetres }) => (carryMetres === undefined ? [] : [{ id, carryMetres }]))
    .sort((a, b) => b.carryMetres - a.carryMetres);
