/**
 * What a translation may say: the texts of a club, a course or a hole in another language.
 * Everything may be left out, and then stays in the content's first language.
 */
import * as z from "zod";
import { aim, expects, FIELD, group, line } from "./fields.ts";
import { errorAt, warningAt, type Finding, type Path } from "./finding.ts";
import { valueAt } from "./issues.ts";
import { count, insteadOf, quote } from "./wording.ts";

const texts = (what: string, example: string) =>
  z
    .array(
      line("a sentence", `- "${example}"`, 1000),
      expects(`${what}, in the order of the first language`, `${FIELD}: [ "${example}" ]`),
    )
    .optional();

const names = (what: string, example: string) =>
  z
    .record(
      z.string(),
      line("a name", `${FIELD}: "${example}"`, 80),
      expects(`names of ${what} by their id`, `${FIELD}: { ${example.toLowerCase()}: "${example}" }`),
    )
    .default({});

const notices = () =>
  z
    .array(
      line("a sentence", 'text: "Wintergrün"', 500).nullable(),
      expects("the texts of the notices in their order, ~ for one that stays as it is", 'notices: [ "Wintergrün." ]'),
    )
    .default([]);

const name = (what: string) => line(`the ${what}'s name`, `name: "Schäre"`, 80).optional();

export const clubTranslationSchema = group(
  {
    name: name("club"),
    place: line("where the club is", 'place: "Insel Sample"').optional(),
    invented: line("a sentence", 'invented: "Dieser Club ist erfunden."', 1000).optional(),
    address: z.string(expects("an address", 'address: "1 Shore Road, Sample"')).min(1).max(500).optional(),
    cautions: texts("the club's cautions", "Vorsicht beim Überqueren der Straße."),
    localRules: texts("the local rules", "Steine in Bunkern sind bewegliche Hemmnisse."),
  },
  "a group",
);

export const courseTranslationSchema = group(
  {
    name: name("course"),
    description: z.string(expects("a text", "description: Ein Linksplatz.")).max(20_000).optional(),
    sources: texts("the sources", "Vermessung durch den Club"),
    tees: names("tee sets", "Gelb"),
    features: names("features", "Schäre"),
    notices: notices(),
  },
  "a group",
);

export const holeTranslationSchema = group(
  {
    name: name("hole"),
    aim: aim().optional(),
    photos: z
      .record(
        z.string(),
        group(
          {
            alt: line(
              "what the picture shows, for those who cannot see it",
              'alt: "Blick vom weißen Abschlag über die Bucht"',
              500,
            ).optional(),
            caption: line("a sentence", 'caption: "Die Bucht bei halber Tide"', 500).optional(),
          },
          "a group",
        ),
        expects("the photos' texts by their file", 'photos: and below it 07-tee.jpg: { alt: "Blick vom Abschlag" }'),
      )
      .default({}),
    features: names("features", "Schäre"),
    notices: notices(),
  },
  "a group",
);

/** Names in a translation that nothing has in the first language. */
export function checkNames(
  written: unknown,
  field: string,
  what: string,
  valid: readonly string[] | undefined,
): Finding[] {
  const named = valueAt(written, [field]);
  if (valid === undefined || named === null || typeof named !== "object" || Array.isArray(named)) return [];
  return Object.keys(named)
    .filter((key) => !valid.includes(key))
    .map((key) =>
      errorAt(
        [field, key],
        "translation-of-nothing",
        `There is no ${what} ${quote(key)} to translate. ${insteadOf(key, valid)}`,
        "key",
      ),
    );
}

/**
 * Lists that must go along with one in the first language. More is a mistake; a caution or
 * a local rule fewer may be one, and visitors would never know.
 */
export function checkCount(written: unknown, field: string, expected: number, mayBeFewer: boolean): Finding[] {
  const list = valueAt(written, [field]);
  if (!Array.isArray(list) || list.length === expected || (mayBeFewer && list.length < expected)) return [];
  const path: Path = [field];
  const message = `${field} has ${count(list.length, "entry", "entries")}, where the first language has ${expected}: expected as many, in the same order.`;
  return list.length > expected && mayBeFewer
    ? [errorAt(path, "translation-count", `${message} Remove what has nothing to translate.`, "key")]
    : [
        warningAt(
          path,
          "translation-count",
          `${message} Write what is missing, or remove what is no longer so.`,
          "key",
        ),
      ];
}
