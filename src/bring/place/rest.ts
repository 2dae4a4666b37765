/** All but lines of play to the pages they belong to: greens first, since what lies by a green is its hole's. Pure. */
import type { LeftOver } from "../left-over.ts";
import type { Candidate } from "../normalise/candidate.ts";
import { incomingOf, type Incoming } from "./incoming.ts";
import type { LinesPlaced } from "./lines.ts";
import type { Located } from "./locate.ts";
import { REACH_METRES, sortToHoles, type SortHole } from "./sort.ts";

export interface RestPlaced {
  readonly incoming: readonly Incoming[];
  readonly leftOver: readonly LeftOver[];
}

/**
 * What lies where, by the lines of play.
 *
 * @param aroundMetres from a line within which roads, paths, buildings and fences are the course's
 */
export function placeRest(
  { candidates, frame }: Located,
  { holes }: LinesPlaced,
  aroundMetres: number = REACH_METRES.works,
): RestPlaced {
  const take = (some: readonly Candidate[], among: readonly SortHole[]): RestPlaced => {
    const incoming: Incoming[] = [];
    const leftOver: LeftOver[] = [];
    sortToHoles(some, among, frame, aroundMetres).forEach((placings, i) => {
      const candidate = some[i]!;
      for (const placing of placings) {
        if (placing.to === "nowhere") {
          leftOver.push({ from: candidate.from, reason: placing.reason, candidate });
          continue;
        }
        const at = placing.to === "hole" ? placing.hole : "course";
        const key = candidate.key === undefined || placings.length === 1 ? candidate.key : `${candidate.key}@${at}`;
        incoming.push(incomingOf(candidate, at, { ...placing, key }));
      }
    });
    return { incoming, leftOver };
  };
  const greens = take(
    candidates.filter(({ kind }) => kind === "green"),
    holes,
  );
  const greenOf = new Map(greens.incoming.map(({ at, candidate }) => [at, candidate.geometry]));
  const rest = take(
    candidates.filter(({ kind }) => kind !== "green" && kind !== "line-of-play"),
    holes.map((hole) => ({ ...hole, green: greenOf.get(hole.number) ?? hole.green })),
  );
  return { incoming: [...greens.incoming, ...rest.incoming], leftOver: [...greens.leftOver, ...rest.leftOver] };
}

/** Of a role a hole has one of, which one of several it is for. */
const roleOf = ({ candidate: { kind, tags } }: Incoming): string | undefined =>
  kind === "green" || kind === "pin" ? kind : kind === "tee-marker" ? `tee marker ${tags["tee"]}` : undefined;

/**
 * The better claim first: one that says its hole, one that was matched, the nearer one; the last word is the
 * place itself, never the order of a file.
 */
function byClaim(a: Incoming, b: Incoming): number {
  const score = ({ candidate, guessed }: Incoming): number =>
    (candidate.hole !== undefined ? 2 : 0) + (guessed ? 0 : 1);
  const away = ({ lie }: Incoming): number => lie?.distanceMetres ?? 0;
  const place = ({ candidate }: Incoming): string => JSON.stringify(candidate.geometry.coordinates);
  return score(b) - score(a) || away(a) - away(b) || (place(a) < place(b) ? -1 : 1);
}

/** A hole has one green, one pin, one marker of each tee set: of several, the one with the best claim. */
export function onePerHole(incoming: readonly Incoming[]): RestPlaced {
  const best = new Map<string, Incoming>();
  const leftOver: LeftOver[] = [];
  const kept: Incoming[] = [];
  for (const one of incoming) {
    const role = roleOf(one);
    if (role === undefined || one.at === "course") {
      kept.push(one);
      continue;
    }
    const key = `${one.at} ${role}`;
    const before = best.get(key);
    const loser = before === undefined ? undefined : byClaim(one, before) < 0 ? before : one;
    if (loser !== one) best.set(key, one);
    if (loser)
      leftOver.push({
        from: loser.candidate.from,
        candidate: loser.candidate,
        reason: `hole ${one.at} has another ${role} with as good a claim or a better one, ${(loser === one ? before! : one).candidate.from}`,
      });
  }
  return { incoming: [...kept, ...best.values()], leftOver };
}
