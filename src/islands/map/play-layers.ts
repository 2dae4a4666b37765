/** What is laid over the course: line of play, tees, names, numbers, the golfer's own measurement. */
import type { ExpressionSpecification, LayerSpecification } from "maplibre-gl";
import type { MapColours } from "./colours.ts";
import { IS_AREA, IS_LINE, IS_POINT, SOURCES } from "./sources.ts";

/** Line of play and tee markers of the chosen tee set; hole lines and numbers on the course map. */
export function playLayers(colours: MapColours): LayerSpecification[] {
  return [
    {
      id: "line-of-play",
      type: "line",
      source: SOURCES.play,
      filter: ["all", IS_LINE, ["!", ["has", "hole"]], ["!", ["has", "own"]]],
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
      paint: {
        "circle-color": colours.paper,
        "circle-radius": 2.5,
        "circle-stroke-color": colours.ink,
        "circle-stroke-width": 1.25,
      },
    },
    ...[
      { id: "cut-ring", radius: 6.5, width: 2.5 },
      { id: "cut", radius: 2.5, width: 0 },
    ].map(({ id, radius, width }): LayerSpecification => ({
      id,
      type: "circle",
      source: SOURCES.play,
      filter: ["all", IS_POINT, ["has", "cut"]],
      paint: {
        "circle-color": width > 0 ? colours.paper : colours.flag,
        "circle-radius": radius,
        "circle-stroke-color": colours.flag,
        "circle-stroke-width": width,
      },
    })),
    ...(["corridor", "fairway"] as const).map((own): LayerSpecification => ({
      id: `own-${own}`,
      type: "line",
      source: SOURCES.play,
      filter: ["==", ["get", "own"], own],
      layout: { "line-cap": own === "fairway" ? "butt" : "round" },
      paint: {
        "line-color": colours.flag,
        "line-width": own === "fairway" ? 5 : 2,
        "line-opacity": own === "fairway" ? 0.85 : 1,
      },
    })),
  ];
}

/** Above the names, which give way to them. */
export function holeNumberLayers(colours: MapColours, fonts: readonly string[]): LayerSpecification[] {
  const filter: ExpressionSpecification = ["all", IS_POINT, ["has", "hole"]];
  return [
    {
      id: "hole-discs",
      type: "circle",
      source: SOURCES.play,
      filter,
      paint: {
        "circle-color": colours.paper,
        "circle-radius": 10.5,
        "circle-stroke-color": colours.ink,
        "circle-stroke-width": 1.25,
      },
    },
    {
      id: "hole-numbers",
      type: "symbol",
      source: SOURCES.play,
      filter,
      layout: {
        "text-field": ["to-string", ["get", "hole"]],
        "text-font": [...fonts],
        "text-size": 13,
        "text-padding": 8,
        "text-allow-overlap": true,
      },
      paint: { "text-color": colours.ink },
    },
  ];
}

/** Names within what is large, beside what is small: a name must not hide its bunker. */
export function nameLayers(
  colours: MapColours,
  fonts: readonly string[],
  bunkersFromZoom: number,
): LayerSpecification[] {
  const small: ExpressionSpecification = ["get", "small"];
  const layer = (
    id: string,
    filter: ExpressionSpecification,
    minzoom: number,
    anchors: readonly Anchor[],
  ): LayerSpecification => ({
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
  const sides = [
    ["left", ["right", "bottom", "top", "left"]],
    ["right", ["left", "bottom", "top", "right"]],
  ] as const;
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

export function measureLayers(colours: MapColours, fonts: readonly string[]): LayerSpecification[] {
  const source = SOURCES.measure;
  const left: ExpressionSpecification = ["has", "left"];
  const round = { "line-cap": "round", "line-join": "round" } as const;
  return [
    {
      id: "accuracy",
      type: "fill",
      source,
      filter: IS_AREA,
      paint: { "fill-color": colours["sea-ink"], "fill-opacity": 0.2 },
    },
    {
      id: "accuracy-edge",
      type: "line",
      source,
      filter: IS_AREA,
      paint: { "line-color": colours["sea-ink"], "line-width": 1.5, "line-dasharray": [3, 2] },
    },
    {
      id: "legs-halo",
      type: "line",
      source,
      filter: IS_LINE,
      layout: round,
      paint: { "line-color": colours.paper, "line-width": 6, "line-opacity": 0.9 },
    },
    {
      id: "legs",
      type: "line",
      source,
      filter: ["all", IS_LINE, ["!", left]],
      layout: round,
      paint: { "line-color": colours.flag, "line-width": 2.5 },
    },
    {
      id: "legs-left",
      type: "line",
      source,
      filter: ["all", IS_LINE, left],
      paint: { "line-color": colours.flag, "line-width": 2.5, "line-dasharray": [2, 2] },
    },
    {
      id: "point",
      type: "circle",
      source,
      filter: ["has", "tapped"],
      paint: {
        "circle-color": colours.flag,
        "circle-radius": 6,
        "circle-stroke-color": colours.paper,
        "circle-stroke-width": 2.5,
      },
    },
    {
      id: "me",
      type: "circle",
      source,
      filter: ["has", "me"],
      paint: {
        "circle-color": colours["sea-ink"],
        "circle-radius": 8,
        "circle-stroke-color": colours.paper,
        "circle-stroke-width": 3,
      },
    },
    ...[SOURCES.play, source].flatMap((from) => markLayers(from, colours, fonts)),
    {
      id: "own-label",
      type: "symbol",
      source: SOURCES.play,
      filter: ["has", "ownLabel"],
      layout: {
        "text-field": ["get", "ownLabel"],
        "text-font": [...fonts],
        "text-size": 14,
        "text-variable-anchor": ["left", "bottom", "top"],
        "text-radial-offset": 0.6,
        "text-max-width": 7,
        "text-justify": "auto",
      },
      paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 2 },
    },
    // Last, so first to find room: what was asked for comes before what lies about.
    {
      id: "leg-figures",
      type: "symbol",
      source,
      filter: ["has", "leg"],
      layout: {
        "text-field": ["get", "leg"],
        "text-font": [...fonts],
        "text-size": 19,
        "text-variable-anchor": ["right", "left", "top", "bottom"],
        "text-radial-offset": 0.6,
        "text-allow-overlap": true,
      },
      paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 2.5 },
    },
  ];
}

/** A ring where a hazard is reached, a disc where it is carried: told apart by shape, not by hue. */
function markLayers(source: string, colours: MapColours, fonts: readonly string[]): LayerSpecification[] {
  const carry: ExpressionSpecification = ["==", ["get", "mark"], "carry"];
  return [
    {
      id: `marks-${source}`,
      type: "circle",
      source,
      filter: ["has", "mark"],
      paint: {
        "circle-color": ["case", carry, colours.ink, colours.paper],
        "circle-radius": 4,
        "circle-stroke-color": ["case", carry, colours.paper, colours.ink],
        "circle-stroke-width": 2,
      },
    },
    {
      id: `mark-figures-${source}`,
      type: "symbol",
      source,
      filter: ["has", "mark"],
      layout: {
        "text-field": ["get", "figure"],
        "text-font": [...fonts],
        "text-size": 15,
        "text-variable-anchor": ["left", "right", "top", "bottom"],
        "text-radial-offset": 0.6,
        "symbol-sort-key": ["get", "rank"],
      },
      paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 2.25 },
    },
  ];
}
