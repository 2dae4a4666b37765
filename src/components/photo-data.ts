/** Where a course's photo from the air lies, for the live map. */
import type { PhotoTiles } from "../islands/hole-data.ts";
import type { MeasuredCourse } from "../measure/types.ts";
import { currentGuide } from "../site/guide.ts";
import { coursePhoto } from "../site/orthophoto.ts";

/** @param folder from the data file's folder to the course's, where all languages share tiles: `""`, `"../"` … */
export async function photoData({ course }: MeasuredCourse, folder: string): Promise<{ photo?: PhotoTiles }> {
  const photo = await coursePhoto(course, currentGuide().contentFolder);
  if (photo === undefined) return {};
  const { minimumZoom, maximumZoom, bounds } = photo;
  const round = (degrees: number): number => Number(degrees.toFixed(7));
  return { photo: { tiles: `${folder}air/{z}/{x}/{y}.webp`, minimumZoom, maximumZoom, bounds: [round(bounds[0]), round(bounds[1]), round(bounds[2]), round(bounds[3])] } };
}
