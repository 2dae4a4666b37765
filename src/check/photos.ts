/** Rules that look at the photos of a course one by one. */
import type { PhotoLook } from "../course/photo-look.ts";
import type { Photo } from "../course/types.ts";
import type { CheckContext, Finding } from "./rule.ts";

/** What a rule says of each photo whose file was looked at; nothing where nobody looked. */
export const photosOf = (
  { measured, photos }: CheckContext,
  say: (photo: Photo, look: PhotoLook, name: string) => Finding | undefined,
): Finding[] =>
  measured.course.holes.flatMap((hole) =>
    hole.photos.flatMap((photo) => {
      const look = photos?.lookOf(photo.file);
      return look === undefined ? [] : (say(photo, look, photo.file.slice(photo.file.lastIndexOf("/") + 1)) ?? []);
    }),
  );
