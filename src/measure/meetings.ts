/**
 * One number for a stretch of hazard wherever one stands: a burn that crosses twice keeps
 * its second crossing the second, also from a tee set beyond the first.
 *
 * Stations start at the tee, so they cannot be compared between tee sets; what is still to
 * play from a place to the green can.
 */
import type { HazardFigures, Meetings } from "./types.ts";

type Interval = readonly [from: number, to: number];

/** A stretch by what is still to play from its near and far end: greater first. */
const toPlay = ({ stationMetres: [from, to] }: HazardFigures, lengthMetres: number): Interval => [
  lengthMetres - from,
  lengthMetres - to,
];

/** How far two intervals lie over each other; below 0, how far they lie apart. */
const overlap = (a: Interval, b: Interval): number => Math.min(a[0], b[0]) - Math.max(a[1], b[1]);

/** A list of hazards on one way to play, and how long that is. */
export interface Seen {
  readonly lengthMetres: number;
  readonly hazards: readonly HazardFigures[];
}

/**
 * Where hazards meet the corridor on several ways to play one hole. The way that sees a
 * hazard most often counts, the earlier of equals; what another way meets and this one
 * does not is added.
 */
export function meetingsOf(ways: readonly Seen[]): Meetings {
  const byId = new Map<string, Interval[][]>();
  for (const { lengthMetres, hazards } of ways) {
    const here = new Map<string, Interval[]>();
    for (const hazard of hazards) {
      if (hazard.inCorridor) here.set(hazard.id, [...(here.get(hazard.id) ?? []), toPlay(hazard, lengthMetres)]);
    }
    for (const [id, intervals] of here) byId.set(id, [...(byId.get(id) ?? []), intervals]);
  }
  return new Map(
    [...byId].map(([id, seen]) => {
      const most = seen.reduce((best, one) => (one.length > best.length ? one : best));
      const all = [...most];
      for (const interval of seen.flat()) {
        if (all.every((known) => overlap(known, interval) < 0)) all.push(interval);
      }
      return [id, all.sort((a, b) => b[0] - a[0])];
    }),
  );
}

/**
 * Hazards with their stretches numbered as the hole numbers them. Several stretches of one
 * hazard keep their order and never share a number.
 */
export function numbered(
  hazards: readonly HazardFigures[],
  lengthMetres: number,
  meetings: Meetings,
): HazardFigures[] {
  const numbers = new Map<HazardFigures, number>();
  const ofId = new Map<string, HazardFigures[]>();
  for (const hazard of hazards) if (hazard.inCorridor) ofId.set(hazard.id, [...(ofId.get(hazard.id) ?? []), hazard]);
  for (const [id, own] of ofId) {
    const known = meetings.get(id) ?? [];
    const ordered = [...own].sort((a, b) => a.stationMetres[0] - b.stationMetres[0]);
    let least = 1;
    ordered.forEach((hazard, i) => {
      const interval = toPlay(hazard, lengthMetres);
      const open = known
        .map((one, k) => ({ number: k + 1, by: overlap(one, interval) }))
        .filter(({ number }) => number >= least && known.length - number >= ordered.length - 1 - i);
      const best = open.reduce<{ number: number; by: number } | undefined>(
        (a, b) => (a && a.by >= b.by ? a : b),
        undefined,
      );
      const number = best?.number ?? least;
      numbers.set(hazard, number);
      least = number + 1;
    });
  }
  return hazards.map((hazard) => {
    const number = numbers.get(hazard);
    if (number === undefined) return hazard;
    return { ...hazard, stretch: number, stretches: Math.max(meetings.get(hazard.id)?.length ?? 1, number) };
  });
}
