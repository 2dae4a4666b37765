/** Where tiles are, seen from the page. */
import type { Tiles } from "../../contract/map-data.ts";

/** The tiles' address made absolute, the map's worker having no page to start from. Its {z}, {x} and {y} stay. */
export const tilesFrom = <Kind extends Tiles>(found: Kind | undefined, address: URL): Kind | undefined =>
  found && { ...found, tiles: new URL(found.tiles, address).href.replaceAll("%7B", "{").replaceAll("%7D", "}") };
