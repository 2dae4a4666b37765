/** The photo from the air as a layer of the map: under what is drawn, and only when asked for. */
import type { LayerSpecification, SourceSpecification } from "maplibre-gl";
import type { PhotoTiles } from "../../contract/map-data.ts";

/** The source of the photo; a tile of it that fails to come spoils nothing else. */
export const PHOTO_SOURCE = "photo";
export const PHOTO_LAYER = "photo";

export const photoSources = ({
  tiles,
  minimumZoom,
  maximumZoom,
  bounds,
}: PhotoTiles): Record<string, SourceSpecification> => ({
  [PHOTO_SOURCE]: {
    type: "raster",
    tiles: [tiles],
    tileSize: 256,
    minzoom: minimumZoom,
    maxzoom: maximumZoom,
    bounds: [...bounds],
  },
});

/** The photo lies over what is painted of the ground, under what the Rules draw on it: stakes and boundaries. */
const UNDER = "penalty-yellow";

export function withPhoto(ground: readonly LayerSpecification[], shown: boolean): LayerSpecification[] {
  const at = ground.findIndex(({ id }) => id === UNDER);
  return at === -1
    ? [...ground, ...photoLayers(shown)]
    : [...ground.slice(0, at), ...photoLayers(shown), ...ground.slice(at)];
}

/** Hidden until somebody turns it on, and nothing of it is fetched before. */
const photoLayers = (shown: boolean): LayerSpecification[] => [
  {
    id: PHOTO_LAYER,
    type: "raster",
    source: PHOTO_SOURCE,
    layout: { visibility: shown ? "visible" : "none" },
    paint: { "raster-fade-duration": 150 },
  },
];
