/** What the pages know of their holes: lines of play and greens, by which the rest is placed. Pure. */
import type { Position } from "geojson";
import type { CoursePages, Page } from "../pages/pages.ts";
import type { SortHole } from "./sort.ts";

const lineOn = (page: Page): readonly Position[] | undefined => {
  const geometry = page.features.find(({ kind }) => kind === "line-of-play")?.geometry;
  return geometry?.type === "LineString" ? geometry.coordinates : undefined;
};

/** The holes that have a line of play on their page. */
export function knownHoles({ holes }: CoursePages): SortHole[] {
  return holes.flatMap((page) => {
    const line = lineOn(page);
    const green = page.features.find(({ kind }) => kind === "green")?.geometry;
    return line === undefined || typeof page.at !== "number" ? [] : [{ number: page.at, line, green }];
  });
}
