/**
 * Stroke indexes: Rules of Handicapping, Appendix E (published; read). The reader has seen
 * to it that each number is there once. What is left are recommendations, so these are notes.
 *
 * Triads are holes 1 to 3, 4 to 6 and so on. Odd indexes belong to one nine and even ones to
 * the other; 1 and 2 to the middle triad of each nine, or the hole next to it; 3 and 4 to a
 * first or third triad, not the one that took the lowest; none of 1 to 6 to neighbours.
 */
import type { Gender } from "../../course/types.ts";
import { list } from "../say.ts";
import { coursePlace, type Finding, type Rule } from "../rule.ts";

/** What the order departs from, in sentences; `indexes[i]` belongs to hole i + 1 of eighteen. */
export function departures(indexes: readonly number[]): string[] {
  const said: string[] = [];
  const holeOf = (index: number): number => indexes.indexOf(index) + 1;
  const nine = (hole: number): number => (hole <= 9 ? 0 : 1);
  const odd = indexes.slice(0, 9).filter((index) => index % 2 === 1).length;
  if (odd !== 9 && odd !== 0) {
    const stray = indexes
      .slice(0, 9)
      .map((index, i) => ({ index, hole: i + 1 }))
      .filter(({ index }) => (index % 2 === 1) !== odd >= 5);
    said.push(
      `odd indexes belong to one nine and even ones to the other, but hole${stray.length === 1 ? "" : "s"} ${list(stray.map(({ hole, index }) => `${hole} (${index})`))} of the first nine break${stray.length === 1 ? "s" : ""} that`,
    );
  }
  const triad = (hole: number): number => Math.floor(((hole - 1) % 9) / 3);
  for (const index of [1, 2]) {
    const hole = holeOf(index);
    const inNine = ((hole - 1) % 9) + 1;
    // The neighbour of the middle triad may stand in for it.
    if (inNine < 3 || inNine > 7)
      said.push(
        `${index} belongs to the middle three holes of its nine or the hole next to them, not to hole ${hole}`,
      );
  }
  if (nine(holeOf(1)) === nine(holeOf(2)))
    said.push(`1 and 2 belong to different nines, but are on holes ${holeOf(1)} and ${holeOf(2)}`);
  for (const index of [3, 4]) {
    const hole = holeOf(index);
    const lowest = [1, 2].map(holeOf).find((other) => nine(other) === nine(hole));
    if (triad(hole) === 1)
      said.push(`${index} belongs to the first or last three holes of a nine, not to hole ${hole}`);
    else if (lowest !== undefined && triad(lowest) === triad(hole))
      said.push(
        `${index} on hole ${hole} is in the same three holes as hole ${lowest}, which has the lowest of that nine`,
      );
  }
  for (let hole = 1; hole < indexes.length; hole++) {
    const [one, next] = [indexes[hole - 1]!, indexes[hole]!];
    if (one <= 6 && next <= 6)
      said.push(`holes ${hole} and ${hole + 1} follow one another with ${one} and ${next}, both 6 or lower`);
  }
  return said;
}

export const strokeIndexSpread: Rule = {
  name: "stroke-index-spread",
  severity: "note",
  about: "The order of stroke indexes departs from the recommendations of the World Handicap System (Appendix E).",
  run: ({ measured }) => {
    const { holes } = measured;
    if (holes.length !== 18) return [];
    const of = (gender: Gender): number[] => holes.map(({ hole }) => hole.strokeIndex[gender]);
    const [men, women] = [of("men"), of("women")];
    const same = men.every((index, i) => index === women[i]);
    const groups: readonly (readonly [string, readonly number[]])[] = same
      ? [["", men]]
      : [
          [" for men", men],
          [" for women", women],
        ];
    return groups.flatMap(([whose, indexes]): Finding[] => {
      const said = departures(indexes);
      if (said.length === 0) return [];
      return [
        {
          place: coursePlace(measured),
          message: `The stroke indexes${whose} depart from the World Handicap System's recommendations: ${said.join("; ")}. Renumber them, or silence the rule and say why.`,
        },
      ];
    });
  },
};
