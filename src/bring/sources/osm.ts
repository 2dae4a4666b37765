/** OpenStreetMap data: ways and multipolygons put together by osmtogeojson. */
import osmtogeojson from "osmtogeojson";
import { plainGeometries, type Brought, type BroughtFile } from "./brought.ts";
import { checkCount, LIMITS } from "./limits.ts";
import type { OsmElement } from "./osm-elements.ts";

/** @param format as a report names it: `OSM XML` or `Overpass JSON` */
export function readOsm(
  file: string,
  format: string,
  { elements, notes }: { elements: readonly OsmElement[]; notes: readonly string[] },
): BroughtFile {
  const { features } = osmtogeojson({ elements });
  checkCount(file, features.length, LIMITS.features, "features");
  const said = [...notes];
  const brought = features.flatMap(({ properties, geometry }): Brought[] => {
    const { type, id, tags, tainted } = properties;
    if (Object.keys(tags).length === 0) return [];
    if (tainted) said.push(`${file}, ${type}/${id} lacks some of its members; look at its outline.`);
    return plainGeometries(geometry).map((part) => ({
      from: `${file}, ${type}/${id}`,
      key: `osm:${type}/${id}`,
      properties: tags,
      geometry: part,
      words: [],
      mapped: true,
    }));
  });
  return { format, features: brought, openStreetMap: true, notes: said };
}
