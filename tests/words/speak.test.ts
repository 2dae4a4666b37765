/** Messages as a page and a browser say them: held against the whole formatter of ICU MessageFormat. */
import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, test } from "vitest";
import { dayOf } from "../../src/words/day.ts";
import { readMessage } from "../../src/words/message.ts";
import { speak } from "../../src/words/speak.ts";
import { catalogues, LANGUAGES, leavesOf, type Said } from "../support/messages.ts";

/** Days of a calendar, as every message has them. */
const FORMATS = { date: { long: { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" } } } as const;

describe.each(LANGUAGES)("each message of %s", (language) => {
  const { locale } = catalogues.find((one) => one.language === language)!;

  test("is said as the reference formatter says it, whatever it is asked with", () => {
    const leaves = leavesOf(language);
    expect(leaves.length).toBeGreaterThan(700);
    for (const { path, message, answers } of leaves) {
      const reference = new IntlMessageFormat(message.text, locale, FORMATS);
      for (const { said, text } of answers)
        expect([path, said, text]).toEqual([
          path,
          said,
          String(reference.format(said as Record<string, string>)).replaceAll("\u202f", "\u00a0"),
        ]);
    }
  });
});

/** A catalogue of one message, spoken. */
const one = (text: string, locale = "en-GB"): ((said: Said) => string) =>
  speak<{ readonly said: (said: Said) => string }>({ said: readMessage(text, locale).compiled }, locale).said;

test("a message without arguments is its text", () => {
  expect(speak({ group: { hole: readMessage("Hole", "en").compiled } }, "en")).toEqual({ group: { hole: "Hole" } });
});

test("words written as JSON and spoken again say the same", () => {
  const group = {
    plain: "Hole",
    asked: readMessage("{count, plural, one {# hole} other {# holes}} of {name}", "en").compiled,
  };
  const words = speak<{ readonly plain: string; readonly asked: (said: Said) => string }>(group, "en");
  expect(JSON.parse(JSON.stringify(words))).toEqual(JSON.parse(JSON.stringify(group)));
  const again = speak<typeof words>(JSON.parse(JSON.stringify(words)), "en");
  for (const count of [1, 2])
    expect(again.asked({ count, name: "Tarvay" })).toBe(words.asked({ count, name: "Tarvay" }));
});

// Unicode CLDR 48, plural rules: Polish has one, few (2 to 4, but not 12 to 14) and many.
test("plurals follow the language's own rules", () => {
  const holes = one("{count, plural, one {# dołek} few {# dołki} many {# dołków} other {# dołka}}", "pl");
  expect([1, 2, 5, 12, 22].map((count) => holes({ count }))).toEqual([
    "1 dołek",
    "2 dołki",
    "5 dołków",
    "12 dołków",
    "22 dołki",
  ]);
});

test("a day is the day written, whatever the clock of the machine", () => {
  expect(one("{date, date, long}")({ date: dayOf("2026-05-01") })).toBe("1 May 2026");
  expect(one("{date, date, long}")({ date: dayOf("2026-12-31T23:59:59Z") })).toBe("31 December 2026");
  expect(one("{date, date, long}", "de-DE")({ date: dayOf("2026-03-07") })).toBe("7. März 2026");
});

test("what is given is printed as it is, braces and quotes too", () => {
  expect(one("{name}: plan")({ name: "{count} '{'" })).toBe("{count} '{': plan");
});

test("an argument that is not given is an error, not a hole in a sentence", () => {
  expect(() => one("From the {tee} tee")({})).toThrow(/tee/);
});
