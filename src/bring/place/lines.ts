/** Lines of play to holes: by the number they say, or by lying where a hole's line lies already. Pure. */
import type { Position } from "geojson";
import type { Frame } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
import { distanceMetres } from "../../geo/vector.ts";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import type { LeftOver } from "../left-over.ts";
import type { Candidate } from "../normalise/candidate.ts";
import { incomingOf, type Incoming } from "./incoming.ts";
import type { Located } from "./locate.ts";
import { linesBetween } from "./line-between.ts";
import { numberByWalk, type Ends } from "./number.ts";
import { covers, distanceFromShape, shapeOf } from "./shape.ts";
import type { SortHole } from "./sort.ts";

/** A line both of whose ends are this near to another's is that line drawn again. */
const SAME_METRES = 45;
/** A green or tee this near to a line's end is the line's. */
const AT_END_METRES = 15;
/** A line that says a hole's number but whose ends are both further away is another course's. */
const ELSEWHERE_METRES = 400;

interface LinePlacing {
  readonly hole: number;
  readonly guessed: boolean;
  readonly reason: string;
}

/** The larger of the distances of starts and ends. */
const apart = (a: Ends, b: Ends): number => Math.max(distanceMetres(a.start, b.start), distanceMetres(a.end, b.end));

export interface LinesPlaced {
  readonly incoming: readonly Incoming[];
  readonly leftOver: readonly LeftOver[];
  /** Every hole with a line of play now, brought or on its page. */
  readonly holes: readonly SortHole[];
  readonly notes: readonly string[];
}

const UNNUMBERED = "it does not say which hole it is: give it ref=7, with the hole's number";

/**
 * Lines of play go before all else, since the rest is placed by them: those that say their
 * hole or lie where a page's line does; those whose green, tee or pin says it; those that
 * the walk from green to tee numbers; and, where a hole has a green and a tee that say its
 * number and no line, one drawn from tee to green.
 *
 * @param firstTee where the round begins, where the club has said so
 */
export function linesFirst(
  { candidates, frame }: Located,
  known: readonly SortHole[],
  firstTee?: Position,
): LinesPlaced {
  const greens = [
    ...candidates.filter(({ kind }) => kind === "green").map(({ geometry }) => geometry),
    ...known.flatMap(({ green }) => green ?? []),
  ];
  const notes: string[] = [];
  const lines = candidates
    .filter(({ kind }) => kind === "line-of-play")
    .map((one): Candidate => {
      if (one.geometry.type !== "LineString" || !startsOnGreen(one.geometry.coordinates, greens, frame)) return one;
      notes.push(`${one.from} ran from green to tee and was turned round.`);
      return { ...one, geometry: { type: "LineString", coordinates: one.geometry.coordinates.toReversed() } };
    });
  const incoming: Incoming[] = [];
  const leftOver: LeftOver[] = [];
  const holes = new Map(known.map((hole) => [hole.number, hole]));
  const accept = (candidate: Candidate, placing: LinePlacing): void => {
    const { hole: number } = placing;
    incoming.push(incomingOf(candidate, number, placing));
    if (candidate.geometry.type === "LineString")
      holes.set(number, { number, line: candidate.geometry.coordinates, green: holes.get(number)?.green });
  };
  const settle = (some: readonly Candidate[], placings: readonly (LinePlacing | string)[]): Candidate[] =>
    some.filter((candidate, i) => {
      const placing = placings[i]!;
      if (placing === UNNUMBERED) return true;
      if (typeof placing === "string") leftOver.push({ from: candidate.from, reason: placing, candidate });
      else accept(candidate, placing);
      return false;
    });
  const told = lines.map((line) => toldByEnds(line, candidates, frame));
  let open = settle(told, holesOfLines(told, known, frame));
  const numbers = numberByWalk(
    open.map((line) => endsOf(line, frame)!),
    new Map([...holes].map(([number, { line }]) => [number, endsOfPath(line, frame)])),
    firstTee && frame.toPlane([firstTee[0]!, firstTee[1]!]),
  );
  if (numbers !== undefined) {
    open = settle(
      open.map((line): Candidate => ({ ...line, tags: { ...line.tags, proposed: true } })),
      numbers.map((hole) => ({ hole, guessed: true, reason: "numbered by the walk from green to tee" })),
    );
  }
  leftOver.push(...open.map((candidate) => ({ from: candidate.from, reason: UNNUMBERED, candidate })));
  for (const line of linesBetween(candidates, new Set(holes.keys()), frame))
    accept(line, { hole: line.hole as number, guessed: true, reason: "drawn from the tee to the green that say so" });
  return { incoming, leftOver, holes: [...holes.values()], notes };
}

/** A line that does not say its hole, with the number that its green, tee or pin says. */
function toldByEnds(line: Candidate, candidates: readonly Candidate[], frame: Frame): Candidate {
  const ends = line.hole === undefined ? endsOf(line, frame) : undefined;
  if (ends === undefined) return line;
  const at = (point: Point, kinds: readonly string[]): number[] =>
    candidates.flatMap(({ kind, hole, geometry }) =>
      typeof hole === "number" &&
      kinds.includes(kind) &&
      distanceFromShape(shapeOf(geometry, frame), point) <= AT_END_METRES
        ? [hole]
        : [],
    );
  const said = new Set([...at(ends.end, ["green", "pin"]), ...at(ends.start, ["teeing-ground", "tee-marker"])]);
  return said.size === 1 ? { ...line, hole: [...said][0]! } : line;
}

const endsOfPath = (positions: readonly Position[], frame: Frame): Ends => {
  const point = ([x, y]: Position): Point => frame.toPlane([x!, y!]);
  return { start: point(positions[0]!), end: point(positions[positions.length - 1]!) };
};

const endsOf = ({ geometry }: Candidate, frame: Frame): Ends | undefined =>
  geometry.type === "LineString" ? endsOfPath(geometry.coordinates, frame) : undefined;

/** Drawn from green to tee, as happens: it starts on a green and ends on none. */
function startsOnGreen(line: readonly Position[], greens: readonly CheckedGeometry[], frame: Frame): boolean {
  const on = ([x, y]: Position): boolean =>
    greens.some((green) => covers(shapeOf(green, frame), frame.toPlane([x!, y!])));
  return on(line[0]!) && !on(line[line.length - 1]!);
}

/** For each candidate that is a line of play: its hole, or why it has none. */
function holesOfLines(
  lines: readonly Candidate[],
  known: readonly SortHole[],
  frame: Frame,
): (LinePlacing | string)[] {
  const own = lines.map((line) => endsOf(line, frame));
  const there = known.map(({ number, line }) => ({ number, ends: endsOfPath(line, frame) }));
  const proposed = lines.map(({ hole: said }, i): (LinePlacing & { readonly distance: number }) | string => {
    const mine = own[i];
    if (mine === undefined) return "it is no single line";
    const near = there
      .map(({ number, ends: other }) => ({ number, distance: apart(mine, other) }))
      .sort((a, b) => a.distance - b.distance);
    if (typeof said === "number") {
      const same = near.find(({ number }) => number === said);
      if (same && same.distance > ELSEWHERE_METRES)
        return `it says hole ${said}, but lies ${Math.round(same.distance)} m from that hole's line of play: is it another course's? Move the page's line first if it is right`;
      return { hole: said, guessed: false, reason: `it says hole ${said}`, distance: same?.distance ?? 0 };
    }
    const [first] = near;
    if (first !== undefined && first.distance <= SAME_METRES) {
      return {
        hole: first.number,
        guessed: false,
        reason: `it runs where hole ${first.number}'s line of play does`,
        distance: first.distance,
      };
    }
    return UNNUMBERED;
  });
  return proposed.map((placing, i) => {
    if (typeof placing === "string") return placing;
    const rivals = proposed
      .flatMap((other, k) => (typeof other !== "string" && other.hole === placing.hole ? [{ ...other, k }] : []))
      .sort((a, b) => a.distance - b.distance);
    const [best, second] = rivals;
    if (second === undefined) return { hole: placing.hole, guessed: placing.guessed, reason: placing.reason };
    // With a line on the page already, the one drawn there is it; without, nobody can tell.
    const clear =
      there.some(({ number }) => number === placing.hole) &&
      best!.distance <= SAME_METRES &&
      second.distance > 2 * best!.distance;
    if (clear && best!.k === i)
      return {
        hole: placing.hole,
        guessed: true,
        reason: `${placing.reason}, and of ${rivals.length} that do it is the nearest to the page's`,
      };
    return `${rivals.length} lines say hole ${placing.hole}: choose by a tag they differ in, such as --lines golf:course:name="Old Course"`;
  });
}
