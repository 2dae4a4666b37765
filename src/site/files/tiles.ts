/** Where a course's tiles lie, for its live maps: heights, and the photo from the air. */
import type { Bounds, HeightTiles, PhotoTiles } from "../../contract/map-data.ts";
import type { Frame } from "../../geo/frame.ts";
import type { MeasuredCourse } from "../../measure/types.ts";
import { TERRAIN_ZOOMS } from "../../read/terrain-tiles.ts";
import type { HeightGrid } from "../../terrain/grid.ts";
import { currentGuide } from "../load/guide.ts";
import { coursePhoto } from "../pictures/orthophoto.ts";
import { rounded } from "./map-features.ts";

export interface CourseTiles {
  readonly ground?: HeightTiles;
  readonly photo?: PhotoTiles;
}

/** @param folder from the data file's folder to the course's, where all languages share tiles: `""`, `"../"` … */
export async function courseTiles({ course, ground, frame }: MeasuredCourse, folder: string): Promise<CourseTiles> {
  const photo = await coursePhoto(course, currentGuide().contentFolder);
  return {
    ...(ground && {
      ground: {
        tiles: `${folder}ground/{z}/{x}/{y}.webp`,
        encoding: "terrarium",
        minimumZoom: Math.min(...TERRAIN_ZOOMS),
        maximumZoom: Math.max(...TERRAIN_ZOOMS),
        bounds: groundBounds(ground, frame),
      },
    }),
    ...(photo && {
      photo: {
        tiles: `${folder}air/{z}/{x}/{y}.webp`,
        minimumZoom: photo.minimumZoom,
        maximumZoom: photo.maximumZoom,
        bounds: photo.bounds.map((degrees) => rounded(degrees, 7)) as unknown as Bounds,
      },
    }),
  };
}

/** The largest box of longitude and latitude within a height grid. */
export function groundBounds(
  { westMetres, northMetres, columns, rows, stepMetres }: HeightGrid,
  { toPosition }: Frame,
): Bounds {
  const [eastMetres, southMetres] = [westMetres + (columns - 1) * stepMetres, northMetres - (rows - 1) * stepMetres];
  const [northWest, northEast, southWest, southEast] = [
    toPosition([westMetres, northMetres]),
    toPosition([eastMetres, northMetres]),
    toPosition([westMetres, southMetres]),
    toPosition([eastMetres, southMetres]),
  ];
  return [
    rounded(Math.max(northWest[0], southWest[0]), 6),
    rounded(Math.max(southWest[1], southEast[1]), 6),
    rounded(Math.min(northEast[0], southEast[0]), 6),
    rounded(Math.min(northWest[1], northEast[1]), 6),
  ];
}
