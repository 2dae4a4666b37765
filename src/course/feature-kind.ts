/** OpenStreetMap tags to what a feature is for us. */
import type { FeatureKind } from "./types.ts";

type Tags = Readonly<Record<string, string | number | boolean>>;
type GeometryType = "Point" | "MultiPoint" | "LineString" | "MultiLineString" | "Polygon" | "MultiPolygon";

const GOLF: Readonly<Record<string, FeatureKind>> = {
  hole: "line-of-play",
  fairway: "fairway",
  rough: "rough",
  green: "green",
  bunker: "bunker",
  water_hazard: "penalty-area-yellow",
  lateral_water_hazard: "penalty-area-red",
  out_of_bounds: "out-of-bounds",
  pin: "pin",
  cartpath: "path",
  path: "path",
  driving_range: "driving-range",
  clubhouse: "building",
};

const NATURAL: Readonly<Record<string, FeatureKind>> = {
  water: "water",
  coastline: "coastline",
  sand: "sand",
  beach: "sand",
  dune: "sand",
  scrub: "scrub",
  heath: "heath",
  wood: "wood",
  tree: "tree",
  tree_row: "wood",
  cliff: "cliff",
  ridge: "ridge",
  rock: "rock",
  bare_rock: "rock",
  grassland: "grassland",
};

const BARRIER: Readonly<Record<string, FeatureKind>> = { wall: "wall", fence: "fence", hedge: "hedge" };

/** Golf values a hole page may use; for messages. */
export const GOLF_VALUES: readonly string[] = [...Object.keys(GOLF), "tee"];

/** The kind of a feature, or `"other"` for tags Marram does not draw or measure. */
export function featureKind(tags: Tags, geometry: GeometryType): FeatureKind {
  const golf = tags["golf"];
  if (golf === "tee") return geometry === "Point" ? "tee-marker" : "teeing-ground";
  if (typeof golf === "string" && Object.hasOwn(GOLF, golf)) return GOLF[golf]!;
  if (tags["leisure"] === "golf_course") return "course";
  if (tags["man_made"] !== undefined) return "landmark";
  if (tags["building"] !== undefined) return "building";
  const barrier = tags["barrier"];
  if (typeof barrier === "string") return BARRIER[barrier] ?? "fence";
  if (tags["waterway"] !== undefined) return "stream";
  const highway = tags["highway"];
  if (highway !== undefined) return highway === "path" || highway === "footway" ? "path" : "road";
  const natural = tags["natural"];
  if (typeof natural === "string") return NATURAL[natural] ?? "other";
  if (tags["landuse"] === "forest") return "wood";
  return "other";
}
