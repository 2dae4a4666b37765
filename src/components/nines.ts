/** Out and in: holes in nines, the last part shorter where they do not come out even. */
export function nines<T>(holes: readonly T[]): T[][] {
  const parts: T[][] = [];
  for (let i = 0; i < holes.length; i += 9) parts.push(holes.slice(i, i + 9));
  return parts;
}
