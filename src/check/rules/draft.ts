import { draftOf } from "../../course/draft.ts";
import { at, perHole } from "../rule.ts";

/** `par, strokeIndex and card`. */
const listed = (names: readonly string[]): string => names.join(", ").replace(/, ([^,]*)$/, " and $1");

export const draft = perHole({
  name: "draft",
  severity: "warning",
  about: "Shapes, figures or a tip stand for the club's own, or were proposed and not confirmed: the pages say Draft.",
  look: ({ hole }) => {
    const own = draftOf(hole);
    if (own === undefined) return [];
    const ids = (features: readonly { readonly id: string }[]): string => listed(features.map(({ id }) => id));
    const parts = [
      ...(own.shapes.length > 0
        ? [
            own.shapes.some(({ kind }) => kind === "line-of-play")
              ? "all shapes are placeholders"
              : `placeholder shapes ${ids(own.shapes)}`,
          ]
        : []),
      ...(own.proposed.length > 0 ? [`proposed and not confirmed ${ids(own.proposed)}`] : []),
      ...(own.placeholderFields.length > 0 ? [`placeholder figures ${listed(own.placeholderFields)}`] : []),
      ...(own.proposedFields.length > 0 ? [`measured, not printed ${listed(own.proposedFields)}`] : []),
      ...(own.tip ? ["a tip that stands for the club's"] : []),
    ];
    return [
      at(
        hole.place,
        `Hole ${hole.number} is a draft: ${parts.join("; ")}. npm run check -- --to-do lists what to do, with the command or line for each.`,
      ),
    ];
  },
});
