/**
 * GDAL's OSM driver keeps the tags it has no column for in one, `other_tags`: as an
 * hstore text (`"golf"=>"bunker","surface"=>"sand"`) or, with TAGS_FORMAT=JSON, as JSON.
 * Source: GDAL's documentation of the driver, "OSM - OpenStreetMap XML and PBF".
 */
const PAIR = /"((?:[^"\\]|\\.)*)"\s*=>\s*(?:"((?:[^"\\]|\\.)*)"|NULL)/g;

const plain = (text: string): string => text.replace(/\\(.)/g, "$1");

/** The tags in such a column; none where it is something else. */
export function otherTags(column: unknown): Record<string, string> {
  if (typeof column !== "string") return {};
  if (column.trimStart().startsWith("{")) {
    try {
      const read: unknown = JSON.parse(column);
      return Object.fromEntries(
        Object.entries(read as object).flatMap(([key, value]) => (typeof value === "string" ? [[key, value]] : [])),
      );
    } catch {
      return {};
    }
  }
  return Object.fromEntries(
    [...column.matchAll(PAIR)].flatMap(([, key, value]) => (value === undefined ? [] : [[plain(key!), plain(value)]])),
  );
}

/** The ids that the driver writes beside the tags. */
export const OSM_ID_COLUMNS = ["osm_id", "osm_way_id"] as const;

/**
 * Which element of OpenStreetMap a feature of the driver's layers is, or one that Overpass
 * turbo exported with its `@id`: `way/12`.
 */
export function osmElement(properties: Readonly<Record<string, unknown>>, geometryType: string): string | undefined {
  const at = properties["@id"];
  if (typeof at === "string" && /^(node|way|relation)\/\d+$/.test(at)) return at;
  const number = (key: string): string | undefined => /^\d+$/.exec(String(properties[key] ?? ""))?.[0];
  const way = number("osm_way_id");
  if (way !== undefined) return `way/${way}`;
  const id = number("osm_id");
  if (id === undefined) return undefined;
  return `${geometryType.endsWith("Point") ? "node" : geometryType === "LineString" ? "way" : "relation"}/${id}`;
}
