/** A hole's ground as its plates want it: contours, relief picture, heights. */
import sharp from "sharp";
import { COMPOSITIONS, type Composition } from "../../draw/composition.ts";
import type { PlateGround } from "../../draw/relief.ts";
import { layHole, sheetBearingDegrees } from "../../draw/sheet.ts";
import { boxAround, grow } from "../../geo/box.ts";
import type { Point } from "../../geo/position.ts";
import { greenOf } from "../../measure/hole.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { contoursOf } from "../../terrain/contours.ts";
import { boundsOf, cropTo, type Bounds, type HeightGrid } from "../../terrain/grid.ts";
import { reliefPixels, type ReliefLook } from "../../terrain/relief-pixels.ts";
import { kept, keptPicture } from "../cache/kept.ts";

/** Metres between contours on a plate, and on its green. */
export const PLATE_CONTOUR_METRES = 1;
export const GREEN_CONTOUR_METRES = 0.25;

/** Links ground is gentle: heights count more than double in its relief. */
const EXAGGERATION = 2.6;

/** Shadows stay open enough to read lettering and hachures in them. */
const LOOK: ReliefLook = { shadow: 0.46, light: 0.6 };

/** Specks shorter than this are left out of the contours. */
const LEAST_CONTOUR_METRES = 25;

/** The plates that share one relief picture on a hole's page. */
const ON_THE_PAGE: readonly Composition[] = [COMPOSITIONS.phone, COMPOSITIONS.desk];

/** What some plates of a hole show, in the plane, and the ground model cut to it; undefined off the model. */
function groundOfPlate(hole: MeasuredHole, grid: HeightGrid, shown: readonly Composition[]): HeightGrid | undefined {
  const corners = shown.flatMap((composition): Point[] => {
    const sheet = layHole(hole, composition);
    const [left, top, right, bottom] = sheet.map;
    return [
      [left, top],
      [right, top],
      [left, bottom],
      [right, bottom],
    ].map(([x, y]) => sheet.toPlane([x!, y!]));
  });
  const [west, south, east, north] = grow(boxAround(corners), 2 * grid.stepMetres);
  return onGrid(grid, { west, south, east, north }) ? cropTo(grid, { west, south, east, north }) : undefined;
}

function onGrid(grid: HeightGrid, { west, south, east, north }: Bounds): boolean {
  const model = boundsOf(grid);
  return west < model.east && east > model.west && south < model.north && north > model.south;
}

/**
 * The ground under a hole's plates; nothing where its course has no height model.
 *
 * @param shown the plates it must reach across; those of a hole's page when left out
 */
export function plateGround(
  course: MeasuredCourse,
  hole: MeasuredHole,
  reliefHref: string,
  shown: readonly Composition[] = ON_THE_PAGE,
): PlateGround | undefined {
  const grid = course.ground && groundOfPlate(hole, course.ground, shown);
  if (!grid) return undefined;
  const { west, east, north, south } = boundsOf(grid);
  // A picture's pixels are as wide as the grid's step and centred on its heights.
  const half = grid.stepMetres / 2;
  return {
    grid,
    intervalMetres: PLATE_CONTOUR_METRES,
    contours: keptContours(grid, {
      intervalMetres: PLATE_CONTOUR_METRES,
      toleranceMetres: 0.4,
      leastLengthMetres: LEAST_CONTOUR_METRES,
      // Heights at and below the sea's are its bed, not the course's ground.
    }).filter(({ heightMetres }) => heightMetres > 0),
    greenContours: keptContours(grid, {
      intervalMetres: GREEN_CONTOUR_METRES,
      within: greenOf(hole.placed, hole.hole),
      toleranceMetres: 0.1,
    }),
    relief: {
      href: reliefHref,
      upperLeft: [west - half, north + half],
      upperRight: [east + half, north + half],
      lowerLeft: [west - half, south - half],
    },
  };
}

const keptContours = (grid: HeightGrid, options: Parameters<typeof contoursOf>[1]): ReturnType<typeof contoursOf> =>
  kept("contours", [grid, options], () => contoursOf(grid, options));

/**
 * The relief picture of a hole's plates, on which play runs up, lit from the upper left of the sheet;
 * undefined without a height model.
 */
export async function reliefPicture(
  course: MeasuredCourse,
  hole: MeasuredHole,
  shown: readonly Composition[] = ON_THE_PAGE,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const grid = course.ground && groundOfPlate(hole, course.ground, shown);
  if (!grid) return undefined;
  const sheetTopDegrees = sheetBearingDegrees(hole, shown[0] ?? COMPOSITIONS.phone);
  return keptPicture("plate-relief", [grid, sheetTopDegrees], () => picture(grid, sheetTopDegrees));
}

async function picture(grid: HeightGrid, sheetTopDegrees: number): Promise<Uint8Array<ArrayBuffer>> {
  const webp = await sharp(reliefPixels(grid, { sheetTopDegrees, exaggeration: EXAGGERATION }, LOOK), {
    raw: { width: grid.columns, height: grid.rows, channels: 4 },
  })
    .blur(0.6)
    .webp({ quality: 60, alphaQuality: 70, effort: 6 })
    .toBuffer();
  return new Uint8Array(webp);
}
