/** Rules a club has silenced, with its reason. */
import type { Diagnostic } from "../course/diagnostic.ts";
import type { Course, Hole, Silence } from "../course/types.ts";

export interface Silenced {
  readonly diagnostic: Diagnostic;
  readonly because: string;
}

export interface Heard {
  readonly diagnostics: readonly Diagnostic[];
  readonly silenced: readonly Silenced[];
}

/** Names of the rules about silences themselves; they cannot be silenced. */
export const SILENCE_UNUSED = "silence-unused";
export const SILENCE_UNKNOWN = "silence-unknown";

/**
 * Leaves out what is silenced: a hole's list speaks for its own page and that page's translations, the course's
 * for the
 * whole course. An entry that silences nothing is a note, one that names no rule a warning.
 */
export function applySilences(
  course: Course,
  diagnostics: readonly Diagnostic[],
  ruleNames: ReadonlySet<string>,
): Heard {
  const entries = [
    ...course.silence.map((silence) => ({
      silence,
      files: undefined as ReadonlySet<string> | undefined,
      used: false,
    })),
    ...course.holes.flatMap((hole) => hole.silence.map((silence) => ({ silence, files: filesOf(hole), used: false }))),
  ];
  const heard: Diagnostic[] = [];
  const silenced: Silenced[] = [];
  for (const diagnostic of diagnostics) {
    const applying = entries.filter(
      ({ silence, files }) => silence.rule === diagnostic.rule && (files === undefined || files.has(diagnostic.file)),
    );
    for (const entry of applying) entry.used = true;
    if (applying.length > 0) silenced.push({ diagnostic, because: applying[0]!.silence.because });
    else heard.push(diagnostic);
  }
  for (const { silence, used } of entries) {
    if (used) continue;
    heard.push(ruleNames.has(silence.rule) ? unused(silence) : unknown(silence));
  }
  return { diagnostics: heard, silenced };
}

const filesOf = ({ place, translations }: Hole): ReadonlySet<string> | undefined =>
  new Set([place.file, ...Object.values(translations).map((translation) => translation.place.file)]);

const unused = ({ rule, place }: Silence): Diagnostic => ({
  ...place,
  severity: "note",
  rule: SILENCE_UNUSED,
  message: `The silence of ${rule} hides nothing any more. Remove it.`,
});

const unknown = ({ rule, place }: Silence): Diagnostic => ({
  ...place,
  severity: "warning",
  rule: SILENCE_UNKNOWN,
  message: `No rule is called ${rule}. Copy the rule's name from the message it should hide.`,
});
