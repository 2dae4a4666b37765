import { readingEase, wordsOfTip } from "../tip-words.ts";
import { at, perHole } from "../rule.ts";
import { perTip } from "../tips.ts";

/** Plain English is 60 and more (Flesch's own table; from memory); a tip may be a little harder. */
export const LEAST_EASE = 50;
/** Fewer words say nothing of how a text reads. */
const LEAST_WORDS = 40;

export const tipReading = perHole({
  name: "tip-reading",
  severity: "note",
  about: "An English tip is hard to read: Flesch reading ease below 50.",
  look: perTip(({ tip, language }) => {
    if (!/^en\b/i.test(language)) return [];
    const read = wordsOfTip(tip.markdown);
    const ease = readingEase(read);
    if (read.words.length < LEAST_WORDS || ease >= LEAST_EASE) return [];
    return [
      at(
        tip.place,
        `The tip is hard to read: reading ease ${Math.round(ease)}, with ${Math.round(read.words.length / read.sentences)} words a sentence. Use shorter sentences and shorter words.`,
      ),
    ];
  }),
});
