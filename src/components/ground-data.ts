/** Where a course's height tiles lie, for the live map. */
import { groundBounds, type GroundData } from "../islands/hole-data.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { TERRAIN_ZOOMS } from "../read/terrain-tiles.ts";

/** @param folder from the data file's folder to the course's, where all languages share tiles: `""`, `"../"` … */
export const groundData = ({ ground, frame }: MeasuredCourse, folder: string): { ground?: GroundData } =>
  ground === undefined
    ? {}
    : {
        ground: {
          tiles: `${folder}ground/{z}/{x}/{y}.webp`,
          encoding: "terrarium",
          minimumZoom: Math.min(...TERRAIN_ZOOMS),
          maximumZoom: Math.max(...TERRAIN_ZOOMS),
          bounds: groundBounds(ground, frame),
        },
      };
