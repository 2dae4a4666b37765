/** Content that is too much of something: one sentence with its place, before it costs anything. */
import { expect, test } from "vitest";
import { readContent } from "../../src/read/content.ts";
import { hole, linesOf, plant, withClub, type Edit } from "../fixtures/marked.ts";

const club = (text: string): Edit => ({ file: "club.yaml", from: "units: yards", to: `units: yards\n${text}` });
const tip = (text: string): Edit => ({ file: hole(1), from: "It is :carry", to: `${text}\n\nIt is :carry` });
const feature = (kind: string, type: string, coordinates: string): Edit => ({
  file: hole(1),
  from: "  type: FeatureCollection\n  features:\n",
  to: `  type: FeatureCollection\n  features:\n    - { type: Feature, id: huge, properties: { ${kind} }, geometry: { type: ${type}, coordinates: ${coordinates} } }\n`,
});

const circle = (n: number): string => {
  const points = Array.from(
    { length: n },
    (_, i) =>
      `[${(-9 + Math.cos((2 * Math.PI * i) / n) / 6000).toFixed(8)},${(56.5 + Math.sin((2 * Math.PI * i) / n) / 11_000).toFixed(8)}]`,
  );
  return `[[${[...points, points[0]].join()}]]`;
};

test.each<[string, Edit, RegExp]>([
  [
    "a bunker of 120,000 vertices",
    feature("golf: bunker", "Polygon", circle(120_000)),
    /^course-1\/holes\/01-hole\.md:\d+:\d+: huge has 120001 positions: expected at most 20000\. Simplify it/,
  ],
  [
    "a coast of 100,000 vertices",
    feature("natural: coastline", "LineString", circle(99_999).slice(1, -1)),
    /^course-1\/holes\/01-hole\.md:\d+:\d+: huge has 100000 positions: .* Simplify it/,
  ],
  [
    "fields nobody knows, 300,000 of them",
    club(Array.from({ length: 300_000 }, (_, i) => `k${i}:`).join("\n")),
    /^club\.yaml:1:1: This group has 30000\d fields: expected at most 1000\. Remove what does not belong here\.$/,
  ],
  [
    "brackets never closed",
    club(`x: ${"[".repeat(60_000)}`),
    /^club\.yaml:\d+:\d+: Groups or lists are nested too deeply to read\..* look for brackets that are not closed\.$/,
  ],
  [
    "brackets closed again",
    club(`x: ${"[".repeat(900_000)}${"]".repeat(900_000)}`),
    /^club\.yaml:\d+:\d+: Groups or lists are nested too deeply/,
  ],
  [
    "dashes in a row",
    club(`x:\n  ${"- ".repeat(100_000)}y`),
    /^club\.yaml:\d+:\d+: Groups or lists are nested too deeply/,
  ],
  [
    "anchors of anchors",
    club(
      ["x:", ...Array.from({ length: 900 }, (_, i) => `  a${i}: &a${i} ${i === 0 ? "x" : `*a${i - 1}`}`)].join("\n"),
    ),
    /^club\.yaml:\d+:\d+: There are more than 100 aliases .* Write the values out instead\.$/,
  ],
  [
    "an e-mail of 60,000 dots",
    club(`contact: { email: "a@${".".repeat(60_000)}" }`),
    /^club\.yaml:\d+:\d+: email is "a@\.+…": expected an e-mail address\./,
  ],
  [
    "a tip of 80,000 brackets",
    tip("[".repeat(80_000)),
    /^course-1\/holes\/01-hole\.md:\d+:\d+: The text has \d+ characters: expected at most 20000\. Shorten it\.$/,
  ],
  [
    "a tip of 8,000 figures",
    tip(":length ".repeat(8000)),
    /^course-1\/holes\/01-hole\.md:\d+:\d+: The text has \d+ characters: expected at most 20000\. Shorten it\.$/,
  ],
])("%s", async (_, edit, sentence) => {
  await withClub(async (folder) => {
    await plant(folder, [edit]);
    const { club: read, diagnostics } = await readContent(folder);
    const lines = linesOf(diagnostics.filter(({ severity }) => severity === "error"));
    expect(lines).toEqual([expect.stringMatching(sentence)]);
    expect(read).toBeUndefined();
  });
});
