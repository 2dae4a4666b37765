/** What the front matter of a hole page may say. Its features are read by {@link checkFeatures}. */
import * as z from "zod";
import { expects, FIELD, fileName, group, line, silences, wholeNumber, wholeNumberPerGender } from "./fields.ts";

/** The longest card; a course of eighteen holes is the most a folder may hold. */
export const MOST_HOLES = 18;

const photo = group(
  {
    file: fileName("the name of a file in the course's photos folder", "file: 07-tee.jpg"),
    alt: line("what the picture shows, for those who cannot see it", 'alt: "From the white tee across the inlet"', 500),
    caption: line("a sentence", 'caption: "The inlet at half tide"', 500).optional(),
    credit: line("who took the picture", 'credit: "A. Member"', 200).optional(),
  },
  "a photo",
);

export const holeSchema = group(
  {
    hole: wholeNumber(1, MOST_HOLES, `the hole's number, a whole number from 1 to ${MOST_HOLES}`, "hole: 7"),
    name: line("the hole's name", "name: Skerry", 80),
    par: wholeNumberPerGender(3, 6, "par", 4),
    strokeIndex: wholeNumberPerGender(1, MOST_HOLES, "strokeIndex", 5),
    card: z.record(
      z.string(),
      wholeNumber(20, 1200, "the length on the printed card in whole yards", `${FIELD}: 371`),
      expects("the printed card: a length in yards for each tee set", "card: { white: 392, yellow: 371 }"),
    ),
    photos: z
      .array(photo, expects("a list of photos", 'photos: and below it - { file: 07-tee.jpg, alt: "From the tee" }'))
      .default([]),
    silence: silences(),
    features: z.unknown().optional(),
  },
  "a group",
);

export type HoleFile = z.infer<typeof holeSchema>;
