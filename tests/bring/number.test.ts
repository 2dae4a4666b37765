/** Numbers by the walk: rounds drawn at random, each green some steps from the next tee. */
import { describe, expect, it } from "vitest";
import { numberByWalk, type Ends } from "../../src/bring/place/number.ts";

/** A round whose walks are shorter than the ways between any other green and tee. */
function round(holes: number, seed: number): Ends[] {
  const angle = (i: number): number => i * 0.9 + seed;
  let at: [number, number] = [0, 0];
  return Array.from({ length: holes }, (_, i): Ends => {
    const start: [number, number] = [at[0] + 20, at[1]];
    const end: [number, number] = [start[0] + 300 + 40 * Math.cos(angle(i)), start[1] + 200 * Math.sin(angle(i))];
    at = end;
    return { start, end };
  });
}
const turned = <T>(items: readonly T[], by: number): T[] => [...items.slice(by), ...items.slice(0, by)];

describe("a round with short walks", () => {
  it.each([1, 2, 3, 9, 12])("of %i holes is numbered as it is played, whatever order its lines are in", (holes) => {
    for (let seed = 0; seed < 5; seed++) {
      const lines = round(holes, seed);
      const numbers = lines.map((_, i) => i + 1);
      for (const by of [0, Math.floor(holes / 2)])
        expect(numberByWalk(turned(lines, by), new Map(), [0, 0])).toEqual(turned(numbers, by));
    }
  });

  it("keeps the numbers that are known, and fills the others", () => {
    const lines = round(9, 1);
    for (const known of [[1], [1, 5], [2, 9], [1, 2, 3, 4, 5, 6, 7, 8]]) {
      const open = lines.map((_, i) => i + 1).filter((number) => !known.includes(number));
      expect(
        numberByWalk(
          open.map((number) => lines[number - 1]!),
          new Map(known.map((number) => [number, lines[number - 1]!])),
          [0, 0],
        ),
      ).toEqual(open);
    }
  });
});

it("says nothing where nobody said where the round begins, or the lines do not make one up", () => {
  const lines = round(9, 1);
  expect(numberByWalk(lines, new Map(), undefined)).toBeUndefined();
  expect(numberByWalk(lines, new Map([[18, lines[0]!]]), [0, 0])).toBeUndefined();
  expect(numberByWalk([...lines, ...lines, ...lines], new Map(), [0, 0])).toBeUndefined();
  expect(numberByWalk([], new Map(), [0, 0])).toBeUndefined();
});
