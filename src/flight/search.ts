/** What one trial of a carry gave. */
export interface CarryTrial {
  /** How far past what is wanted, metres; negative: short of it. */
  readonly missMetres: number;
}

/** A trial this near is put right along the last slope, which leaves less than 0.1 mm, and not flown again. */
const NEAR_METRES = 0.02;
const MOST_TRIALS = 80;

export type FoundCarry<Trial> =
  | {
      readonly found: true;
      readonly carryMetres: number;
      /** Metres won in the trial per metre of carry, hereabouts. */
      readonly slope: number;
      readonly trial: Trial;
    }
  | { readonly found: false; readonly side: "long" | "short" };

/**
 * Finds the level carry whose trial misses by nothing, by the secant method kept inside a bracket.
 *
 * The trial's miss must grow with the carry. The last trial is handed back with the carry; it misses by
 * no more than 20 mm, unless the miss jumps past nothing (a target on a ledge can be under the climb
 * of one ball and behind the landing of the next): then it misses by more, and the caller must look.
 *
 * @param bounds shortest and longest carry tried
 * @param guess where to start
 * @returns not found when even the shortest goes past (`side` 'long') or the longest falls short ('short')
 */
export function findCarry<Trial extends CarryTrial>(
  bounds: readonly [shortest: number, longest: number],
  guess: number,
  tryAt: (carryMetres: number) => Trial,
): FoundCarry<Trial> {
  let [low, high] = bounds;
  const [shortest, longest] = bounds;
  let lowTried = false;
  let highTried = false;
  let carry = Math.min(high, Math.max(low, guess));
  let last: { carry: number; miss: number } | null = null;
  for (let n = 0; n < MOST_TRIALS; n += 1) {
    const trial = tryAt(carry);
    const miss = trial.missMetres;
    const measured = last && carry !== last.carry ? (miss - last.miss) / (carry - last.carry) : 1;
    if (Math.abs(miss) <= NEAR_METRES && (miss === 0 || (last && measured > 0))) {
      return { found: true, carryMetres: carry - miss / measured, slope: measured, trial };
    }
    if (miss < 0) {
      if (carry >= longest) return { found: false, side: "short" };
      low = carry;
      lowTried = true;
    } else {
      if (carry <= shortest) return { found: false, side: "long" };
      high = carry;
      highTried = true;
    }
    last = { carry, miss };
    let next = Number.isFinite(measured) && measured > 0 ? carry - miss / measured : NaN;
    if (!(next > low && next < high)) {
      // Outside the bracket: halve it, or try its end when that end is still only assumed.
      if (miss < 0 && !highTried) next = high;
      else if (miss > 0 && !lowTried) next = low;
      else next = (low + high) / 2;
    }
    if (next === carry || high - low < 1e-9) return { found: true, carryMetres: carry, slope: measured, trial };
    carry = next;
  }
  return { found: false, side: last && last.miss < 0 ? "short" : "long" };
}
