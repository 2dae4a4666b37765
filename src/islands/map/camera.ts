/** Where the map opens: the plate's framing, with play going up. */
import type { Bounds, HoleData, LonLat } from "../hole-data.ts";
import { frameAt } from "../../geo/frame.ts";
import { directionOfBearing, dot, rightOf } from "../../geo/vector.ts";

export interface Camera {
  readonly center: [number, number];
  readonly zoom: number;
  readonly bearing: number;
}

/** A view's size in CSS pixels. */
export interface ViewSize {
  readonly width: number;
  readonly height: number;
  /** Taken by the buttons along its upper edge. */
  readonly top: number;
}

/**
 * Metres per CSS pixel at zoom 0 on the equator with MapLibre's 512 pixel world:
 * 2 pi a / 512, a the WGS 84 semi-major axis.
 */
const EQUATOR_METRES_PER_PIXEL = (2 * Math.PI * 6_378_137) / 512;

export const metresPerPixel = (zoom: number, latitudeDegrees: number): number =>
  (EQUATOR_METRES_PER_PIXEL * Math.cos((latitudeDegrees * Math.PI) / 180)) / 2 ** zoom;

export const zoomFor = (metresPerPixelWanted: number, latitudeDegrees: number): number =>
  Math.log2(metresPerPixel(0, latitudeDegrees) / metresPerPixelWanted);

/** Room to keep around a point, metres along the ground. */
interface Room {
  readonly sides: number;
  readonly behind: number;
  readonly beyond: number;
}

/** The plate's own margins on a phone, so that the two frame a hole alike. */
const ROOM = {
  tee: { sides: 35, behind: 24, beyond: 0 },
  bend: { sides: 58, behind: 0, beyond: 0 },
  hazard: { sides: 12, behind: 8, beyond: 8 },
  green: { sides: 40, behind: 0, beyond: 40 },
} as const satisfies Record<string, Room>;

/** Tees at the bottom, green at the top, bends and the hazards in play between them. */
export function holeCamera(data: HoleData, view: ViewSize): Camera {
  const held = data.tees.flatMap(({ line, green, hazards }): (readonly [LonLat, Room])[] => [
    ...line.slice(0, -1).map((position, i): readonly [LonLat, Room] => [position, i === 0 ? ROOM.tee : ROOM.bend]),
    [green.back.position, ROOM.green],
    ...hazards.filter(({ inCorridor }) => inCorridor).flatMap(({ reach, carry }): (readonly [LonLat, Room])[] =>
      [reach, ...(carry === undefined ? [] : [carry])].map(({ position }) => [position, ROOM.hazard])),
  ]);
  return fit(held, data.bearingDegrees, data.origin, view);
}

/** The whole course, north up. */
export function courseCamera([west, south, east, north]: Bounds, origin: LonLat, view: ViewSize): Camera {
  const corners: LonLat[] = [[west, south], [east, south], [east, north], [west, north]];
  return fit(corners.map((corner) => [corner, { sides: 20, behind: 20, beyond: 20 }]), 0, origin, view);
}

function fit(held: readonly (readonly [LonLat, Room])[], bearing: number, origin: LonLat, view: ViewSize): Camera {
  const frame = frameAt(origin);
  const up = directionOfBearing(bearing);
  const right = rightOf(up);
  let [left, low, rightmost, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [position, { sides, behind, beyond }] of held) {
    const point = frame.toPlane(position);
    const [x, y] = [dot(point, right), dot(point, up)];
    left = Math.min(left, x - sides);
    rightmost = Math.max(rightmost, x + sides);
    low = Math.min(low, y - behind);
    high = Math.max(high, y + beyond);
  }
  const scale = Math.max((rightmost - left) / Math.max(1, view.width), (high - low) / Math.max(1, view.height - view.top));
  const [x, y] = [(left + rightmost) / 2, (low + high + view.top * scale) / 2];
  const [longitude, latitude] = frame.toPosition([right[0] * x + up[0] * y, right[1] * x + up[1] * y]);
  return { center: [longitude, latitude], zoom: zoomFor(scale, latitude), bearing };
}
