/** What files' attributes, names and shapes are taken for. */
import { describe, expect, it } from "vitest";
import type { Brought, PlainGeometry } from "../../src/bring/sources/brought.ts";
import { normalise } from "../../src/bring/normalise/normalise.ts";

const TEES = [
  { id: "white", name: "White" },
  { id: "sea", name: "Sea Blue" },
];

const POINT: PlainGeometry = { type: "Point", coordinates: [-9, 56.5] };
const RING: PlainGeometry = {
  type: "Polygon",
  coordinates: [
    [
      [-9, 56.5],
      [-9, 56.501],
      [-8.999, 56.501],
      [-9, 56.5],
    ],
  ],
};
const PATH: PlainGeometry = {
  type: "LineString",
  coordinates: [
    [-9, 56.5, 4.123],
    [-9, 56.501, 5],
    [-8.999, 56.501, 6],
  ],
};
const WALKED: PlainGeometry = {
  type: "LineString",
  coordinates: [
    [-9, 56.5],
    [-9, 56.501],
    [-8.999, 56.501],
    [-8.99998, 56.50001],
  ],
};

const read = (geometry: PlainGeometry, properties: Record<string, unknown>, rest: Partial<Brought> = {}) =>
  normalise([{ from: "F", key: "k", properties, geometry, words: [], mapped: false, ...rest }], TEES);
const one = (...parts: Parameters<typeof read>) => {
  const { candidates, leftOver } = read(...parts);
  expect(leftOver).toEqual([]);
  expect(candidates).toHaveLength(1);
  return candidates[0]!;
};
const reason = (...parts: Parameters<typeof read>) => {
  const { candidates, leftOver } = read(...parts);
  expect(candidates).toEqual([]);
  return leftOver[0]!.reason;
};

describe("tags", () => {
  it("are taken as they are, without edit histories, styles and row numbers", () => {
    expect(
      one(RING, {
        golf: "bunker",
        name: "Pit",
        surface: "sand",
        source: "survey",
        "addr:city": "x",
        stroke: "#fff",
        fid: 3,
        Shape_Area: 12,
        layer: "1",
      }).tags,
    ).toEqual({ golf: "bunker", name: "Pit", surface: "sand" });
  });

  it("are found in the capitals of tables", () => {
    expect(one(RING, { GOLF: "bunker", Name: "Pit", OBJECTID: 3 }).tags).toEqual({ golf: "bunker", name: "Pit" });
  });

  it("give metres as numbers, and say when they cannot", () => {
    expect(one(PATH, { waterway: "stream", width: "3.5" }).tags).toEqual({ waterway: "stream", width: 3.5 });
    // 12 ft x 0.3048 m.
    expect(one(POINT, { natural: "tree", height: "12 ft" }).tags).toEqual({ natural: "tree", height: 3.66 });
    const { candidates, notes } = read(POINT, { natural: "tree", height: "tall" });
    expect(candidates[0]!.tags).toEqual({ natural: "tree" });
    expect(notes).toEqual(['F: height is "tall", which is no length; it was left out.']);
  });

  it("that the guide does not draw are left over, and so are shapes that do not fit", () => {
    expect(reason(POINT, { amenity: "bench" }, { mapped: true })).toBe(
      "its tags are none that the guide draws or measures",
    );
    expect(reason(POINT, { golf: "bunker" })).toContain(
      "golf: bunker is drawn as a Point: expected a Polygon or MultiPolygon",
    );
    expect(reason(RING, { golf: "bunkers" })).toBe(
      'golf is "bunkers", which is no feature of a hole. Did you mean bunker?',
    );
    expect(
      reason(
        {
          type: "Polygon",
          coordinates: [
            [
              [0, 0],
              [1, 1],
              [0, 1],
              [1, 0],
              [0, 0],
            ],
          ],
        },
        { golf: "green" },
      ),
    ).toMatch(/crosses the edge/);
  });

  it("of OpenStreetMap are never guessed from names", () => {
    expect(reason(RING, { amenity: "parking", name: "Green bunker" }, { mapped: true })).toBe(
      "its tags are none that the guide draws or measures",
    );
  });
});

describe("tees", () => {
  it("name the course's tee sets by id or name, several on one marker", () => {
    expect(one(POINT, { golf: "tee", tee: "White" }).tags).toEqual({ golf: "tee", tee: "white" });
    expect(one(POINT, { golf: "tee", colour: "sea-blue" }).tags).toMatchObject({ golf: "tee", tee: "sea" });
    expect(
      read(POINT, { golf: "tee", tee: "white;sea" }).candidates.map(({ tags, key }) => [tags["tee"], key]),
    ).toEqual([
      ["white", "k+white"],
      ["sea", "k+sea"],
    ]);
    expect(one(RING, { golf: "tee", tee: "white;sea" }).tags).toEqual({ golf: "tee" });
  });

  it("that are no tee set of the course are left over, with what to write", () => {
    expect(reason(POINT, { golf: "tee", tee: "gold" })).toBe(
      'it is a tee marker of the tee set "gold", and the course\'s are white, sea: give it tee=white',
    );
    expect(reason(POINT, { golf: "tee" })).toContain("names no tee set");
  });
});

describe("words", () => {
  it("say kind, hole and tee set where no tag does, as a guess", () => {
    const marker = one(POINT, { name: "7 Tee white" });
    expect([marker.tags, marker.hole, marker.guess]).toEqual([
      { golf: "tee", tee: "white" },
      7,
      'the word "tee" says what it is',
    ]);
    const bunker = one(RING, { name: "Hole 12 bunker left" });
    expect([bunker.tags, bunker.hole]).toEqual([{ golf: "bunker" }, 12]);
    expect(one(RING, { name: "B1" }, { words: ["Hole 3", "Bunkers"] })).toMatchObject({
      hole: 3,
      tags: { golf: "bunker", name: "B1" },
    });
    expect(one(RING, { name: "Hell's bunker" }).tags).toEqual({ golf: "bunker", name: "Hell's bunker" });
    expect(one(PATH, { name: "Hole 4" })).toMatchObject({ hole: 4, kind: "line-of-play", card: { name: "Hole 4" } });
  });

  it("that say nothing leave a feature over", () => {
    expect(reason(RING, { name: "Area 1" })).toBe(
      'nothing says what it is: give it a tag such as golf=bunker, or a word for it in its name "Area 1"',
    );
    expect(reason(POINT, { name: "Bunker" })).toContain("nothing says what it is");
  });
});

describe("shapes", () => {
  it("close an outline that was walked, when it is an area's", () => {
    const { geometry, guess } = one(WALKED, { name: "bunker" });
    expect(geometry.type).toBe("Polygon");
    expect(guess).toBe('the word "bunker" says what it is');
    expect(reason({ type: "LineString", coordinates: WALKED.coordinates.slice(0, 3) }, { golf: "bunker" })).toContain(
      "drawn as a LineString",
    );
  });

  it("open an area where a line is meant", () => {
    expect(one(RING, { golf: "cartpath" }).geometry.type).toBe("LineString");
  });

  it("round to a centimetre, wind outlines to the left and drop heights that are all zero", () => {
    // RFC 7946, 3.1.6: exterior rings are counter-clockwise. This one is written clockwise.
    const clockwise: PlainGeometry = {
      type: "Polygon",
      coordinates: [
        [
          [0, 0, 0],
          [0, 1, 0],
          [0, 1, 0],
          [1.00000004, 1, 0],
          [0, 0, 0],
        ],
      ],
    };
    expect(one(clockwise, { golf: "green" }).geometry.coordinates).toEqual([
      [
        [0, 0],
        [1, 1],
        [0, 1],
        [0, 0],
      ],
    ]);
    expect(one(PATH, { golf: "cartpath" }).geometry.coordinates).toEqual([
      [-9, 56.5, 4.12],
      [-9, 56.501, 5],
      [-8.999, 56.501, 6],
    ]);
  });
});

describe("cards", () => {
  const card = (tags: Record<string, unknown>) => one(PATH, { golf: "hole", ...tags }).card!;

  it("come from a line of play's tags", () => {
    expect(
      card({ ref: "7", name: "Skerry", par: "3", handicap: "5", "dist:white": "201 yd", "dist:sea": "130" }),
    ).toEqual({
      name: "Skerry",
      par: 3,
      strokeIndex: 5,
      lengths: { white: { value: 201, unit: "yards" }, sea: { value: 130, unit: undefined } },
      faults: [],
    });
    expect(card({ "par:men": 4, "par:women": 5, "handicap:men": 1, "handicap:women": 3 })).toMatchObject({
      par: { men: 4, women: 5 },
      strokeIndex: { men: 1, women: 3 },
    });
    expect(one(PATH, { golf: "hole", ref: "7", par: 3, name: "Skerry" }).tags).toEqual({ golf: "hole" });
  });

  it("say what they could not use", () => {
    expect(card({ par: "12", handicap: "x", dist: "400", "dist:gold": "410", "par:white": "5" }).faults).toEqual([
      'dist is "400" without saying from which tees: write it on the card by hand',
      'dist:gold is "410", and the course has no tee set "gold"',
      'par:white is "5": a page has par for men and women, not for tees; write it by hand if it differs',
      'par is "12": expected a whole number from 3 to 6',
      'handicap is "x": expected a whole number from 1 to 18',
    ]);
  });
});
