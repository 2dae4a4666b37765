/** Lines are under 120 columns: code is wrapped by the formatter, and comments and styles by hand. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { longLines } from "./line-length.ts";
import { sourceFiles } from "./source-files.ts";

test.each(["src", "tests"])("no line of %s is wider than what a literal in it makes it", (folder) => {
  const files = sourceFiles(folder, [".ts", ".mjs", ".css", ".astro"]);
  expect(files.length).toBeGreaterThan(100);
  expect(files.flatMap((file) => longLines(file, readFileSync(file, "utf8")))).toEqual([]);
});

const word = "x".repeat(119);

test.each([
  ["a.ts", `// ${word}`],
  ["a.ts", `const ${word} = 1;`],
  ["a.ts", `const a = "short"; // ${word}`],
  ["a.css", `.${word} { color: red; }`],
  ["a.astro", `<p class="a">${word}</p>`],
])("%s: a wide line is found: %s", (file, line) => {
  expect(longLines(file, `\n${line}`)).toEqual([expect.stringMatching(new RegExp(`^${file}:2: `))]);
});

test.each([
  ["a.ts", `const a = "${word}";`],
  ["a.ts", `const a = \`\n${word} ${word}\n\`;`],
  ["a.ts", `const a = \`${word}\${b}${word}\`;`],
  ["a.ts", `const a = /${word}/;`],
  ["a.astro", `  : "${word}"`],
  ["a.css", `  src: url("${word}");`],
  ["a.css", `  unicode-range: ${"U+0000-00FF, ".repeat(12)}U+20AC;`],
])("%s: what cannot be broken may be wide: %s", (file, line) => {
  expect(longLines(file, line)).toEqual([]);
});
