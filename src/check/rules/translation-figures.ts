import { figureDifference } from "../figures.ts";
import { at, perHole } from "../rule.ts";
import { list } from "../say.ts";
import { tipsOf } from "../tips.ts";

export const translationFigures = perHole({
  name: "translation-figures",
  severity: "warning",
  about: "A translated tip holds other figures than the tip it translates.",
  look: (hole, context) =>
    tipsOf(hole, context).flatMap(({ tip, translated }) => {
      // An empty translation is the reader's business.
      if (!translated || tip.markdown.trim() === "") return [];
      const { missing, extra } = figureDifference(hole.hole.tip.markdown, tip.markdown);
      if (missing.length === 0 && extra.length === 0) return [];
      const parts = [
        ...(missing.length > 0
          ? [`lacks ${list(missing)}, which ${missing.length === 1 ? "stands" : "stand"} in the original`]
          : []),
        ...(extra.length > 0 ? [`has ${list(extra)}, which the original does not have`] : []),
      ];
      return [
        at(
          tip.place,
          `The translated tip ${parts.join(", and ")}: one of the two says what the other does not. Use the same figures, with the same features and options, in both.`,
        ),
      ];
    }),
});
