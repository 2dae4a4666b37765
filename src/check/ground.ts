/** What the heights say of a hole: the part of its facts that needs a height model. */
import { STANDARD_AIR } from "../flight/air.ts";
import { effectiveLength } from "../flight/effective.ts";
import { pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { along, bearingDegrees, directionOfBearing, directionTo, distanceMetres, rightOf } from "../geo/vector.ts";
import { greenOf } from "../measure/hole.ts";
import { landingAt, riseBetween } from "../measure/landing.ts";
import { REFERENCE_PLAYERS } from "../measure/players.ts";
import { FLAGSTICK_METRES, seenFrom, sightFromTee } from "../measure/seen.ts";
import type { MeasuredHole, TeeFigures } from "../measure/types.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { falseFrontOf } from "../terrain/green-ground.ts";
import { alongApproach, tiltOf } from "../terrain/plane-fit.ts";
import { heightAt } from "../terrain/sample.ts";
import { tiersOf } from "../terrain/tiers.ts";

/** A stroke whose effective length can be set against its plain one. */
export interface PlayedLength {
  readonly distanceMetres: number;
  readonly riseMetres: number;
  /** Effective length less distance, in still standard air: positive when it plays longer. */
  readonly extraMetres: number | undefined;
}

/** Figures of the ground. Undefined: not known, never "none". */
export interface GroundFacts {
  /** Tee to landing ground; tee to green on a par 3. */
  readonly teeShot: PlayedLength | undefined;
  /** Last full stroke to the middle of the green; the tee shot on a par 3. */
  readonly approach: PlayedLength | undefined;
  /** Side slope where drives come down: positive when the right is higher. */
  readonly fairwayRightPercent: number | undefined;
  readonly green:
    | {
        /** Positive when the green rises to its back, as met on the approach. */
        readonly awayPercent: number;
        /** Positive when its right is higher. */
        readonly rightPercent: number;
        readonly tiers: 1 | 2;
        readonly falseFront: boolean;
      }
    | undefined;
  /** Green above (+) or below (-) the ground around it. */
  readonly greenAboveMetres: number | undefined;
  /** Tee above (+) or below (-) the ground before it. */
  readonly teeAboveMetres: number | undefined;
  readonly seen: {
    /** Share of the landing ground seen from the tee. */
    readonly landing: number | undefined;
    /** Share of the green seen from the tee. */
    readonly greenFromTee: number | undefined;
    /** Whether the green's middle is seen from the landing ground, and the top of its flagstick. */
    readonly greenFromLanding: boolean | undefined;
    readonly flagFromLanding: boolean | undefined;
  };
}

/** Answers for a hole; undefined where the course has no heights. */
export type GroundProvider = (hole: MeasuredHole) => GroundFacts | undefined;

const SCRATCH = REFERENCE_PLAYERS[0]!;
/** Drives whose landing ground is looked at: bogey to scratch man. */
const DRIVES_METRES = [183, 206, SCRATCH.driveMetres];
/** A stroke to the green is at least this long, so a short par 4 has a drive before it. */
const SHORTEST_APPROACH_METRES = 60;

const mean = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((a, b) => a + b, 0) / values.length;

const known = <T>(values: readonly (T | undefined)[]): T[] => values.filter((value) => value !== undefined);

/** Where the last full stroke is played from: after the drives of a scratch man, as far as the hole has room. */
export function approachStation({ lengthMetres }: TeeFigures, par: number): number {
  if (par <= 3) return 0;
  const full = SCRATCH.driveMetres + (par - 4) * SCRATCH.secondMetres;
  return Math.min(full, lengthMetres - SHORTEST_APPROACH_METRES);
}

function played(grid: HeightGrid, from: Point, to: Point): PlayedLength | undefined {
  const riseMetres = riseBetween(grid, from, to);
  if (riseMetres === undefined) return undefined;
  const distance = distanceMetres(from, to);
  const effective = effectiveLength(
    { distanceMetres: distance, riseMetres, bearingDegrees: bearingDegrees(directionTo(from, to)) },
    { air: STANDARD_AIR },
  );
  return {
    distanceMetres: distance,
    riseMetres,
    extraMetres: effective.ok ? effective.lengthMetres - distance : undefined,
  };
}

/** The green's middle above the mean of the ground 12 to 20 m outside its edge. */
function greenAbove(hole: MeasuredHole, { green }: TeeFigures, grid: HeightGrid): number | undefined {
  const height = heightAt(grid, green.middle);
  const ring = greenOf(hole.placed, hole.hole)[0]!;
  const around: (number | undefined)[] = [];
  for (let bearing = 0; bearing < 360; bearing += 15) {
    const direction = directionOfBearing(bearing);
    const edge = Math.max(
      ...ring.map(([x, y]) => (x - green.middle[0]) * direction[0] + (y - green.middle[1]) * direction[1]),
    );
    for (const out of [12, 16, 20]) around.push(heightAt(grid, along(green.middle, direction, edge + out)));
  }
  const ground = mean(known(around));
  return height === undefined || ground === undefined ? undefined : height - ground;
}

/** The tee marker above the mean of the ground 30 to 120 m before it. */
function teeAbove({ marker, line }: TeeFigures, grid: HeightGrid): number | undefined {
  const height = heightAt(grid, marker);
  const direction = directionTo(line.points[0]!, line.points[1]!);
  const right = rightOf(direction);
  const before: (number | undefined)[] = [];
  for (let station = 30; station <= Math.min(120, line.lengthMetres / 2); station += 15) {
    for (const offset of [-10, 0, 10])
      before.push(heightAt(grid, along(along(marker, direction, station), right, offset)));
  }
  const ground = mean(known(before));
  return height === undefined || ground === undefined ? undefined : height - ground;
}

/** A value worked out when first asked for. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => (done ??= { value: work() }).value;
}

/** Tilt at once, tiers and false front when asked for: looking for tiers is most of the work. */
function greenFacts(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): GroundFacts["green"] {
  const green = greenOf(hole.placed, hole.hole);
  const tilt = tiltOf(grid, green);
  if (!tilt) return undefined;
  const tiers = once(() => (tiersOf(grid, green) ? 2 : 1));
  const falseFront = once(() => falseFrontOf(grid, green, tee.green.approach) !== undefined);
  return {
    ...alongApproach(tilt.gradient, tee.green.approach),
    get tiers() {
      return tiers();
    },
    get falseFront() {
      return falseFront();
    },
  };
}

/**
 * The ground's facts of a hole, from the tee set its tip is written for. Each is worked out
 * when a claim first asks for it, so a hole whose tip says nothing of its green costs nothing.
 */
export function groundFacts(hole: MeasuredHole, tee: TeeFigures, grid: HeightGrid): GroundFacts {
  const par = hole.hole.par.men;
  const oneShot = par <= 3;
  const { middle } = tee.green;
  const from = pointAt(tee.line, approachStation(tee, par));
  const landings = once(() => {
    const longest = Math.max(1, tee.lengthMetres - SHORTEST_APPROACH_METRES);
    const drives = oneShot ? [] : [...new Set(DRIVES_METRES.map((drive) => Math.min(drive, longest)))];
    return known(drives.map((drive) => landingAt(hole, tee, drive, grid)));
  });
  const teeShot = once(() => played(grid, tee.marker, oneShot ? middle : (landings().at(-1)?.point ?? middle)));
  const approach = once(() => played(grid, from, middle));
  const fairwayRightPercent = once(() => mean(known(landings().map(({ lie }) => lie?.rightPercent))));
  const green = once(() => greenFacts(hole, tee, grid));
  const greenAboveMetres = once(() => greenAbove(hole, tee, grid));
  const teeAboveMetres = once(() => teeAbove(tee, grid));
  const seen = once((): GroundFacts["seen"] => {
    const shares = known(landings().map(({ seenFromTee }) => seenFromTee));
    return {
      landing: shares.length === 0 ? undefined : shares.filter(Boolean).length / shares.length,
      greenFromTee: sightFromTee(hole, { ...tee, hazards: [] }, grid).greenShare,
      greenFromLanding: oneShot ? undefined : seenFrom(hole, grid, from, middle),
      flagFromLanding: oneShot ? undefined : seenFrom(hole, grid, from, middle, FLAGSTICK_METRES),
    };
  });
  return {
    get teeShot() {
      return teeShot();
    },
    get approach() {
      return approach();
    },
    get fairwayRightPercent() {
      return fairwayRightPercent();
    },
    get green() {
      return green();
    },
    get greenAboveMetres() {
      return greenAboveMetres();
    },
    get teeAboveMetres() {
      return teeAboveMetres();
    },
    get seen() {
      return seen();
    },
  };
}
