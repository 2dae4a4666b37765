/**
 * Each step of bringing, by what holds whatever comes in: nothing is lost, nothing is taken
 * twice, and the order of a file's features decides nothing. Courses are drawn at random
 * from a seed, in metres about an invented place.
 */
import { describe, expect, it } from "vitest";
import { changesOf, nextEntries } from "../../src/bring/merge/changes.ts";
import { fieldEdits } from "../../src/bring/merge/card.ts";
import { matchFeatures } from "../../src/bring/merge/match.ts";
import type { Candidate } from "../../src/bring/normalise/candidate.ts";
import { normalise } from "../../src/bring/normalise/normalise.ts";
import { EMPTY_LEDGER } from "../../src/bring/pages/ledger.ts";
import { pageOf, type CoursePages } from "../../src/bring/pages/pages.ts";
import { editYaml } from "../../src/bring/pages/yaml-edit.ts";
import { planBring } from "../../src/bring/pipeline.ts";
import { knownHoles } from "../../src/bring/place/known.ts";
import { linesFirst } from "../../src/bring/place/lines.ts";
import { locate } from "../../src/bring/place/locate.ts";
import { onePerHole, placeRest } from "../../src/bring/place/rest.ts";
import type { PlanOptions } from "../../src/bring/plan.ts";
import type { Brought, PlainGeometry } from "../../src/bring/sources/brought.ts";
import { parse } from "yaml";
import { oval, position } from "../fixtures/club.ts";

/** Mulberry32: the same numbers for the same seed. */
function randomFrom(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const TEES = [
  { id: "white", name: "White" },
  { id: "red", name: "Red" },
];
const course = (holes: CoursePages["holes"] = [], ledger = EMPTY_LEDGER): CoursePages => ({
  course: pageOf("course", "links/course.yaml", "name: Links\n", 0, 12, { name: "Links" }),
  holes,
  tees: TEES,
  ledger,
  notPlaced: undefined,
});

const area = (x: number, y: number, w: number, d: number): PlainGeometry => ({
  type: "Polygon",
  coordinates: [oval(x, y, w, d, 8)],
});

/** Some holes side by side with what belongs to them, and things of no hole. */
function ground(seed: number): Brought[] {
  const random = randomFrom(seed);
  const holes = 1 + Math.floor(random() * 6);
  const features: [Record<string, unknown>, PlainGeometry][] = [];
  for (let n = 1; n <= holes; n++) {
    const [x, length] = [(n - 1) * (60 + random() * 120), 120 + random() * 400];
    features.push([
      { golf: "hole", ...(random() < 0.85 ? { ref: String(n) } : {}), par: 4 },
      { type: "LineString", coordinates: [position(x, 0), position(x + 10, length / 2), position(x, length)] },
    ]);
    if (random() < 0.9) features.push([{ golf: "green" }, area(x, length, 10, 12)]);
    for (const { id } of TEES)
      if (random() < 0.8)
        features.push([
          { golf: "tee", tee: id },
          { type: "Point", coordinates: position(x, random() * 40) },
        ]);
    for (let k = Math.floor(random() * 4); k > 0; k--)
      features.push([{ golf: "bunker" }, area(x - 60 + random() * 120, random() * length, 4, 3)]);
  }
  features.push(
    [{ golf: "green" }, area(-300, 0, 9, 9)],
    [{ amenity: "bench" }, { type: "Point", coordinates: position(0, 0) }],
  );
  features.push(
    [{ golf: "bunker" }, { type: "Point", coordinates: position(1, 1) }],
    [
      { golf: "bunker" },
      {
        type: "Polygon",
        coordinates: [
          [
            [10, 10],
            [10.001, 10],
            [10, 10.001],
            [10, 10],
          ],
        ],
      },
    ],
  );
  return features.map(([properties, geometry], i) => ({
    from: `F${i}`,
    key: `f#${i}`,
    properties,
    geometry,
    words: [],
    mapped: false,
  }));
}

function shuffled<T>(items: readonly T[], seed: number): T[] {
  const random = randomFrom(seed);
  return items
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

const OPTIONS: PlanOptions = {
  course: "links",
  distUnit: undefined,
  cardFromGround: false,
  markerPlace: "middle",
  aroundMetres: 150,
  stated: { text: undefined, licence: undefined, link: undefined },
  fileOf: new Map(),
};

const SEEDS = Array.from({ length: 25 }, (_, i) => i + 1);

/** All steps up to what goes to pages. */
function placed(brought: readonly Brought[], pages = course()) {
  const normalised = normalise(brought, pages.tees);
  const known = knownHoles(pages);
  const located = locate(normalised.candidates, pages, known);
  const lines = linesFirst(located, known);
  const rest = placeRest(located, lines);
  return { normalised, located, lines, rest, single: onePerHole([...lines.incoming, ...rest.incoming]) };
}

const froms = (...lists: readonly (readonly { readonly from: string }[])[]): string[] =>
  lists
    .flat()
    .map(({ from }) => from)
    .sort();
const of = (incoming: readonly { readonly candidate: Candidate }[]) => incoming.map(({ candidate }) => candidate);

describe.each(SEEDS)("ground %i", (seed) => {
  const brought = ground(seed);
  const { normalised, located, lines, rest, single } = placed(brought);

  it("each step hands on what it is given or says why not, once", () => {
    expect(froms(normalised.candidates, normalised.leftOver)).toEqual(froms(brought));
    expect(froms(located.candidates, located.leftOver)).toEqual(froms(normalised.candidates));
    expect(froms(of(lines.incoming), lines.leftOver)).toEqual(
      froms(located.candidates.filter(({ kind }) => kind === "line-of-play")),
    );
    expect(froms(of(rest.incoming), rest.leftOver)).toEqual(
      froms(located.candidates.filter(({ kind }) => kind !== "line-of-play")),
    );
    expect(froms(of(single.incoming), single.leftOver)).toEqual(froms(of([...lines.incoming, ...rest.incoming])));
  });

  it("places only on holes that have a line of play, one line, one green, one marker of a set for each", () => {
    const numbers = new Set(lines.holes.map(({ number }) => number));
    for (const { at } of single.incoming) if (at !== "course") expect(numbers).toContain(at);
    const roles = single.incoming
      .filter(({ candidate: { kind } }) => ["line-of-play", "green", "tee-marker"].includes(kind))
      .map(({ at, candidate: { kind, tags } }) => `${at} ${kind} ${tags["tee"] ?? ""}`);
    expect(new Set(roles).size).toBe(roles.length);
    expect(onePerHole(single.incoming)).toEqual({ incoming: single.incoming, leftOver: [] });
  });

  it("decides the same whatever the order of the file", () => {
    const where = ({ single: { incoming } }: ReturnType<typeof placed>): string[] =>
      incoming.map(({ candidate, at }) => `${candidate.from} ${at}`).sort();
    expect(where(placed(shuffled(brought, seed)))).toEqual(where({ normalised, located, lines, rest, single }));
  });

  it("turns a line drawn from green to tee, and then sees the same hole", () => {
    const reversed = brought.map((one) =>
      one.properties["golf"] === "hole" && one.geometry.type === "LineString"
        ? { ...one, geometry: { ...one.geometry, coordinates: one.geometry.coordinates.toReversed() } }
        : one,
    );
    const again = placed(reversed);
    const greens = new Set(rest.incoming.filter(({ candidate }) => candidate.kind === "green").map(({ at }) => at));
    for (const { number, line } of again.lines.holes) {
      if (greens.has(number)) expect(line).toEqual(lines.holes.find((hole) => hole.number === number)!.line);
    }
  });

  it("names what is new once on its page, and enters it in the ledger under the source's own key", () => {
    const pages = course();
    const changes = changesOf(matchFeatures(single.incoming, pages, located.frame), pages, located.frame);
    expect(changes.map(({ what }) => what)).toEqual(changes.map(() => "new"));
    const names = changes.map(({ at, id }) => `${at}/${id}`);
    expect(new Set(names).size).toBe(names.length);
    expect(
      Object.values(nextEntries(EMPTY_LEDGER, changes))
        .map(({ at }) => at)
        .sort(),
    ).toEqual(names.sort());
    // Ids of the course are no hole's.
    const shared = new Set(changes.filter(({ at }) => at === "course").map(({ id }) => id));
    for (const { at, id } of changes) if (at !== "course") expect(shared).not.toContain(id);
  });

  it("plans text that holds what was placed, and nothing the second time", () => {
    const plan = planBring(brought, course(), OPTIONS);
    const pages = course(
      plan.files
        .filter(({ file }) => file.includes("/holes/"))
        .map(({ file, after }) => {
          const [start, end] = [4, after.indexOf("\n---\n") + 1];
          return pageOf(undefined, file, after, start, end, parse(after.slice(start, end)));
        }),
      plan.ledger,
    );
    const again = planBring(
      brought,
      {
        ...pages,
        course: pageOf(
          "course",
          "links/course.yaml",
          plan.files.find(({ file }) => file.endsWith("course.yaml"))?.after ?? "name: Links\n",
          0,
          12,
          { name: "Links" },
        ),
      },
      OPTIONS,
    );
    expect(again.changes.filter(({ at, what }) => at !== "course" && what !== "same")).toEqual([]);
    expect(again.files.filter(({ file }) => file.includes("/holes/"))).toEqual([]);
  });
});

describe("a page's fields", () => {
  const page = (text: string) => pageOf(1, "links/holes/01-hole.md", text, 0, text.length, parse(text));
  const cases = [
    "hole: 1\n",
    "hole: 1\npar: 4\n",
    "hole: 1\npar: 5\ncard: { white: 400 }\n",
    "hole: 1\nname: Own\ncard:\n  red: 300\n",
  ];
  const fields = { name: "Theirs", par: 4, strokeIndex: 7, "card.white": 371, "card.red": 318 };

  it.each(cases)("%j: gaps are filled, what the club wrote stays", (text) => {
    const { edits } = fieldEdits(page(text), fields, {});
    const [before, after] = [
      parse(text) as Record<string, unknown>,
      parse(editYaml("x", text, edits)) as Record<string, unknown>,
    ];
    expect(after).toMatchObject(before);
    const card = after["card"] as Record<string, number>;
    expect([after["par"], after["strokeIndex"], Object.keys(card).sort()]).toEqual([
      before["par"] ?? 4,
      7,
      ["red", "white"],
    ]);
  });

  it.each(cases)("%j: what was brought last and is on the page still follows the source", (text) => {
    const first = editYaml("x", text, fieldEdits(page(text), fields, {}).edits);
    const written = parse(first) as Record<string, unknown>;
    const moved = { ...fields, strokeIndex: 9 };
    const after = parse(editYaml("x", first, fieldEdits(page(first), moved, fields).edits)) as Record<string, unknown>;
    expect(after).toEqual({ ...written, strokeIndex: 9 });
  });
});
