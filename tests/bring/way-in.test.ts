/**
 * The way in, word for word: a club begins with `new`, then brings a tracing of eighteen
 * holes. It ends in a guide that is sound, or in a list that says what is missing.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newClub } from "../../src/bring/new/club.ts";
import { shortReport } from "../../src/bring/report/report.ts";
import { prepareBring, writeBring, writeFiles, type BringRequest, type Prepared } from "../../src/bring/run.ts";
import { confirmed } from "../../src/bring/confirm.ts";
import { readPages } from "../../src/bring/pages/pages.ts";
import { draftOf, PLACEHOLDER_DESCRIPTION } from "../../src/course/draft.ts";
import type { Course } from "../../src/course/types.ts";
import { loadChecked } from "../../src/site/load/checked.ts";
import { toDoOf } from "../../src/site/load/to-do.ts";
import { asGdal, asGeoJson, asGermanTable, asOsm, asTagged, demoCourse, traced } from "./tracings.ts";

let demo: Course;
let content: string;
beforeAll(async () => {
  demo = await demoCourse();
});
beforeEach(() => {
  content = mkdtempSync(join(tmpdir(), "marram-way-in-"));
  const line = demo.holes[0]!.features.find(({ kind }) => kind === "line-of-play")!.geometry;
  const [longitude, latitude] = line.type === "LineString" ? line.coordinates[0]! : [];
  const tees = demo.tees.map(({ id, name, colour }) => ({ id, name, colour }));
  // Looked up on a map, so some tens of metres off.
  for (const { path, text } of newClub({
    name: "Our Club",
    course: "Our Links",
    holes: 18,
    tees,
    units: "yards",
    at: [longitude! + 0.0004, latitude! - 0.0003],
  })) {
    mkdirSync(dirname(join(content, path)), { recursive: true });
    writeFileSync(join(content, path), text);
  }
});
afterEach(() => rmSync(content, { recursive: true, force: true }));

const bring = async (name: string, text: string, more: Partial<BringRequest> = {}): Promise<Prepared> => {
  const file = join(content, name);
  writeFileSync(file, text);
  const plan = await prepareBring({
    content,
    course: "our-links",
    files: [file],
    crs: undefined,
    distUnit: undefined,
    lines: undefined,
    ...more,
  });
  await writeBring(content, "our-links", plan);
  return plan;
};

const loaded = async () => {
  const { guide, diagnostics } = await loadChecked(content, "2026-11-28");
  expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
  return guide!.courses[0]!;
};

const par = (hole: number): number => demo.holes.find(({ number }) => number === hole)!.par.men;
const all = () => traced(demo);
const kinds = (course: Course, kind: string): number =>
  course.holes.flatMap(({ features }) => features).filter((feature) => feature.kind === kind).length;

/** Holes whose line is the demo's own for that number, par 3s by their ends. */
const rightLines = (course: Course): number =>
  course.holes.filter(({ number, features }) => {
    const own = (some: Course["holes"][number]["features"]) => {
      const geometry = some.find(({ kind }) => kind === "line-of-play")!.geometry;
      return geometry.type === "LineString"
        ? [geometry.coordinates[0]!, geometry.coordinates.at(-1)!]
            .map(([x, y]) => `${x!.toFixed(5)} ${y!.toFixed(5)}`)
            .join()
        : "";
    };
    return own(features) === own(demo.holes.find((hole) => hole.number === number)!.features);
  }).length;

describe("ends in a guide that is sound", () => {
  it.each([
    ["lines with their numbers, as GeoJSON", "tracing.geojson", () => asGeoJson(asTagged(all(), { par }))],
    [
      "the same as OpenStreetMap's XML, with multipolygons and the relations of a whole archipelago",
      "map.osm",
      () => asOsm(asTagged(all(), { par }), { multipolygons: true, archipelago: 10_182 }),
    ],
    ["the same by GDAL's driver, tags in one column", "gdal.geojson", () => asGdal(asTagged(all(), { par }))],
    [
      "lines without numbers: the walk from green to tee gives them",
      "walk.osm",
      () => asOsm(asTagged(all(), { refs: false })),
    ],
    [
      "no lines, greens and tees with their numbers",
      "parts.osm",
      () => asOsm(asTagged(all(), { lines: false, partRefs: true })),
    ],
  ] as const)("%s", async (_, name, text) => {
    const plan = await bring(name, text());
    const { course, holes } = await loaded();
    // Where the file does not say it, the number or the line is a proposal, and marked so.
    const workedOut = course.holes.filter((hole) =>
      draftOf(hole)?.proposed.some(({ kind }) => kind === "line-of-play"),
    ).length;
    const lined = /^(parts|walk)/.test(name) ? workedOut : rightLines(course);
    expect(lined).toBe(18);
    // No invented shape is left, and every bunker of the tracing is on a hole, once.
    expect(course.holes.map((hole) => draftOf(hole)?.shapes ?? [])).toEqual(Array(18).fill([]));
    expect(kinds(course, "bunker")).toBe(kinds(demo, "bunker"));
    expect(kinds(course, "green")).toBe(18);
    // A marker for every tee set of every hole.
    expect(holes.map(({ tees }) => tees.length)).toEqual(Array(18).fill(demo.tees.length));
    if (name.endsWith(".osm") || name.startsWith("gdal"))
      expect(course.credits.map(({ text: whom, licence, files }) => [whom, licence, files])).toEqual([
        ["© OpenStreetMap contributors", "Open Database License (ODbL) 1.0", [name]],
      ]);
    // A second run finds nothing to do.
    const again = await bring(name, text());
    expect(again.files.map(({ file }) => file)).toEqual([]);
    expect(shortReport(plan, "our-links").length).toBeLessThanOrEqual(24);
  });

  it("keeps the list of what is left short, and working it off leaves nothing", async () => {
    await bring("tracing.geojson", asGeoJson(asTagged(all(), { par })), {
      cardFromGround: true,
      stated: { text: "Traced by the club", licence: "All rights with the club", link: undefined },
    });
    const left = await toDoOf(content, "our-club");
    expect(left.map(({ what }) => what.replace(/\d+ remarks?/, "N remarks"))).toEqual([
      expect.stringMatching(/^Holes 1 to 18: 72 tee markers were proposed on tee grounds/),
      expect.stringMatching(/^Holes 1 to 18: the stroke index is a placeholder/),
      expect.stringMatching(/^Holes 1 to 18: the card shows measured lengths, not the printed ones/),
      "18 tips are not written yet. Write how each hole is played, below the second line ---.",
      "Our Links has no description yet. Write description: and what a visitor should know.",
      expect.stringMatching(/^The check has N remarks/),
    ]);
    const { files } = confirmed(await readPages(content, "our-links"), ["lines", "markers", "par", "card"]);
    await writeFiles(content, files);
    for (const { file } of files) {
      const path = join(content, file);
      writeFileSync(
        path,
        readFileSync(path, "utf8")
          .replace(/placeholder: .*\n/, "")
          .replace(/\n---\nThis text[\s\S]*$/, `\n---\n${"A tip of the club's own. ".repeat(15)}\n`),
      );
    }
    const course = join(content, "our-links/course.yaml");
    writeFileSync(course, readFileSync(course, "utf8").replace(PLACEHOLDER_DESCRIPTION, "A links of eighteen holes."));
    expect(
      (await toDoOf(content, "our-club")).map(({ what }) => what).filter((what) => !what.startsWith("The check has")),
    ).toEqual([]);
  });
});

describe("ends in a list that says what is missing", () => {
  it("greens, tees and bunkers without lines or numbers: the placeholders stay, and nothing is placed by them", async () => {
    const plan = await bring("parts.osm", asOsm(asTagged(all(), { lines: false })));
    expect(plan.files.map(({ file }) => file)).toEqual(["our-links/not-placed.geojson"]);
    const left = await toDoOf(content, "our-club");
    expect(left[0]!).toEqual({
      what: expect.stringMatching(/^Holes 1 to 18: all shapes are placeholders/),
      how: "npm run bring -- --content our-club --course our-links FILE --write",
    });
    expect(shortReport(plan, "our-links").join("\n")).toContain("18 greens: no line of play to place by");
  });

  it("a survey that speaks German, without a tag: words say what it is", async () => {
    await bring("aufmass.geojson", asGermanTable(all()));
    const { course, holes } = await loaded();
    expect(rightLines(course)).toBeGreaterThanOrEqual(14);
    expect(kinds(course, "bunker")).toBe(kinds(demo, "bunker"));
    expect(holes.map(({ tees }) => tees.length)).toEqual(Array(18).fill(demo.tees.length));
    const [first] = (await toDoOf(content, "our-club")).filter(({ what }) => what.includes("aufmass.geojson"));
    expect(first!.what).toBe(
      "Nobody has said where aufmass.geojson comes from, and under what licence. Write text and licence in sources.",
    );
  });
});
