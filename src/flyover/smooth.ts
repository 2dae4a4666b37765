/** Smoothing of evenly spaced samples. */

/** Mean of three box filters: close to a bell curve, with a support of `reach` samples to each side. Ends are held. */
export function smoothed(samples: readonly number[], reach: number): number[] {
  const third = Math.max(1, Math.floor(reach / 3));
  let result = [...samples];
  for (let pass = 0; pass < 3; pass++) result = boxed(result, third);
  return result;
}

function boxed(samples: readonly number[], half: number): number[] {
  const at = (i: number): number => samples[Math.min(samples.length - 1, Math.max(0, i))]!;
  let sum = 0;
  for (let k = -half; k <= half; k++) sum += at(k);
  return samples.map((_, i) => {
    const mean = sum / (2 * half + 1);
    sum += at(i + half + 1) - at(i - half);
    return mean;
  });
}

/**
 * A smooth line that is nowhere below the samples: the greatest sample within `reach` of
 * each place, smoothed over no more than that reach. Every mean then holds only values at
 * least as great as the sample it stands over; two samples are kept back, so that a spline
 * between its values covers the samples too.
 */
export function smoothAbove(samples: readonly number[], reach: number): number[] {
  const greatest = samples.map((_, i) => {
    let most = -Infinity;
    for (let k = Math.max(0, i - reach); k <= Math.min(samples.length - 1, i + reach); k++)
      most = Math.max(most, samples[k]!);
    return most;
  });
  return smoothed(greatest, Math.max(1, reach - 2));
}

/**
 * The value between samples by a uniform cubic B-spline: without a jolt in speed or
 * acceleration, and always between the four samples about it. Held beyond the ends, which
 * it reaches.
 */
export function between(samples: readonly number[], place: number): number {
  const at = Math.min(samples.length - 1, Math.max(0, place));
  const i = Math.min(samples.length - 2, Math.floor(at));
  const t = at - i;
  const sample = (k: number): number => {
    // Reflected through the ends, so that the spline passes through the first and last sample.
    if (k < 0) return 2 * samples[0]! - samples[Math.min(samples.length - 1, -k)]!;
    const last = samples.length - 1;
    return k > last ? 2 * samples[last]! - samples[Math.max(0, 2 * last - k)]! : samples[k]!;
  };
  const s = 1 - t;
  return (
    (s * s * s * sample(i - 1) +
      (3 * t * t * t - 6 * t * t + 4) * sample(i) +
      (3 * s * s * s - 6 * s * s + 4) * sample(i + 1) +
      t * t * t * sample(i + 2)) /
    6
  );
}

/** A way from 0 to 1 that starts and ends at rest, with no jolt (quintic); its steepest slope is 1.875. */
export const ease = (share: number): number => {
  const t = Math.min(1, Math.max(0, share));
  return t * t * t * (t * (6 * t - 15) + 10);
};
