/** The name somebody meant when they typed one that does not exist. */

/**
 * Fewest insertions, deletions, replacements and swaps of neighbours that turn a into b (optimal string
 * alignment).
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, beforeLast[j - 2]! + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length]!;
}

/** Longer than any name in the format; comparing a page of text with a name helps nobody. */
const LONGEST = 60;

/**
 * The valid names close to a typed one, nearest first, at most three: those within a third
 * of its length (at least one edit), or that start with it or are started by it.
 */
export function nearestNames(typed: string, valid: Iterable<string>): string[] {
  const wanted = typed.slice(0, LONGEST).toLowerCase();
  if (wanted === "") return [];
  const reach = Math.max(1, Math.floor(wanted.length / 3));
  const scored: { name: string; score: number }[] = [];
  for (const name of valid) {
    const candidate = name.toLowerCase();
    const score = editDistance(wanted, candidate);
    const begins =
      candidate.length > 2 && wanted.length > 2 && (candidate.startsWith(wanted) || wanted.startsWith(candidate));
    if (score <= reach || begins) scored.push({ name, score });
  }
  scored.sort((a, b) => a.score - b.score || (a.name < b.name ? -1 : 1));
  return scored.slice(0, 3).map(({ name }) => name);
}
