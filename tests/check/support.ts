/** Courses for the check's tests. */
import { RULES } from "../../src/check/registry.ts";
import { runChecks } from "../../src/check/check.ts";
import type { GroundProvider } from "../../src/check/ground.ts";
import type { PhotoFacts } from "../../src/course/photo-look.ts";
import type { Diagnostic } from "../../src/course/diagnostic.ts";
import type { Club, Course, Feature, Hole } from "../../src/course/types.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import { CORPUS_COURSE, corpusGround } from "./corpus-holes.ts";
import type { HoleName } from "./corpus.ts";

export const TODAY = "2026-11-25";

export const club = (courses: readonly Course[], rest: Partial<Club> = {}): Club => ({
  name: "Test Club",
  place: undefined,
  language: "en",
  units: "yards",
  invented: undefined,
  contact: { email: undefined, telephone: undefined, website: undefined, address: undefined },
  cautions: [],
  localRules: [],
  languages: ["en"],
  translations: {},
  courses,
  ...rest,
});

interface Asked {
  readonly club?: Partial<Club>;
  readonly today?: string;
  readonly ground?: GroundProvider;
  readonly photos?: PhotoFacts | undefined;
}

/** What one rule says of a course. */
export function found(rule: string, one: Course, asked: Asked = {}): Diagnostic[] {
  const rules = RULES.filter(({ name }) => name === rule);
  if (rules.length === 0) throw new Error(`No rule is called ${rule}.`);
  const { diagnostics } = runChecks({
    club: club([one], asked.club ?? {}),
    measured: measureCourse(one),
    today: asked.today ?? TODAY,
    rules,
    photos: asked.photos,
    // Pages of the course at hand, for links: one hole and the card.
    pages: new Set([`${one.id}/1/`, `${one.id}/card/`]),
    ...(asked.ground ? { ground: asked.ground } : {}),
  });
  return diagnostics.filter((diagnostic) => diagnostic.rule === rule);
}

const tip = (markdown: string): Hole["tip"] => ({
  markdown,
  place: { file: "test/holes/01.md", line: 20, column: 1 },
});

/**
 * What a rule says of a tip on one of the corpus's holes, with features added or put in the place of their namesakes.
 *
 * @param language of the tip, where it is not the club's English
 */
export function foundInTip(
  rule: string,
  name: HoleName,
  markdown: string,
  more: readonly Feature[] = [],
  language?: string,
): Diagnostic[] {
  const written = language === undefined ? tip(markdown) : { ...tip(markdown), language };
  const holes = CORPUS_COURSE.holes.map((one) =>
    one.name === name
      ? {
          ...one,
          tip: written,
          features: [...one.features.filter(({ id }) => more.every((other) => other.id !== id)), ...more],
        }
      : one,
  );
  return found(rule, { ...CORPUS_COURSE, holes }, { ground: corpusGround });
}

export interface Plain {
  readonly lengthMetres?: number;
  readonly east?: number;
  readonly features?: readonly Feature[];
  readonly rest?: Partial<Hole>;
}

/** A plain par 4 that plays north: markers at 0 and 40 m, a green of 20 m by 20 m about its end. */
export function plainHole({ lengthMetres = 380, east = 0, features = [], rest = {} }: Plain = {}): Hole {
  return hole(
    [
      lineFeature("line", "line-of-play", [
        [east, 0],
        [east, lengthMetres],
      ]),
      pointFeature("tee-back", "tee-marker", [east, 0], { tee: "back" }),
      pointFeature("tee-forward", "tee-marker", [east, 40], { tee: "forward" }),
      areaFeature("green", "green", box(east - 10, lengthMetres - 10, east + 10, lengthMetres + 10)),
      ...features,
    ],
    { cardMetres: { back: lengthMetres, forward: lengthMetres - 40 }, ...rest },
  );
}

/** A hole's translation that says only its tip, in `01.<language>.md`. */
export const tipIn = (
  language: string,
  markdown: string,
  features: Readonly<Record<string, string>> = {},
): Hole["translations"] => {
  const place = { file: `test/holes/01.${language}.md`, line: 4, column: 1 };
  return {
    [language]: {
      name: undefined,
      aim: undefined,
      features,
      notices: [],
      photos: {},
      place: { ...place, line: 1 },
      tip: { markdown, place, language },
    },
  };
};

export const plainCourse = (plain: Plain = {}, rest: Partial<Course> = {}): Course => course([plainHole(plain)], rest);
export { tip as tipOf };
