/** One line of the benchmark. */
export interface BenchLine {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly note: string;
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
};
