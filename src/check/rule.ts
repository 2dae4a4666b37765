/** What a rule is. Each lives in a file of its own under rules/ and is listed in registry.ts. */
import type { Severity } from "../course/diagnostic.ts";
import type { PhotoFacts } from "../course/photo-look.ts";
import type { Club, Place } from "../course/types.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import type { HoleFacts } from "./facts.ts";
import type { Say } from "./say.ts";

export interface CheckContext {
  readonly club: Club;
  readonly measured: MeasuredCourse;
  /** ISO date of the check. */
  readonly today: string;
  readonly say: Say;
  /** What is known of the photos' files; undefined where nobody looked. */
  readonly photos: PhotoFacts | undefined;
  /** Addresses of the guide's pages from its root, `tarvay/7/`; undefined where nobody knows them. */
  readonly pages: ReadonlySet<string> | undefined;
  /** A hole's facts, worked out once; undefined for a hole without a tee marker. */
  factsOf(hole: MeasuredHole): HoleFacts | undefined;
}

export interface Finding {
  readonly place: Place;
  /** What is wrong, with what was found and what was expected; then what to do. */
  readonly message: string;
  /** The rule's own where left out. */
  readonly severity?: Severity;
}

export interface Rule {
  /** Stable name to look up or silence, words joined by hyphens. */
  readonly name: string;
  readonly severity: Severity;
  /** One sentence for a look-up table. */
  readonly about: string;
  readonly run: (context: CheckContext) => readonly Finding[];
}

/** A rule that looks at one hole at a time. */
export const perHole = (
  rule: Omit<Rule, "run"> & { readonly look: (hole: MeasuredHole, context: CheckContext) => readonly Finding[] },
): Rule => ({
  name: rule.name,
  severity: rule.severity,
  about: rule.about,
  run: (context) => context.measured.holes.flatMap((hole) => rule.look(hole, context)),
});

/** A finding at a place. */
export const at = (place: Place, message: string, severity?: Severity): Finding =>
  severity === undefined ? { place, message } : { place, message, severity };

/** The top of a course's own file. */
export const coursePlace = ({ course }: MeasuredCourse): Place => ({
  file: `${course.id}/course.yaml`,
  line: 1,
  column: 1,
});
