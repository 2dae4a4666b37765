/** The map's ground in three dimensions: turned on and off, and put back after a change of style. */
import type { Map as MapLibreMap } from "maplibre-gl";
import type { HeightTiles } from "../../contract/map-data.ts";
import { EXAGGERATION, groundSource } from "./relief.ts";
import { HEIGHTS_SOURCE } from "./sources.ts";

export interface ReliefView {
  readonly on: boolean;
  /** Shapes the ground or lays it flat; the camera is the caller's. */
  turn(on: boolean): void;
  /** A new style has forgotten the ground's shape. */
  restore(): void;
}

/** A flat map is the plate and is not turned; ground in relief is looked at from all sides. */
export function reliefView(map: MapLibreMap, ground: HeightTiles | undefined): ReliefView {
  let on = false;
  const shape = (): void => {
    if (ground === undefined || !on) return;
    if (map.getSource(HEIGHTS_SOURCE) === undefined) map.addSource(HEIGHTS_SOURCE, groundSource(ground));
    map.setTerrain({ source: HEIGHTS_SOURCE, exaggeration: EXAGGERATION });
  };
  return {
    get on() {
      return on;
    },
    turn(next) {
      on = next && ground !== undefined;
      if (on) {
        shape();
        map.dragRotate.enable();
        map.touchPitch.enable();
        map.touchZoomRotate.enableRotation();
        map.keyboard.enableRotation();
      } else {
        map.setTerrain(null);
        flatten(map);
      }
    },
    restore: shape,
  };
}

/** Play goes up, always: a turned map would no longer be the plate. */
export function flatten(map: MapLibreMap): void {
  map.dragRotate.disable();
  map.touchPitch.disable();
  map.touchZoomRotate.disableRotation();
  map.keyboard.disableRotation();
}
