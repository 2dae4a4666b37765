/** The live map's sheet laid over the ground, under a sky. Pure. */
import type { LayerSpecification, SkySpecification, StyleSpecification } from "maplibre-gl";
import type { CourseData } from "../../contract/course-data.ts";
import type { HeightTiles, MapFeatures } from "../../contract/map-data.ts";
import type { MapColours } from "../map/colours.ts";
import { nameLabels } from "../map/labels.ts";
import { SOURCES } from "../map/sources.ts";
import { mapStyle } from "../map/style.ts";

/**
 * Heights for the shape of the ground; those of its shading are another source, since the map reads the two
 * at different sizes.
 */
export const HEIGHTS_SOURCE = "film-heights";
export const FLAGS_SOURCE = "film-flags";
export const FLAG_IMAGE = "film-flag";

export interface FilmStyleInput {
  readonly colours: MapColours;
  readonly course: CourseData;
  /** The hole flown; undefined on a tour. */
  readonly hole: number | undefined;
  readonly fonts: readonly string[];
  /** Height tiles with absolute addresses, where the guide has them. */
  readonly ground: HeightTiles | undefined;
}

/** A name over every bunker would bury the picture. */
const BUNKERS_FROM_ZOOM = 24;

export function filmStyle({ colours, course, hole, fonts, ground }: FilmStyleInput): StyleSpecification {
  const style = mapStyle({
    colours,
    features: course.features,
    origin: course.origin,
    line: undefined,
    fonts,
    bunkersFromZoom: BUNKERS_FROM_ZOOM,
    ground,
  });
  return {
    ...style,
    sources: {
      ...style.sources,
      [SOURCES.names]: { type: "geojson", data: nameLabels(named(course.features, hole), course.origin, undefined) },
      [FLAGS_SOURCE]: { type: "geojson", data: { type: "FeatureCollection", features: [] } },
      ...(ground && {
        [HEIGHTS_SOURCE]: {
          type: "raster-dem",
          tiles: [ground.tiles],
          encoding: ground.encoding,
          tileSize: 256,
          minzoom: ground.minimumZoom,
          maxzoom: ground.maximumZoom,
          bounds: [...ground.bounds],
        },
      }),
    },
    layers: [...style.layers.filter(isFlown).map(stillLit), flagLayer(colours, fonts)],
    ...(ground && { terrain: { source: HEIGHTS_SOURCE, exaggeration: 1 } }),
    sky: sky(colours),
  };
}

/** Nobody measures from the air. */
const isFlown = (layer: LayerSpecification): boolean =>
  !("source" in layer && layer.source === SOURCES.measure) &&
  !["hole-discs", "hole-numbers", "green-marks"].includes(layer.id);

/** The sun does not turn with the camera; and ground seen along is flatter to the eye than ground seen from above. */
const stillLit = (layer: LayerSpecification): LayerSpecification =>
  layer.type === "hillshade"
    ? { ...layer, paint: { ...layer.paint, "hillshade-illumination-anchor": "map", "hillshade-exaggeration": 0.4 } }
    : layer;

/**
 * What is named from the air: what one aims at, and what the hole itself holds. Each name
 * once: a road's every piece bears its name.
 */
function named(features: MapFeatures, hole: number | undefined): MapFeatures {
  const seen = new Set<string>();
  return {
    ...features,
    features: features.features.filter(({ properties: { name, kind, hole: own } }) => {
      const wanted = kind === "landmark" || kind === "building" || (hole !== undefined && own === hole);
      if (name === undefined || !wanted || kind === "road" || kind === "path" || seen.has(name)) return false;
      seen.add(name);
      return true;
    }),
  };
}

const sky = (colours: MapColours): SkySpecification => ({
  "sky-color": colours.sea,
  "horizon-color": colours.paper,
  "fog-color": colours.paper,
  "sky-horizon-blend": 0.7,
  "horizon-fog-blend": 0.5,
  "fog-ground-blend": 0.6,
});

/** A flag stands up whatever the slope; on a tour it says which. */
const flagLayer = (colours: MapColours, fonts: readonly string[]): LayerSpecification => ({
  id: "flags",
  type: "symbol",
  source: FLAGS_SOURCE,
  layout: {
    "icon-image": FLAG_IMAGE,
    "icon-anchor": "bottom-left",
    "icon-allow-overlap": true,
    "icon-ignore-placement": true,
    "text-field": ["get", "number"],
    "text-font": [...fonts],
    "text-size": 14,
    "text-anchor": "bottom-right",
    "text-offset": [-0.3, -1.6],
    "text-allow-overlap": true,
  },
  paint: { "text-color": colours.ink, "text-halo-color": colours.halo, "text-halo-width": 2 },
});
