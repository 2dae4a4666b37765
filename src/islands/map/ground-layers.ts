/** Ground, water, works and single things: everything of the course that lies still. */
import type { ExpressionSpecification, LayerSpecification } from "maplibre-gl";
import type { FeatureKind } from "../../course/types.ts";
import type { MapColours } from "./colours.ts";
import type { PatternName } from "./patterns.ts";
import { reliefLayers } from "./relief.ts";
import { IS_AREA, IS_LINE, IS_POINT, kindIs, SOURCES } from "./sources.ts";

interface Ground {
  readonly kinds: readonly FeatureKind[];
  readonly fill: keyof MapColours | undefined;
  readonly edge?: keyof MapColours;
  readonly pattern?: PatternName;
}

/** Land from the bottom of the sheet up; relief is laid over it. */
const LAND: readonly Ground[] = [
  { kinds: ["course", "grassland", "rough", "driving-range"], fill: "rough" },
  { kinds: ["heath"], fill: "heath", pattern: "heath" },
  { kinds: ["rock"], fill: "rock" },
  { kinds: ["sand"], fill: "strand", pattern: "sand" },
  { kinds: ["scrub"], fill: "scrub", edge: "gorse", pattern: "scrub" },
  { kinds: ["wood"], fill: "wood", edge: "tree", pattern: "wood" },
  { kinds: ["fairway"], fill: "fairway", edge: "fairway-edge", pattern: "bands" },
  { kinds: ["teeing-ground"], fill: "tee", edge: "tee-edge" },
];

/** What lies level, over the relief. Water crosses fairways, and a green may stand in water. */
const LEVEL: readonly Ground[] = [
  { kinds: ["water", "coastline"], fill: "sea", edge: "sea-ink", pattern: "water" },
  { kinds: ["penalty-area-yellow", "penalty-area-red"], fill: "sea", pattern: "water" },
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

/** From the bottom of the sheet up. */
export const courseLayers = (colours: MapColours, relief: boolean): LayerSpecification[] => [
  ...LAND.flatMap((ground) => [...rimLayers(ground, colours), ...groundLayers(ground, colours)]),
  ...(relief ? reliefLayers(colours) : []),
  ...LEVEL.flatMap((ground) => [...rimLayers(ground, colours), ...groundLayers(ground, colours)]),
  ...waterLines(colours),
  ...STROKES.map((stroke) => strokeLayer(stroke, colours)),
  ...pointLayers(colours),
];

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

const rimLayers = ({ kinds }: Ground, colours: MapColours): LayerSpecification[] =>
  RIMS.filter(({ kind }) => kinds.includes(kind)).map(({ id, kind, colour, metres }) => ({
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
