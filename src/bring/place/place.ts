/** Candidates to pages: lines of play first, then greens, then all that is sorted by them. Pure. */
import type { Position } from "geojson";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import { middle } from "../../course/schema/whereabouts.ts";
import { frameAt, type Frame } from "../../geo/frame.ts";
import { distanceMetres } from "../../geo/vector.ts";
import type { Candidate, LeftOver } from "../normalise/candidate.ts";
import { placeLines } from "./lines.ts";
import type { Incoming } from "../merge/match.ts";
import type { CoursePages, Page } from "../pages/pages.ts";
import { covers, middleOf, shapeOf } from "./shape.ts";
import { sortToHoles, type Placing, type SortHole } from "./sort.ts";

export interface Placed {
  readonly incoming: readonly Incoming[];
  readonly leftOver: readonly LeftOver[];
  readonly frame: Frame;
  /** Lines that were turned to run from tee to green, by where they are from. */
  readonly turned: readonly string[];
}

/** Further than this from the course's middle nothing is worth measuring to a line of play. */
const AREA_METRES = 20_000;

const lineOn = (page: Page): readonly Position[] | undefined => {
  const geometry = page.features.find(({ kind }) => kind === "line-of-play")?.geometry;
  return geometry?.type === "LineString" ? geometry.coordinates : undefined;
};

const greenOn = (page: Page): CheckedGeometry | undefined => page.features.find(({ kind }) => kind === "green")?.geometry;

/** Drawn from green to tee, as happens: it starts on a green and ends on none. */
function startsOnGreen(line: readonly Position[], greens: readonly CheckedGeometry[], frame: Frame): boolean {
  const on = ([x, y]: Position): boolean => greens.some((green) => covers(shapeOf(green, frame), frame.toPlane([x!, y!])));
  return on(line[0]!) && !on(line[line.length - 1]!);
}

export function placeCandidates(all: readonly Candidate[], pages: CoursePages): Placed {
  const leftOver: LeftOver[] = [];
  const known = pages.holes.flatMap((page) => {
    const line = lineOn(page);
    return line === undefined || typeof page.at !== "number" ? [] : [{ number: page.at, line, green: greenOn(page) }];
  });
  const drawn = known.map(({ line }) => ({ geometry: { type: "LineString" as const, coordinates: [...line] } }));
  const lines = all.filter(({ kind }) => kind === "line-of-play");
  const centre = middle(drawn) ?? middle(lines) ?? middle(pages.course.features) ?? middle(all) ?? [0, 0];
  const frame = frameAt([centre[0]!, Math.max(-88, Math.min(88, centre[1]!))]);
  const candidates = all.filter((one) => {
    const away = distanceMetres([0, 0], middleOf(shapeOf(one.geometry, frame)));
    if (away <= AREA_METRES) return true;
    leftOver.push({ from: one.from, reason: farReason(one, centre, away) });
    return false;
  });
  const near = candidates.filter(({ kind }) => kind === "line-of-play");
  const greens = [...candidates.filter(({ kind }) => kind === "green").map(({ geometry }) => geometry), ...known.flatMap(({ green }) => green ?? [])];
  const turned: string[] = [];
  const facing = near.map((one): Candidate => {
    if (one.geometry.type !== "LineString" || !startsOnGreen(one.geometry.coordinates, greens, frame)) return one;
    turned.push(one.from);
    return { ...one, geometry: { type: "LineString", coordinates: one.geometry.coordinates.toReversed() } };
  });
  const incoming: Incoming[] = [];
  const lineByHole = new Map<number, SortHole>(known.map((hole) => [hole.number, hole]));
  placeLines(facing, known, frame).forEach((placing, i) => {
    const candidate = facing[i]!;
    if (typeof placing === "string") {
      leftOver.push({ from: candidate.from, reason: placing });
      return;
    }
    const { hole, reason } = placing;
    incoming.push({ candidate, at: hole, guessed: placing.guessed || candidate.guess !== undefined, reason: said(candidate, reason), lie: undefined, key: candidate.key });
    if (candidate.geometry.type === "LineString") lineByHole.set(hole, { number: hole, line: candidate.geometry.coordinates, green: lineByHole.get(hole)?.green });
  });

  const take = (some: readonly Candidate[]): void => {
    const placings = sortToHoles(some, [...lineByHole.values()], frame);
    some.forEach((candidate, i) => {
      for (const placing of placings[i]!) accept(candidate, placing, placings[i]!.length > 1);
    });
  };
  const accept = (candidate: Candidate, placing: Placing, several: boolean): void => {
    if (placing.to === "nowhere") {
      leftOver.push({ from: candidate.from, reason: placing.reason });
      return;
    }
    const at = placing.to === "hole" ? placing.hole : "course";
    incoming.push({
      candidate,
      at,
      guessed: placing.guessed || candidate.guess !== undefined,
      reason: said(candidate, placing.reason),
      lie: placing.to === "hole" ? placing.lie : undefined,
      key: candidate.key === undefined || !several ? candidate.key : `${candidate.key}@${at}`,
    });
  };
  take(candidates.filter(({ kind }) => kind === "green"));
  for (const { candidate, at } of incoming) {
    const hole = typeof at === "number" && candidate.kind === "green" ? lineByHole.get(at) : undefined;
    if (hole) lineByHole.set(hole.number, { ...hole, green: candidate.geometry });
  }
  take(candidates.filter(({ kind }) => kind !== "green" && kind !== "line-of-play"));
  return { ...onePerHole(incoming, leftOver), frame, turned };
}

const said = ({ guess }: Candidate, reason: string): string => (guess === undefined ? reason : `${guess}; ${reason}`);

function farReason({ geometry }: Candidate, centre: Position, away: number): string {
  let position: unknown = geometry.coordinates;
  while (Array.isArray(position) && Array.isArray(position[0])) position = position[0];
  const [x, y] = position as number[];
  const swapped = Math.hypot(y! - centre[0]!, x! - centre[1]!) < 0.2;
  const distance = Number.isFinite(away) ? `${Math.round(away / 1000)} km` : "half the world";
  return swapped
    ? `it lies ${distance} from the course, and with latitude and longitude changed about it would lie on it: export it with longitude first`
    : `it lies ${distance} from the course`;
}

/** A hole has one green, one pin, one marker of each tee set: of several, one that says its hole or was matched goes before a guess. */
function onePerHole(incoming: readonly Incoming[], leftOver: readonly LeftOver[]): { incoming: Incoming[]; leftOver: LeftOver[] } {
  const best = new Map<string, Incoming>();
  const left = [...leftOver];
  const kept: Incoming[] = [];
  const score = ({ candidate, guessed }: Incoming): number => (candidate.hole !== undefined ? 2 : 0) + (guessed ? 0 : 1);
  for (const one of incoming) {
    const { kind, tags } = one.candidate;
    const role = ["green", "pin"].includes(kind) ? kind : kind === "tee-marker" ? `tee marker ${tags["tee"]}` : undefined;
    if (role === undefined || one.at === "course") {
      kept.push(one);
      continue;
    }
    const key = `${one.at} ${role}`;
    const before = best.get(key);
    const loser = before === undefined ? undefined : score(one) > score(before) ? before : one;
    if (loser !== one) best.set(key, one);
    if (loser) left.push({ from: loser.candidate.from, reason: `hole ${one.at} has another ${role} with as good a claim or a better one, ${(loser === one ? before! : one).candidate.from}` });
  }
  return { incoming: [...kept, ...best.values()], leftOver: left };
}
