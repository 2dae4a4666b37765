/** The library, its worker and its styles, in one chunk as a bundler makes it. */
import "maplibre-gl/dist/maplibre-gl.css";
import workerUrl from "maplibre-gl/dist/maplibre-gl-worker.mjs?worker&url";
import { Map as MapLibreMap, setWorkerUrl } from "maplibre-gl";
import type { BareMap } from "./page.ts";

/** Resolves at the map's first idle: everything is loaded and drawn. */
export function draw(container: HTMLElement, { width, height, options }: BareMap): Promise<void> {
  setWorkerUrl(workerUrl);
  container.style.width = `${width}px`;
  container.style.height = `${height}px`;
  const map = new MapLibreMap({ container, attributionControl: false, ...options });
  return new Promise((resolve, reject) => {
    map.once("error", ({ error }) => reject(error));
    map.once("idle", () => resolve());
  });
}
