/**
 * What each kind of feature is, said once: how it is tagged, what ground it covers, what it
 * does to a ball, a view and a golfer. Everything else reads it from here, so that no page,
 * drawing or rule can hold another opinion. What depends on one feature and not on its kind
 * alone is a function in `ground-cover.ts`.
 *
 * A new kind is one entry here; the types then name each drawing that has none for it.
 */
import type { GeometryType } from "./schema/geometry.ts";

/** What lies on top where a feature is: what plate, map and section draw, and what growth and lettering keep off. */
export type GroundCover =
  | "none"
  | "rough"
  | "heath"
  | "strand"
  | "scrub"
  | "wood"
  | "rock"
  | "water"
  | "fairway"
  | "tee"
  | "green"
  | "bunker"
  | "built";

/** Grounds that lie on one another, the lowest first: a burn crosses a fairway, a green may stand in water. */
export const COVER_ORDER = [
  "rough",
  "heath",
  "strand",
  "scrub",
  "wood",
  "rock",
  "fairway",
  "water",
  "tee",
  "green",
  "bunker",
  "built",
] as const satisfies readonly GroundCover[];

/** What a hole can hold that a golfer should be warned of. */
export type CautionKind = "cliff" | "water" | "road" | "boundary";

/** What the words of a tip call a feature, whatever its tags. */
export type ThingClass = "bunker" | "water" | "out-of-bounds" | "trees" | "gorse" | "wall" | "road";

export interface KindFacts {
  /** OpenStreetMap tags that make a feature this kind; `key=*` is any other value of the key. */
  readonly tags: readonly string[];
  /** Geometries it may have where `golf` says what it is; other keys come from mappers, who draw as they like. */
  readonly geometry: readonly GeometryType[];
  /** What a line is that ends where it began: an area's outline, a line all the same, or what its geometry says. */
  readonly closed: "area" | "line" | "as-drawn";
  /** What is drawn where it is. Of a penalty area: where its tags name no other ground (`coverOf`). */
  readonly cover: GroundCover;
  /** How its edge runs: straight as people build, winding as ground and feet do, or soft, a line nobody could walk. */
  readonly edge: "straight" | "winding" | "soft";
  /** The Rules' colour of the stakes that mark it. */
  readonly stakes: "white" | "yellow" | "red" | "none";
  /**
   * What becomes of a ball in it: a hazard has reach and carry; a boundary has reach alone, for nobody carries it;
   * in trouble a ball is not played as it lies, though no Rule says so; elsewhere it is played.
   */
  readonly ball: "hazard" | "boundary" | "trouble" | "played";
  /** A stroke over a corner must fly it. */
  readonly inTheWay: boolean;
  /** Hides what lies behind it, where its height is known. */
  readonly hides: boolean;
  readonly caution: CautionKind | "none";
  readonly called: readonly ThingClass[];
  /** Whose it is: one hole's, the course's wherever it lies, or that of the holes along which it lies. */
  readonly belongs: "hole" | "course" | "either";
  /** A hole has one or few, told apart without left and right. */
  readonly single: boolean;
}

const AREAS = ["Polygon", "MultiPolygon"] as const;
const LINES = ["LineString", "MultiLineString"] as const;
const ANY = ["Point", "MultiPoint", ...LINES, ...AREAS] as const;

export const KINDS = {
  "line-of-play": {
    tags: ["golf=hole"],
    geometry: ["LineString"],
    closed: "line",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  fairway: {
    tags: ["golf=fairway"],
    geometry: AREAS,
    closed: "area",
    cover: "fairway",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  rough: {
    tags: ["golf=rough"],
    geometry: AREAS,
    closed: "area",
    cover: "rough",
    edge: "soft",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: false,
  },
  green: {
    tags: ["golf=green"],
    geometry: ["Polygon"],
    closed: "area",
    cover: "green",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  bunker: {
    tags: ["golf=bunker"],
    geometry: AREAS,
    closed: "area",
    cover: "bunker",
    edge: "winding",
    stakes: "none",
    ball: "hazard",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["bunker"],
    belongs: "hole",
    single: false,
  },
  "penalty-area-yellow": {
    tags: ["golf=water_hazard"],
    geometry: [...AREAS, ...LINES],
    closed: "area",
    cover: "water",
    edge: "winding",
    stakes: "yellow",
    ball: "hazard",
    inTheWay: false,
    hides: false,
    caution: "water",
    called: ["water"],
    belongs: "either",
    single: false,
  },
  "penalty-area-red": {
    tags: ["golf=lateral_water_hazard"],
    geometry: [...AREAS, ...LINES],
    closed: "area",
    cover: "water",
    edge: "winding",
    stakes: "red",
    ball: "hazard",
    inTheWay: false,
    hides: false,
    caution: "water",
    called: ["water"],
    belongs: "either",
    single: false,
  },
  "out-of-bounds": {
    tags: ["golf=out_of_bounds"],
    geometry: [...LINES, ...AREAS],
    closed: "as-drawn",
    cover: "none",
    edge: "straight",
    stakes: "white",
    ball: "boundary",
    inTheWay: false,
    hides: false,
    caution: "boundary",
    called: ["out-of-bounds"],
    belongs: "course",
    single: true,
  },
  pin: {
    tags: ["golf=pin"],
    geometry: ["Point"],
    closed: "as-drawn",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  path: {
    tags: ["golf=cartpath", "golf=path", "highway=path", "highway=footway"],
    geometry: LINES,
    closed: "line",
    cover: "built",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["road"],
    belongs: "course",
    single: true,
  },
  "driving-range": {
    tags: ["golf=driving_range"],
    geometry: AREAS,
    closed: "area",
    cover: "rough",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "course",
    single: true,
  },
  building: {
    tags: ["golf=clubhouse", "building=*"],
    geometry: AREAS,
    closed: "area",
    cover: "built",
    edge: "straight",
    stakes: "none",
    ball: "trouble",
    inTheWay: true,
    hides: true,
    caution: "none",
    called: ["wall"],
    belongs: "course",
    single: false,
  },
  "tee-marker": {
    tags: ["golf=tee"],
    geometry: ["Point"],
    closed: "as-drawn",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  "teeing-ground": {
    tags: ["golf=tee"],
    geometry: AREAS,
    closed: "area",
    cover: "tee",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: true,
  },
  course: {
    tags: ["leisure=golf_course"],
    geometry: AREAS,
    closed: "area",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "course",
    single: true,
  },
  landmark: {
    tags: ["man_made=*"],
    geometry: ANY,
    closed: "as-drawn",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "course",
    single: false,
  },
  wall: {
    tags: ["barrier=wall"],
    geometry: LINES,
    closed: "line",
    cover: "built",
    edge: "straight",
    stakes: "none",
    ball: "trouble",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["wall"],
    belongs: "course",
    single: false,
  },
  fence: {
    tags: ["barrier=fence", "barrier=*"],
    geometry: LINES,
    closed: "line",
    cover: "built",
    edge: "straight",
    stakes: "none",
    ball: "trouble",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["wall"],
    belongs: "course",
    single: false,
  },
  hedge: {
    tags: ["barrier=hedge"],
    geometry: LINES,
    closed: "line",
    cover: "built",
    edge: "winding",
    stakes: "none",
    ball: "trouble",
    inTheWay: false,
    hides: true,
    caution: "none",
    called: ["wall"],
    belongs: "course",
    single: false,
  },
  stream: {
    tags: ["waterway=*"],
    geometry: LINES,
    closed: "line",
    cover: "water",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "water",
    called: ["water"],
    belongs: "either",
    single: false,
  },
  road: {
    tags: ["highway=*"],
    geometry: LINES,
    closed: "line",
    cover: "built",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "road",
    called: ["road"],
    belongs: "course",
    single: true,
  },
  water: {
    tags: ["natural=water"],
    geometry: AREAS,
    closed: "area",
    cover: "water",
    edge: "winding",
    stakes: "none",
    ball: "hazard",
    inTheWay: false,
    hides: false,
    caution: "water",
    called: ["water"],
    belongs: "either",
    single: false,
  },
  coastline: {
    tags: ["natural=coastline"],
    geometry: [...LINES, ...AREAS],
    closed: "line",
    cover: "water",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "water",
    called: ["water"],
    belongs: "course",
    single: true,
  },
  sand: {
    // A beach is the sea's edge to whoever writes a tip.
    tags: ["natural=sand", "natural=beach", "natural=dune"],
    geometry: AREAS,
    closed: "area",
    cover: "strand",
    edge: "soft",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["water"],
    belongs: "either",
    single: false,
  },
  scrub: {
    tags: ["natural=scrub"],
    geometry: ANY,
    closed: "area",
    cover: "scrub",
    edge: "soft",
    stakes: "none",
    ball: "trouble",
    inTheWay: true,
    hides: true,
    caution: "none",
    called: ["gorse"],
    belongs: "either",
    single: false,
  },
  heath: {
    tags: ["natural=heath"],
    geometry: AREAS,
    closed: "area",
    cover: "heath",
    edge: "soft",
    stakes: "none",
    ball: "played",
    inTheWay: true,
    hides: false,
    caution: "none",
    called: ["gorse"],
    belongs: "either",
    single: false,
  },
  wood: {
    tags: ["natural=wood", "natural=tree_row", "landuse=forest"],
    geometry: ANY,
    closed: "area",
    cover: "wood",
    edge: "soft",
    stakes: "none",
    ball: "trouble",
    inTheWay: true,
    hides: true,
    caution: "none",
    called: ["trees"],
    belongs: "either",
    single: false,
  },
  tree: {
    tags: ["natural=tree"],
    geometry: ["Point", "MultiPoint"],
    closed: "as-drawn",
    cover: "none",
    edge: "soft",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: ["trees"],
    belongs: "hole",
    single: false,
  },
  cliff: {
    tags: ["natural=cliff"],
    geometry: LINES,
    closed: "line",
    cover: "none",
    edge: "winding",
    stakes: "none",
    ball: "trouble",
    inTheWay: false,
    hides: false,
    caution: "cliff",
    called: [],
    belongs: "either",
    single: false,
  },
  ridge: {
    tags: ["natural=ridge"],
    geometry: LINES,
    closed: "line",
    cover: "none",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "either",
    single: false,
  },
  grassland: {
    tags: ["natural=grassland"],
    geometry: AREAS,
    closed: "area",
    cover: "rough",
    edge: "soft",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "either",
    single: false,
  },
  rock: {
    tags: ["natural=rock", "natural=bare_rock"],
    geometry: ANY,
    closed: "area",
    cover: "rock",
    edge: "winding",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "either",
    single: false,
  },
  other: {
    tags: [],
    geometry: ANY,
    closed: "as-drawn",
    cover: "none",
    edge: "straight",
    stakes: "none",
    ball: "played",
    inTheWay: false,
    hides: false,
    caution: "none",
    called: [],
    belongs: "hole",
    single: false,
  },
} as const satisfies Readonly<Record<string, KindFacts>>;

/** What a feature is for measuring and drawing, worked out once from its tags. */
export type FeatureKind = keyof typeof KINDS;

export const ALL_KINDS = Object.keys(KINDS) as readonly FeatureKind[];

export const kindFacts = (kind: FeatureKind): KindFacts => KINDS[kind];

/** Kinds a ball can be lost or trapped in: these get reach, and where they can be carried a carry. */
export const isHazard = (kind: FeatureKind): boolean => ["hazard", "boundary"].includes(kindFacts(kind).ball);

/** What ends the course: a ball over it is out, so nobody carries it. */
export const isBoundary = (kind: FeatureKind): boolean => kindFacts(kind).ball === "boundary";

/** Ground that the club marks with yellow or red stakes, whatever lies in it. */
export const isPenaltyArea = (kind: FeatureKind): boolean => ["yellow", "red"].includes(kindFacts(kind).stakes);

/** Prepared for play, so it lies within the boundary. */
export const isPrepared = (kind: FeatureKind): boolean =>
  ["fairway", "tee", "green", "bunker"].includes(kindFacts(kind).cover);
