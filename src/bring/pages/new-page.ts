/** Text of what bring writes anew: a hole page, a list of features. */
import type { SaidOfHole } from "../normalise/said.ts";
import { slugOf } from "./naming.ts";
import { flow } from "./yaml-edit.ts";

/** A list of features as the pages have it, each on a line, indented below its field. */
export const featuresBlock = (features: readonly unknown[], newline = "\n"): string =>
  ["features:", "  type: FeatureCollection", "  features:", ...features.map((feature) => `    - ${flow(feature)}`)].join(newline);

/** `07-kelp-gully.md`. */
export const holeFileName = (number: number, name: string | undefined): string =>
  `${String(number).padStart(2, "0")}-${slugOf(name) || "hole"}.md`;

/**
 * A page for a hole that has none. What the source does not say stays out, with a line
 * that says what to write: `check` will ask for it too.
 */
export function newPage(number: number, { name, par, strokeIndex, card }: SaidOfHole, features: readonly unknown[]): string {
  const perhaps = (key: string, value: unknown, todo: string): string => (value === undefined ? `# ${key}: ${todo}` : `${key}: ${flow(value)}`);
  return [
    "---",
    `hole: ${number}`,
    `name: ${flow(name ?? `Hole ${number}`)}`,
    perhaps("par", par, "4   (write the hole's par, without the number sign)"),
    perhaps("strokeIndex", strokeIndex, "1   (write the hole's stroke index)"),
    perhaps("card", Object.keys(card).length > 0 ? card : undefined, "{ white: 392, yellow: 371 }   (write the printed card, yards by tee set)"),
    featuresBlock(features),
    "---",
    "",
  ].join("\n");
}
