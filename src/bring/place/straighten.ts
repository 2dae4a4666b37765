/** Lines of par 3 holes, which are measured straight from tee to green. Pure. */
import type { Incoming } from "./incoming.ts";
import type { Candidate } from "../normalise/candidate.ts";

const isThree = (par: unknown): boolean =>
  par === 3 || (typeof par === "object" && par !== null && Object.values(par).every((one) => one === 3));

/** @param parOf the par a page has, where it is the club's own */
export function straightenThrees(
  incoming: readonly Incoming[],
  parOf: (hole: number) => unknown,
): { incoming: Incoming[]; notes: string[] } {
  const notes: string[] = [];
  const straight = incoming.map((one): Incoming => {
    const { candidate, at } = one;
    const { geometry, card } = candidate;
    if (
      candidate.kind !== "line-of-play" ||
      typeof at !== "number" ||
      geometry.type !== "LineString" ||
      geometry.coordinates.length <= 2
    )
      return one;
    if (!isThree(card?.par ?? parOf(at))) return one;
    notes.push(
      `Hole ${at} is a par 3, so its line of play was made straight: ${geometry.coordinates.length - 2} of its positions lay between tee and green.`,
    );
    const ends: Candidate = {
      ...candidate,
      geometry: { type: "LineString", coordinates: [geometry.coordinates[0]!, geometry.coordinates.at(-1)!] },
    };
    return { ...one, candidate: ends };
  });
  return { incoming: straight, notes };
}
