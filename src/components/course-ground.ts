/** A course's ground as its map wants it: contours and a relief picture lit from the north-west. */
import sharp from "sharp";
import type { PlateGround } from "../draw/relief.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { contoursOf } from "../terrain/contours.ts";
import { kept, keptPicture } from "../site/cache/kept.ts";
import { boundsOf, type HeightGrid } from "../terrain/grid.ts";
import { reliefPixels, type ReliefLook } from "../terrain/relief-pixels.ts";

/** Metres between contours on a map of a whole course. */
const CONTOUR_METRES = 2;

/** Less than on the plates: at this scale a scarp is a line, and a black one says too much. */
const EXAGGERATION = 1.3;

/** Shadows are soft: half the map's width carries them, at a quarter of the bytes. */
const RELIEF_WIDTH_PIXELS = 480;

const LOOK: ReliefLook = { shadow: 0.55, light: 0.6 };

export function courseGround({ ground: grid }: MeasuredCourse, reliefHref: string): PlateGround | undefined {
  if (!grid) return undefined;
  const { west, east, north, south } = boundsOf(grid);
  // A picture's pixels are as wide as the grid's step and centred on its heights.
  const half = grid.stepMetres / 2;
  return {
    grid,
    intervalMetres: CONTOUR_METRES,
    contours: kept("course-contours", [grid], () =>
      contoursOf(grid, { intervalMetres: CONTOUR_METRES, toleranceMetres: 1, leastLengthMetres: 80 }),
    )
      // Heights at and below the sea's are its bed, not the course's ground.
      .filter(({ heightMetres }) => heightMetres > 0),
    relief: {
      href: reliefHref,
      upperLeft: [west - half, north + half],
      upperRight: [east + half, north + half],
      lowerLeft: [west - half, south - half],
    },
  };
}

/** The relief picture; undefined without a height model. */
export async function courseRelief({ ground: grid }: MeasuredCourse): Promise<Uint8Array<ArrayBuffer> | undefined> {
  return grid && keptPicture("course-relief", [grid], () => picture(grid));
}

async function picture(grid: HeightGrid): Promise<Uint8Array<ArrayBuffer>> {
  const webp = await sharp(reliefPixels(grid, { sheetTopDegrees: 0, exaggeration: EXAGGERATION }, LOOK), {
    raw: { width: grid.columns, height: grid.rows, channels: 4 },
  })
    .resize({ width: Math.min(RELIEF_WIDTH_PIXELS, grid.columns), kernel: "cubic" })
    .blur(0.8)
    .webp({ quality: 20, alphaQuality: 45, effort: 6 })
    .toBuffer();
  return new Uint8Array(webp);
}
