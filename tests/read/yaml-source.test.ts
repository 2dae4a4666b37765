/** The shortcut for coordinates against the YAML parser's own reading. */
import { describe, expect, test } from "vitest";
import { liftNumbers, offsetInNumbers } from "../../src/read/lift-numbers.ts";
import { SourceText } from "../../src/read/source-text.ts";
import { parseYaml, type YamlResult } from "../../src/read/yaml-source.ts";
import { holePage } from "../fixtures/club.ts";

const frontMatter = (page: string): string => page.split("---\n")[1]!;

/** Every path into a value, its own first. */
function* pathsOf(value: unknown, path: (string | number)[] = []): Generator<(string | number)[]> {
  yield path;
  if (Array.isArray(value)) for (const [i, entry] of value.entries()) yield* pathsOf(entry, [...path, i]);
  else if (value !== null && typeof value === "object")
    for (const [key, entry] of Object.entries(value)) yield* pathsOf(entry, [...path, key]);
}

const parse = (text: string, whole: boolean): YamlResult =>
  parseYaml(new SourceText("x.md", text), 0, text.length, whole);

function expectSame(text: string): void {
  const quick = parse(text, false);
  const whole = parse(text, true);
  if (!whole.ok || !quick.ok) {
    expect(quick).toEqual(whole);
    return;
  }
  expect(quick.yaml.value).toEqual(whole.yaml.value);
  for (const path of pathsOf(whole.yaml.value)) {
    for (const at of ["key", "value"] as const) {
      expect({ path, at, place: quick.yaml.placeOf(path, at) }).toEqual({
        path,
        at,
        place: whole.yaml.placeOf(path, at),
      });
    }
  }
}

const feature = (coordinates: string): string =>
  `features:\n  - { id: a, geometry: { type: LineString, coordinates: ${coordinates} } }\n  - id: b\n`;

describe("the shortcut reads what the parser reads", () => {
  test.each<[string, string]>([
    ["a hole page", frontMatter(holePage(1, 40))],
    ["a par 3", frontMatter(holePage(3))],
    ["spaces about numbers", feature("[ [ -9.01 ,56.5 ] , [-9 , 56.5,  12.25 ] ]")],
    ["exponents and zeros", feature("[[-9e0, 5.65E+1], [0, -0], [1e-7, 0.10]]")],
    ["numbers JSON does not take", feature("[[+9, .5], [012, 5.], [0x1F, 0o17]]")],
    ["not numbers", feature("[[.nan, .inf], [-.inf, null], [true, 1_000]]")],
    ["trailing commas", feature("[[-9, 56.5,], [-9, 56.6],]")],
    ["empty lists", feature("[[], [[]]]")],
    ["one empty list", feature("[]")],
    ["a comment within", feature("[[-9, 56.5], # tee\n      [-9, 56.6]]")],
    ["many lines", feature("[\n      [-9, 56.5],\n\n      [-9,\n       56.6]\n    ]")],
    ["Windows line ends", feature("[\r\n      [-9, 56.5],\r\n      [-9, 56.6]\r\n    ]")],
    ["lines indented too little", feature("[\n[-9, 56.5],\n [-9, 56.6]]")],
    ["a closing bracket indented too little", feature("[\n      [-9, 56.5]\n]")],
    ["a tab", feature("[[-9,\t56.5]]")],
    ["quoted keys", `{ "coordinates": [[1, 2]], 'coordinates ': [3] }`],
    ["block style", "geometry:\n  type: LineString\n  coordinates:\n    - [-9, 56.5]\n    - - -9\n      - 56.6\n"],
    ["block key, flow value", "geometry:\n  coordinates: [[1, 2],\n    [3, 4]]\n  type: LineString\n"],
    ["an anchor and its alias", "a: { coordinates: &c [[1, 2]] }\nb: { coordinates: *c }\n"],
    ["in a text", 'name: "coordinates: [1, 2]"\nother: >\n  coordinates: [3, 4]\n'],
    ["in a comment", "a: 1 # coordinates: [1, 2]\nb: { coordinates: [3, 4] }\n"],
    ["in a text beside real ones", "description: |\n  Write coordinates: [1, 2] here.\nb: { coordinates: [3, 4] }\n"],
    ["part of another name", "xcoordinates: [1]\nmy-coordinates: [2]\n"],
    ["twice in one group", "{ coordinates: [1], coordinates: [2] }"],
    ["a bracket that is never closed", feature("[[-9, 56.5]")],
    ["a bracket too many", feature("[[-9, 56.5]]]")],
    ["a missing comma", feature("[[-9 56.5]]")],
    ["numbers as a key", "{ coordinates: [1, 2]: 3 }"],
  ])("%s", (_, text) => {
    expectSame(text);
  });

  test("is taken for an ordinary page: it lifts every array", () => {
    const text = frontMatter(holePage(1, 40));
    const { lifted, text: skeleton } = liftNumbers(text);
    expect(lifted.size).toBe(7);
    expect(skeleton).toHaveLength(text.length);
    expect(skeleton.split("\n")).toHaveLength(text.split("\n").length);
    expect(skeleton).not.toMatch(/coordinates: \[[^\]]*\d/);
  });
});

describe("places in an array of numbers", () => {
  const text = "x: [[ -9, 56.5 ],[-8,\n 57]]";
  const start = text.indexOf("[");
  test.each<[(string | number)[], string]>([
    [[], "[[ -9"],
    [[0], "[ -9"],
    [[0, 0], "-9"],
    [[0, 1], "56.5"],
    [[1], "[-8"],
    [[1, 0], "-8"],
    [[1, 1], "57"],
    [[1, 1, 3], "57"],
    [[7], "[[ -9"],
  ])("%j", (path, begins) => {
    expect(text.slice(offsetInNumbers(text, start, path))).toMatch(new RegExp(`^${begins.replaceAll("[", "\\[")}`));
  });
});
