/**
 * Features in a .geojson beside their page: the same hole, edited where they stand, and mistakes told in
 * their own file.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { prepareBring, writeBring } from "../../src/bring/run.ts";
import { readContent } from "../../src/read/content.ts";
import { oval, writeClub } from "../fixtures/club.ts";

let content: string;
const path = (name: string): string => join(content, "course-1/holes", name);
const page = (): string => readFileSync(path("01-hole.md"), "utf8");
beforeEach(async () => {
  content = mkdtempSync(join(tmpdir(), "marram-features-"));
  await writeClub(content, { holes: 3 });
});
afterEach(() => rmSync(content, { recursive: true, force: true }));

/** Takes the features of hole 1 into a file of their own. */
function moveOut(indent?: number): void {
  const [, yaml = "", tip = ""] = page().split("---\n");
  const front = parse(yaml) as { features: unknown };
  writeFileSync(path("01-hole.geojson"), JSON.stringify(front.features, null, indent));
  writeFileSync(
    path("01-hole.md"),
    `---\n${yaml.slice(0, yaml.indexOf("features:"))}features: 01-hole.geojson\n---\n${tip}`,
  );
}
const read = async () => {
  const { club, diagnostics } = await readContent(content);
  expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
  return club!.courses[0]!.holes[0]!.features.map(({ place: _, ...feature }) => feature);
};

describe.each([[undefined], [2]])("indented by %s", (indent) => {
  it("says the same hole", async () => {
    const before = await read();
    moveOut(indent);
    expect(await read()).toEqual(before);
  });

  it("is what bring edits and adds to, and the page keeps every byte", async () => {
    moveOut(indent);
    const before = page();
    const survey = join(content, "survey.geojson");
    const area = (golf: string, ring: readonly (readonly number[])[]) => ({
      type: "Feature",
      properties: { golf },
      geometry: { type: "Polygon", coordinates: [ring] },
    });
    writeFileSync(
      survey,
      JSON.stringify({
        type: "FeatureCollection",
        features: [area("green", oval(1, 331, 11, 14, 8)), area("bunker", oval(16, 250, 4, 3, 8))],
      }),
    );
    const request = {
      content,
      course: "course-1",
      files: [survey],
      crs: undefined,
      distUnit: undefined,
      lines: undefined,
    };
    await writeBring(content, "course-1", await prepareBring(request));
    expect(page()).toBe(before);
    const { features } = JSON.parse(readFileSync(path("01-hole.geojson"), "utf8")) as {
      features: { id: string; geometry: { coordinates: unknown } }[];
    };
    expect(features.map(({ id }) => id)).toContain("bunker-right-1");
    expect(features.find(({ id }) => id === "green")!.geometry.coordinates).toEqual([oval(1, 331, 11, 14, 8)]);
    expect((await read()).map(({ id }) => id)).toContain("bunker-right-1");
    expect((await prepareBring(request)).files).toEqual([]);
  });
});

it.each([
  [
    "features: 01-hole.geojson",
    (text: string) => text.replace('"golf": "green"', '"golf": "grean"'),
    /^course-1\/holes\/01-hole.geojson:\d+: .*grean/,
  ],
  [
    "features: 01-hole.geojson",
    (text: string) => text.slice(0, -3),
    /^course-1\/holes\/01-hole.geojson:\d+: This is not GeoJSON/,
  ],
  [
    "features: ../01-hole.geojson",
    (text: string) => text,
    /^course-1\/holes\/01-hole.md:\d+: features is "..\/01-hole.geojson": expected a FeatureCollection, or the name/,
  ],
  [
    "features: other.geojson",
    (text: string) => text,
    /^course-1\/holes\/01-hole.md:\d+: There is no file other.geojson beside this page/,
  ],
])("tells a mistake where it stands: %s", async (line, spoil, said) => {
  moveOut(2);
  writeFileSync(path("01-hole.md"), page().replace("features: 01-hole.geojson", line));
  writeFileSync(path("01-hole.geojson"), spoil(readFileSync(path("01-hole.geojson"), "utf8")));
  const { diagnostics } = await readContent(content);
  expect(diagnostics.map((one) => `${one.file}:${one.line}: ${one.message}`)).toEqual(
    expect.arrayContaining([expect.stringMatching(said)]),
  );
});
