import { FASTEST_LAUNCH_METRES_PER_SECOND, SLOWEST_LAUNCH_METRES_PER_SECOND } from "./family.ts";

/** What one trial of a ball speed gave. */
export interface SpeedTrial {
  /** How far past what is wanted, metres; negative: short of it. */
  readonly missMetres: number;
}

/** A trial this near is put right along the last slope, which leaves less than 0.1 mm, and not flown again. */
const NEAR_METRES = 0.02;
/** Typical carry won per m/s of ball speed, metres; only a start, the search corrects it. */
const METRES_PER_METRE_PER_SECOND = 3.3;
const MOST_TRIALS = 80;

/**
 * Finds the ball speed whose trial misses by nothing, by the secant method kept inside a bracket.
 *
 * The trial's miss must grow with speed. The last trial is handed back with the speed; it misses by
 * no more than 20 mm, unless the miss jumps past nothing (a target on a ledge can be under the climb
 * of one ball and behind the landing of the next): then it misses by more, and the caller must look.
 *
 * @param guess where to start, m/s
 * @returns not found when even the slowest ball goes past (`side` 'long') or the fastest falls short ('short')
 */
export function findSpeed<Trial extends SpeedTrial>(
  guess: number,
  tryAt: (speedMetresPerSecond: number) => Trial,
): { readonly found: true; readonly speedMetresPerSecond: number; readonly trial: Trial } | { readonly found: false; readonly side: "long" | "short" } {
  let low = SLOWEST_LAUNCH_METRES_PER_SECOND;
  let high = FASTEST_LAUNCH_METRES_PER_SECOND;
  let lowTried = false;
  let highTried = false;
  let speed = Math.min(high, Math.max(low, guess));
  let last: { speed: number; miss: number } | null = null;
  for (let n = 0; n < MOST_TRIALS; n += 1) {
    const trial = tryAt(speed);
    const miss = trial.missMetres;
    const measured = last && speed !== last.speed ? (miss - last.miss) / (speed - last.speed) : METRES_PER_METRE_PER_SECOND;
    if (Math.abs(miss) <= NEAR_METRES && (miss === 0 || (last && measured > 0))) {
      return { found: true, speedMetresPerSecond: speed - miss / measured, trial };
    }
    if (miss < 0) {
      if (speed >= FASTEST_LAUNCH_METRES_PER_SECOND) return { found: false, side: "short" };
      low = speed;
      lowTried = true;
    } else {
      if (speed <= SLOWEST_LAUNCH_METRES_PER_SECOND) return { found: false, side: "long" };
      high = speed;
      highTried = true;
    }
    last = { speed, miss };
    let next = Number.isFinite(measured) && measured > 0 ? speed - miss / measured : NaN;
    if (!(next > low && next < high)) {
      // Outside the bracket: halve it, or try its end when that end is still only assumed.
      if (miss < 0 && !highTried) next = high;
      else if (miss > 0 && !lowTried) next = low;
      else next = (low + high) / 2;
    }
    if (next === speed || high - low < 1e-9) return { found: true, speedMetresPerSecond: speed, trial };
    speed = next;
  }
  return { found: false, side: last && last.miss < 0 ? "short" : "long" };
}
