/**
 * Features to holes. Pure: given what was brought and the lines of play, says where each
 * feature belongs and why.
 *
 * A green goes to the hole whose line ends on it, a tee to the hole that starts at it, a
 * fairway to the hole that is played along it, a bunker to the hole it lies beside. Where
 * two holes have nearly the same claim the nearer one gets it as a guess; what several
 * holes are played along or over is the course's; what lies by no hole is left over.
 */
import type { Position } from "geojson";
import type { CheckedGeometry } from "../../course/schema/geometry.ts";
import { kindFacts, type FeatureKind } from "../../course/kinds.ts";
import type { Frame } from "../../geo/frame.ts";
import { lineThrough, type Line } from "../../geo/line.ts";
import { distanceMetres } from "../../geo/vector.ts";
import { distanceFromShape, lengthWithin, lieOf, middleOf, covers, shapeOf, type Lie, type Shape } from "./shape.ts";

export interface SortHole {
  readonly number: number;
  /** The line of play, tee to green. */
  readonly line: readonly Position[];
  /** Its green, where known: what lies by a green belongs to its hole. */
  readonly green: CheckedGeometry | undefined;
}

export interface ToSort {
  readonly kind: FeatureKind;
  readonly geometry: CheckedGeometry;
  /** The hole the file says; `all` for what it says holes share. */
  readonly hole: number | "all" | undefined;
}

export type Placing =
  | {
      readonly to: "hole";
      readonly hole: number;
      readonly guessed: boolean;
      readonly reason: string;
      readonly lie: Lie;
    }
  | { readonly to: "course"; readonly guessed: boolean; readonly reason: string }
  | { readonly to: "nowhere"; readonly reason: string };

/** How far from a line something can lie and still be its hole's; common practice, no source. */
export const REACH_METRES = {
  /** A feature that says which hole it belongs to. */
  stated: 300,
  /** Line's end to a green that it does not reach. */
  green: 40,
  /** A tee to its hole's line. */
  tee: 40,
  fairway: 40,
  bunker: 70,
  /** Water, penalty areas and cover in play: beside two lines, they are the course's. */
  beside: 50,
  single: 90,
  /** Ground around the course: coast, cliffs, boundaries. */
  course: 500,
  /** Roads, paths, buildings and fences: the course is where the golf is, not where a suburb is. */
  works: 150,
  /** Things to aim at. */
  landmark: 1500,
} as const;

/** Two holes' claims are alike when they differ by less than this, or by less than half. */
const ALIKE_METRES = 12;

/** What is the course's from further off than the works around it. */
const SEEN_METRES: Readonly<Partial<Record<FeatureKind, number>>> = {
  coastline: REACH_METRES.course,
  "out-of-bounds": REACH_METRES.course,
  course: REACH_METRES.course,
  landmark: REACH_METRES.landmark,
};

interface Hole {
  readonly number: number;
  readonly line: Line;
  readonly green: Shape | undefined;
}

interface Claim {
  readonly hole: Hole;
  readonly lie: Lie;
  /** What the claims are compared by. */
  readonly distance: number;
}

const metres = (n: number): string => `${Math.round(n)} m`;
const far = (n: number): string => (n < 1000 ? metres(n) : `${(n / 1000).toFixed(1)} km`);
const holes = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? "hole" : "holes"} ${[...numbers]
    .sort((a, b) => a - b)
    .join(", ")
    .replace(/, (\d+)$/, " and $1")}`;

const nowhere = (reason: string): Placing => ({ to: "nowhere", reason });

const byDistance = (claims: readonly Claim[]): Claim[] =>
  [...claims].sort((a, b) => a.distance - b.distance || a.hole.number - b.hole.number);

/** The nearest claim, as a match or, when the second has nearly as good a one, a guess. */
function nearest(claims: readonly Claim[], reach: number, what: (claim: Claim) => string, none: string): Placing[] {
  const [first, second] = byDistance(claims);
  if (first === undefined || first.distance > reach)
    return [
      nowhere(
        `${none}${first ? `: the nearest is that of hole ${first.hole.number}, ${far(first.distance)} away` : ""}`,
      ),
    ];
  const alike =
    second !== undefined &&
    second.distance <= reach &&
    (second.distance - first.distance < ALIKE_METRES || second.distance < 1.5 * first.distance);
  const reason = alike
    ? `${what(first)}; hole ${second.hole.number} is nearly as near, ${metres(second.distance)}`
    : what(first);
  return [{ to: "hole", hole: first.hole.number, guessed: alike, reason, lie: first.lie }];
}

const aside = ({ lie }: Claim): string =>
  lie.side === "across"
    ? "the line of play crosses it"
    : `${metres(lie.distanceMetres)} ${lie.side} of the line of play`;

/** Where each feature belongs; several placings when it is the green of several holes. */
export function sortToHoles(
  features: readonly ToSort[],
  among: readonly SortHole[],
  frame: Frame,
  aroundMetres: number = REACH_METRES.works,
): Placing[][] {
  const known: Hole[] = among.map(({ number, line, green }) => ({
    number,
    line: lineThrough(line.map(([x, y]) => frame.toPlane([x!, y!]))),
    green: green && shapeOf(green, frame),
  }));
  return features.map((feature) => placing(feature, shapeOf(feature.geometry, frame), known, aroundMetres));
}

function placing(
  { kind, hole: stated }: ToSort,
  shape: Shape,
  known: readonly Hole[],
  aroundMetres: number,
): Placing[] {
  if (kind === "other") return [nowhere("its tags are none that the guide draws or measures")];
  if (known.length === 0 && stated !== "all")
    return [
      nowhere(
        "there is no line of play yet to sort it by: bring golf=hole lines first, or draw them on the hole pages",
      ),
    ];
  if (stated === "all") return [{ to: "course", guessed: false, reason: "it says that holes share it" }];
  if (stated !== undefined) {
    const hole = known.find(({ number }) => number === stated);
    if (hole === undefined)
      return [nowhere(`it says hole ${stated}, and there is no line of play for hole ${stated}`)];
    const lie = lieOf(shape, hole.line);
    if (lie.distanceMetres > REACH_METRES.stated)
      return [nowhere(`it says hole ${stated}, but lies ${far(lie.distanceMetres)} from that hole's line of play`)];
    return [{ to: "hole", hole: stated, guessed: false, reason: `it says hole ${stated}`, lie }];
  }
  const claims = known.map((hole): Claim => {
    const lie = lieOf(shape, hole.line);
    return { hole, lie, distance: lie.distanceMetres };
  });
  if (kindFacts(kind).belongs === "course")
    return [forCourse(claims, "kept once for the whole course", SEEN_METRES[kind] ?? aroundMetres)];
  switch (kind) {
    case "green":
      return green(shape, known, claims);
    case "pin":
      return nearest(
        ends(shape, claims),
        REACH_METRES.green,
        ({ distance }) => `${metres(distance)} from the end of the line of play`,
        "it is a pin by no line's end",
      );
    case "tee-marker":
    case "teeing-ground":
      return tee(shape, claims);
    case "fairway":
      return fairway(shape, claims);
    case "rough":
      return rough(shape, claims);
    case "bunker":
      return nearest(byGreen(shape, claims), REACH_METRES.bunker, aside, "it is a bunker beside no line of play");
    default:
      return kindFacts(kind).belongs === "either" ? wide(shape, claims) : cover(shape, claims);
  }
}

function forCourse(claims: readonly Claim[], reason: string, reach: number = REACH_METRES.course): Placing {
  const [first] = byDistance(claims);
  return first!.distance <= reach
    ? { to: "course", guessed: false, reason }
    : nowhere(`it lies ${far(first!.distance)} from the nearest line of play, that of hole ${first!.hole.number}`);
}

/** Claims by the distance from where each line ends. */
const ends = (shape: Shape, claims: readonly Claim[]): Claim[] =>
  claims.map((claim) => ({
    ...claim,
    distance: distanceFromShape(shape, claim.hole.line.points[claim.hole.line.points.length - 1]!),
  }));

/** Claims in which a hole's green counts like its line, from its edge. */
const byGreen = (shape: Shape, claims: readonly Claim[]): Claim[] =>
  claims.map((claim) => {
    const { green: own } = claim.hole;
    if (own === undefined) return claim;
    return { ...claim, distance: Math.min(claim.distance, distanceFromShape(own, middleOf(shape))) };
  });

function green(shape: Shape, known: readonly Hole[], claims: readonly Claim[]): Placing[] {
  const byEnd = ends(shape, claims);
  const on = byEnd.filter(({ distance }) => distance === 0);
  if (on.length > 0) {
    const reason =
      on.length === 1
        ? "the line of play ends on it"
        : `the lines of ${holes(on.map(({ hole }) => hole.number))} end on it`;
    return on.map(({ hole, lie }) => ({ to: "hole", hole: hole.number, guessed: false, reason, lie }));
  }
  // A line that stops short has no green yet; one that ends on a green of its own has no use for another.
  const open = byEnd.filter(
    ({ hole }) => hole.green === undefined || !covers(hole.green, hole.line.points[hole.line.points.length - 1]!),
  );
  const found = nearest(
    open.length > 0 ? open : byEnd,
    REACH_METRES.green,
    ({ distance }) => `${metres(distance)} beyond the end of the line of play`,
    `no line of play of the ${known.length} ends on it, as with a practice green`,
  );
  return found.map((place) => (place.to === "hole" ? { ...place, guessed: true } : place));
}

function tee(shape: Shape, claims: readonly Claim[]): Placing[] {
  const starting = claims.filter(({ hole }) => covers(shape, hole.line.points[0]!));
  if (starting.length === 1) {
    const { hole, lie } = starting[0]!;
    return [{ to: "hole", hole: hole.number, guessed: false, reason: "the line of play starts on it", lie }];
  }
  const fitting = (starting.length > 1 ? starting : claims)
    .filter(({ hole, lie }) => lie.stationMetres < Math.max(40, 0.6 * hole.line.lengthMetres))
    // Forward tees lie along the line; how far along says nothing, how far beside does, and so does how far behind.
    .map((claim) => ({
      ...claim,
      distance:
        claim.lie.stationMetres < 0
          ? distanceMetres(middleOf(shape), claim.hole.line.points[0]!)
          : claim.lie.distanceMetres,
    }));
  return nearest(
    fitting,
    REACH_METRES.tee,
    (claim) => `${aside(claim)}, ${metres(claim.lie.stationMetres)} from its start`,
    "it is a tee at no line of play",
  );
}

function fairway(shape: Shape, claims: readonly Claim[]): Placing[] {
  const played = claims
    .map((claim) => ({ ...claim, length: lengthWithin(shape, claim.hole.line) }))
    .filter(({ length }) => length > 0)
    .sort((a, b) => b.length - a.length);
  const [first, second] = played;
  if (first === undefined)
    return nearest(claims, REACH_METRES.fairway, aside, "it is a fairway on no line of play").map((place) =>
      place.to === "hole" ? { ...place, guessed: true } : place,
    );
  if (second !== undefined && second.length > 50 && second.length > first.length / 2) {
    const numbers = played
      .filter(({ length }) => length > 50 && length > first.length / 2)
      .map(({ hole }) => hole.number);
    return [{ to: "course", guessed: false, reason: `${holes(numbers)} are played along it` }];
  }
  return [
    {
      to: "hole",
      hole: first.hole.number,
      guessed: false,
      reason: `${metres(first.length)} of the line of play run along it`,
      lie: first.lie,
    },
  ];
}

/** The rough a hole is cut into goes with it; rough beside several holes is the course's. */
function rough(shape: Shape, claims: readonly Claim[]): Placing[] {
  const played = claims.filter(({ hole }) => lengthWithin(shape, hole.line) > hole.line.lengthMetres / 2);
  if (played.length !== 1) return wide(shape, claims);
  const { hole, lie } = played[0]!;
  return [{ to: "hole", hole: hole.number, guessed: false, reason: "most of the line of play runs through it", lie }];
}

/** Water, cover and ground of any size. */
function wide(shape: Shape, claims: readonly Claim[]): Placing[] {
  const near = byGreen(shape, claims).filter(({ distance }) => distance <= REACH_METRES.beside);
  if (near.length > 1)
    return [{ to: "course", guessed: false, reason: `it lies by ${holes(near.map(({ hole }) => hole.number))}` }];
  return cover(shape, claims);
}

function cover(shape: Shape, claims: readonly Claim[]): Placing[] {
  const [found] = nearest(byGreen(shape, claims), REACH_METRES.single, aside, "");
  return [found!.to === "hole" ? found! : forCourse(claims, "it lies beside no line of play")];
}
