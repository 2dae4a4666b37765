/**
 * The map's looks: colours and data in, a MapLibre style out. Pure; the plate's palette
 * gives the colours, so map and plate are one sheet.
 *
 * No `glyphs`: MapLibre then draws letters from the page's own fonts, and nothing is fetched.
 */
import type { StyleSpecification } from "maplibre-gl";
import type { HeightTiles, LonLat, MapFeatures, PhotoTiles } from "../../contract/map-data.ts";
import type { MapColours } from "./colours.ts";
import { courseLayers } from "./ground-layers.ts";
import { nameLabels } from "./labels.ts";
import { photoSources, withPhoto } from "./photo.ts";
import { holeNumberLayers, measureLayers, nameLayers, playLayers } from "./play-layers.ts";
import { reliefSources } from "./relief.ts";
import { runOn } from "./run-on.ts";
import { SOURCES } from "./sources.ts";

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
  readonly ground: HeightTiles | undefined;
  /** Tiles of the photo from the air with absolute addresses, and whether it shows. */
  readonly photo?: { readonly tiles: PhotoTiles; readonly shown: boolean } | undefined;
}

export function mapStyle({
  colours,
  features,
  origin,
  fonts,
  bunkersFromZoom,
  ground,
  photo,
  line,
}: StyleInput): StyleSpecification {
  const empty = { type: "FeatureCollection" as const, features: [] };
  const layers = courseLayers(colours, ground !== undefined);
  return {
    version: 8,
    sources: {
      [SOURCES.features]: { type: "geojson", data: runOn(features, origin), tolerance: 0.1, maxzoom: 18 },
      [SOURCES.names]: { type: "geojson", data: nameLabels(features, origin, line) },
      [SOURCES.play]: { type: "geojson", data: empty },
      [SOURCES.measure]: { type: "geojson", data: empty },
      ...(ground && reliefSources(ground)),
      ...(photo && photoSources(photo.tiles)),
    },
    layers: [
      { id: "paper", type: "background", paint: { "background-color": colours.ground } },
      ...(photo ? withPhoto(layers, photo.shown) : layers),
      ...playLayers(colours),
      ...nameLayers(colours, fonts, bunkersFromZoom),
      ...holeNumberLayers(colours, fonts),
      ...measureLayers(colours, fonts),
    ],
  };
}
