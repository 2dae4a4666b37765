/** Shaded relief from the guide's own height tiles. */
import type { FeatureCollection } from "geojson";
import type { LayerSpecification, SourceSpecification } from "maplibre-gl";
import type { Bounds, HeightTiles } from "../../contract/map-data.ts";
import type { MapColours } from "./colours.ts";
import { BEYOND_SOURCE, GROUND_SOURCE } from "./sources.ts";

export const reliefSources = (ground: HeightTiles): Record<string, SourceSpecification> => ({
  [GROUND_SOURCE]: groundSource(ground),
  [BEYOND_SOURCE]: { type: "geojson", data: beyond(ground.bounds) },
});

/**
 * Links ground is lost at true scale from above, and more than this hides what lies behind a bank; stated on
 * the map while it shows.
 */
export const EXAGGERATION = 1.5;

export const groundSource = ({
  tiles,
  encoding,
  minimumZoom,
  maximumZoom,
  bounds,
}: HeightTiles): SourceSpecification => ({
  type: "raster-dem",
  tiles: [tiles],
  encoding,
  tileSize: 256,
  minzoom: minimumZoom,
  maxzoom: maximumZoom,
  bounds: [...bounds],
});

/**
 * Shaded relief, lit from the upper left of the sheet as the plate is. Tiles run on beyond
 * the surveyed ground at the height of its edge, which would show as streaks: covered.
 */
export const reliefLayers = (colours: MapColours): LayerSpecification[] => [
  {
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
  },
  {
    id: "beyond",
    type: "fill",
    source: BEYOND_SOURCE,
    paint: { "fill-color": colours.ground, "fill-antialias": false },
  },
];

/** Everything but a box. */
function beyond([west, south, east, north]: Bounds): FeatureCollection {
  const far = 2;
  const ring = (w: number, s: number, e: number, n: number): [number, number][] => [
    [w, s],
    [e, s],
    [e, n],
    [w, n],
    [w, s],
  ];
  return {
    type: "FeatureCollection",
    features: [
      {
        type: "Feature",
        properties: {},
        geometry: {
          type: "Polygon",
          coordinates: [
            ring(west - far, south - far, east + far, north + far),
            ring(west, south, east, north).reverse(),
          ],
        },
      },
    ],
  };
}
