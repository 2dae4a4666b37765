/** Where a course's height tiles lie, for the live map. */
import { groundBounds, type GroundData } from "../islands/hole-data.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { TERRAIN_ZOOMS } from "../read/terrain-tiles.ts";

/** @param up from the data file's folder to the course's: `""` or `"../"` */
export const groundData = ({ ground, frame }: MeasuredCourse, up: "" | "../"): { ground?: GroundData } =>
  ground === undefined
    ? {}
    : {
        ground: {
          tiles: `${up}ground/{z}/{x}/{y}.webp`,
          encoding: "terrarium",
          minimumZoom: Math.min(...TERRAIN_ZOOMS),
          maximumZoom: Math.max(...TERRAIN_ZOOMS),
          bounds: groundBounds(ground, frame),
        },
      };
