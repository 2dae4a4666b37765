/** Expressions made of whole words and of parts that have names. */

/** Parts that carry a particular of a claim (see ClaimPattern): each use gets a group of its own. */
const CAPTURED: ReadonlySet<string> = new Set([
  "no",
  "not",
  "lat",
  "dep",
  "clat",
  "cdep",
  "both",
  "way",
  "num",
  "name",
  "strong",
  "compass",
  "unit",
]);

/** What a word is made of, in any language there is a lexicon for. */
const LETTER = "a-zß-öø-ÿ0-9_";

/**
 * Builds an expression of whole words: `{name}` puts in a part, and a capturing part gets a
 * group of its own each time.
 *
 * @throws Error when no part has that name
 */
export function phrase(text: string, parts: Readonly<Record<string, string>>): RegExp {
  let count = 0;
  const fill = (source: string): string =>
    source.replace(/\{([a-z-]+)\}/gi, (_, name: string) => {
      const part = parts[name];
      if (part === undefined) throw new Error(`No part of speech is called ${name}.`);
      const inner = fill(part);
      return CAPTURED.has(name) ? `(?<${name}_${++count}>${inner})` : `(?:${inner})`;
    });
  return new RegExp(`(?<![${LETTER}])(?:${fill(text)})(?![${LETTER}-])`, "g");
}
