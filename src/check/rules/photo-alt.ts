import { at, perHole } from "../rule.ts";

/** Words that say only that there is a picture; English, as most file names of cameras are. */
const EMPTY =
  /^(?:(?:an?|the|our)\s+)?(?:photo(?:graph)?|picture|image|img|view|hole|tee|green|todo|tbd|alt)s?(?:\s+(?:of\s+)?(?:the\s+)?(?:hole|tee|green|course)?\s*\d*(?:st|nd|rd|th)?)?[.!]?$/i;

export const photoAlt = perHole({
  name: "photo-alt",
  severity: "warning",
  about: "A photo's alternative text says nothing: a file name, or only that it is a picture.",
  look: ({ hole }) =>
    hole.photos.flatMap(({ alt, file, place }) => {
      const name = file.slice(file.lastIndexOf("/") + 1);
      const asFile =
        alt.trim().toLowerCase() === name.toLowerCase() || /\.(?:jpe?g|png|webp|avif|tiff?)$/i.test(alt.trim());
      if (!asFile && !EMPTY.test(alt.trim())) return [];
      return [
        at(
          place,
          `The alternative text of ${name} is ${JSON.stringify(alt)}, which tells nobody what is seen. Write what a golfer would see, such as alt: "From the white tee across the inlet to the green".`,
        ),
      ];
    }),
});
