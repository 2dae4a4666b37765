/** The golfer's own shots: a chain of places from the tee, what each is long, and what is left. */
import type { TeeData } from "../../contract/hole-data.ts";
import type { LonLat } from "../../contract/map-data.ts";
import type { HolePlane } from "./hole-plane.ts";
import { contains } from "../../geo/area.ts";
import { distanceMetres, midpoint } from "../../geo/vector.ts";
import { greenFrom } from "../../measure/green.ts";
import { thirdPoint, type Third } from "../../measure/third.ts";

export interface ShotLeg {
  readonly from: LonLat;
  readonly to: LonLat;
  readonly halfway: LonLat;
  readonly metres: number;
}

export interface ShotChain {
  readonly legs: readonly ShotLeg[];
  /** From the last place to the middle of the golfer's third of the green, or of the green; undefined on the green. */
  readonly left: ShotLeg | undefined;
}

/** More strokes than this are no plan. */
export const MOST_SHOTS = 12;

export function shotChain(
  { frame, green, toLonLat }: HolePlane,
  tee: TeeData,
  third: Third,
  places: readonly LonLat[],
): ShotChain {
  const leg = (from: LonLat, to: LonLat): ShotLeg => {
    const [start, end] = [frame.toPlane(from), frame.toPlane(to)];
    return { from, to, halfway: toLonLat(midpoint(start, end)), metres: distanceMetres(start, end) };
  };
  const stops = [tee.marker, ...places];
  const last = stops[stops.length - 1]!;
  const lastPoint = frame.toPlane(last);
  return {
    legs: places.map((place, i) => leg(stops[i]!, place)),
    left: contains(green, lastPoint) ? undefined : leg(last, toLonLat(thirdPoint(third, greenFrom(green, lastPoint)))),
  };
}

/** Where this device keeps a hole's shots. */
export const shotsKey = (course: string, hole: number): string => `marram.shots.${course}.${hole}`;

/** Seven decimals, as the map's own data; nothing for no shots. */
export const writeShots = (places: readonly LonLat[]): string | undefined =>
  places.length === 0
    ? undefined
    : JSON.stringify(places.map((place) => place.map((degrees) => Number(degrees.toFixed(7)))));

/** What was kept; nothing where the text is not ours. */
export function readShots(text: string | null): readonly LonLat[] {
  let value: unknown;
  try {
    value = JSON.parse(text ?? "");
  } catch {
    return [];
  }
  return Array.isArray(value) && value.every(isPlace) ? value.slice(0, MOST_SHOTS) : [];
}

const isPlace = (value: unknown): value is LonLat =>
  Array.isArray(value) &&
  value.length === 2 &&
  value.every((degrees) => typeof degrees === "number" && Number.isFinite(degrees)) &&
  Math.abs(value[1] as number) <= 90 &&
  Math.abs(value[0] as number) <= 180;
