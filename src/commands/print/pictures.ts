/** Relief and contours under what is printed, the pictures written into the page itself. */
import { courseGround, courseRelief } from "../../components/course-ground.ts";
import type { Composition } from "../../draw/composition.ts";
import type { PlateGround } from "../../draw/relief.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { plateGround, reliefPicture } from "../../site/pictures/plate-ground.ts";

const dataAddress = (picture: Uint8Array): string =>
  `data:image/webp;base64,${Buffer.from(picture).toString("base64")}`;

/** In one ink relief is left to contours and hachures. */
function without({ relief: _, ...rest }: PlateGround): PlateGround {
  return rest;
}

/** The ground of every hole under one composition; asked for one hole at a time when drawn. */
export async function groundsOf(
  measured: MeasuredCourse,
  composition: Composition,
  ink: boolean,
): Promise<(hole: MeasuredHole) => PlateGround | undefined> {
  const pictures = new Map<MeasuredHole, string>();
  if (!ink) {
    for (const hole of measured.holes) {
      const picture = await reliefPicture(measured, hole, [composition]);
      if (picture) pictures.set(hole, dataAddress(picture));
    }
  }
  return (hole) => {
    const ground = plateGround(measured, hole, pictures.get(hole) ?? "", [composition]);
    return ground && (pictures.has(hole) ? ground : without(ground));
  };
}

export async function groundOfCourse(measured: MeasuredCourse, ink: boolean): Promise<PlateGround | undefined> {
  const picture = ink ? undefined : await courseRelief(measured);
  const ground = courseGround(measured, picture ? dataAddress(picture) : "");
  return ground && (picture ? ground : without(ground));
}
