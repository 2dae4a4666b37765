/**
 * Markers for tee sets that a hole has none of, on its tee grounds. Pure. Permanent
 * markers stand on the ground their set is played from, the longest set furthest back; so
 * sets and grounds are taken in order, unless a ground or a card says more.
 */
import { chords } from "../../geo/area.ts";
import { directionAt, locate, type Line } from "../../geo/line.ts";
import type { Point } from "../../geo/position.ts";
import { along } from "../../geo/vector.ts";
import { middleOf, type Shape } from "../place/shape.ts";

export interface TeeGround {
  readonly shape: Shape;
  /** The set it says it is of. */
  readonly tee: string | undefined;
}

export interface WantedMarker {
  readonly tee: string;
  /** From the start of the line, where the card says how long the hole is from there. */
  readonly stationMetres: number | undefined;
}

export interface ProposedMarker {
  readonly tee: string;
  readonly point: Point;
}

/** Where on a ground of its own a marker is put: at the middle, or two fifths from its back. */
export type MarkerPlace = "middle" | "two-fifths";

const SHARE: Readonly<Record<MarkerPlace, number>> = { middle: 1 / 2, "two-fifths": 2 / 5 };

interface Stretch {
  readonly tee: string | undefined;
  readonly middle: Point;
  readonly direction: Point;
  readonly stationMetres: number;
  /** Of the ground along the line of play, from its middle: its back and its front. */
  readonly back: number;
  readonly front: number;
}

function stretchOf({ shape, tee }: TeeGround, line: Line): Stretch {
  const middle = middleOf(shape);
  const stationMetres = locate(line, middle).station;
  const direction = directionAt(line, Math.max(0, stationMetres));
  const [back, front] = chords(shape.areas, middle, direction).find(([from, to]) => from <= 0 && to >= 0) ?? [0, 0];
  return { tee, middle, direction, stationMetres, back, front };
}

/**
 * @param wanted the sets without a marker, longest first
 * @param line the line of play
 */
export function proposeMarkers(
  wanted: readonly WantedMarker[],
  grounds: readonly TeeGround[],
  line: Line,
  place: MarkerPlace,
): ProposedMarker[] {
  const stretches = grounds.map((ground) => stretchOf(ground, line)).sort((a, b) => a.stationMetres - b.stationMetres);
  if (stretches.length === 0) return [];
  const named = new Set(wanted.map(({ tee }) => tee));
  const free = stretches.filter(({ tee }) => tee === undefined || !named.has(tee));
  const inOrder = wanted.filter(
    ({ tee, stationMetres }) => stationMetres === undefined && !stretches.some((one) => one.tee === tee),
  );
  const groundOf = ({ tee, stationMetres }: WantedMarker): Stretch => {
    const own = stretches.find((one) => one.tee === tee);
    if (own !== undefined) return own;
    const among = free.length > 0 ? free : stretches;
    if (stationMetres !== undefined)
      return among.reduce((best, one) =>
        Math.abs(one.stationMetres - stationMetres) < Math.abs(best.stationMetres - stationMetres) ? one : best,
      );
    const i = inOrder.findIndex((one) => one.tee === tee);
    return among[inOrder.length === 1 ? 0 : Math.round((i * (among.length - 1)) / (inOrder.length - 1))]!;
  };
  const placed = wanted.map((one) => ({ ...one, ground: groundOf(one) }));
  return placed.map(({ tee, stationMetres, ground }): ProposedMarker => {
    const { middle, direction, back, front } = ground;
    if (stationMetres !== undefined)
      return {
        tee,
        point: along(middle, direction, Math.min(front, Math.max(back, stationMetres - ground.stationMetres))),
      };
    const sharing = placed.filter((other) => other.ground === ground && other.stationMetres === undefined);
    const share =
      sharing.length === 1
        ? SHARE[place]
        : (sharing.findIndex((other) => other.tee === tee) + 1) / (sharing.length + 1);
    return { tee, point: along(middle, direction, back + share * (front - back)) };
  });
}
