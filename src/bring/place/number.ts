/**
 * Numbers for lines of play that do not say theirs, by the walk: a round goes from each
 * green to a tee near by. Pure. What comes out is a proposal, marked so.
 */
import type { Point } from "../../geo/position.ts";
import { distanceMetres } from "../../geo/vector.ts";

export interface Ends {
  readonly start: Point;
  readonly end: Point;
}

/** Beyond this a walk is no longer told from a longer one: after nine holes a round may come by the clubhouse. */
const FAR_METRES = 400;

const walk = (from: Point, to: Point): number => Math.min(FAR_METRES, distanceMetres(from, to));

/** More lines than this are no round. */
const MOST = 18;

/**
 * The hole of each line, so that all walks together are the shortest.
 *
 * @param known holes whose lines say their number
 * @param firstTee where the round begins; undefined where nobody has said
 * @returns undefined where the lines and the known holes do not make up holes 1 to n, or nothing says where the
 *   round begins
 */
export function numberByWalk(
  lines: readonly Ends[],
  known: ReadonlyMap<number, Ends>,
  firstTee: Point | undefined,
): number[] | undefined {
  const count = lines.length + known.size;
  const open = Array.from({ length: count }, (_, i) => i + 1).filter((number) => !known.has(number));
  if (lines.length === 0 || count > MOST || open.length !== lines.length) return undefined;
  if (firstTee === undefined && !known.has(1)) return undefined;
  const home = firstTee ?? known.get(1)!.start;
  const n = lines.length;
  const states = 2 ** n * n;
  // Least walk with a set of lines at the first open numbers, the last of them given (Held and Karp).
  const least = new Float64Array(states).fill(Infinity);
  const before = new Int8Array(states).fill(-1);
  /** From the end of an open number's line to the start of the next one's, by the known holes between. */
  const between = (from: Point | undefined, number: number, next: number): { cost: number; at: Point | undefined } => {
    let [cost, at] = [0, from];
    for (let hole = number + 1; hole < next; hole++) {
      const { start, end } = known.get(hole)!;
      cost += at === undefined ? 0 : walk(at, start);
      at = end;
    }
    return { cost, at };
  };
  const opening = between(firstTee, 0, open[0]!);
  // The first tee was said, so the round begins at the tee nearest to it.
  const nearest = Math.min(...lines.map(({ start }) => distanceMetres(home, start)));
  lines.forEach(({ start }, i) => {
    if (open[0] === 1 && distanceMetres(home, start) > nearest) return;
    least[2 ** i * n + i] = opening.cost + (opening.at === undefined ? 0 : walk(opening.at, start));
  });
  for (let set = 1; set < 2 ** n; set++) {
    const placed = bits(set);
    if (placed === n) continue;
    for (let last = 0; last < n; last++) {
      const so = least[set * n + last]!;
      if (so === Infinity) continue;
      const { cost, at } = between(lines[last]!.end, open[placed - 1]!, open[placed]!);
      for (let next = 0; next < n; next++) {
        if ((set >> next) & 1) continue;
        const to = (set | (1 << next)) * n + next;
        const sum = so + cost + walk(at!, lines[next]!.start);
        if (sum < least[to]!) {
          least[to] = sum;
          before[to] = last;
        }
      }
    }
  }
  let set = 2 ** n - 1;
  let best = 0;
  const total = (last: number): number => {
    const { cost, at } = between(lines[last]!.end, open[n - 1]!, count + 1);
    // A round ends where it began.
    return least[set * n + last]! + cost + walk(at!, home);
  };
  for (let last = 1; last < n; last++) if (total(last) < total(best)) best = last;
  const numbers = new Array<number>(n);
  for (let placed = n - 1, last = best; placed >= 0; placed--) {
    numbers[last] = open[placed]!;
    const previous = before[set * n + last]!;
    set &= ~(1 << last);
    last = previous;
  }
  return numbers;
}

function bits(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}
