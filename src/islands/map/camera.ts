/** Where the map opens: the plate's framing, with play going up. */
import type { Bounds, HoleData, LonLat } from "../hole-data.ts";
import { frameAt } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
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

/** Tees at the bottom, green at the top, with room around them for what is beside the line. */
export function holeCamera(data: HoleData, view: ViewSize): Camera {
  const frame = frameAt(data.origin);
  const points = data.tees.flatMap(({ line, green }) => [...line, green.back.position]).map((position) => frame.toPlane(position));
  return fit(points, data.bearingDegrees, view, frame.toPosition, 45);
}

/** The whole course, north up. */
export function courseCamera([west, south, east, north]: Bounds, origin: LonLat, view: ViewSize): Camera {
  const frame = frameAt(origin);
  const corners: LonLat[] = [[west, south], [east, south], [east, north], [west, north]];
  return fit(corners.map((corner) => frame.toPlane(corner)), 0, view, frame.toPosition, 20);
}

function fit(
  points: readonly Point[],
  bearing: number,
  view: ViewSize,
  toPosition: (point: Point) => readonly [number, number, number?],
  marginMetres: number,
): Camera {
  const up = directionOfBearing(bearing);
  const right = rightOf(up);
  const across = points.map((point) => dot(point, right));
  const ahead = points.map((point) => dot(point, up));
  const [left, farRight, low, high] = [Math.min(...across), Math.max(...across), Math.min(...ahead), Math.max(...ahead)];
  const [x, y] = [(left + farRight) / 2, (low + high) / 2];
  const [longitude, latitude] = toPosition([right[0] * x + up[0] * y, right[1] * x + up[1] * y]);
  const scale = Math.max(
    (farRight - left + 2 * marginMetres) / Math.max(1, view.width),
    (high - low + 2 * marginMetres) / Math.max(1, view.height),
  );
  return { center: [longitude, latitude], zoom: zoomFor(scale, latitude), bearing };
}
