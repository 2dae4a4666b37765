/** Bringing into real folders: once, and again after the source and the club have each changed things. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Feature, FeatureCollection } from "geojson";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readContent } from "../../src/read/content.ts";
import { fullReport } from "../../src/bring/report/report.ts";
import { prepareBring, writeBring, type BringRequest, type Prepared } from "../../src/bring/run.ts";
import { oval, position, writeClub } from "../fixtures/club.ts";

let content: string;
let source: string;
beforeEach(async () => {
  content = mkdtempSync(join(tmpdir(), "marram-bring-"));
  source = join(content, "survey.geojson");
  await writeClub(content, { holes: 3 });
});
afterEach(() => rmSync(content, { recursive: true, force: true }));

const page = (hole: number): string => join(content, `course-1/holes/0${hole}-hole.md`);
const text = (hole: number): string => readFileSync(page(hole), "utf8");
const rewrite = (hole: number, from: string | RegExp, to: string): void => {
  const before = text(hole);
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(page(hole), after);
};

const polygon = (id: string, properties: Record<string, unknown>, ring: [number, number][]): Feature => ({
  type: "Feature",
  id,
  properties,
  geometry: { type: "Polygon", coordinates: [ring] },
});

/**
 * Two bunkers left and one right of hole 1, a pond by holes 1 and 2, and a bin. Hole n runs north from x =
 * 130 (n - 1).
 */
const survey = (): Feature[] => [
  polygon("b1", { golf: "bunker" }, oval(-14, 200, 4, 3, 8)),
  polygon("b2", { golf: "bunker" }, oval(-13, 150, 4, 3, 8)),
  polygon("b3", { golf: "bunker", name: "The Cellar", surface: "sand" }, oval(30, 170, 4, 3, 8)),
  polygon("w", { golf: "water_hazard", natural: "water", name: "Mere" }, oval(68, 100, 25, 30, 12)),
  {
    type: "Feature",
    id: "bin",
    properties: { amenity: "waste_basket" },
    geometry: { type: "Point", coordinates: position(0, 0) },
  },
];

const bring = async (features: readonly Feature[], more: Partial<BringRequest> = {}): Promise<Prepared> => {
  const collection: FeatureCollection = { type: "FeatureCollection", features: [...features] };
  await writeFile(source, JSON.stringify(collection));
  return prepareBring({
    content,
    course: "course-1",
    files: [source],
    crs: undefined,
    distUnit: undefined,
    lines: undefined,
    ...more,
  });
};
const write = async (plan: Prepared): Promise<void> => writeBring(content, "course-1", plan);
/** The text of the one hole page that changes. */
const holeText = ({ files }: Prepared): string => files.find(({ file }) => file.includes("/holes/"))!.after;
const brief = ({ changes: all }: Prepared): string[] =>
  all
    .filter(({ what }) => what !== "same")
    .map(({ what, at, id, changes, kept }) =>
      [what, `${at}/${id}`, ...changes, ...kept.map((one) => `keeps ${one}`)].join(" ; "),
    );

describe("the first time", () => {
  it("adds features at the end of their pages, named, and keeps all that was there", async () => {
    const before = text(1);
    const plan = await bring(survey());
    expect(brief(plan)).toEqual([
      "new ; course/mere",
      "new ; 1/bunker-left-1",
      "new ; 1/the-cellar",
      "new ; 1/bunker-left-2",
    ]);
    expect(plan.leftOver.map(({ from, reason }) => `${from.replace(source, "FILE")}: ${reason}`)).toEqual([
      expect.stringMatching(/^FILE, feature 5: nothing says what it is: give it a tag such as golf=bunker/),
    ]);
    // Preview: nothing is written.
    expect(text(1)).toBe(before);
    await write(plan);
    const after = text(1);
    const added = after.split("\n").filter((line) => !before.includes(line));
    expect(added.map((line) => line.slice(0, 75))).toEqual(
      [
        "    - { type: Feature, id: bunker-left-1, properties: { golf: bunker }, geom",
        "    - { type: Feature, id: the-cellar, properties: { golf: bunker, name: The",
        "    - { type: Feature, id: bunker-left-2, properties: { golf: bunker }, geom",
      ].map((line) => line.slice(0, 75)),
    );
    expect(before.split("\n").every((line) => after.includes(line))).toBe(true);
    expect(readFileSync(join(content, "course-1/course.yaml"), "utf8")).toContain(
      "features:\n  type: FeatureCollection\n  features:\n    - { type: Feature, id: mere,",
    );
  });

  it("makes content that the reader takes without an error", async () => {
    await write(await bring(survey()));
    const { club, diagnostics } = await readContent(content);
    expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(club!.courses[0]!.holes[0]!.features.map(({ id }) => id)).toContain("the-cellar");
    expect(club!.courses[0]!.features.map(({ id, kind }) => [id, kind])).toEqual([["mere", "penalty-area-yellow"]]);
  });

  it("knows drawn features again by their place and role, and keeps their names", async () => {
    const moved = oval(-18.5, 318.5, 4, 3, 8);
    const plan = await bring([
      polygon("x", { golf: "bunker", name: "New name" }, moved),
      polygon("g", { golf: "green" }, oval(1, 331, 11, 14, 8)),
    ]);
    expect(brief(plan)).toEqual([
      "changed ; 1/green ; outline changed by up to 1.4 m",
      "changed ; 1/bunker-left ; outline changed by up to 0.7 m ; keeps name: Left bunker (the source says New name)",
    ]);
  });
});

describe("again", () => {
  beforeEach(async () => write(await bring(survey())));

  it("changes nothing when nothing has changed", async () => {
    const before = [text(1), readFileSync(join(content, "course-1/brought.json"), "utf8")];
    const plan = await bring(survey());
    expect(plan.files).toEqual([]);
    expect(brief(plan)).toEqual([]);
    await write(plan);
    expect([text(1), readFileSync(join(content, "course-1/brought.json"), "utf8")]).toEqual(before);
  });

  it("takes over what changed in the source and leaves every other byte", async () => {
    const before = text(1);
    const next = survey();
    next[0] = polygon("b1", { golf: "bunker" }, oval(-14, 203, 4, 3, 8));
    next[2] = { ...next[2]!, properties: { golf: "bunker", name: "The Vault" } };
    const plan = await bring(next);
    expect(brief(plan)).toEqual([
      "changed ; 1/the-cellar ; name: The Cellar becomes The Vault ; surface: sand removed",
      "changed ; 1/bunker-left-2 ; outline changed by up to 3.0 m",
    ]);
    await write(plan);
    const [a, b] = [before.split("\n"), text(1).split("\n")];
    expect(b).toHaveLength(a.length);
    expect(b.flatMap((line, i) => (line === a[i] ? [] : [/id: ([a-z0-9-]+)/.exec(line)![1]]))).toEqual([
      "the-cellar",
      "bunker-left-2",
    ]);
  });

  it("keeps the club's ids, names, tags, outlines, order and comments, and says so when the source has changed too", async () => {
    rewrite(1, "id: bunker-left-1", "id: coffin");
    rewrite(1, "name: The Cellar", 'name: "The Cellar"  ');
    rewrite(1, "hole: 1", "# Ours\nhole: 1   # the first");
    rewrite(1, /(id: bunker-left-2, properties: \{ golf: bunker)/, "$1, name: Twin");
    const outline = /(id: bunker-left-2,.*coordinates: \[\[\[)(-?[\d.]+)/;
    rewrite(1, outline, `$1${Number(outline.exec(text(1))![2]) + 0.00001}`);
    // Closing position moved with the first.
    const ring = JSON.parse(/id: bunker-left-2,.*coordinates: (\[\[\[.*\]\]\])/.exec(text(1))![1]!) as number[][][];
    ring[0]![ring[0]!.length - 1] = ring[0]![0]!;
    rewrite(1, /(id: bunker-left-2,.*coordinates: )\[\[\[.*\]\]\]/, `$1${JSON.stringify(ring)}`);
    const before = text(1);
    expect(brief(await bring(survey()))).toEqual([]);

    const next = survey();
    next[0] = polygon("b1", { golf: "bunker", name: "Source name" }, oval(-14, 203, 4, 3, 8));
    next[1] = polygon("b2", { golf: "bunker" }, oval(-13, 155, 4, 3, 8));
    const plan = await bring(next);
    expect(brief(plan)).toEqual(["changed ; 1/coffin ; outline changed by up to 5.0 m"]);
    expect(plan.changes.flatMap(({ id, kept }) => kept.map((one) => `${id} ${one}`))).toEqual([
      "bunker-left-2 its outline, which was edited on the page and has changed in the source too",
      "bunker-left-2 name: Twin (the source says Source name)",
    ]);
    await write(plan);
    const [a, b] = [before.split("\n"), text(1).split("\n")];
    expect(b.flatMap((line, i) => (line === a[i] ? [] : [/id: ([a-z0-9-]+)/.exec(line)![1]]))).toEqual(["coffin"]);
    expect(text(1)).toContain("# Ours\nhole: 1   # the first");
    // Said once: the club has seen it.
    expect((await bring(next)).changes.flatMap(({ kept }) => kept)).toEqual([]);
  });

  it("knows a poorer drawing of what is there by its shape, adds nothing and takes no golf tag away", async () => {
    const before = text(1);
    const plan = await bring([
      polygon("s1", { natural: "sand" }, oval(-14.5, 200.5, 4.2, 3, 9)),
      polygon("b3", { natural: "sand", name: "The Cellar" }, oval(30, 170, 4, 3, 8)),
      polygon("s2", { natural: "sand" }, oval(-14, 120, 4, 3, 8)),
      polygon("s3", { golf: "bunker" }, oval(-14, 120, 4, 3, 9)),
    ]);
    expect(brief(plan).sort()).toEqual([
      "changed ; 1/the-cellar ; natural: sand added ; surface: sand removed",
      "duplicate ; 1/bunker-left-2",
      "duplicate ; 1/bunker-left-3",
      "new ; 1/bunker-left-3",
    ]);
    await write(plan);
    expect(text(1).match(/golf: bunker/g)!.length).toBe(before.match(/golf: bunker/g)!.length + 1);
  });

  it("does not bring back what the club took out, and says so", async () => {
    rewrite(1, /\n.*id: the-cellar.*/, "");
    const plan = await bring(survey());
    expect(brief(plan)).toEqual(["taken-out ; 1/the-cellar"]);
    expect(plan.files).toEqual([]);
    expect(fullReport(plan, false).join("\n")).toContain(
      "- the-cellar             taken off the page since it was brought, and left off",
    );
  });

  it("follows a feature that the club moved to another hole's page", async () => {
    const line = /\n.*id: bunker-left-2.*/.exec(text(1))![0];
    rewrite(1, line, "");
    rewrite(2, /\n---\nIt is/, `${line}\n---\nIt is`);
    expect(brief(await bring(survey()))).toEqual([]);
  });

  it("keeps what is gone from the source, and asks", async () => {
    const plan = await bring(survey().slice(1));
    expect(plan.files).toEqual([]);
    expect(plan.notes).toEqual([
      "bunker-left-2 of hole 1 is no longer in the source (survey.geojson#b1). It was kept; delete it from the page if it is gone from the ground.",
    ]);
  });

  it("numbers a new hazard after those there are", async () => {
    const plan = await bring([...survey(), polygon("b9", { golf: "bunker" }, oval(-14, 100, 4, 3, 8))]);
    expect(brief(plan)).toEqual(["new ; 1/bunker-left-3"]);
  });

  it("writes nothing when a page was changed meanwhile", async () => {
    const plan = await bring([...survey(), polygon("b9", { golf: "bunker" }, oval(-14, 100, 4, 3, 8))]);
    rewrite(1, "name: Hole 1", "name: First");
    const before = text(1);
    await expect(write(plan)).rejects.toThrow(
      "course-1/holes/01-hole.md: was changed while bring was at work. Run the command again.",
    );
    expect(text(1)).toBe(before);
  });

  it("refuses a ledger that was edited", async () => {
    await writeFile(join(content, "course-1/brought.json"), "{}");
    await expect(bring(survey())).rejects.toThrow("course-1/brought.json: is not as bring wrote it.");
  });
});

describe("features without identity in their file", () => {
  const anonymous = (): Feature[] => survey().map(({ id: _, ...feature }) => feature);

  it("are known again by place, and stay out when the club took them out", async () => {
    await write(await bring(anonymous()));
    expect(brief(await bring(anonymous()))).toEqual([]);
    rewrite(1, /\n.*id: the-cellar.*/, "");
    expect(brief(await bring(anonymous()))).toEqual(["taken-out ; 1/the-cellar"]);
    const next = anonymous();
    next[0] = { ...next[0]!, geometry: { type: "Polygon", coordinates: [oval(-14, 202, 4, 3, 8)] } };
    expect(brief(await bring(next))).toEqual([
      "taken-out ; 1/the-cellar",
      "changed ; 1/bunker-left-2 ; outline changed by up to 2.0 m",
    ]);
  });
});

describe("lines of play", () => {
  const line = (number: number, tags: Record<string, unknown>, x: number, length = 330): Feature => ({
    type: "Feature",
    id: `l${number}`,
    properties: { golf: "hole", ref: String(number), ...tags },
    geometry: { type: "LineString", coordinates: [position(x, 0), position(x + 12, 205), position(x, length)] },
  });

  it("update the page's line, and its card only where it says less or the source has changed", async () => {
    const plan = await bring([line(1, { par: 5, handicap: 1, "dist:red": "290 yd", "dist:white": "330 m" }, 0)]);
    expect(brief(plan)).toEqual(["changed ; 1/line ; outline changed by up to 5.4 m"]);
    expect(plan.notes).toEqual([
      "course-1/holes/01-hole.md keeps par: 4 (the source says 5).",
      "course-1/holes/01-hole.md keeps card.red: 328 (the source says 290).",
    ]);
    await write(plan);
    const next = await bring([line(1, { par: 5, handicap: 2, "dist:red": "290 yd" }, 0)]);
    expect(next.notes).toEqual(["course-1/holes/01-hole.md: strokeIndex: 1 becomes 2."]);
    expect(next.files.map(({ after }) => /strokeIndex: \d+/.exec(after)![0])).toEqual(["strokeIndex: 2"]);
  });

  it("never take a length for yards or metres on their own, and ask", async () => {
    rewrite(1, /card: .*/, "card: { white: 361 }");
    const tags = { "dist:red": "300" };
    const unsaid = await bring([line(1, tags, 0)]);
    expect(holeText(unsaid)).toContain("card: { white: 361 }");
    expect(unsaid.notes.map((note) => note.replace(source, "FILE"))).toEqual([
      "FILE, feature 1 gives lengths for red without a unit, and OpenStreetMap sets none. Look whether they are yards or metres and say --dist-unit yards or --dist-unit metres; the card was left as it is.",
    ]);
    expect(holeText(await bring([line(1, tags, 0)], { distUnit: "yards" }))).toContain(
      "card: { white: 361, red: 300 }",
    );
    // 300 m / 0.9144 = 328.08 yd.
    expect(holeText(await bring([line(1, tags, 0)], { distUnit: "metres" }))).toContain(
      "card: { white: 361, red: 328 }",
    );
  });

  it("make a page for a hole that has none, with what is still to be written", async () => {
    const plan = await bring([
      line(4, { name: "Whin Brae", par: 4 }, 390),
      polygon("g4", { golf: "green" }, oval(390, 330, 10, 10, 8)),
      polygon("b4", { golf: "bunker" }, oval(375, 200, 4, 3, 8)),
    ]);
    expect(brief(plan)).toEqual(["new ; 4/line", "new ; 4/bunker-left-1", "new ; 4/green"]);
    expect(plan.notes).toEqual([
      "course-1/holes/04-whin-brae.md is new: write strokeIndex, card and the tip by hand.",
    ]);
    await write(plan);
    expect(await readdir(join(content, "course-1/holes"))).toContain("04-whin-brae.md");
    const lines = (await readFile(join(content, "course-1/holes/04-whin-brae.md"), "utf8"))
      .split("\n")
      .map((one) => one.slice(0, 60));
    expect(lines.slice(0, 9)).toEqual([
      "---",
      "hole: 4",
      "name: Whin Brae",
      "par: 4",
      "# strokeIndex: ___   (write the hole's stroke index)",
      "# card: { white: ___, red: ___ }   (write the printed card, yards by tee set)".slice(0, 60),
      "features:",
      "  type: FeatureCollection",
      "  features:",
    ]);
    expect(brief(await bring([line(4, { name: "Whin Brae", par: 4 }, 390)]))).toEqual([]);
  });

  it("are turned round when drawn from green to tee", async () => {
    const drawn = line(4, {}, 390);
    if (drawn.geometry.type === "LineString") drawn.geometry.coordinates.reverse();
    const plan = await bring([drawn, polygon("g4", { golf: "green" }, oval(390, 330, 10, 10, 8))]);
    expect(plan.notes[0]!.replace(source, "FILE")).toBe("FILE, feature 1 ran from green to tee and was turned round.");
    expect(holeText(plan)).toContain(
      `coordinates: ${JSON.stringify([position(390, 0), position(402, 205), position(390, 330)])}`,
    );
  });

  it("are chosen by --lines where two courses share numbers, and left over without", async () => {
    const two = [
      line(4, { "golf:course:name": "Old" }, 390),
      { ...line(4, { "golf:course:name": "New" }, 900), id: "other" },
    ];
    expect((await bring(two)).leftOver.map(({ reason }) => reason)).toEqual(
      Array(2).fill(
        '2 lines say hole 4: choose by a tag they differ in, such as --lines golf:course:name="Old Course"',
      ),
    );
    const chosen = await bring(two, { lines: { key: "golf:course:name", value: "Old" } });
    expect(brief(chosen)).toEqual(["new ; 4/line"]);
    expect(chosen.leftOver.map(({ reason }) => reason)).toEqual(["it is a line of play without golf:course:name=Old"]);
  });

  it("say when latitude and longitude are changed about", async () => {
    const swapped = line(1, {}, 0);
    if (swapped.geometry.type === "LineString")
      swapped.geometry.coordinates = swapped.geometry.coordinates.map(([x, y]) => [y!, x!]);
    expect((await bring([swapped])).leftOver[0]!.reason).toMatch(
      /^it lies \d+ km from the course, and with latitude and longitude changed about it would lie on it: export it with longitude first$/,
    );
  });
});

it("shows what it would do, matched and guessed and left over, before the difference", async () => {
  const report = fullReport(await bring(survey()), false).map((line) => line.replaceAll(source, "FILE").slice(0, 110));
  expect(report).toMatchSnapshot();
});
