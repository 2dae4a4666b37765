/** The files of a club that is just beginning: valid as they stand, and telling what to change. */
import { PLACEHOLDER_DESCRIPTION } from "../../course/draft.ts";
import { slugFrom } from "../../course/schema/features.ts";
import type { NewClub } from "./answers.ts";
import { newHole } from "./hole.ts";

export interface NewFile {
  /** From the club's folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** A text as YAML takes it without surprises; JSON's strings are YAML's too. */
const text = (value: string): string => JSON.stringify(value);

/** The course's folder, which is part of its address. */
export const courseFolder = ({ course }: Pick<NewClub, "course">): string => slugFrom(course) || "course";

/** Every file of a new club's folder. */
export function newClub(club: NewClub): NewFile[] {
  const folder = courseFolder(club);
  return [
    { path: "club.yaml", text: clubFile(club) },
    { path: `${folder}/course.yaml`, text: courseFile(club) },
    ...Array.from({ length: club.holes }, (_, i) => {
      const { fileName, page } = newHole(club, i + 1);
      return { path: `${folder}/holes/${fileName}`, text: page };
    }),
  ];
}

const clubFile = ({
  name,
  units,
}: NewClub): string => `# The club. Lines that begin with # are for you; the guide does not read them.
# Change what stands after a colon, save, and run: npm run check
name: ${text(name)}
# place: "Town or island"           # take the # away and write where you are
language: en
units: ${units}${units === "yards" ? "                       # or metres: what figures are shown in first" : "                      # or yards: what figures are shown in first"}

# What visitors see on the cover; leave out what you do not want shown.
# contact:
#   email: office@example.org
#   telephone: "+44 1632 960000"    # in quotes
#   website: https://example.org/
#   address: "1 Shore Road, Town"

# Dangers of your own ground, shown beside the usual cautions.
# cautions:
#   - "A public road crosses in front of the second tee. Wait for traffic."

# Local rules in short; staff and signage go before them.
# localRules:
#   - "Stones in bunkers are movable obstructions."
`;

const courseFile = ({
  course,
  tees,
}: NewClub): string => `# The course. Its folder's name is part of its address on the web.
name: ${text(course)}
description: |
  ${PLACEHOLDER_DESCRIPTION}

# The day the tees, greens and bunkers were measured. The guide prints it.
# surveyed: 2026-05-14

# Where the shapes come from; npm run bring adds what it brings. Write them like this:
# sources:
#   - { text: "Survey by the club", licence: "All rights with the club" }

# Tee sets, longest first. Colours are the club's own, as # and six digits, in quotes.
# Ratings are printed on the certificate your association sent; write them like this:
#     ratings:
#       - { gender: men, courseRating: 71.2, slopeRating: 128, par: 72 }
defaultTee: ${tees[Math.floor((tees.length - 1) / 2)]!.id}${" ".repeat(4)}# the set a visitor sees first
tees:
${tees.map(({ id, name, colour }) => `  - id: ${id}\n    name: ${text(name)}\n    colour: ${text(colour)}\n    ratings: []`).join("\n")}

# Notices for some days show and vanish by themselves. Holes may be left out: then it is for the whole course.
# notices:
#   - { from: 2026-11-01, until: 2027-02-28, holes: [ 3, 7 ], text: "Winter greens on these holes." }
`;
