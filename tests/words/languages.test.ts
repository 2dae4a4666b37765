/** The guide's languages held against each other: nothing left in another language, each written as it is written. */
import { describe, expect, test } from "vitest";
import type { FeatureKind } from "../../src/course/types.ts";
import { words } from "../../src/site/language/words.ts";
import { LANGUAGES, leavesOf, type Leaf } from "../support/messages.ts";

const said = Object.fromEntries(LANGUAGES.map((language) => [language, leavesOf(language)]));
const english = said["en"]!;
const german = said["de"]!;

const KINDS = Object.keys({
  "line-of-play": true,
  "tee-marker": true,
  "teeing-ground": true,
  fairway: true,
  rough: true,
  green: true,
  bunker: true,
  "penalty-area-yellow": true,
  "penalty-area-red": true,
  water: true,
  "out-of-bounds": true,
  pin: true,
  path: true,
  road: true,
  stream: true,
  coastline: true,
  sand: true,
  scrub: true,
  heath: true,
  wood: true,
  tree: true,
  cliff: true,
  ridge: true,
  rock: true,
  grassland: true,
  wall: true,
  fence: true,
  hedge: true,
  building: true,
  "driving-range": true,
  landmark: true,
  course: true,
  other: true,
} satisfies Record<FeatureKind, true>);

/** Without what is filled in. */
const own = ({ message }: Leaf): string => message.text.replace(/\{\w+\}/g, "");

test("a region of a language finds it; a language the guide does not speak gets the first", () => {
  expect(words("de-AT").language).toBe("de");
  expect(words("en-IE").language).toBe("en");
  expect(words("tlh").language).toBe("en");
});

describe.each(LANGUAGES)("%s", (language) => {
  const leaves = said[language]!;

  test("says what it is given, whatever it is", () => {
    for (const { path, message, answers } of leaves) {
      for (const { said: given, text } of answers) {
        expect([path, text.trim() === "" || /undefined|NaN|\[object/.test(text)]).toEqual([path, false]);
        // A thousand may be written with a sign between its figures, and small numbers in words.
        for (const [name, value] of Object.entries(given)) {
          if (message.arguments.get(name)?.kind === "text" && name !== "id")
            expect([path, text]).toEqual([path, expect.stringContaining(String(value))]);
        }
      }
    }
  });

  test("names eight points of the compass, the four chief ones by different letters", () => {
    const {
      script: { compassPoints },
      compassLetters,
    } = words(language).ground.conditions;
    expect(new Set(Object.values(compassPoints)).size).toBe(8);
    expect(new Set(Object.values(compassLetters)).size).toBe(4);
    for (const [point, letter] of Object.entries(compassLetters))
      expect(compassPoints[point as "n"].charAt(0).toUpperCase()).toBe(letter);
  });

  test("knows every kind it names a feature without a name by", () => {
    const kinds = leaves.find(({ path }) => path === "tell.unnamed")!.message.arguments.get("kind")!;
    const known = KINDS.map((kind) => kind.replaceAll("-", "_"));
    expect(kinds.kind === "choice" && [...kinds.cases].filter((one) => !known.includes(one))).toEqual([]);
  });

  test("lists with a word before the last, and no comma before it", () => {
    expect(words(language).list(["A", "B", "C"])).toMatch(/^A, B \p{L}+ C$/u);
    expect(words(language).list(["A"])).toBe("A");
  });
});

/** Golf's own words and symbols, the same in all languages. */
const SHARED =
  /^(N|S|W|In|L|Out|R|Par|Par \{par\}|Bunker|Carry|Drive|Driver|Fairway|Hybrid|Score|Slope Rating|Course Rating|Bogey Rating|Name|Website|Yards|mph|m\/s|°|°C|yd|m|ft|Mast|1:\{denominator\}|\{times\}×|[Dd]rive \{length\}|\{percent\}\s%|\{wind\}, \{temperature\}\s°C\.|Carry, \{unit\}|Pitching wedge|\{number\} \{count, plural, one \{yard\} other \{yards\}\}|\{number\}\skm)$/;

test("words of golf and symbols apart, no language has another's phrases", () => {
  for (const [language, leaves] of Object.entries(said)) {
    for (const [other, theirs] of Object.entries(said)) {
      if (other === language) continue;
      const same = leaves.filter(
        (leaf, i) =>
          leaf.message.text === theirs[i]!.message.text &&
          /\p{L}{4}.*\s.*\p{L}{4}/u.test(own(leaf)) &&
          !SHARED.test(leaf.message.text),
      );
      expect([language, other, same.map(({ path, message }) => `${path}: ${message.text}`)]).toEqual([
        language,
        other,
        [],
      ]);
    }
  }
});

describe("French", () => {
  test("sets no-break spaces where French has them, and quotes and apostrophes of its own", () => {
    for (const {
      path,
      message: { text },
    } of said["fr"]!) {
      // Between braces stands the format, not the language.
      const written = text.replace(/\{\w+, (?:plural|select|selectordinal|date),?/g, "");
      expect([path, written.match(/[^\u00a0:](?:[:;!?»%](?=\s|$))|«(?!\u00a0)|["“”']/u)]).toEqual([path, null]);
      expect([path, written.match(/[\d}] (?:m|cm|km|%|°C|Pa|Mo|m\/s|yards)(?![\p{L}])/u)]).toEqual([path, null]);
      expect([
        path,
        written.replace(/4\.3a(?:\/1)?|(?:Règle|Règles de golf \()\s?\d+\.\d\w?/g, "").match(/\d\.\d/),
      ]).toEqual([path, null]);
    }
  });

  test("is singular for none and for one, and counts what comes again", () => {
    expect([0, 1, 9].map((count) => words("fr").cover.holesCount({ count }))).toEqual(["0 trou", "1 trou", "9 trous"]);
    expect([1, 2, 4].map((time) => words("fr").stretch({ name: "Ruisseau", time }))).toEqual([
      "Ruisseau, première fois",
      "Ruisseau, deuxième fois",
      "Ruisseau, 4e fois",
    ]);
  });
});

describe("German", () => {
  test("is not English, but for golf's own words", () => {
    const same = german
      .filter((leaf, i) => leaf.message.text === english[i]!.message.text && /\p{L}/u.test(own(leaf)))
      .map(({ path, message }) => ({ path, text: message.text }));
    expect(same.filter(({ text }) => !SHARED.test(text))).toEqual([]);
  });

  test("has no English left in it", () => {
    expect(
      german.filter(({ text }) =>
        / (?:the|of|and|to|from|with|is|are|not|by|for|your|this|at|on|it) |\b(?:hole|tee|green|trouble|gorse|burn)\b/i.test(
          text,
        ),
      ),
    ).toEqual([]);
  });

  test("quotes as German does, keeps units to their numbers and writes decimals with a comma", () => {
    for (const leaf of german) {
      const { path } = leaf;
      const { text } = leaf.message;
      expect([path, text.match(/["”]|''/)]).toEqual([path, null]);
      expect([path, text.split("„").length]).toEqual([path, text.split("“").length]);
      expect([path, text.match(/[\d}] (?:m|cm|km|yd|ft|%|°C|Pa|MB|m\/s|Yards)(?![\p{L}])/u)]).toEqual([path, null]);
      // A rule's number and a thousand have a point in German too.
      expect([path, text.replace(/Regel \d+\.\d\w?|4\.3a(?:\/1)?|101\.325/g, "").match(/\d\.\d/)]).toEqual([
        path,
        null,
      ]);
    }
  });

  test("keeps nouns their capitals where English has none", () => {
    expect([words("de").kindsInSentence.scrub, words("en").kindsInSentence.scrub]).toEqual(["Ginster", "gorse"]);
  });

  test("is singular for one, and counts what comes again", () => {
    expect([1, 9].map((count) => words("de").cover.holesCount({ count }))).toEqual(["1 Loch", "9 Löcher"]);
    expect([1, 2, 4].map((time) => words("de").stretch({ name: "Bach", time }))).toEqual([
      "Bach, zum ersten Mal",
      "Bach, zum zweiten Mal",
      "Bach, zum 4. Mal",
    ]);
  });
});

test("English is singular for one, and counts what comes again", () => {
  expect([1, 9].map((count) => words("en").cover.holesCount({ count }))).toEqual(["1 hole", "9 holes"]);
  expect([1, 2, 4, 22].map((time) => words("en").stretch({ name: "Burn", time }))).toEqual([
    "Burn, first time",
    "Burn, second time",
    "Burn, 4th time",
    "Burn, 22nd time",
  ]);
});
