/** Where height tiles are, seen from the page. */
import type { GroundData } from "../hole-data.ts";

/** The tiles' address made absolute, the map's worker having no page to start from. Its {z}, {x} and {y} stay. */
export function groundFrom(ground: GroundData | undefined, address: URL): GroundData | undefined {
  if (ground === undefined) return undefined;
  const tiles = new URL(ground.tiles, address).href.replaceAll("%7B", "{").replaceAll("%7D", "}");
  return { ...ground, tiles };
}
