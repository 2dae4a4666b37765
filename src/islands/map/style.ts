/**
 * The map's looks: colours and data in, a MapLibre style out. Pure; the plate's palette
 * gives the colours, so map and plate are one sheet.
 *
 * No `glyphs`: MapLibre then draws letters from the page's own fonts, and nothing is fetched.
 */
import type { ExpressionSpecification, LayerSpecification, SourceSpecification, StyleSpecification } from "maplibre-gl";
import type { FeatureKind } from "../../course/types.ts";
import type { GroundData, LonLat, MapFeatures } from "../hole-data.ts";
import type { MapColours } from "./colours.ts";
import type { PatternName } from "./patterns.ts";
import { nameLabels } from "./labels.ts";

/** Sources the map fills while it runs. */
export const SOURCES = { features: "features", names: "names", play: "play", measure: "measure" } as const;

/** The source of heights; a tile of it that fails to come spoils nothing else. */
export const GROUND_SOURCE = "ground";

interface Ground {
  readonly kinds: readonly FeatureKind[];
  readonly fill: keyof MapColours | undefined;
  readonly edge?: keyof MapColours;
  readonly pattern?: PatternName;
}

/** Areas from the bottom of the sheet up. */
const GROUND: readonly Ground[] = [
  { kinds: ["course", "grassland", "rough", "driving-range"], fill: "rough" },
  { kinds: ["heath"], fill: "heath", pattern: "heath" },
  { kinds: ["rock"], fill: "rock" },
  { kinds: ["sand"], fill: "strand", pattern: "sand" },
  { kinds: ["water", "coastline"], fill: "sea", edge: "sea-ink", pattern: "water" },
  { kinds: ["penalty-area-yellow", "penalty-area-red"], fill: "sea", pattern: "water" },
  { kinds: ["scrub"], fill: "scrub", edge: "gorse", pattern: "scrub" },
  { kinds: ["wood"], fill: "wood", edge: "tree", pattern: "wood" },
  { kinds: ["fairway"], fill: "fairway", edge: "fairway-edge", pattern: "bands" },
  { kinds: ["teeing-ground"], fill: "tee", edge: "tee-edge" },
  { kinds: ["green"], fill: "green", edge: "green-edge" },
  { kinds: ["bunker"], fill: "sand", edge: "sand-edge", pattern: "sand" },
  // Only hatched: what lies out of bounds is still ground, road or shore.
  { kinds: ["out-of-bounds"], fill: undefined, pattern: "out" },
  { kinds: ["building"], fill: "building", edge: "building-edge" },
];

interface Stroke {
  readonly id: string;
  readonly kinds: readonly FeatureKind[];
  readonly colour: keyof MapColours;
  readonly width: number;
  readonly dashes?: readonly number[];
}

const STROKES: readonly Stroke[] = [
  { id: "road", kinds: ["road"], colour: "road", width: 5 },
  { id: "path", kinds: ["path"], colour: "road-edge", width: 1.5, dashes: [3, 2] },
  { id: "wall", kinds: ["wall", "fence"], colour: "ink", width: 1.5 },
  { id: "hedge", kinds: ["hedge"], colour: "tree-shade", width: 3 },
  { id: "cliff", kinds: ["cliff", "ridge"], colour: "hachure", width: 2, dashes: [1, 1] },
  { id: "penalty-yellow", kinds: ["penalty-area-yellow"], colour: "stake-yellow", width: 2.5, dashes: [2, 1.5] },
  { id: "penalty-red", kinds: ["penalty-area-red"], colour: "stake-red", width: 2.5, dashes: [2, 1.5] },
  // White on light ground would be lost without a line under it.
  { id: "boundary-casing", kinds: ["out-of-bounds"], colour: "ink-soft", width: 3.5 },
  { id: "boundary", kinds: ["out-of-bounds"], colour: "stake-white", width: 2, dashes: [3, 2] },
];

const kindIs = (kinds: readonly FeatureKind[]): ExpressionSpecification => ["in", ["get", "kind"], ["literal", [...kinds]]];

const IS_AREA: ExpressionSpecification = ["==", ["geometry-type"], "Polygon"];
const IS_LINE: ExpressionSpecification = ["==", ["geometry-type"], "LineString"];
const IS_POINT: ExpressionSpecification = ["==", ["geometry-type"], "Point"];

export interface StyleInput {
  readonly colours: MapColours;
  readonly features: MapFeatures;
  readonly origin: LonLat;
  /** Line of play, where the map shows one hole. */
  readonly line: readonly LonLat[] | undefined;
  /** Families as CSS knows them; the first that is there draws the names. */
  readonly fonts: readonly string[];
  /** Zoom from which bunkers are named: a whole course has too many. */
  readonly bunkersFromZoom: number;
  /** Height tiles with absolute addresses, where the guide has them. */
  readonly ground: GroundData | undefined;
}

export function mapStyle({ colours, features, origin, fonts, bunkersFromZoom, ground, line }: StyleInput): StyleSpecification {
  const empty = { type: "FeatureCollection" as const, features: [] };
  return {
    version: 8,
    sources: {
      [SOURCES.features]: { type: "geojson", data: features, tolerance: 0.1, maxzoom: 18 },
      [SOURCES.names]: { type: "geojson", data: nameLabels(features, origin, line) },
      [SOURCES.play]: { type: "geojson", data: empty },
      [SOURCES.measure]: { type: "geojson", data: empty },
      ...(ground && { [GROUND_SOURCE]: groundSource(ground) }),
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": colours.ground } },
      ...GROUND.flatMap((ground) => [
        ...(ground.kinds.includes("fairway") ? rimLayers(colours) : []),
        ...groundLayers(ground, colours),
      ]),
      ...(ground ? [reliefLayer(colours)] : []),
      ...waterLines(colours),
      ...STROKES.map((stroke) => strokeLayer(stroke, colours)),
      ...pointLayers(colours),
      ...playLayers(colours),
      ...nameLayers(colours, fonts, bunkersFromZoom),
      ...holeNumberLayers(colours, fonts),
      ...measureLayers(colours, fonts),
    ],
  };
}

const groundSource = ({ tiles, encoding, minimumZoom, maximumZoom, bounds }: GroundData): SourceSpecification => ({
  type: "raster-dem",
  tiles: [tiles],
  encoding,
  tileSize: 256,
  minzoom: minimumZoom,
  maxzoom: maximumZoom,
  bounds: [...bounds],
});

/** Shaded relief, lit from the upper left of the sheet as the plate is. */
const reliefLayer = (colours: MapColours): LayerSpecification => ({
  id: "relief",
  type: "hillshade",
  source: GROUND_SOURCE,
  paint: {
    "hillshade-illumination-anchor": "viewport",
    "hillshade-illumination-direction": 315,
    "hillshade-exaggeration": 0.24,
    "hillshade-shadow-color": colours.shadow,
    "hillshade-highlight-color": colours["sand-lit"],
    "hillshade-accent-color": colours.shadow,
  },
});

function groundLayers({ kinds, fill, edge, pattern }: Ground, colours: MapColours): LayerSpecification[] {
  const filter: ExpressionSpecification = ["all", IS_AREA, kindIs(kinds)];
  const base = { source: SOURCES.features, filter };
  const id = kinds[0]!;
  return [
    ...(fill === undefined ? [] : [{ id, type: "fill" as const, ...base, paint: { "fill-color": colours[fill] } }]),
    ...(pattern === undefined ? [] : [{ id: `${id}-pattern`, type: "fill" as const, ...base, paint: { "fill-pattern": pattern } }]),
    ...(edge === undefined ? [] : [{ id: `${id}-edge`, type: "line" as const, ...base, paint: { "line-color": colours[edge], "line-width": 1 } }]),
  ];
}

/** Soft rims under fairways and greens: first cut and fringe, as wide as they are on the ground. */
const RIMS = [
  { id: "first-cut", kind: "fairway", colour: "first-cut", metres: 9 },
  { id: "fringe", kind: "green", colour: "fringe", metres: 7 },
] as const;

const rimLayers = (colours: MapColours): LayerSpecification[] =>
  RIMS.map(({ id, kind, colour, metres }) => ({
    id,
    type: "line",
    source: SOURCES.features,
    filter: ["all", IS_AREA, kindIs([kind])],
    layout: { "line-join": "round" },
    paint: { "line-color": colours[colour], "line-width": widthOf(metres, 1) },
  }));

/**
 * A width on the ground in pixels, never thinner than `least`: about 0.33 m to a pixel at
 * zoom 17 and mid latitudes, half that with each zoom. Exact enough for a drawn width.
 */
function widthOf(metres: number | ExpressionSpecification, least: number): ExpressionSpecification {
  const at = (factor: number): ExpressionSpecification => ["max", least, ["*", factor, metres]];
  return ["interpolate", ["exponential", 2], ["zoom"], 13, at(3 / 16), 17, at(3), 21, at(48)];
}

/** Burns and shores drawn as lines; a burn is as wide as it is when its width is known. */
function waterLines(colours: MapColours): LayerSpecification[] {
  const filter: ExpressionSpecification = ["all", IS_LINE, kindIs(["stream", "water", "coastline", "penalty-area-yellow", "penalty-area-red"])];
  return [{
    id: "burn",
    type: "line",
    source: SOURCES.features,
    filter,
    layout: { "line-cap": "round", "line-join": "round" },
    paint: {
      "line-color": colours.sea,
      "line-width": widthOf(["coalesce", ["get", "widthMetres"], 2], 1.5),
    },
  }];
}

function strokeLayer({ id, kinds, colour, width, dashes }: Stroke, colours: MapColours): LayerSpecification {
  return {
    id,
    type: "line",
    source: SOURCES.features,
    filter: ["all", ["!=", ["geometry-type"], "Point"], kindIs(kinds)],
    layout: { "line-join": "round" },
    paint: { "line-color": colours[colour], "line-width": width, ...(dashes && { "line-dasharray": [...dashes] }) },
  };
}

function pointLayers(colours: MapColours): LayerSpecification[] {
  const dot = (id: string, kinds: readonly FeatureKind[], fill: string, stroke: string, radius: number): LayerSpecification => ({
    id,
    type: "circle",
    source: SOURCES.features,
    filter: ["all", IS_POINT, kindIs(kinds)],
    paint: { "circle-color": fill, "circle-radius": radius, "circle-stroke-color": stroke, "circle-stroke-width": 1.5 },
  });
  return [
    dot("trees", ["tree", "wood"], colours.tree, colours["tree-shade"], 5),
    dot("landmarks", ["landmark", "building", "rock"], colours.paper, colours.ink, 4.5),
    dot("pins", ["pin"], colours.flag, colours.paper, 4),
  ];
}

/** Line of play and tee markers of the chosen tee set; hole lines and numbers on the course map. */
function playLayers(colours: MapColours): LayerSpecification[] {
  return [
    {
      id: "line-of-play",
      type: "line",
      source: SOURCES.play,
      filter: ["all", IS_LINE, ["!", ["has", "hole"]]],
      paint: { "line-color": colours.ink, "line-width": 1.5, "line-dasharray": [4, 3], "line-opacity": 0.75 },
    },
    {
      id: "hole-lines",
      type: "line",
      source: SOURCES.play,
      filter: ["all", IS_LINE, ["has", "hole"]],
      layout: { "line-cap": "round", "line-join": "round" },
      paint: { "line-color": colours.ink, "line-width": 2, "line-opacity": 0.85 },
    },
    {
      id: "tees",
      type: "circle",
      source: SOURCES.play,
      filter: ["all", IS_POINT, ["has", "colour"]],
      layout: { "circle-sort-key": ["case", ["get", "chosen"], 1, 0] },
      paint: {
        "circle-color": ["get", "colour"],
        "circle-radius": ["case", ["get", "chosen"], 7, 4.5],
        "circle-stroke-color": colours.ink,
        "circle-stroke-width": ["case", ["get", "chosen"], 2, 1],
      },
    },
    {
      id: "green-marks",
      type: "circle",
      source: SOURCES.play,
      filter: ["all", IS_POINT, ["has", "green"]],
      paint: { "circle-color": colours.paper, "circle-radius": 2.5, "circle-stroke-color": colours.ink, "circle-stroke-width": 1.25 },
    },
  ];
}

/** Above the names, which give way to them. */
function holeNumberLayers(colours: MapColours, fonts: readonly string[]): LayerSpecification[] {
  const filter: ExpressionSpecification = ["all", IS_POINT, ["has", "hole"]];
  return [
    {
      id: "hole-discs",
      type: "circle",
      source: SOURCES.play,
      filter,
      paint: { "circle-color": colours.paper, "circle-radius": 10.5, "circle-stroke-color": colours.ink, "circle-stroke-width": 1.25 },
    },
    {
      id: "hole-numbers",
      type: "symbol",
      source: SOURCES.play,
      filter,
      layout: { "text-field": ["to-string", ["get", "hole"]], "text-font": [...fonts], "text-size": 13, "text-padding": 8, "text-allow-overlap": true },
      paint: { "text-color": colours.ink },
    },
  ];
}

/** Names within what is large, beside what is small: a name must not hide its bunker. */
function nameLayers(colours: MapColours, fonts: readonly string[], bunkersFromZoom: number): LayerSpecification[] {
  const small: ExpressionSpecification = ["get", "small"];
  const layer = (id: string, filter: ExpressionSpecification, minzoom: number, anchors: readonly Anchor[]): LayerSpecification => ({
    id,
    type: "symbol",
    source: SOURCES.names,
    filter,
    minzoom,
    layout: {
      "text-field": ["get", "text"],
      "text-font": [...fonts],
      "text-size": 13,
      "text-max-width": 8,
      "text-padding": 4,
      "text-variable-anchor": [...anchors],
      "text-radial-offset": anchors[0] === "center" ? 0 : 1.1,
      "text-justify": "auto",
      "symbol-sort-key": ["get", "rank"],
    },
    paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 1.75 },
  });
  // The anchor is the end of the name that is at the thing: a name to its left is anchored at the right.
  const sides = [["left", ["right", "bottom", "top", "left"]], ["right", ["left", "bottom", "top", "right"]]] as const;
  return [
    layer("names-large", ["!", small], 0, ["center"]),
    ...sides.flatMap(([side, anchors]) => {
      const onSide: ExpressionSpecification = ["==", ["get", "side"], side];
      return [
        layer(`names-${side}`, ["all", small, onSide, ["!", ["get", "bunker"]]], 0, anchors),
        layer(`names-bunkers-${side}`, ["all", small, onSide, ["get", "bunker"]], bunkersFromZoom, anchors),
      ];
    }),
  ];
}

type Anchor = "center" | "left" | "right" | "top" | "bottom";

function measureLayers(colours: MapColours, fonts: readonly string[]): LayerSpecification[] {
  const source = SOURCES.measure;
  return [
    { id: "legs-halo", type: "line", source, filter: IS_LINE, layout: { "line-cap": "round" }, paint: { "line-color": colours.paper, "line-width": 6, "line-opacity": 0.9 } },
    { id: "legs", type: "line", source, filter: IS_LINE, layout: { "line-cap": "round" }, paint: { "line-color": colours.flag, "line-width": 2.5 } },
    {
      id: "point",
      type: "circle",
      source,
      filter: ["has", "tapped"],
      paint: { "circle-color": colours.flag, "circle-radius": 6, "circle-stroke-color": colours.paper, "circle-stroke-width": 2.5 },
    },
    {
      id: "edges",
      type: "circle",
      source,
      filter: ["has", "edge"],
      paint: { "circle-color": colours.paper, "circle-radius": 4, "circle-stroke-color": colours.flag, "circle-stroke-width": 2 },
    },
    ...(["leg", "edge"] as const).map((property): LayerSpecification => ({
      id: `${property}-figures`,
      type: "symbol",
      source,
      filter: ["has", property],
      layout: {
        "text-field": ["get", property],
        "text-font": [...fonts],
        "text-size": property === "leg" ? 19 : 15,
        "text-variable-anchor": ["right", "left", "top", "bottom"],
        "text-radial-offset": 0.6,
        "text-allow-overlap": property === "leg",
      },
      paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 2.5 },
    })),
  ];
}
