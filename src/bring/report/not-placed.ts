/**
 * What could not be placed, as GeoJSON beside the course, so that it can be looked at in a GIS and brought
 * again. Pure.
 */
import type { LeftOver } from "../left-over.ts";

/** Its file in the course's folder. */
export const NOT_PLACED_FILE = "not-placed.geojson";

/** What belongs to golf and went to no page. */
export const golfLeftOver = (leftOver: readonly LeftOver[]): readonly LeftOver[] =>
  leftOver.filter(({ candidate }) => candidate?.tags["golf"] !== undefined);

/** A FeatureCollection, a feature a line; undefined where there is nothing to show and nothing was shown. */
export function notPlacedText(leftOver: readonly LeftOver[], before: string | undefined): string | undefined {
  const features = golfLeftOver(leftOver).map(
    ({ candidate, from, reason }) =>
      `    ${JSON.stringify({ type: "Feature", properties: { ...candidate!.tags, ...(typeof candidate!.hole === "number" ? { ref: String(candidate!.hole) } : {}), why: reason, from }, geometry: candidate!.geometry })}`,
  );
  if (features.length === 0 && before === undefined) return undefined;
  return `{\n  "type": "FeatureCollection",\n  "features": [${features.length === 0 ? "" : `\n${features.join(",\n")}\n  `}]\n}\n`;
}
