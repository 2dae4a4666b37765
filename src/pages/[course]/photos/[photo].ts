/** Every size of every photo. */
import { join } from "node:path";
import type { APIRoute, GetStaticPaths } from "astro";
import { photoVariants, renderPhoto, type PhotoVariant } from "../../../components/photo.ts";
import { currentGuide } from "../../../site/guide.ts";

type Props = {
  file: string;
  variant: PhotoVariant;
};

export const getStaticPaths = (async () => {
  const { courses, contentFolder } = currentGuide();
  const found = new Map<string, { params: { course: string; photo: string }; props: Props }>();
  for (const { course, holes } of courses) {
    for (const { hole } of holes) {
      for (const { file } of hole.photos) {
        const original = join(contentFolder, file);
        for (const variant of await photoVariants(original)) {
          found.set(`${course.id}/${variant.name}`, { params: { course: course.id, photo: variant.name }, props: { file: original, variant } });
        }
      }
    }
  }
  return [...found.values()];
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { file, variant } }) =>
  new Response(await renderPhoto(file, variant), {
    headers: { "Content-Type": variant.format === "webp" ? "image/webp" : "image/jpeg" },
  });
