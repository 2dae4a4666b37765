/** What club.yaml may say. */
import * as z from "zod";
import { GUIDE_LANGUAGES, guideLanguageOf } from "../guide-languages.ts";
import { expects, group, isWebAddress, line } from "./fields.ts";
import { oneOf } from "./wording.ts";

const isLanguageTag = (tag: string): boolean => {
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
};

const language = () =>
  z.string(expects("a language tag such as en, de or pt-BR", "language: en")).refine(isLanguageTag);

/** The guide speaks it itself, so that a page in it is in it throughout. */
const furtherLanguage = () =>
  z
    .string(expects("a language tag such as en, de or pt-BR", "language: [en, de]"))
    .refine((tag) => isLanguageTag(tag) && guideLanguageOf(tag) !== undefined, {
      error: () =>
        `expected a language that the guide has words in, ${oneOf(GUIDE_LANGUAGES)}. Write one of these, or remove it.`,
    });

const sentences = (field: string, example: string) =>
  z.array(line("a sentence", `- "${example}"`, 1000), expects("a list of sentences", `${field}: [ "${example}" ]`));

/** Pages of a further language lie in a folder of its name, which knows no capitals. */
const allDiffer = (tags: readonly string[]): boolean =>
  new Set(tags.map((tag) => tag.toLowerCase())).size === tags.length;

export const clubSchema = group(
  {
    name: line("the club's name", "name: Sample Links Golf Club"),
    place: line("where the club is", "place: Isle of Sample").optional(),
    language: z
      .union(
        [
          language(),
          z
            .tuple([language()], furtherLanguage())
            .refine(allDiffer, { error: () => "expected each language once. Write language: [en, de]." }),
        ],
        expects(
          "a language tag, or a list of them with the language content is written in first",
          "language: en or language: [en, de]",
        ),
      )
      .default("en"),
    units: z.enum(["yards", "metres"], expects("yards or metres", "units: yards")).default("yards"),
    invented: line("a sentence", 'invented: "This club is invented."', 1000).optional(),
    contact: group(
      {
        email: z
          .string(expects("an e-mail address", "email: office@example.org"))
          .regex(/^[^\s@<>"]+@[^\s@<>"]+\.[^\s@<>"]+$/)
          .max(254)
          .optional(),
        telephone: z
          .string(expects("a telephone number in quotes", 'telephone: "+44 1632 960000"'))
          .regex(/^\+?[\d\s()./-]{3,30}$/)
          .optional(),
        website: z
          .string(expects("a web address", "website: https://example.org/"))
          .max(500)
          .refine(isWebAddress)
          .optional(),
        address: z.string(expects("an address", 'address: "1 Shore Road, Sample"')).min(1).max(500).optional(),
      },
      "a group",
    ).optional(),
    cautions: sentences("cautions", "Cross the road with care.").default([]),
    localRules: sentences("localRules", "Stones in bunkers are movable obstructions.").default([]),
  },
  "a group",
);

export type ClubFile = z.infer<typeof clubSchema>;
