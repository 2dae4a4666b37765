/** What course.yaml may say. Its features are read by {@link checkFeatures}. */
import * as z from "zod";
import {
  expects,
  fileName,
  group,
  isoDate,
  isWebAddress,
  line,
  numberWithin,
  silences,
  slug,
  wholeNumber,
} from "./fields.ts";
import { courseNotices } from "./notice.ts";
import { orthophotoSchema } from "./orthophoto.ts";

/** Half-width of the shot corridor where a course does not say: common practice, no source. */
export const DEFAULT_CORRIDOR_METRES = 25;

const rating = group(
  {
    gender: z.enum(["men", "women"], expects("men or women", "gender: men")),
    // Nine holes are rated at about half of eighteen, so the range holds both.
    courseRating: numberWithin(20, 90, "a Course Rating from 20 to 90", "courseRating: 71.2"),
    bogeyRating: numberWithin(20, 140, "a Bogey Rating from 20 to 140", "bogeyRating: 95.1").optional(),
    // Rules of Handicapping, definition of Slope Rating: 55 to 155.
    slopeRating: wholeNumber(55, 155, "a Slope Rating, a whole number from 55 to 155", "slopeRating: 128"),
    par: wholeNumber(3, 90, "the par of these tees, a whole number", "par: 72"),
  },
  "a rating",
);

const teeSet = group(
  {
    id: slug("lower-case letters, digits and hyphens", "id: yellow"),
    name: line("the name of the tees", "name: Yellow", 60),
    colour: z
      .string(expects("a colour as # and six hexadecimal digits, in quotes", 'colour: "#e0b400"'))
      .regex(/^#[0-9a-fA-F]{6}$/),
    ratings: z
      .array(rating, expects("a list of ratings", "- { gender: men, courseRating: 71.2, slopeRating: 128, par: 72 }"))
      .default([]),
  },
  "a tee set",
);

/** A source that asks to be named, and what came from it. */
const source = group(
  {
    text: line("whom to name", 'text: "© OpenStreetMap contributors"', 500).optional(),
    licence: line("the licence, or whose the rights are", 'licence: "ODbL 1.0"', 200).optional(),
    link: z
      .string(expects("an address on the web", 'link: "https://www.openstreetmap.org/copyright"'))
      .max(500)
      .refine(isWebAddress)
      .optional(),
    files: z.array(line("the name of a file that came from there", 'files: [ "survey.geojson" ]', 250)).default([]),
  },
  "a source",
);

export const courseSchema = group(
  {
    name: line("the course's name", "name: Sample Links"),
    description: z.string(expects("a text", "description: A links course.")).max(20_000).default(""),
    surveyed: isoDate("the date of the survey as year-month-day", "surveyed: 2026-05-14").optional(),
    sources: z
      .array(
        z.union(
          [line("where the geometry comes from", '- "Survey by the club"', 500), source],
          expects(
            "a sentence, or a group with text, licence, link and files",
            '- { text: "Survey by the club", licence: "all rights with the club" }',
          ),
        ),
        expects("a list of sentences", 'sources: [ "Survey by the club" ]'),
      )
      .default([]),
    defaultTee: slug("the id of a tee set", "defaultTee: yellow"),
    corridorMetres: numberWithin(
      5,
      100,
      "the half-width of the shot corridor in metres, from 5 to 100",
      `corridorMetres: ${DEFAULT_CORRIDOR_METRES}`,
    ).default(DEFAULT_CORRIDOR_METRES),
    tees: z
      .array(
        teeSet,
        expects(
          "a list of tee sets, longest first",
          'tees: and below it - { id: yellow, name: Yellow, colour: "#e0b400" }',
        ),
      )
      .min(1),
    ground: group(
      {
        heights: fileName("a file in the course's folder", "heights: ground/height.tif").optional(),
        crs: line("a coordinate system as a proj string", 'crs: "+proj=utm +zone=29 +datum=WGS84"', 1000).optional(),
        photo: orthophotoSchema().optional(),
      },
      "a group",
    )
      .refine(
        ({ heights, photo }) => heights !== undefined || photo !== undefined,
        expects("heights, a photo from the air, or both", "ground: { heights: ground/height.tif }"),
      )
      .optional(),
    notices: courseNotices(),
    silence: silences(),
    features: z.unknown().optional(),
  },
  "a group",
);

export type CourseFile = z.infer<typeof courseSchema>;
