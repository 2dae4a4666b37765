/** Every size of every photo. */
import { join } from "node:path";
import type { APIRoute, GetStaticPaths } from "astro";
import { currentGuide } from "../../../site/load/guide.ts";
import {
  MEDIA_TYPES,
  photoVariants,
  renderPhoto,
  startPhotos,
  type PhotoVariant,
} from "../../../site/pictures/photos.ts";

type Props = {
  file: string;
  variant: PhotoVariant;
};

export const getStaticPaths = (async () => {
  const { courses, contentFolder } = currentGuide();
  const found = new Map<string, { params: { course: string; photo: string }; props: Props }>();
  const originals = new Set<string>();
  for (const { course, holes } of courses) {
    for (const { hole } of holes) {
      for (const { file } of hole.photos) {
        const original = join(contentFolder, file);
        originals.add(original);
        for (const variant of await photoVariants(original)) {
          found.set(`${course.id}/${variant.name}`, {
            params: { course: course.id, photo: variant.name },
            props: { file: original, variant },
          });
        }
      }
    }
  }
  // Pages are asked for one after another; photos need not wait for their turn.
  if (import.meta.env.PROD) startPhotos([...originals]);
  return [...found.values()];
}) satisfies GetStaticPaths;

export const GET: APIRoute<Props> = async ({ props: { file, variant } }) =>
  new Response(await renderPhoto(file, variant), { headers: { "Content-Type": MEDIA_TYPES[variant.format] } });
