import { wordsOfTip } from "../tip-words.ts";
import { at, perHole } from "../rule.ts";
import { perTip } from "../tips.ts";

/** What is read on a tee. Common practice, no source. */
export const TIP_WORDS = [60, 140] as const;

export const tipLength = perHole({
  name: "tip-length",
  severity: "note",
  about: "A tip has fewer than 60 or more than 140 words.",
  look: perTip(({ tip }) => {
    const { words } = wordsOfTip(tip.markdown);
    // An empty tip is the reader's business.
    if (words.length === 0 || (words.length >= TIP_WORDS[0] && words.length <= TIP_WORDS[1])) return [];
    const short = words.length < TIP_WORDS[0];
    return [
      at(
        tip.place,
        `The tip has ${words.length} words; ${TIP_WORDS[0]} to ${TIP_WORDS[1]} are read on a tee. ${short ? "Say where to aim, what to avoid and what the green does." : "Shorten it."}`,
      ),
    ];
  }),
});
