/** Edits to YAML: what is asked for changes, and not a byte besides. */
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { editYaml, flow, type Edit } from "../../src/bring/pages/yaml-edit.ts";

const PAGE = `# The seventh
hole: 7          # signature hole
name:   "Skerry"
card: { white: 188,   red: 141 }   # measured 2024
features:
  type: FeatureCollection
  features:
    # the line
    - { type: Feature, id: line, properties: { golf: hole }, geometry: { type: LineString, coordinates: [[1, 2], [3, 4]] } }  # keep
    - type: Feature
      id: pond   # ours
      properties:
        golf: lateral_water_hazard
        name: Pond
      geometry:
        type: Polygon
        coordinates:
          - - [1, 2]
            - [3, 4]
            - [5, 6]
            - [1, 2]
    # last word
`;

const LIST = ["features", "features"] as const;
const edit = (...edits: Edit[]): string => editYaml("x.md", PAGE, edits);

/** The lines that differ. */
function changed(after: string): string[] {
  const [a, b] = [PAGE.split("\n"), after.split("\n")];
  return [
    ...a.filter((line) => !b.includes(line)).map((line) => `-${line}`),
    ...b.filter((line) => !a.includes(line)).map((line) => `+${line}`),
  ];
}

describe("editing in place", () => {
  it("replaces a value and leaves comment, spacing and quotes", () => {
    expect(changed(edit({ op: "replace", path: ["card", "white"], value: 190 }))).toEqual([
      "-card: { white: 188,   red: 141 }   # measured 2024",
      "+card: { white: 190,   red: 141 }   # measured 2024",
    ]);
  });

  it("replaces coordinates on one line, and those spread over several", () => {
    expect(
      changed(
        edit({
          op: "replace",
          path: [...LIST, 0, "geometry", "coordinates"],
          value: [
            [1.5, 2],
            [3, 4],
          ],
        }),
      )[1],
    ).toContain("coordinates: [[1.5,2],[3,4]] } }  # keep");
    const spread = edit({
      op: "replace",
      path: [...LIST, 1, "geometry", "coordinates"],
      value: [
        [
          [9, 9],
          [8, 8],
          [7, 7],
          [9, 9],
        ],
      ],
    });
    expect(spread).toContain("        coordinates:\n          [[[9,9],[8,8],[7,7],[9,9]]]\n    # last word\n");
  });

  it("adds fields to groups of either style", () => {
    expect(edit({ op: "add", path: ["card"], key: "yellow", value: 170 })).toContain(
      "card: { white: 188,   red: 141, yellow: 170 }   # measured 2024",
    );
    expect(edit({ op: "add", path: [...LIST, 1, "properties"], key: "width", value: 3.5 })).toContain(
      "        name: Pond\n        width: 3.5\n      geometry:",
    );
    expect(edit({ op: "add", path: [...LIST, 0, "properties"], key: "par:red", value: "4" })).toContain(
      'properties: { golf: hole, "par:red": "4" }',
    );
    expect(edit({ op: "add", path: [], key: "par", value: 3 })).toMatch(/\npar: 3\n/);
  });

  it("removes fields from groups of either style", () => {
    expect(edit({ op: "remove", path: ["card"], key: "white" })).toContain("card: { red: 141 }   # measured 2024");
    expect(edit({ op: "remove", path: ["card"], key: "red" })).toContain("card: { white: 188 }   # measured 2024");
    expect(edit({ op: "remove", path: [...LIST, 1, "properties"], key: "name" })).toContain(
      "golf: lateral_water_hazard\n      geometry:",
    );
  });

  it("adds to the end of a list, in order, with the list's own indent", () => {
    const after = edit(
      { op: "append", path: LIST, value: { type: "Feature", id: "a" } },
      { op: "append", path: LIST, value: { type: "Feature", id: "b" } },
    );
    expect(after).toContain(
      "            - [1, 2]\n    - { type: Feature, id: a }\n    - { type: Feature, id: b }\n    # last word\n",
    );
  });

  it("adds to lists within brackets", () => {
    expect(editYaml("x", "a: [1, 2]\n", [{ op: "append", path: ["a"], value: 3 }])).toBe("a: [1, 2, 3]\n");
    expect(editYaml("x", "a: []\n", [{ op: "append", path: ["a"], value: { b: 1 } }])).toBe("a: [{ b: 1 }]\n");
    expect(editYaml("x", "a: {}\n", [{ op: "add", path: ["a"], key: "b", value: 1 }])).toBe("a: { b: 1 }\n");
  });

  it("takes entries out of a list with their lines, and no comment of another", () => {
    const after = edit({ op: "drop", path: LIST, index: 0 });
    expect(changed(after)).toHaveLength(1);
    expect(after).toContain("    # the line\n    - type: Feature\n      id: pond");
    expect(edit({ op: "drop", path: LIST, index: 1 })).toContain("# keep\n    # last word\n");
    expect(
      editYaml("x", "a:\n  - 1\n  - 2\n", [
        { op: "drop", path: ["a"], index: 0 },
        { op: "drop", path: ["a"], index: 1 },
      ]),
    ).toBe("a:\n  []\n");
  });

  it("puts others in the place of all there were", () => {
    const after = edit(
      { op: "drop", path: LIST, index: 0 },
      { op: "drop", path: LIST, index: 1 },
      { op: "append", path: LIST, value: { id: "a" } },
      { op: "append", path: LIST, value: { id: "b" } },
    );
    expect((parse(after) as { features: { features: unknown } }).features.features).toEqual([
      { id: "a" },
      { id: "b" },
    ]);
    expect(after).toContain("    # the line\n    - { id: a }\n    - { id: b }\n    # last word\n");
  });

  it.each([[0], [1], [2], [0, 1], [1, 2], [0, 2], [0, 1, 2]])(
    "takes %j out of lists of either style and adds behind, edits beside it included",
    (...drop) => {
      for (const text of [
        "a: [{ k: 1 }, { k: 2 }, { k: 3 }]\nb: 1\n",
        "a:\n  - { k: 1 }\n  - k: 2\n  - { k: 3 }\nb: 1\n",
      ]) {
        const edits: Edit[] = [
          ...drop.map((index): Edit => ({ op: "drop", path: ["a"], index })),
          { op: "append", path: ["a"], value: { k: 4 } },
          { op: "replace", path: ["b"], value: 2 },
        ];
        const stays = [0, 1, 2].find((i) => !drop.includes(i));
        if (stays !== undefined) edits.push({ op: "replace", path: ["a", stays, "k"], value: 9 });
        const rest = [1, 2, 3].flatMap((k, i) => (drop.includes(i) ? [] : [{ k: i === stays ? 9 : k }]));
        expect(parse(editYaml("x", text, edits))).toEqual({ a: [...rest, { k: 4 }], b: 2 });
      }
    },
  );

  it("writes JSON where the text is JSON", () => {
    const text = JSON.stringify(
      {
        type: "FeatureCollection",
        features: [
          { id: "a", properties: { golf: "tee" } },
          { id: "b", properties: {} },
        ],
      },
      null,
      2,
    );
    const path = ["features"];
    const edits: Edit[] = [
      { op: "add", path: ["features", 1, "properties"], key: "par:red", value: "no" },
      { op: "replace", path: ["features", 1, "id"], value: "it's" },
      { op: "append", path, value: { id: "c" } },
    ];
    expect(JSON.parse(editYaml("x", text, edits, "json"))).toEqual({
      type: "FeatureCollection",
      features: [
        { id: "a", properties: { golf: "tee" } },
        { id: "it's", properties: { "par:red": "no" } },
        { id: "c" },
      ],
    });
    for (const one of [text, JSON.stringify(JSON.parse(text))]) {
      expect(
        JSON.parse(
          editYaml(
            "x",
            one,
            [
              { op: "drop", path, index: 0 },
              { op: "append", path, value: { id: "c" } },
            ],
            "json",
          ),
        ),
      ).toEqual({ type: "FeatureCollection", features: [{ id: "b", properties: {} }, { id: "c" }] });
      expect(
        JSON.parse(
          editYaml(
            "x",
            one,
            [
              { op: "drop", path, index: 0 },
              { op: "drop", path, index: 1 },
            ],
            "json",
          ),
        ),
      ).toEqual({ type: "FeatureCollection", features: [] });
    }
  });

  it("makes many edits at once as one by one", () => {
    const edits: Edit[] = [
      { op: "replace", path: ["hole"], value: 8 },
      { op: "replace", path: [...LIST, 0, "id"], value: "the-line" },
      { op: "add", path: [...LIST, 1, "properties"], key: "width", value: 2 },
      { op: "append", path: LIST, value: { id: "new" } },
      { op: "remove", path: ["card"], key: "red" },
    ];
    const together = editYaml("x.md", PAGE, edits);
    const oneByOne = edits.reduce((text, one) => editYaml("x.md", text, [one]), PAGE);
    expect(together).toBe(oneByOne);
    for (const comment of PAGE.match(/#.*/g)!) expect(together).toContain(comment);
  });

  it("keeps Windows line ends", () => {
    const after = editYaml("x", "a: 1\r\nb:\r\n  - 1\r\n", [
      { op: "append", path: ["b"], value: 2 },
      { op: "add", path: [], key: "c", value: 3 },
    ]);
    expect(after).toBe("a: 1\r\nb:\r\n  - 1\r\n  - 2\r\nc: 3\r\n");
  });

  it("refuses rather than break what aliases share", () => {
    const text = "a: &x { p: 1 }\nb: *x\n";
    expect(() => editYaml("x.md", text, [{ op: "replace", path: ["a"], value: { p: 2 } }])).toThrow(
      "x.md: is written in a way that bring cannot edit without rewriting it",
    );
  });
});

describe("values on one line", () => {
  it.each([
    "plain",
    "two words",
    "yes",
    "true",
    "null",
    "1",
    "1e3",
    "",
    " padded ",
    "a: b",
    "a #b",
    "- a",
    "Hell's",
    'say "so"',
    "ünï",
    "tab\there",
    "{",
    "line\nbreak",
    "~",
    "0x1F",
    "2026-05-14",
    "O'Neil's (old)",
  ])("reads back as it was: %j", (text) => {
    expect(parse(`a: ${flow(text)}`)).toEqual({ a: text });
    expect(parse(`[${flow(text)}, { k: ${flow(text)} }]`)).toEqual([text, { k: text }]);
  });

  it("writes groups, lists and numbers", () => {
    expect(flow({ type: "Feature", properties: { golf: "tee", "dist:red": 3 }, coordinates: [[1, 2]] })).toBe(
      '{ type: Feature, properties: { golf: tee, "dist:red": 3 }, coordinates: [[1,2]] }',
    );
  });
});
