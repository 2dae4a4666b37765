/**
 * How wide a text will be, near enough to keep labels apart. Advance widths are those of
 * Besley (SIL Open Font License), read from its files at weights 400 and 600, in hundredths
 * of an em for the characters from space to tilde. Georgia and Times, the fallbacks, are
 * narrower.
 */
const REGULAR = [
  20, 44, 44, 63, 53, 100, 87, 25, 46, 46, 52, 52, 25, 52, 25, 56, 59, 52, 57, 53, 54, 51, 55, 52, 53, 55, 25, 25, 56,
  56, 56, 55, 106, 86, 75, 81, 82, 76, 72, 87, 88, 41, 59, 87, 73, 103, 87, 83, 69, 83, 77, 67, 77, 84, 86, 118, 87,
  78, 75, 32, 52, 32, 54, 56, 39, 56, 64, 54, 64, 55, 39, 60, 66, 33, 29, 61, 31, 92, 67, 57, 64, 63, 48, 50, 35, 66,
  58, 86, 58, 62, 54, 27, 30, 27, 69,
];
const HEAVY = [
  23, 46, 46, 63, 53, 106, 88, 28, 46, 46, 52, 52, 26, 52, 25, 56, 62, 55, 61, 56, 57, 56, 58, 55, 56, 58, 28, 28, 56,
  56, 56, 56, 109, 89, 78, 82, 85, 78, 75, 89, 92, 46, 63, 90, 74, 109, 90, 85, 72, 85, 83, 69, 79, 87, 89, 121, 88,
  81, 77, 35, 52, 35, 54, 56, 39, 60, 67, 57, 67, 57, 41, 63, 69, 36, 32, 66, 35, 97, 70, 59, 67, 66, 53, 53, 39, 69,
  61, 89, 62, 65, 55, 30, 30, 30, 69,
];
/**
 * Characters past the tilde that words are made of, from the same files: regular, then heavy. An accent adds
 * nothing to its letter.
 */
const MORE: Readonly<Record<string, readonly [number, number]>> = {
  "\u00a0": [REGULAR[0]!, HEAVY[0]!],
  ß: [78, 81],
  "—": [106, 106],
};
/** For dashes, quotes and other scripts: wider than most. */
const OTHER = 72;

export type Weight = "regular" | "heavy";

/** Width in sheet units. Letter spacing is in ems and comes after every character. */
export function textWidth(text: string, size: number, weight: Weight = "regular", spacing = 0): number {
  const table = weight === "heavy" ? HEAVY : REGULAR;
  let hundredths = 0;
  for (const character of text.normalize("NFD").replace(/[\u0300-\u036f]/g, "")) {
    const code = character.codePointAt(0)! - 32;
    hundredths += table[code] ?? MORE[character]?.[weight === "heavy" ? 1 : 0] ?? OTHER;
    hundredths += spacing * 100;
  }
  return (hundredths * size) / 100;
}
