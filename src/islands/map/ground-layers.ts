/** Ground, water, works and single things: everything of the course that lies still. */
import type { ExpressionSpecification, LayerSpecification } from "maplibre-gl";
import { ALL_KINDS, isBoundary, type FeatureKind, type GroundCover } from "../../course/kinds.ts";
import type { MapColours } from "./colours.ts";
import type { PatternName } from "./patterns.ts";
import { reliefLayers } from "./relief.ts";
import { IS_AREA, IS_LINE, IS_POINT, kindIs, SOURCES } from "./sources.ts";

interface Fill {
  readonly colour: keyof MapColours;
  readonly edge?: keyof MapColours;
  readonly pattern?: PatternName;
}

const FILLS: Readonly<Record<Exclude<GroundCover, "none">, Fill>> = {
  rough: { colour: "rough" },
  heath: { colour: "heath", pattern: "heath" },
  rock: { colour: "rock" },
  strand: { colour: "strand", pattern: "sand" },
  scrub: { colour: "scrub", edge: "gorse", pattern: "scrub" },
  wood: { colour: "wood", edge: "tree", pattern: "wood" },
  fairway: { colour: "fairway", edge: "fairway-edge", pattern: "bands" },
  tee: { colour: "tee", edge: "tee-edge" },
  water: { colour: "sea", edge: "sea-ink", pattern: "water" },
  green: { colour: "green", edge: "green-edge" },
  bunker: { colour: "sand", edge: "sand-edge", pattern: "sand" },
  built: { colour: "building", edge: "building-edge" },
};

type Fills = readonly (keyof typeof FILLS)[];

/** Land from the bottom of the sheet up; relief is laid over it. */
const LAND: Fills = ["rough", "heath", "rock", "strand", "scrub", "wood", "fairway", "tee"];

/** What lies level, over the relief. Water crosses fairways, and a green may stand in water. */
const LEVEL: Fills = ["water", "green", "bunker", "built"];

interface Stroke {
  readonly colour: keyof MapColours;
  readonly width: number;
  readonly dashes?: readonly number[];
}

/** From the bottom of the sheet up. */
const STROKES = {
  road: { colour: "road", width: 5 },
  path: { colour: "road-edge", width: 1.5, dashes: [3, 2] },
  wall: { colour: "ink", width: 1.5 },
  hedge: { colour: "tree-shade", width: 3 },
  cliff: { colour: "hachure", width: 2, dashes: [1, 1] },
  "penalty-yellow": { colour: "stake-yellow", width: 2.5, dashes: [2, 1.5] },
  "penalty-red": { colour: "stake-red", width: 2.5, dashes: [2, 1.5] },
  boundary: { colour: "stake-white", width: 2, dashes: [3, 2] },
} as const satisfies Readonly<Record<string, Stroke>>;

type StrokeId = keyof typeof STROKES;

/** White on light ground would be lost without a line under it. */
const BOUNDARY_CASING: Stroke = { colour: "ink-soft", width: 3.5 };

/** How a kind's line or outline is drawn, where its ground is not all there is to see. */
const STROKE_OF: Readonly<Record<FeatureKind, StrokeId | undefined>> = {
  road: "road",
  path: "path",
  wall: "wall",
  fence: "wall",
  hedge: "hedge",
  cliff: "cliff",
  ridge: "cliff",
  "penalty-area-yellow": "penalty-yellow",
  "penalty-area-red": "penalty-red",
  "out-of-bounds": "boundary",
  "line-of-play": undefined,
  "tee-marker": undefined,
  "teeing-ground": undefined,
  fairway: undefined,
  rough: undefined,
  green: undefined,
  bunker: undefined,
  water: undefined,
  pin: undefined,
  stream: undefined,
  coastline: undefined,
  sand: undefined,
  scrub: undefined,
  heath: undefined,
  wood: undefined,
  tree: undefined,
  rock: undefined,
  grassland: undefined,
  building: undefined,
  "driving-range": undefined,
  landmark: undefined,
  course: undefined,
  other: undefined,
};

const coverIs = (cover: GroundCover): ExpressionSpecification => ["==", ["get", "cover"], cover];

/** From the bottom of the sheet up. */
export const courseLayers = (colours: MapColours, relief: boolean): LayerSpecification[] => [
  ...LAND.flatMap((ground) => [...rimLayers(ground, colours), ...groundLayers(ground, colours)]),
  ...(relief ? reliefLayers(colours) : []),
  ...LEVEL.flatMap((ground) => [...rimLayers(ground, colours), ...groundLayers(ground, colours)]),
  outLayer(),
  ...waterLines(colours),
  ...(Object.keys(STROKES) as StrokeId[]).flatMap((id) => strokeLayers(id, colours)),
  ...pointLayers(colours),
];

function groundLayers(cover: keyof typeof FILLS, colours: MapColours): LayerSpecification[] {
  const { colour, edge, pattern } = FILLS[cover];
  const base = { source: SOURCES.features, filter: ["all", IS_AREA, coverIs(cover)] as ExpressionSpecification };
  return [
    { id: cover, type: "fill", ...base, paint: { "fill-color": colours[colour] } },
    ...(pattern === undefined
      ? []
      : [{ id: `${cover}-pattern`, type: "fill" as const, ...base, paint: { "fill-pattern": pattern } }]),
    ...(edge === undefined
      ? []
      : [
          {
            id: `${cover}-edge`,
            type: "line" as const,
            ...base,
            paint: { "line-color": colours[edge], "line-width": 1 },
          },
        ]),
  ];
}

/** Only hatched: what lies out of bounds is still ground, road or shore. */
const outLayer = (): LayerSpecification => ({
  id: "out-of-bounds",
  type: "fill",
  source: SOURCES.features,
  filter: ["all", IS_AREA, kindIs(ALL_KINDS.filter(isBoundary))],
  paint: { "fill-pattern": "out" satisfies PatternName },
});

/** Soft rims under fairways and greens: first cut and fringe, as wide as they are on the ground. */
const RIMS = [
  { id: "first-cut", round: "fairway", colour: "first-cut", metres: 9 },
  { id: "fringe", round: "green", colour: "fringe", metres: 7 },
] as const;

const rimLayers = (cover: GroundCover, colours: MapColours): LayerSpecification[] =>
  RIMS.filter(({ round }) => round === cover).map(({ id, colour, metres }) => ({
    id,
    type: "line",
    source: SOURCES.features,
    filter: ["all", IS_AREA, coverIs(cover)],
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
  return [
    {
      id: "burn",
      type: "line",
      source: SOURCES.features,
      filter: ["all", IS_LINE, coverIs("water")],
      layout: { "line-cap": "round", "line-join": "round" },
      paint: {
        "line-color": colours.sea,
        "line-width": widthOf(["coalesce", ["get", "widthMetres"], 2], 1.5),
      },
    },
  ];
}

function strokeLayers(id: StrokeId, colours: MapColours): LayerSpecification[] {
  const kinds = ALL_KINDS.filter((kind) => STROKE_OF[kind] === id);
  const layer = (name: string, { colour, width, dashes }: Stroke): LayerSpecification => ({
    id: name,
    type: "line",
    source: SOURCES.features,
    filter: ["all", ["!=", ["geometry-type"], "Point"], kindIs(kinds)],
    layout: { "line-join": "round" },
    paint: { "line-color": colours[colour], "line-width": width, ...(dashes && { "line-dasharray": [...dashes] }) },
  });
  return [...(id === "boundary" ? [layer("boundary-casing", BOUNDARY_CASING)] : []), layer(id, STROKES[id])];
}

function pointLayers(colours: MapColours): LayerSpecification[] {
  const dot = (
    id: string,
    kinds: readonly FeatureKind[],
    fill: string,
    stroke: string,
    radius: number,
  ): LayerSpecification => ({
    id,
    type: "circle",
    source: SOURCES.features,
    filter: ["all", IS_POINT, kindIs(kinds)],
    paint: {
      "circle-color": fill,
      "circle-radius": radius,
      "circle-stroke-color": stroke,
      "circle-stroke-width": 1.5,
    },
  });
  return [
    dot("trees", ["tree", "wood"], colours.tree, colours["tree-shade"], 5),
    dot("landmarks", ["landmark", "building", "rock"], colours.paper, colours.ink, 4.5),
    dot("pins", ["pin"], colours.flag, colours.paper, 4),
  ];
}
