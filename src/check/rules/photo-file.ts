import { photosOf } from "../photos.ts";
import { type Rule } from "../rule.ts";

export const photoTurned: Rule = {
  name: "photo-turned",
  severity: "note",
  about: "A photo is stored on its side with a mark that says so; the guide turns it upright.",
  run: (context) =>
    photosOf(context, (photo, { turned }, name) =>
      turned
        ? {
            place: photo.place,
            message: `${name} is stored on its side with a mark that says how to turn it; the guide has turned it. If it stands wrong on the page, turn it in a picture program and save it again.`,
          }
        : undefined,
    ),
};

export const photoPlaceData: Rule = {
  name: "photo-place-data",
  severity: "note",
  about: "A photo's file says where it was taken; the guide takes that out.",
  run: (context) =>
    photosOf(context, (photo, { saysPlace }, name) =>
      saysPlace
        ? {
            place: photo.place,
            message: `${name} says in its file where it was taken. The guide takes that out of what it publishes; the original in the folder still has it.`,
          }
        : undefined,
    ),
};

export const photoUnused: Rule = {
  name: "photo-unused",
  severity: "note",
  about: "A file in the photos folder is on no page.",
  run: ({ photos }) =>
    (photos?.unused ?? []).map((file) => ({
      place: { file, line: 1, column: 1 },
      message: `No page shows this file. Name it on a hole page, photos: and below it - { file: ${file.split("/").slice(2).join("/")}, alt: "What it shows" }, or take it out of the folder.`,
    })),
};
