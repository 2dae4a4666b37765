/** The second pair of eyes: a measured course held against the ground, the rules and its own words. */
import { inReadingOrder, type Diagnostic } from "../course/diagnostic.ts";
import type { PhotoFacts } from "../course/photo-look.ts";
import type { Club } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import { groundFrom, holeFacts, type HoleFacts } from "./facts.ts";
import type { GroundProvider } from "./ground.ts";
import { RULES } from "./registry.ts";
import type { CheckContext, Rule } from "./rule.ts";
import { sayIn } from "./say.ts";
import { applySilences, type Heard } from "./silence.ts";

export interface CheckInput {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  /** What the heights say of each hole; the course's own height model where left out. */
  readonly ground?: GroundProvider;
  /** What is known of the photos' files; without it their rules are silent. */
  readonly photos?: PhotoFacts | undefined;
  /** Addresses of the guide's pages from its root; without them links are not followed. */
  readonly pages?: ReadonlySet<string> | undefined;
  /** ISO date, for the age of the survey and for notices. */
  readonly today: string;
  /** Rules to run; all where left out. */
  readonly rules?: readonly Rule[];
}

/** Everything found, in reading order, and what the club has silenced. */
export function runChecks({
  club,
  measured,
  ground = groundFrom(measured),
  photos,
  pages,
  today,
  rules = RULES,
}: CheckInput): Heard {
  const facts = new Map<MeasuredHole, HoleFacts | undefined>();
  const context: CheckContext = {
    club,
    measured,
    today,
    photos,
    pages,
    say: sayIn(club.units),
    factsOf(hole) {
      if (!facts.has(hole)) facts.set(hole, holeFacts(measured, hole, ground));
      return facts.get(hole);
    },
  };
  const found: Diagnostic[] = rules.flatMap((rule) =>
    rule.run(context).map(({ place, message, severity }) => ({
      ...place,
      severity: severity ?? rule.severity,
      rule: rule.name,
      message,
    })),
  );
  const { diagnostics, silenced } = applySilences(measured.course, found, new Set(RULES.map(({ name }) => name)));
  return { diagnostics: inReadingOrder(diagnostics), silenced };
}
