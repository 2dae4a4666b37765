/** Chance that comes out the same every time it is asked with the same seed. */

export interface Random {
  /** At least 0 and below 1. */
  next(): number;
  /** A whole number at least 0 and below `n`. */
  below(n: number): number;
  pick<T>(from: readonly T[]): T;
  /** True so often. */
  chance(share: number): boolean;
  bytes(n: number): Buffer;
}

/** Mulberry32: Tommy Ettinger's public-domain generator of 32 bits. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number): number => Math.floor(next() * n);
  return {
    next,
    below,
    pick: (from) => from[below(from.length)]!,
    chance: (share) => next() < share,
    bytes: (n) => Buffer.from(Array.from({ length: n }, () => below(256))),
  };
}

/** Changes some bytes, or takes some out, puts some in, repeats some, or cuts the end off. */
export function damaged(bytes: Uint8Array, random: Random): Buffer {
  const whole = Buffer.from(bytes);
  const at = random.below(whole.length);
  const few = 1 + random.below(8);
  switch (random.below(6)) {
    case 0: {
      for (let i = 0; i < few; i++) whole[random.below(whole.length)] = random.below(256);
      return whole;
    }
    case 1:
      return Buffer.concat([whole.subarray(0, at), whole.subarray(Math.min(whole.length, at + few))]);
    case 2:
      return Buffer.concat([whole.subarray(0, at), random.bytes(few), whole.subarray(at)]);
    case 3:
      return Buffer.concat([whole.subarray(0, at), whole.subarray(at, at + 64), whole.subarray(at)]);
    case 4: {
      whole[at] = random.pick([0, 0xff, 0x7f, 0x80]);
      return whole;
    }
    default:
      return whole.subarray(0, at);
  }
}
