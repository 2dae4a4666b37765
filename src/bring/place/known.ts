/**
 * What the pages know of their holes: lines of play and greens, by which the rest is
 * placed. Pure. Placeholders are invented, so nothing is placed by them; only where a
 * beginner's first tee stands was said by the club.
 */
import type { Position } from "geojson";
import { isPlaceholder } from "../../course/draft.ts";
import type { CheckedFeature } from "../../course/schema/features.ts";
import type { CoursePages, Page } from "../pages/pages.ts";
import type { SortHole } from "./sort.ts";

const lineOf = (feature: CheckedFeature | undefined): readonly Position[] | undefined =>
  feature?.geometry.type === "LineString" ? feature.geometry.coordinates : undefined;

/** The page's line of play and green, of those that are real. */
export function realOn({ features }: Page): {
  readonly line: readonly Position[] | undefined;
  readonly green: SortHole["green"];
} {
  const real = features.filter((feature) => !isPlaceholder(feature));
  return {
    line: lineOf(real.find(({ kind }) => kind === "line-of-play")),
    green: real.find(({ kind }) => kind === "green")?.geometry,
  };
}

/** The holes that have a line of play on their page. */
export function knownHoles({ holes }: CoursePages): SortHole[] {
  return holes.flatMap((page) => {
    const { line, green } = realOn(page);
    return line === undefined || typeof page.at !== "number" ? [] : [{ number: page.at, line, green }];
  });
}

/** Where the first hole begins, as the club said when it began. */
export function statedFirstTee({ holes }: CoursePages): Position | undefined {
  const first = holes.find(({ at }) => at === 1);
  return lineOf(first?.features.find((feature) => feature.kind === "line-of-play" && isPlaceholder(feature)))?.[0];
}
