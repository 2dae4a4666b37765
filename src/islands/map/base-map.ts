/** A MapLibre map in a panel: opened, watched and closed. Nothing here knows golf. */
import * as attr from "../../contract/attributes.ts";
import type { GeoJSONSource, Map as MapLibre, StyleSpecification } from "maplibre-gl";
import type { Camera, ViewSize } from "./camera.ts";
import type { Bounds, HeightTiles, LonLat } from "../../contract/map-data.ts";
import type { MapColours } from "./colours.ts";
import type { Panel } from "./panel.ts";
import type { MapWords } from "./words.ts";
import { LngLat } from "maplibre-gl";
import { metresPerPixel, RELIEF_PITCH_DEGREES } from "./camera.ts";
import { MapFailure } from "./failure.ts";
import { firstPicture, makeMap, readyForMaps, schemeOf } from "./maplibre.ts";
import { PHOTO_LAYER, PHOTO_SOURCE } from "./photo.ts";
import { PATTERN_PIXEL_RATIO, patterns, type Pattern } from "./patterns.ts";
import { flatten, reliefView } from "./relief-view.ts";
import { GROUND_SOURCE, HEIGHTS_SOURCE } from "./sources.ts";

/** A slow phone still makes it in this. */
const READY_WITHIN_MS = 30_000;

const HIGHEST_ZOOM = 21;

/** Relief and photo; without them, or with a tile of them missing, there is still a map. */
const ADDED_SOURCES: ReadonlySet<string> = new Set([GROUND_SOURCE, HEIGHTS_SOURCE, PHOTO_SOURCE]);

/** With the angle of view, the horizon stays above the picture. */
const HIGHEST_PITCH_DEGREES = 60;

export interface BaseMapInput {
  readonly panel: Panel;
  readonly title: string;
  readonly words: MapWords;
  /** Bearing of play, where the map shows one hole. */
  readonly playDegrees: number | undefined;
  readonly camera: (view: ViewSize, pitch: number) => Camera;
  /** The middle of the view stays within: past the data there is nothing to see. */
  readonly bounds: Bounds;
  /** Height tiles, where the guide has them, for ground in relief. */
  readonly ground: HeightTiles | undefined;
  /** Whether it opens in relief. */
  readonly relief: boolean;
  readonly style: (colours: MapColours) => StyleSpecification;
  /** Fills the style's empty sources and the panel; called before the map is made, so that all is drawn at once. */
  readonly fill: (map: BaseMap) => void;
  /** A tap, or Enter at the cross. */
  readonly choose: (position: LonLat, map: BaseMap) => void;
  /** Ends the map. */
  readonly signal: AbortSignal;
  readonly close: () => void;
  readonly fail: (failure: MapFailure) => void;
}

export interface BaseMap {
  setData(source: string, data: GeoJSON.FeatureCollection): void;
  /** Shapes the ground and tilts the view, or lays both flat; shows the whole again. */
  setRelief(on: boolean): void;
  /** Shows or hides the photo from the air, where there is one. */
  setPhoto(on: boolean): void;
  /** At the middle of the view. */
  metresPerPixel(): number;
  /** Puts the keyboard on the map. */
  focus(): void;
}

/**
 * Resolves when the first full picture is drawn.
 *
 * @throws MapFailure when there is no WebGL 2 or no picture comes
 */
export async function openBaseMap(input: BaseMapInput): Promise<BaseMap> {
  const { panel, signal } = input;
  await readyForMaps();
  signal.throwIfAborted();
  const { colours, watch } = schemeOf(panel.view);
  const drawn = new Map<string, GeoJSON.FeatureCollection>();
  const style = (): StyleSpecification => {
    const { sources, ...rest } = input.style(colours());
    const filled = [...drawn].map(([source, data]) => [source, { type: "geojson" as const, data }] as const);
    return { ...rest, sources: { ...sources, ...Object.fromEntries(filled) } };
  };
  let made: MapLibre | undefined;
  const base: BaseMap = {
    setData(source, data) {
      drawn.set(source, data);
      void made?.getSource<GeoJSONSource>(source)?.setData(data);
    },
    setRelief(on) {
      if (on === relief.on) return;
      relief.turn(on);
      map.easeTo(opening());
      told();
    },
    setPhoto(on) {
      if (map.getLayer(PHOTO_LAYER)) map.setLayoutProperty(PHOTO_LAYER, "visibility", on ? "visible" : "none");
      panel.view.setAttribute(attr.photo, on ? "on" : "off");
    },
    metresPerPixel: () => metresPerPixel(map.getZoom(), map.getCenter().lat),
    focus: () => map.getCanvas().focus({ preventScroll: true }),
  };
  input.fill(base);
  const camera = input.camera(panel.size(), 0);
  const map = (made = makeMap(panel.view, {
    style: style(),
    ...camera,
    minZoom: camera.zoom - 2.5,
    maxZoom: HIGHEST_ZOOM,
    maxPitch: HIGHEST_PITCH_DEGREES,
    transformCameraUpdate: ({ center }) => ({ center: new LngLat(...held([center.lng, center.lat], input.bounds)) }),
    cooperativeGestures: true,
    // Two taps are two measurements.
    doubleClickZoom: false,
    locale: {
      "Map.Title": input.title,
      "CooperativeGesturesHandler.WindowsHelpText": input.words.wheelControl,
      "CooperativeGesturesHandler.MacHelpText": input.words.wheelCommand,
      "CooperativeGesturesHandler.MobileHelpText": input.words.touch,
    },
  }));
  signal.addEventListener("abort", () => map.remove());
  flatten(map);
  const relief = reliefView(map, input.ground);
  const opening = (): Camera => input.camera(panel.size(), relief.on ? RELIEF_PITCH_DEGREES : 0);

  const drawPatterns = (): void => {
    let all: ReadonlyMap<string, Pattern> | undefined;
    map.setMissingStyleImageResolver((id) => {
      all ??= new Map(Object.entries(patterns(colours(), input.playDegrees)));
      const pattern = all.get(id);
      if (pattern !== undefined && !map.hasImage(id)) map.addImage(id, pattern, { pixelRatio: PATTERN_PIXEL_RATIO });
    });
  };
  drawPatterns();

  const canvas = map.getCanvas();
  // Screen readers must hand the arrow keys to the map, which "region" does not ask for.
  canvas.setAttribute("role", "application");
  canvas.setAttribute("aria-describedby", panel.keysId);

  function restyle(): void {
    drawPatterns();
    map.setStyle(style(), { diff: false });
    map.once("style.load", () => relief.restore());
  }

  const told = (): void => {
    const { lng, lat } = map.getCenter();
    panel.view.setAttribute(attr.camera, [lng, lat, map.getZoom(), map.getBearing(), map.getPitch()].join(" "));
    panel.view.setAttribute(attr.relief, relief.on ? "on" : "off");
  };
  map.on("moveend", told);
  map.on("click", ({ lngLat }) => input.choose([lngLat.lng, lngLat.lat], base));
  canvas.addEventListener("keydown", (event) => {
    if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      // Where the cross is drawn, also on ground in relief.
      const { lng, lat } = map.unproject([panel.view.clientWidth / 2, panel.view.clientHeight / 2]);
      input.choose([lng, lat], base);
    }
  });
  panel.buttons.zoomIn.addEventListener("click", () => map.zoomIn());
  panel.buttons.zoomOut.addEventListener("click", () => map.zoomOut());
  panel.buttons.reset.addEventListener("click", () => map.easeTo(opening()));
  panel.buttons.close.addEventListener("click", input.close);

  await firstPicture(map, {
    fill() {
      if (input.relief && input.ground !== undefined) {
        relief.turn(true);
        map.jumpTo(opening());
      }
    },
    drawn: "idle",
    withinMilliseconds: READY_WITHIN_MS,
    additions: ADDED_SOURCES,
    signal,
  });
  told();
  map.on("webglcontextlost", () => input.fail(new MapFailure("lost", undefined)));
  watch(restyle, signal);
  return base;
}

/** A position within a box: itself, or the nearest in it. */
const held = ([longitude, latitude]: LonLat, [west, south, east, north]: Bounds): [number, number] => [
  Math.min(east, Math.max(west, longitude)),
  Math.min(north, Math.max(south, latitude)),
];
