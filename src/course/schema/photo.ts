/** A photo's entry on a hole page: the file, what it shows, and where it was taken. */
import * as z from "zod";
import type { Viewpoint } from "../types.ts";
import { expects, fileName, group, line, numberWithin, slug } from "./fields.ts";
import { errorAt, type Finding } from "./finding.ts";
import { valueAt } from "./issues.ts";
import { insteadOf, quote } from "./wording.ts";

/** Stands for the marker of the course's default tee, whatever its id. */
export const FROM_TEE = "tee";

const FOCUS = "focus: [0.3, 0.6]";
const AT = "at: [-9.0123, 56.5012]";
const share = (what: string) =>
  numberWithin(
    0,
    1,
    `a share of the ${what} from 0 to 1`,
    `${FOCUS} for a point a little left of the middle and below it`,
  );

/** `[longitude, latitude]`. */
export const lonLat = (expected: string, write: string) =>
  z.tuple(
    [
      numberWithin(-180, 180, "a longitude from -180 to 180", write),
      numberWithin(-90, 90, "a latitude from -90 to 90", write),
    ],
    expects(expected, write),
  );

export const photoSchema = group(
  {
    file: fileName("the name of a file in the course's photos folder", "file: 07-tee.jpg"),
    alt: line(
      "what the picture shows, for those who cannot see it",
      'alt: "From the white tee across the inlet"',
      500,
    ),
    caption: line("a sentence", 'caption: "The inlet at half tide"', 500).optional(),
    credit: line("who took the picture", 'credit: "A. Member"', 200).optional(),
    focus: z
      .tuple(
        [share("width"), share("height")],
        expects("what the picture is about, as shares of its width and height from the upper left", FOCUS),
      )
      .optional(),
    at: lonLat("where the camera stood as [longitude, latitude]", AT).optional(),
    from: slug("tee, or the id of the feature the camera stood on", "from: tee").optional(),
    towards: slug("the id of the feature the camera looked at", "towards: green").optional(),
  },
  "a photo",
);

export type PhotoEntry = z.infer<typeof photoSchema>;

export const viewpointOf = ({ at, from, towards }: PhotoEntry): Viewpoint | undefined =>
  at === undefined && from === undefined ? undefined : { at, from, towards };

/**
 * Where photos say they were taken, against the features there are.
 *
 * @param ids of the hole's and the course's features; undefined when they could not all be read.
 */
export function checkViewpoints(page: unknown, ids: readonly string[] | undefined): Finding[] {
  const photos = valueAt(page, ["photos"]);
  if (!Array.isArray(photos)) return [];
  return photos.flatMap((photo: unknown, i) => {
    const [at, from, towards] = ["at", "from", "towards"].map((key) => valueAt(photo, [key]));
    const path = ["photos", i];
    const findings: Finding[] = [];
    if (at !== undefined && from !== undefined) {
      findings.push(
        errorAt(
          [...path, "from"],
          "photo-place",
          "Both at and from say where the photo was taken: expected one. Remove one of them.",
          "key",
        ),
      );
    }
    if (towards !== undefined && at === undefined && from === undefined) {
      findings.push(
        errorAt(
          [...path, "towards"],
          "photo-place",
          `towards says where the camera looked, but not from where. Write from: tee, or ${AT}.`,
          "key",
        ),
      );
    }
    const unknown = (key: string, id: unknown, valid: readonly string[]): void => {
      if (typeof id !== "string" || ids === undefined || valid.includes(id)) return;
      findings.push(
        errorAt(
          [...path, key],
          "photo-place",
          `${key}: there is no feature ${quote(id)} on the hole or its course. ${insteadOf(id, valid)}`,
        ),
      );
    };
    unknown("from", from, [FROM_TEE, ...(ids ?? [])]);
    unknown("towards", towards, ids ?? []);
    return findings;
  });
}
