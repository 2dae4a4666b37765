import { count } from "../say.ts";
import { photosOf } from "../photos.ts";
import type { Rule } from "../rule.ts";

/** The widest a page shows a photo on a dense screen is about 1,150 pixels. */
export const LEAST_WIDTH_PIXELS = 1200;

/**
 * A good camera's JPEG is 5 to 12 MB; more only slows the build and whoever copies the folder. Common
 * practice, no source.
 */
export const MOST_BYTES = 20_000_000;

export const photoSmall: Rule = {
  name: "photo-small",
  severity: "warning",
  about: "A photo is less than 1200 pixels wide.",
  run: (context) =>
    photosOf(context, (photo, { widthPixels }, name) =>
      widthPixels >= LEAST_WIDTH_PIXELS
        ? undefined
        : {
            place: photo.place,
            message: `${name} is ${count(widthPixels, "pixel")} wide and will look soft: expected at least ${LEAST_WIDTH_PIXELS}. Put the original there, not a copy from a message or a web page.`,
          },
    ),
};

export const photoLarge: Rule = {
  name: "photo-large",
  severity: "note",
  about: "A photo's file is larger than 20 MB.",
  run: (context) =>
    photosOf(context, (photo, { bytes, widthPixels }, name) =>
      bytes <= MOST_BYTES
        ? undefined
        : {
            place: photo.place,
            message: `${name} is ${Math.round(bytes / 1e6)} MB and ${widthPixels} pixels wide. The guide makes its own sizes, so nothing is wrong with the page; export it as JPEG about 4000 pixels wide to keep the folder light.`,
          },
    ),
};
