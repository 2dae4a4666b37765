/** What a position from the device means for a guide: how good it is, and how far off the course. Pure. */
import { closedRing } from "../../geo/ring.ts";
import type { Frame } from "../../geo/frame.ts";
import type { Point } from "../../geo/position.ts";
import type { Bounds, LonLat } from "../../contract/map-data.ts";

/** A position as the device tells it. */
export interface Fix {
  readonly position: LonLat;
  /** Radius within which it is with 95 % probability (W3C Geolocation, `accuracy`). */
  readonly accuracyMetres: number;
}

/** Distances from a coarser position would be wrong by clubs. */
export const COARSE_METRES = 50;

/** Ground about the holes that is still the course: car park, clubhouse, practice ground. */
export const COURSE_MARGIN_METRES = 100;

export interface Whereabouts extends Fix {
  /** `outside` counts before `coarse`: a golfer a mile away need not know how well. */
  readonly state: "on-course" | "outside" | "coarse";
  /** Beyond the box around the holes; 0 within it. */
  readonly beyondMetres: number;
}

export function whereabouts(fix: Fix, courseBounds: Bounds, frame: Frame): Whereabouts {
  const beyondMetres = metresBeyond(fix.position, courseBounds, frame);
  // Even the nearest place it may be is off the course.
  const outside = beyondMetres - fix.accuracyMetres > COURSE_MARGIN_METRES;
  return {
    ...fix,
    beyondMetres,
    state: outside ? "outside" : fix.accuracyMetres > COARSE_METRES ? "coarse" : "on-course",
  };
}

/** Metres from a position to a box of longitude and latitude; 0 within it. */
function metresBeyond([longitude, latitude]: LonLat, [west, south, east, north]: Bounds, { toPlane }: Frame): number {
  const [x, y] = [Math.min(east, Math.max(west, longitude)), Math.min(north, Math.max(south, latitude))];
  const [from, to] = [toPlane([longitude, latitude]), toPlane([x, y])];
  const metres = Math.hypot(to[0] - from[0], to[1] - from[1]);
  // The plane is no place for the other side of the world.
  return metres <= PLANE_METRES ? metres : metresOnSphere([longitude, latitude], [x, y]);
}

const PLANE_METRES = 50_000;

/** Mean radius of WGS 84, (2a + b) / 3. */
const EARTH_METRES = 6_371_008.8;

function metresOnSphere([lon1, lat1]: LonLat, [lon2, lat2]: LonLat): number {
  const [a, b, across] = [lat1, lat2, lon2 - lon1].map((degrees) => (degrees * Math.PI) / 180) as [
    number,
    number,
    number,
  ];
  const haversine = Math.sin((b - a) / 2) ** 2 + Math.cos(a) * Math.cos(b) * Math.sin(across / 2) ** 2;
  return 2 * EARTH_METRES * Math.asin(Math.min(1, Math.sqrt(haversine)));
}

const CIRCLE_POINTS = 48;

/** A ring about a point, closed. */
export function ringAbout(centre: Point, radiusMetres: number, toLonLat: (point: Point) => LonLat): LonLat[] {
  const ring = Array.from({ length: CIRCLE_POINTS }, (_, i) => {
    const turn = (2 * Math.PI * i) / CIRCLE_POINTS;
    return toLonLat([centre[0] + radiusMetres * Math.cos(turn), centre[1] + radiusMetres * Math.sin(turn)]);
  });
  return closedRing(ring);
}

/** What was last told of a place. */
export interface Told {
  readonly where: Whereabouts;
  /** Milliseconds since 1970. */
  readonly at: number;
}

const NEWS_METRES = 10;
const NEWS_MILLISECONDS = 15_000;
const METRES_PER_DEGREE = 111_320;

/** A walking golfer would else be talked to all the way. */
export function isNews({ where: before, at }: Told, where: Whereabouts, now: number): boolean {
  if (before.state !== where.state) return true;
  const [lon, lat] = where.position;
  const metres =
    METRES_PER_DEGREE *
    Math.hypot((lon - before.position[0]) * Math.cos((lat * Math.PI) / 180), lat - before.position[1]);
  return now - at >= NEWS_MILLISECONDS && metres >= NEWS_METRES;
}
