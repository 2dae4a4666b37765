/**
 * The fonts that pages and paper carry hold every character the guide's words are written with, and
 * lettering is not wider than it is taken to be.
 */
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { textWidth } from "../../src/draw/text-width.ts";
import { advancesOf, charactersOf } from "../support/font-characters.ts";
import { LANGUAGES, leavesOf } from "../support/messages.ts";
import { PROJECT } from "../support/run.ts";

interface Face {
  readonly name: string;
  readonly covers: (code: number) => boolean;
  readonly characters: ReadonlySet<number>;
}

/**
 * The faces of a stylesheet with the range each is fetched for and what its file holds, by family, weight
 * and style.
 */
function facesOf(stylesheet: string): Map<string, Face[]> {
  const path = join(PROJECT, "src/styles", stylesheet);
  const faces = new Map<string, Face[]>();
  for (const [, rule] of readFileSync(path, "utf8").matchAll(/@font-face\s*\{([^}]*)\}/g)) {
    const value = (name: string): string => new RegExp(`${name}:\\s*([^;]+)`).exec(rule!)?.[1] ?? "";
    const file = /url\("([^"]+)"\)/.exec(rule!)?.[1];
    if (file === undefined) continue;
    const ranges = [...value("unicode-range").matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/g)].map(
      ([, from, to]) => [Number.parseInt(from!, 16), Number.parseInt(to ?? from!, 16)] as const,
    );
    const key = `${value("font-family")} ${value("font-weight")} ${value("font-style")}`;
    faces.set(key, [
      ...(faces.get(key) ?? []),
      {
        name: file,
        covers: (code) => ranges.some(([from, to]) => code >= from && code <= to),
        characters: charactersOf(join(dirname(path), file)),
      },
    ]);
  }
  return faces;
}

/** A key of another maker's keyboard, which every system with that key can draw. */
const ON_THE_KEYBOARD = "⌘";

const used = (language: string): Set<string> => {
  const characters = new Set(
    leavesOf(language)
      .map(({ text }) => text)
      .join(""),
  );
  for (const character of [...ON_THE_KEYBOARD, "\n"]) characters.delete(character);
  return characters;
};

test("a font's own file is read: Besley has an a and an ß, and nothing Greek", () => {
  const latin = charactersOf(join(PROJECT, "node_modules/@fontsource/besley/files/besley-latin-400-normal.woff2"));
  expect(["a", "ß", "ω"].map((character) => latin.has(character.codePointAt(0)!))).toEqual([true, true, false]);
});

describe.each(LANGUAGES)("every character of %s", (language) => {
  test.each(["fonts.css", "paper.css"])("is in each face of %s that is fetched for it", (stylesheet) => {
    const faces = facesOf(stylesheet);
    expect(faces.size).toBeGreaterThan(2);
    const characters = used(language);
    expect(characters.size).toBeGreaterThan(60);
    for (const [face, files] of faces) {
      const missing = [...characters].filter((character) => {
        const code = character.codePointAt(0)!;
        return !files.some((file) => file.covers(code) && file.characters.has(code));
      });
      expect([face, missing]).toEqual([face, []]);
    }
  });
});

describe.each([
  ["regular", "400"],
  ["heavy", "600"],
] as const)("%s lettering", (weight, number) => {
  const advance = advancesOf(
    join(PROJECT, `node_modules/@fontsource/besley/files/besley-latin-${number}-normal.woff`),
  );

  test("of German letters, dashes and quotes is taken to be no narrower than the font has it, and not much wider", () => {
    for (const character of "äöüÄÖÜß–—„“") {
      const [taken, real] = [textWidth(character, 1, weight), advance(character)!];
      // Widths are kept in hundredths of an em.
      expect([character, taken >= real - 0.011]).toEqual([character, true]);
      expect([character, taken <= real + 0.3]).toEqual([character, true]);
    }
  });

  test("gives a no-break space the width of a space", () => {
    expect(textWidth("12\u00a0m", 10, weight)).toBe(textWidth("12 m", 10, weight));
  });
});
