/**
 * A hole's flight: from behind the tee along the line of play to the green, low at the
 * tee, high over the fairway, lower again at the green, never near the ground.
 *
 * The line of play is rounded into a curve, the camera runs along it with a gentle start
 * and stop, and looks at the curve further on. Height follows a smooth line above the
 * highest ground about. The flight then lasts as long as its bounds of comfort ask for:
 * stretching time by k lowers every rate by k and every acceleration by k squared.
 */
import { pointAt, type Line } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import { bearingDegrees, directionTo, distanceMetres } from "../geo/vector.ts";
import { degrees } from "../geo/units.ts";
import { between, ease, smoothAbove, smoothed } from "./smooth.ts";
import { COMFORT, type Comfort, type Flight, type Pose } from "./types.ts";

const STEP_METRES = 3;
/** Where the camera starts, behind the tee, and how far before the green it stops. */
const BEHIND_METRES = 55;
const SHORT_METRES = 95;
/** How far ahead of itself it looks. */
const AHEAD_METRES = 130;
/** It looks down no further than this, so that the horizon stays in a picture 42 degrees high. */
const MOST_DOWN_DEGREES = 15;
/** Corners are rounded over this distance to each side, heights over that. */
const CORNER_METRES = 75;
const HILL_METRES = 60;
/** Height above the ground: at the tee, over the fairway, at the green. */
const TEE_METRES = 14;
const FAIRWAY_METRES = 34;
const GREEN_METRES = 24;

export interface HoleFlight extends Flight {
  /** When the camera looks at a station of the line of play. */
  secondsAt(stationMetres: number): number;
}

/**
 * @param line from the tee marker to the middle of the green
 * @param groundAt height of the ground in the plane, where known; without heights the flight is over level ground at 0
 * @param leastSeconds never shorter than this: time to read the captions
 */
export function holeFlight(
  line: Line,
  groundAt: (point: Point) => number | undefined = () => 0,
  leastSeconds = 0,
  comfort: Comfort = COMFORT,
): HoleFlight {
  const end = Math.max(40, line.lengthMetres - SHORT_METRES);
  const way = curve(line, -BEHIND_METRES, line.lengthMetres + AHEAD_METRES);
  const camera = cameraAlong(way, end + BEHIND_METRES, groundAt, comfort.clearanceMetres);
  const aimed = camera.map((pose, i): Pose => lookAt(pose, way, i, groundAt));
  const poseOn = track(unwrapped(aimed));
  const along = (share: number): Pose => poseOn(ease(share) * (aimed.length - 1));
  const seconds = Math.max(leastSeconds, comfortableSeconds(along, (end + BEHIND_METRES) / 20, comfort));
  return {
    seconds,
    poseAt: (time) => along(time / seconds),
    secondsAt: (station) => {
      const wanted = Math.min(1, Math.max(0, (station + BEHIND_METRES - AHEAD_METRES) / (end + BEHIND_METRES)));
      // The way eased is monotone: halve to its inverse.
      let [low, high] = [0, 1];
      for (let i = 0; i < 40; i++) {
        const middle = (low + high) / 2;
        if (ease(middle) < wanted) low = middle;
        else high = middle;
      }
      return low * seconds;
    },
  };
}

/** The line of play as a rounded curve with a point every step. */
function curve(line: Line, from: number, to: number): Point[] {
  const count = Math.ceil((to - from) / STEP_METRES) + 1;
  const points = Array.from({ length: count }, (_, i) => pointAt(line, from + i * STEP_METRES));
  const reach = Math.round(CORNER_METRES / STEP_METRES);
  const xs = smoothed(
    points.map(([x]) => x),
    reach,
  );
  const ys = smoothed(
    points.map(([, y]) => y),
    reach,
  );
  return xs.map((x, i) => [x, ys[i]!]);
}

interface Place {
  readonly point: Point;
  readonly heightMetres: number;
}

function cameraAlong(
  way: readonly Point[],
  lengthMetres: number,
  groundAt: (point: Point) => number | undefined,
  clearanceMetres: number,
): Place[] {
  const count = Math.max(3, Math.round(lengthMetres / STEP_METRES) + 1);
  const points = way.slice(0, count);
  const known = points.map(groundAt);
  const fallback = known.find((height) => height !== undefined) ?? 0;
  // Beyond the edge of the model the last known height holds.
  let last = fallback;
  const ground = known.map((height) => (last = height ?? last));
  const above = points.map((_, i) => {
    const share = i / (count - 1);
    const rising = ease(Math.min(1, share / 0.4));
    const falling = ease(Math.max(0, (share - 0.6) / 0.4));
    return TEE_METRES + (FAIRWAY_METRES - TEE_METRES) * rising - (FAIRWAY_METRES - GREEN_METRES) * falling;
  });
  const heights = smoothAbove(ground, Math.round(HILL_METRES / STEP_METRES));
  return points.map((point, i) => ({ point, heightMetres: heights[i]! + Math.max(clearanceMetres, above[i]!) }));
}

function lookAt(
  { point, heightMetres }: Place,
  way: readonly Point[],
  index: number,
  groundAt: (point: Point) => number | undefined,
): Pose {
  const target = way[Math.min(way.length - 1, index + Math.round(AHEAD_METRES / STEP_METRES))]!;
  const away = Math.max(1, distanceMetres(point, target));
  // Level ground is taken where it is unknown, so that the horizon stays in the picture.
  const drop = heightMetres - (groundAt(target) ?? heightMetres - FAIRWAY_METRES);
  return {
    point,
    heightMetres,
    bearingDegrees: bearingDegrees(directionTo(point, target)),
    downDegrees: Math.min(MOST_DOWN_DEGREES, Math.max(4, degrees(Math.atan2(drop, away)))),
  };
}

/** Bearings made continuous, and the nod smoothed: ground under the target is rougher than a camera should be. */
function unwrapped(poses: readonly Pose[]): Pose[] {
  const downs = smoothed(
    poses.map(({ downDegrees }) => downDegrees),
    Math.round(HILL_METRES / STEP_METRES),
  );
  let bearing = poses[0]!.bearingDegrees;
  return poses.map((pose, i) => {
    bearing += turn(bearing, pose.bearingDegrees);
    return { ...pose, bearingDegrees: bearing, downDegrees: downs[i]! };
  });
}

/** The shortest turn from one bearing to another, degrees, right positive. */
export const turn = (from: number, to: number): number => ((((to - from) % 360) + 540) % 360) - 180;

/** Poses as columns of numbers, to be read between samples. */
function track(poses: readonly Pose[]): (place: number) => Pose {
  const column = (read: (pose: Pose) => number): readonly number[] => poses.map(read);
  const [xs, ys, heights, bearings, downs] = [
    column(({ point }) => point[0]),
    column(({ point }) => point[1]),
    column(({ heightMetres }) => heightMetres),
    column(({ bearingDegrees: bearing }) => bearing),
    column(({ downDegrees }) => downDegrees),
  ];
  return (place) => ({
    point: [between(xs, place), between(ys, place)],
    heightMetres: between(heights, place),
    bearingDegrees: between(bearings, place),
    downDegrees: between(downs, place),
  });
}

/** The greatest rates of a flight: what comfort is held against. */
export interface Rates {
  readonly turnDegreesPerSecond: number;
  readonly turnDegreesPerSecondSquared: number;
  readonly nodDegreesPerSecond: number;
  readonly speedMetresPerSecond: number;
  readonly accelerationMetresPerSecondSquared: number;
}

/** Rates of a flight by differences over `step` seconds. */
export function ratesOf(poseAt: (seconds: number) => Pose, seconds: number, step = 0.1): Rates {
  const rates = { turn: 0, spin: 0, nod: 0, speed: 0, push: 0 };
  const move = (a: Pose, b: Pose): [number, number, number] => [
    (b.point[0] - a.point[0]) / step,
    (b.point[1] - a.point[1]) / step,
    (b.heightMetres - a.heightMetres) / step,
  ];
  for (let t = 0; t <= seconds; t += step) {
    const [a, b, c] = [poseAt(t - step), poseAt(t), poseAt(t + step)];
    const [one, two] = [move(a, b), move(b, c)];
    const [left, right] = [(b.bearingDegrees - a.bearingDegrees) / step, (c.bearingDegrees - b.bearingDegrees) / step];
    rates.turn = Math.max(rates.turn, Math.abs(right));
    rates.spin = Math.max(rates.spin, Math.abs(right - left) / step);
    rates.nod = Math.max(rates.nod, Math.abs(c.downDegrees - b.downDegrees) / step);
    rates.speed = Math.max(rates.speed, Math.hypot(...two));
    rates.push = Math.max(rates.push, Math.hypot(two[0] - one[0], two[1] - one[1], two[2] - one[2]) / step);
  }
  return {
    turnDegreesPerSecond: rates.turn,
    turnDegreesPerSecondSquared: rates.spin,
    nodDegreesPerSecond: rates.nod,
    speedMetresPerSecond: rates.speed,
    accelerationMetresPerSecondSquared: rates.push,
  };
}

/** How long a way must take so that its rates stay within comfort. */
export function comfortableSeconds(along: (share: number) => Pose, leastSeconds: number, comfort: Comfort): number {
  const rates = ratesOf((time) => along(time / leastSeconds), leastSeconds);
  const stretch = Math.max(
    1,
    rates.turnDegreesPerSecond / comfort.turnDegreesPerSecond,
    Math.sqrt(rates.turnDegreesPerSecondSquared / comfort.turnDegreesPerSecondSquared),
    rates.nodDegreesPerSecond / comfort.nodDegreesPerSecond,
    rates.speedMetresPerSecond / comfort.speedMetresPerSecond,
    Math.sqrt(rates.accelerationMetresPerSecondSquared / comfort.accelerationMetresPerSecondSquared),
  );
  // A little over, for what differences of a tenth of a second miss.
  return leastSeconds * (stretch > 1 ? stretch * 1.03 : 1);
}
