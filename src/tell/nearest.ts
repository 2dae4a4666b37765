/** Which of the known words somebody may have meant. */

/** Edit distance with neighbouring letters swapped counting once (optimal string alignment). */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      let cost = Math.min(
        rows[i - 1]![j]! + 1,
        row[j - 1]! + 1,
        rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1),
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, rows[i - 2]![j - 2]! + 1);
      row.push(cost);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** Up to `most` known words, nearest first; ties keep their order. */
export function nearest(word: string, known: readonly string[], most = 3): string[] {
  const wanted = word.toLowerCase();
  const rank = (candidate: string): number => {
    const lower = candidate.toLowerCase();
    // A word that holds the other ("gully" in "kelp-gully") is likelier than its edit distance says.
    const held = wanted.length > 2 && (lower.includes(wanted) || wanted.includes(lower));
    return held ? 1 : distance(wanted, lower);
  };
  return known
    .map((candidate, i) => ({ candidate, i, rank: rank(candidate) }))
    .sort((a, b) => a.rank - b.rank || a.i - b.i)
    .slice(0, most)
    .map(({ candidate }) => candidate);
}

/** `a`, `a or b`, `a, b or c`, each in quotation marks. */
export function listOr(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} or ${quoted[quoted.length - 1]!}`;
}
