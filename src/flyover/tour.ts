/** The whole round as one flight: each hole, and the way from its green to the next tee. */
import type { Point } from "../geo/position.ts";
import { distanceMetres } from "../geo/vector.ts";
import { comfortableSeconds, turn, type HoleFlight } from "./path.ts";
import { ease } from "./smooth.ts";
import { COMFORT, type Comfort, type Flight, type Pose } from "./types.ts";

/** How much higher than both ends the way between holes rises, at its middle. */
const HOP_METRES = 18;
const SAMPLES = 60;

/** The way from one standing pose to another: straight, over whatever ground lies between. */
export function transfer(
  from: Pose,
  to: Pose,
  groundAt: (point: Point) => number | undefined,
  comfort: Comfort = COMFORT,
): Flight {
  const by = turn(from.bearingDegrees, to.bearingDegrees);
  const straight = (share: number): Point => [
    from.point[0] + (to.point[0] - from.point[0]) * share,
    from.point[1] + (to.point[1] - from.point[1]) * share,
  ];
  const base = (share: number): number => from.heightMetres + (to.heightMetres - from.heightMetres) * share;
  // One hop, a whole sine wave squared, high enough to clear the ground everywhere on the way.
  const wave = (share: number): number => Math.sin(Math.PI * share) ** 2;
  let hop = distanceMetres(from.point, to.point) > 30 ? HOP_METRES : 0;
  for (let i = 1; i < SAMPLES; i++) {
    const share = i / SAMPLES;
    const ground = groundAt(straight(share));
    if (ground === undefined || wave(share) < 0.02) continue;
    hop = Math.max(hop, (ground + comfort.clearanceMetres * 1.5 - base(share)) / wave(share));
  }
  const along = (share: number): Pose => {
    const gone = ease(share);
    return {
      point: straight(gone),
      heightMetres: base(gone) + hop * wave(gone),
      bearingDegrees: from.bearingDegrees + by * gone,
      downDegrees: from.downDegrees + (to.downDegrees - from.downDegrees) * gone,
    };
  };
  const seconds = comfortableSeconds(along, Math.max(2, distanceMetres(from.point, to.point) / 40), comfort);
  return { seconds, poseAt: (time) => along(time / seconds) };
}

export interface TourPart {
  /** Index of the hole flown, or undefined on the way between two. */
  readonly hole: number | undefined;
  readonly startSeconds: number;
  readonly seconds: number;
}

export interface Tour extends Flight {
  readonly parts: readonly TourPart[];
}

/** Joins holes in order; every part starts and ends at rest, so the joints do not jolt. */
export function tourOf(
  holes: readonly HoleFlight[],
  groundAt: (point: Point) => number | undefined = () => 0,
  comfort: Comfort = COMFORT,
): Tour {
  const parts: (TourPart & { readonly flight: Flight })[] = [];
  let start = 0;
  const add = (flight: Flight, hole: number | undefined): void => {
    parts.push({ hole, startSeconds: start, seconds: flight.seconds, flight });
    start += flight.seconds;
  };
  holes.forEach((flight, i) => {
    const before = holes[i - 1];
    if (before) add(transfer(before.poseAt(before.seconds), flight.poseAt(0), groundAt, comfort), undefined);
    add(flight, i);
  });
  const seconds = start;
  return {
    seconds,
    parts: parts.map(({ hole, startSeconds, seconds: length }) => ({ hole, startSeconds, seconds: length })),
    poseAt: (time) => {
      const part = [...parts].reverse().find(({ startSeconds }) => time >= startSeconds) ?? parts[0]!;
      return part.flight.poseAt(time - part.startSeconds);
    },
  };
}
