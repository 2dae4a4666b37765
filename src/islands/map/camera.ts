/** Where the map opens: the plate's framing, with play going up. */
import type { HoleData } from "../../contract/hole-data.ts";
import type { Bounds, LonLat } from "../../contract/map-data.ts";
import { frameAt } from "../../geo/frame.ts";
import { directionOfBearing, dot, rightOf } from "../../geo/vector.ts";

export interface Camera {
  readonly center: [number, number];
  readonly zoom: number;
  readonly bearing: number;
  /** Tilt away from looking straight down, degrees. */
  readonly pitch: number;
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

/** Tilt of the map with the ground in relief: the green still shows its shape, and no sky is in the picture. */
export const RELIEF_PITCH_DEGREES = 52;

/** Tees at the bottom, green at the top, bends and the hazards in play between them. */
export function holeCamera(data: HoleData, view: ViewSize, pitch = 0): Camera {
  const held = data.tees.flatMap(({ line, green, hazards }): (readonly [LonLat, Room])[] => [
    ...line.slice(0, -1).map((position, i): readonly [LonLat, Room] => [position, i === 0 ? ROOM.tee : ROOM.bend]),
    [green.back.position, ROOM.green],
    ...hazards
      .filter(({ inCorridor }) => inCorridor)
      .flatMap(({ reach, carry }): (readonly [LonLat, Room])[] =>
        [reach, ...(carry === undefined ? [] : [carry])].map(({ position }) => [position, ROOM.hazard]),
      ),
  ]);
  return fit(held, data.bearingDegrees, data.origin, view, pitch);
}

/** The whole course, north up. */
export function courseCamera([west, south, east, north]: Bounds, origin: LonLat, view: ViewSize, pitch = 0): Camera {
  const corners: LonLat[] = [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ];
  return fit(
    corners.map((corner) => [corner, { sides: 20, behind: 20, beyond: 20 }]),
    0,
    origin,
    view,
    pitch,
  );
}

interface Spot {
  /** Metres to the right and up the sheet. */
  readonly x: number;
  readonly y: number;
  readonly room: Room;
}

function fit(
  held: readonly (readonly [LonLat, Room])[],
  bearing: number,
  origin: LonLat,
  view: ViewSize,
  pitch: number,
): Camera {
  const frame = frameAt(origin);
  const up = directionOfBearing(bearing);
  const right = rightOf(up);
  const spots = held.map(([position, room]): Spot => {
    const point = frame.toPlane(position);
    return { x: dot(point, right), y: dot(point, up), room };
  });
  const { x, y, scale } = pitch === 0 ? flatFit(spots, view) : tiltedFit(spots, view, pitch);
  const [longitude, latitude] = frame.toPosition([right[0] * x + up[0] * y, right[1] * x + up[1] * y]);
  return { center: [longitude, latitude], zoom: zoomFor(scale, latitude), bearing, pitch };
}

interface Fit {
  /** The middle of the view. */
  readonly x: number;
  readonly y: number;
  /** Metres to the pixel there. */
  readonly scale: number;
}

function extent(spots: readonly Spot[]): {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
} {
  return {
    left: Math.min(...spots.map(({ x, room }) => x - room.sides)),
    right: Math.max(...spots.map(({ x, room }) => x + room.sides)),
    low: Math.min(...spots.map(({ y, room }) => y - room.behind)),
    high: Math.max(...spots.map(({ y, room }) => y + room.beyond)),
  };
}

function flatFit(spots: readonly Spot[], view: ViewSize): Fit {
  const { left, right, low, high } = extent(spots);
  const scale = Math.max((right - left) / Math.max(1, view.width), (high - low) / Math.max(1, view.height - view.top));
  return { x: (left + right) / 2, y: (low + high + view.top * scale) / 2, scale };
}

/** MapLibre's vertical angle of view; half of it has the tangent 1/3. */
const HALF_VIEW_TANGENT = Math.tan(0.6435011087932844 / 2);

/**
 * A pinhole camera over a plane. With D the camera's distance to the middle of the view in
 * pixels, a place u to the right and v up the ground from there (pixels at its scale) is
 *
 *     depth = D + v sin(pitch),  x = u D / depth,  y = v cos(pitch) D / depth
 *
 * up the view from its middle. The low edge goes to the view's bottom, the high edge below
 * the buttons; further out, a step at a time, until every place is within the sides.
 */
function tiltedFit(spots: readonly Spot[], view: ViewSize, pitch: number): Fit {
  const { left, right, low, high } = extent(spots);
  const x = (left + right) / 2;
  const [sin, cos] = [Math.sin((pitch * Math.PI) / 180), Math.cos((pitch * Math.PI) / 180)];
  const half = Math.max(1, view.height) / 2;
  const distance = half / HALF_VIEW_TANGENT;
  /** How far up the ground a height up the view is. */
  const ground = (y: number): number => (y * distance) / (distance * cos - y * sin);
  const [bottom, top] = [ground(-half), ground(half - Math.min(view.top, half))];
  const fits = (scale: number): boolean => {
    const y = low - bottom * scale;
    return spots.every((spot) => {
      const depth = distance + ((spot.y - y) / scale) * sin;
      return ((Math.abs(spot.x - x) + spot.room.sides) / scale) * (distance / depth) <= view.width / 2;
    });
  };
  let scale = (high - low) / (top - bottom);
  while (!fits(scale) && scale < 100) scale *= 1.02;
  return { x, y: low - bottom * scale, scale };
}
