import { LEXICON_LANGUAGES, lexiconFor } from "../claims/lexicons.ts";
import { at, coursePlace, type Rule } from "../rule.ts";
import { list } from "../say.ts";
import { tipsOf } from "../tips.ts";

export const tipLanguage: Rule = {
  name: "tip-language",
  severity: "note",
  about: "Tips in a language whose words the check does not know: what they claim is not held against the ground.",
  run: (context) => {
    const { measured } = context;
    const tips = measured.holes
      .flatMap((hole) => tipsOf(hole, context))
      .filter(({ tip, language }) => tip.markdown.trim() !== "" && lexiconFor(language) === undefined);
    return [...new Set(tips.map(({ language }) => language))].map((language) =>
      at(
        coursePlace(measured),
        `What tips in ${language} say is not held against the ground: its words are known in ${list(LEXICON_LANGUAGES)} only. Have somebody who speaks it compare the tips with the plates.`,
      ),
    );
  },
};
