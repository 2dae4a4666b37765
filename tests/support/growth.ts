/**
 * How work grows with its input, told by the processor's time of this thread and not by a clock: load does
 * not change it.
 */

const processorMicroseconds = (work: () => void): number => {
  const before = process.threadCpuUsage();
  work();
  const { user, system } = process.threadCpuUsage(before);
  return user + system;
};

/**
 * How many times as much work four times the input is: some 4 where work grows with the
 * input, 16 with its square, 64 with its cube.
 */
export function growthOverFourfold(work: (size: number) => void, size: number): number {
  const least = (n: number): number =>
    Math.min(...Array.from({ length: 3 }, () => processorMicroseconds(() => work(n))));
  // Once for the compiler.
  work(size);
  return least(4 * size) / least(size);
}
