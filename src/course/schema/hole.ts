/** What the front matter of a hole page may say. Its features are read by {@link checkFeatures}. */
import * as z from "zod";
import {
  aim,
  expects,
  FIELD,
  group,
  line,
  MOST_HOLES,
  silences,
  wholeNumber,
  wholeNumberPerGender,
} from "./fields.ts";
import { holeNotices } from "./notice.ts";
import { photoSchema } from "./photo.ts";

/** Fields of a page that may be marked as not the club's own yet. */
const MARKED = ["par", "strokeIndex", "card"] as const;

const fieldNames = (field: string, example: (typeof MARKED)[number]) =>
  z
    .array(
      z.enum(MARKED, expects("par, strokeIndex or card", `${field}: [ ${example} ]`)),
      expects("a list of par, strokeIndex and card", `${field}: [ ${example} ]`),
    )
    .default([]);

export const holeSchema = group(
  {
    hole: wholeNumber(1, MOST_HOLES, `the hole's number, a whole number from 1 to ${MOST_HOLES}`, "hole: 7"),
    name: line("the hole's name", "name: Skerry", 80),
    par: wholeNumberPerGender(3, 6, "par", 4),
    strokeIndex: wholeNumberPerGender(1, MOST_HOLES, "strokeIndex", 5),
    card: z.record(
      z.string(),
      wholeNumber(20, 1200, "the length on the printed card in whole yards", `${FIELD}: ___`),
      expects(
        "the printed card: a length in yards for each tee set",
        "card: { yellow: ___ }, with every tee set of the hole and its printed yards",
      ),
    ),
    aim: aim().optional(),
    photos: z
      .array(
        photoSchema,
        expects("a list of photos", 'photos: and below it - { file: 07-tee.jpg, alt: "From the tee" }'),
      )
      .default([]),
    notices: holeNotices(),
    silence: silences(),
    placeholder: fieldNames("placeholder", "par"),
    proposed: fieldNames("proposed", "card"),
    features: z.unknown().optional(),
  },
  "a group",
);

export type HoleFile = z.infer<typeof holeSchema>;
