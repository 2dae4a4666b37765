/** Text of what bring writes anew: a hole page, a list of features. */
import type { SaidOfHole } from "../normalise/said.ts";
import { yardsFromMetres } from "../../geo/units.ts";
import { slugOf } from "./naming.ts";
import { flow } from "./yaml-edit.ts";

/** A list of features as the pages have it, each on a line, indented below its field. */
export const featuresBlock = (features: readonly unknown[], newline = "\n"): string =>
  [
    "features:",
    "  type: FeatureCollection",
    "  features:",
    ...features.map((feature) => `    - ${flow(feature)}`),
  ].join(newline);

/** `07-kelp-gully.md`. */
export const holeFileName = (number: number, name: string | undefined): string =>
  `${String(number).padStart(2, "0")}-${slugOf(name) || "hole"}.md`;

export interface Blanks {
  /** The course's tee sets, each of which a form names. */
  readonly tees: readonly { readonly id: string }[];
  /** Metres measured from each marker, where there are any. */
  readonly lengths: Readonly<Record<string, number>>;
  /** Fields whose values were worked out from the ground. */
  readonly proposed: readonly string[];
}

/**
 * A page for a hole that has none. What the source does not say stays out, with a blank
 * form that says what to write, measured figures marked as measured: `check` will ask for
 * it too.
 */
export function newPage(
  number: number,
  { name, par, strokeIndex, card }: SaidOfHole,
  features: readonly unknown[],
  { tees, lengths, proposed }: Blanks,
): string {
  const perhaps = (key: string, value: unknown, todo: string): string =>
    value === undefined ? `# ${key}: ${todo}` : `${key}: ${flow(value)}`;
  const measured = tees.flatMap(({ id }) =>
    lengths[id] === undefined ? [] : [`${id} ${Math.round(yardsFromMetres(lengths[id]))}`],
  );
  const form = `{ ${tees.map(({ id }) => `${id}: ___`).join(", ")} }`;
  return [
    "---",
    `hole: ${number}`,
    `name: ${flow(name ?? `Hole ${number}`)}`,
    perhaps("par", par, "___   (write the hole's par, without the number sign)"),
    perhaps("strokeIndex", strokeIndex, "___   (write the hole's stroke index)"),
    perhaps(
      "card",
      Object.keys(card).length > 0 ? card : undefined,
      `${form}   (write the printed card, yards by tee set${measured.length > 0 ? `; measured on the ground: ${measured.join(", ")}` : ""})`,
    ),
    ...(proposed.length > 0 ? [`proposed: ${flow(proposed)}`] : []),
    featuresBlock(features),
    "---",
    "",
  ].join("\n");
}
