/** Arrows run one way: the table in DEVELOPERS.md is the rule. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dirname, join, normalize } from "node:path";
import { allowedImports, importsOf, readImports, violations } from "./imports.ts";

const notes = readFileSync("DEVELOPERS.md", "utf8");
const allowed = allowedImports(notes);
const imports = readImports("src");
const folders = readdirSync("src", { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
/** Folders without input or output, as the sentence below the table names them. */
const pure = /^Arrows run one way\. `([a-z ]+)`/m.exec(notes)?.[1]?.split(" ") ?? [];

describe("the import table", () => {
  test("has a row for every folder, and knows no other", () => {
    expect([...allowed.keys()].sort()).toEqual([...folders].sort());
    for (const { values, types, scripts } of allowed.values())
      for (const name of [...values, ...types, ...scripts]) expect(folders).toContain(name);
    expect(pure.length).toBeGreaterThan(5);
    for (const name of pure) expect(folders).toContain(name);
  });

  test("has no way round in a circle", () => {
    const reached = new Map<string, ReadonlySet<string>>();
    const reach = (folder: string, trail: readonly string[]): ReadonlySet<string> => {
      expect(trail, [...trail, folder].join(" -> ")).not.toContain(folder);
      const known = reached.get(folder);
      if (known) return known;
      const all = new Set(
        [...allowed.get(folder)!.values].flatMap((next) => [next, ...reach(next, [...trail, folder])]),
      );
      reached.set(folder, all);
      return all;
    };
    for (const folder of folders) reach(folder, []);
  });

  test("is kept by every file", () => {
    expect(imports.length).toBeGreaterThan(1000);
    expect(violations(imports, allowed)).toEqual([]);
  });
});

test("pure folders ask nothing of Node", () => {
  const asked = imports.filter(
    ({ from, what }) =>
      pure.includes(from.split("/")[1]!) && (what.startsWith("node:") || what === "sharp" || what.startsWith("astro")),
  );
  expect(asked.map(({ from, line, what }) => `${from}:${line} ${what}`)).toEqual([]);
});

test("no file leads back to itself by its imports", () => {
  const to = new Map<string, string[]>();
  for (const { from, what, typesOnly } of imports) {
    if (typesOnly || !what.startsWith(".")) continue;
    to.set(from, [...(to.get(from) ?? []), normalize(join(dirname(from), what))]);
  }
  const done = new Set<string>();
  const circles: string[] = [];
  const walk = (file: string, trail: readonly string[]): void => {
    if (trail.includes(file)) circles.push([...trail.slice(trail.indexOf(file)), file].join(" -> "));
    if (done.has(file) || trail.includes(file)) return;
    for (const next of to.get(file) ?? []) walk(next, [...trail, file]);
    done.add(file);
  };
  for (const file of to.keys()) walk(file, []);
  expect(circles).toEqual([]);
});

describe("a violation is found", () => {
  const table = allowedImports(
    "| `geo/` | numbers | nothing of ours |\n| `measure/` | figures | geo; types of draw |\n| `draw/`, `tell/` | pictures | measure, geo; scripts of read |\n",
  );
  const found = (file: string, text: string) => violations(importsOf(file, text), table);

  test.each([
    ["src/geo/line.ts", 'import { figure } from "../measure/hole.ts";'],
    ["src/geo/line.ts", 'export { figure } from "../measure/hole.ts";'],
    ["src/measure/deep/hole.ts", 'import { svg, type Plate } from "../../draw/plate.ts";'],
    ["src/geo/line.ts", 'const late = await import("../draw/plate.ts");'],
    ["src/draw/plate.ts", 'import type { Tip } from "../tell/tip.ts";'],
    ["src/geo/line.ts", 'type Late = import("../draw/plate.ts").Plate;'],
    [
      "src/tell/Tip.astro",
      '---\nimport { a } from "../geo/line.ts";\n---\n<p>a</p>\n<script>\n  import "../check/content.ts";\n</script>',
    ],
    ["src/tell/Tip.astro", '<script>\n  import { content } from "../read/content.ts";\n</script>'],
  ])("in %s: %s", (file, text) => {
    expect(found(file, text)).toHaveLength(1);
    expect(found(file, text)[0]).toMatch(/^src\/.*:\d+: [a-z]+\/ may not import [a-z]+\//);
  });

  test.each([
    ["src/measure/hole.ts", 'import type { Plate } from "../draw/plate.ts";'],
    ["src/measure/hole.ts", 'import { type Plate } from "../draw/plate.ts";'],
    ["src/measure/hole.ts", 'import { line } from "../geo/line.ts";\nimport sharp from "sharp";'],
    ["src/tell/Tip.astro", '<script>\n  import "../read/content.ts";\n</script>'],
    [
      "src/tell/tip.ts",
      '// import { a } from "../read/content.ts"\nconst text = `import { a } from "../read/content.ts"`;',
    ],
  ])("and only that: %s: %s", (file, text) => expect(found(file, text)).toEqual([]));
});
