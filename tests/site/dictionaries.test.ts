/** Dictionaries held against each other: nothing missing, nothing left in another language. */
import { describe, expect, test } from "vitest";
import { LANGUAGES, words } from "../../src/site/words.ts";
import { leavesOf } from "../support/dictionary.ts";

const english = leavesOf(words("en"));
const german = leavesOf(words("de"));
const placeholders = (text: string): string[] => [...text.matchAll(/\{[a-zA-Z]*\}/g)].map(([one]) => one).sort();

test("English and German are there, and a region of Germany's language finds it", () => {
  expect(LANGUAGES).toEqual(expect.arrayContaining(["en", "de"]));
  expect(words("de-AT").language).toBe("de");
});

describe.each(LANGUAGES)("the dictionary %s", (language) => {
  const leaves = leavesOf(words(language));

  test("leaves nothing out", () => {
    expect(leaves.length).toBeGreaterThan(500);
    expect(leaves.filter(({ text }) => text.trim() === "" || /undefined|NaN|\[object/.test(text))).toEqual([]);
  });

  test("says what it is given", () => {
    expect(leaves.filter(({ holds }) => holds.length > 0).length).toBeGreaterThan(80);
    // English puts a player's or a chapter's name in lower case.
    expect(leaves.filter(({ text, holds }) => !holds.every((sample) => text.toLowerCase().includes(sample.toLowerCase())))).toEqual([]);
  });

  // The dial of the wind takes its letters from them.
  test("names eight points of the compass, the four chief ones by different letters", () => {
    const { compassPoints } = words(language).ground.conditions.script;
    expect(compassPoints).toHaveLength(8);
    expect(new Set([0, 2, 4, 6].map((point) => compassPoints[point]!.charAt(0))).size).toBe(4);
  });

  test("has the keys of English, and the same places to fill in", () => {
    expect(leaves.map(({ path }) => path)).toEqual(english.map(({ path }) => path));
    for (const [i, { path, text }] of leaves.entries()) expect([path, placeholders(text)]).toEqual([path, placeholders(english[i]!.text)]);
  });
});

/** Golf's own words and symbols, the same in both languages. */
const SHARED = /^(N|In|L|Out|R|Par|Par Alpha|Bunker|Carry|Drive|Driver|Fairway|Hybrid|Score|Slope Rating|Course Rating|Bogey Rating|Name|Website|Yards|mph|m\/s|°|°C|yd|m|ft|Mast|1:Alpha|Alpha×|Drive Alpha|drive Alpha|Alpha\s%|\{wind\}, \{temperature\}\s°C\.|Carry, \{unit\}|\{number\}\skm)$/;

describe("German", () => {
  test("is not English, but for golf's own words", () => {
    // A pattern that only orders what is filled in has no words.
    const worded = (text: string): boolean => /\p{L}/u.test(text.replace(/\{[a-zA-Z]*\}/g, ""));
    const same = german.filter(({ text }, i) => text === english[i]!.text && worded(text)).map(({ path, text }) => ({ path, text }));
    expect(same.filter(({ text }) => !SHARED.test(text))).toEqual([]);
  });

  test("has no English left in it", () => {
    const left = german.filter(({ text }) => / (?:the|of|and|to|from|with|is|are|not|by|for|your|this|at|on|it) |\b(?:hole|tee|green|trouble|gorse|burn)\b/i.test(text.replace(/\{[a-zA-Z]*\}/g, "")));
    expect(left).toEqual([]);
  });

  test("quotes as German does, keeps units to their numbers and writes decimals with a comma", () => {
    for (const { path, text } of german) {
      expect([path, text.match(/["”]|''/)]).toEqual([path, null]);
      expect([path, text.split("„").length]).toEqual([path, text.split("“").length]);
      expect([path, text.match(/[\d}] (?:m|cm|km|yd|ft|%|°C|Pa|MB|m\/s|Yards)(?![\p{L}])/u)]).toEqual([path, null]);
      // A rule's number and a thousand have a point in German too.
      expect([path, text.replace(/Regel \d+\.\d\w?|4\.3a(?:\/1)?|101\.325/g, "").match(/\d\.\d/)]).toEqual([path, null]);
    }
  });

  test("keeps nouns their capitals where English has none", () => {
    expect(words("de").inSentence("Ginster")).toBe("Ginster");
    expect(words("en").inSentence("Gorse")).toBe("gorse");
    expect(words("de").list(["Scratch Herren", "Bogey Herren"])).toBe("Scratch Herren und Bogey Herren");
  });
});
