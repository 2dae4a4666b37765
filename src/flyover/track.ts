/**
 * A flight written small: poses at even times, as whole centimetres and hundredths of a
 * degree, each column the steps between its values. The browser reads it back as a
 * {@link Flight} that passes through every pose.
 */
import type { Track } from "../contract/film-data.ts";
import type { Flight, Pose } from "./types.ts";

const PARTS_OF_ONE = 100;

const steps = (values: readonly number[]): number[] => {
  let previous = 0;
  return values.map((value) => {
    const whole = Math.round(value * PARTS_OF_ONE);
    const step = whole - previous;
    previous = whole;
    return step;
  });
};

function values(written: readonly number[]): number[] {
  let sum = 0;
  return written.map((step) => (sum += step) / PARTS_OF_ONE);
}

/** Samples a flight at most every `mostStepSeconds`, its first and last moment among them. */
export function trackOf(flight: Flight, mostStepSeconds: number): Track {
  if (!(mostStepSeconds > 0))
    throw new RangeError(`The step of a track must be more than 0 seconds, not ${mostStepSeconds}.`);
  const count = Math.max(1, Math.ceil(flight.seconds / mostStepSeconds));
  const stepSeconds = flight.seconds / count;
  const poses = Array.from({ length: count + 1 }, (_, i) => flight.poseAt(i * stepSeconds));
  return {
    stepSeconds,
    east: steps(poses.map(({ point }) => point[0])),
    north: steps(poses.map(({ point }) => point[1])),
    height: steps(poses.map(({ heightMetres }) => heightMetres)),
    bearing: steps(poses.map(({ bearingDegrees }) => bearingDegrees)),
    down: steps(poses.map(({ downDegrees }) => downDegrees)),
  };
}

/** The flight a track was sampled from, to within its rounding at the samples. */
export function flightOf({ stepSeconds, east, north, height, bearing, down }: Track): Flight {
  const [xs, ys, heights, bearings, downs] = [east, north, height, bearing, down].map(values) as [
    number[],
    number[],
    number[],
    number[],
    number[],
  ];
  const seconds = (xs.length - 1) * stepSeconds;
  return {
    seconds,
    poseAt(time): Pose {
      const place = Math.min(xs.length - 1, Math.max(0, time / stepSeconds));
      return {
        point: [through(xs, place), through(ys, place)],
        heightMetres: through(heights, place),
        bearingDegrees: through(bearings, place),
        downDegrees: through(downs, place),
      };
    },
  };
}

/**
 * A cubic through the samples whose slope at each is that between its neighbours (Catmull and Rom, 1974);
 * ends are at rest.
 */
function through(samples: readonly number[], place: number): number {
  const last = samples.length - 1;
  const i = Math.min(Math.max(0, last - 1), Math.floor(place));
  const t = place - i;
  const at = (k: number): number => samples[Math.min(last, Math.max(0, k))]!;
  // Mirrored in time at the ends: a flight starts and stops without a push.
  const slope = (k: number): number => (k <= 0 || k >= last ? 0 : (at(k + 1) - at(k - 1)) / 2);
  const [a, b, from, to] = [at(i), at(i + 1), slope(i), slope(i + 1)];
  return (
    (2 * t ** 3 - 3 * t ** 2 + 1) * a +
    (t ** 3 - 2 * t ** 2 + t) * from +
    (3 * t ** 2 - 2 * t ** 3) * b +
    (t ** 3 - t ** 2) * to
  );
}
