import { tipIsPlaceholder } from "../../course/draft.ts";
import { at, perHole } from "../rule.ts";

/** A hole tells where to aim when its `aim` does, or its tip names something with `:aim[...]`. */
export const aimUnsaid = perHole({
  name: "aim-unsaid",
  severity: "note",
  about: "A hole that does not say where to aim from the tee.",
  look: ({ hole }) =>
    // A page that is still as it was begun says nothing of how to play.
    tipIsPlaceholder(hole) || hole.aim !== undefined || /:aim\[/.test(hole.tip.markdown)
      ? []
      : [
          at(
            hole.place,
            'The hole does not say where to aim from the tee. Write it in a few words without figures, such as aim: "Left half of the fairway", ' +
              "or name what to aim at in the tip with :aim[its id].",
          ),
        ],
});
