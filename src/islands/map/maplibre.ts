/**
 * What every MapLibre map of a guide begins with: worker, style sheets, colours of the page, a first picture
 * or a reason why not.
 */
import type { MapOptions, Map as MapLibre } from "maplibre-gl";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url";
import { Map as MapLibreMap, prewarm, setWorkerUrl } from "maplibre-gl";
import { mapColours, type MapColours } from "./colours.ts";
import { MapFailure } from "./failure.ts";
import { stylesLoaded } from "./styles.ts";

// At once when this code is there: a worker takes its time to start, meanwhile data come and a panel is laid out.
setWorkerUrl(workerUrl);
prewarm();

/** Settles once a view has the size its style sheet gives it, and a map can be made in it. */
export async function readyForMaps(): Promise<void> {
  await stylesLoaded();
}

/** @throws MapFailure when there is no WebGL 2 */
export function makeMap(view: HTMLElement, options: Omit<MapOptions, "container">): MapLibre {
  try {
    return new MapLibreMap({ attributionControl: false, renderWorldCopies: false, ...options, container: view });
  } catch (cause) {
    throw new MapFailure("webgl", cause);
  }
}

export interface Scheme {
  /** As the page has them now, by day or by night. */
  colours(): MapColours;
  /** Calls when the device turns from day to night or back. */
  watch(turned: () => void, signal: AbortSignal): void;
}

export function schemeOf(view: HTMLElement): Scheme {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  return {
    colours() {
      const styles = getComputedStyle(view);
      return mapColours(dark.matches ? "dark" : "light", (name) => styles.getPropertyValue(name));
    },
    watch: (turned, signal) => dark.addEventListener("change", turned, { signal }),
  };
}

export interface FirstPicture {
  /** Called once the style is there, to fill its sources. */
  readonly fill: () => void;
  /** `idle` waits until all is drawn; `render` begins with what there is. */
  readonly drawn: "idle" | "render";
  /** A worker that never answers is a map that never comes. */
  readonly withinMilliseconds: number;
  /** Sources that may fail to come: there is still a picture without them. */
  readonly additions: ReadonlySet<string>;
  /** Nobody waits any more. */
  readonly signal: AbortSignal;
}

/** Between frames asked for while the first picture is awaited. */
const ASK_EVERY_MS = 1_000;

/** @throws MapFailure when no picture comes */
export function firstPicture(
  map: MapLibre,
  { fill, drawn, withinMilliseconds, additions, signal }: FirstPicture,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new MapFailure("data", new Error("no picture in time"))), withinMilliseconds);
    // Where the last tile awaited is one that is not there, the library asks for no frame, and only a frame says that
    // all has come.
    const asking = setInterval(() => map.triggerRepaint(), ASK_EVERY_MS);
    const settle = (act: () => void): void => {
      clearTimeout(late);
      clearInterval(asking);
      act();
    };
    signal.addEventListener("abort", () => settle(() => reject(signal.reason)));
    map.on("error", (event) => {
      if ("sourceId" in event && additions.has(String(event.sourceId))) return;
      settle(() => reject(new MapFailure("data", event.error)));
    });
    map.once("load", () => {
      fill();
      map.once(drawn, () => settle(resolve));
      map.triggerRepaint();
    });
  });
}
