/** Work that must not all be done at once. */

/** Runs jobs handed in, never more than `count` at a time, in the order they came. */
export function atMost(count: number): <T>(job: () => Promise<T>) => Promise<T> {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (job) => {
    if (running >= count) await new Promise<void>((go) => waiting.push(go));
    else running++;
    try {
      return await job();
    } finally {
      // The place is handed on, so that nobody slips in between.
      const next = waiting.shift();
      if (next) next();
      else running--;
    }
  };
}
