/** The tips of a hole: the one in the content's language, and its translations. */
import type { Place, Tip } from "../course/types.ts";
import type { MeasuredHole } from "../measure/types.ts";
import type { CheckContext, Finding } from "./rule.ts";
import type { HoleFacts } from "./facts.ts";

export interface HoleTip {
  readonly tip: Tip;
  /** BCP 47. */
  readonly language: string;
  readonly translated: boolean;
  /** What features are called in this language, by id; one that is not here keeps its name. */
  readonly names: Readonly<Record<string, string>>;
}

/** The original first. A hole without a tip has one that is empty. */
export function tipsOf({ course, hole }: MeasuredHole, { club }: Pick<CheckContext, "club">): readonly HoleTip[] {
  const original: HoleTip = {
    tip: hole.tip,
    language: hole.tip.language ?? club.language,
    translated: false,
    names: {},
  };
  const others = Object.entries(hole.translations).flatMap(([tag, { tip, features }]): HoleTip[] =>
    tip === undefined
      ? []
      : [
          {
            tip,
            language: tip.language ?? tag,
            translated: true,
            names: { ...course.translations[tag]?.features, ...features },
          },
        ],
  );
  return [original, ...others];
}

/** The facts with features called as a tip calls them. */
export const namedFor = (facts: HoleFacts, { names }: HoleTip): HoleFacts =>
  Object.keys(names).length === 0
    ? facts
    : { ...facts, things: facts.things.map((thing) => ({ ...thing, name: names[thing.id] ?? thing.name })) };

/** Where a character of a tip stands in its file. */
export function placeInTip({ markdown, place }: Tip, offset: number): Place {
  const before = markdown.slice(0, offset);
  const line = before.split("\n").length - 1;
  const column = offset - (before.lastIndexOf("\n") + 1);
  return { file: place.file, line: place.line + line, column: (line === 0 ? place.column : 1) + column };
}

/** What a look at each tip of a hole finds. */
export const perTip =
  (look: (tip: HoleTip, hole: MeasuredHole, context: CheckContext) => readonly Finding[]) =>
  (hole: MeasuredHole, context: CheckContext): readonly Finding[] =>
    tipsOf(hole, context).flatMap((tip) => look(tip, hole, context));
