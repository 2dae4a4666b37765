/** Every rule has a course that trips it and one, as like it as can be, that must not. */
import { describe, expect, test } from "vitest";
import { CLAIM_KINDS } from "../../src/check/claims/claim.ts";
import { RULES } from "../../src/check/registry.ts";
import { departures } from "../../src/check/rules/stroke-index-spread.ts";
import { parSuits } from "../../src/measure/par-length.ts";
import type { PhotoFacts, PhotoLook } from "../../src/course/photo-look.ts";
import type { Course, Rating } from "../../src/course/types.ts";
import { areaFeature, box, course, lineFeature, pointFeature, TEE_SETS } from "../support/flat-course.ts";
import { found, plainCourse, plainHole, tipIn, tipOf } from "./support.ts";

const rated = (rating: Partial<Rating>): Course =>
  plainCourse(
    {},
    {
      tees: [
        { ...TEE_SETS[0]!, ratings: [{ ...TEE_SETS[0]!.ratings[0]!, par: 4, courseRating: 4.2, ...rating }] },
        { ...TEE_SETS[1]!, ratings: [] },
      ],
    },
  );

/** Stroke indexes that keep to Appendix E: the demo's plan has them so too. */
const GOOD_ORDER = [9, 13, 17, 7, 1, 11, 5, 15, 3, 10, 6, 16, 18, 2, 12, 4, 14, 8];
const eighteen = (indexes: readonly number[]): Course =>
  course(
    indexes.map((index, i) =>
      plainHole({ east: i * 100, rest: { number: i + 1, strokeIndex: { men: index, women: index } } }),
    ),
  );

const swapped = (a: number, b: number): number[] =>
  GOOD_ORDER.map((index) => (index === a ? b : index === b ? a : index));

const twoHoles = (gapMetres: number): Course =>
  course([plainHole(), plainHole({ east: gapMetres, rest: { number: 2 } })]);

const sentence = "The drive is easy and the green is hard. ";
const words = (count: number): string =>
  sentence
    .repeat(Math.ceil(count / 9))
    .split(" ")
    .slice(0, count)
    .join(" ");
const withTip = (markdown: string): Course => plainCourse({ rest: { tip: tipOf(markdown) } });
const HARD =
  "Notwithstanding considerable environmental complications, appropriate concentration, meticulous preparation and unhurried execution invariably differentiate successful participants from unsuccessful competitors, particularly whenever meteorological circumstances deteriorate unexpectedly, necessitating comprehensive reconsideration of previously established strategic intentions, expectations, methodologies and recommendations throughout the remaining competition.";

const bunker = (west: number, south: number) => areaFeature("pit", "bunker", box(west, south, west + 8, south + 8));

/** A plain course with one photo, and what its file is like. */
const pictured = (alt = "From the tee across the pond", notices: Course["notices"] = []): Course =>
  plainCourse(
    {
      rest: {
        photos: [
          {
            file: "test/photos/tee.jpg",
            alt,
            caption: undefined,
            credit: undefined,
            focus: undefined,
            taken: undefined,
            place: { file: "test/holes/01.md", line: 7, column: 13 },
          },
        ],
      },
    },
    { notices },
  );
const looks = (look: Partial<PhotoLook>, unused: readonly string[] = []): PhotoFacts => ({
  lookOf: () => ({
    widthPixels: 4000,
    heightPixels: 3000,
    bytes: 5_000_000,
    turned: false,
    saysPlace: false,
    ...look,
  }),
  unused,
});
const noticed = (until: string): Course =>
  pictured(undefined, [
    {
      from: undefined,
      until,
      text: "Winter tees",
      holes: undefined,
      place: { file: "test/course.yaml", line: 9, column: 5 },
    },
  ]);

interface Case {
  readonly trips: Course;
  readonly passes: Course;
  readonly today?: string;
  /** For rules that look at files. */
  readonly photos?: { readonly trips: PhotoFacts; readonly passes: PhotoFacts };
}

const photoCase = (trips: PhotoFacts, passes: PhotoFacts): Case => ({
  trips: pictured(),
  passes: pictured(),
  photos: { trips, passes },
});

const CASES: Readonly<Record<string, Case>> = {
  "photo-small": photoCase(looks({ widthPixels: 1199 }), looks({ widthPixels: 1200 })),
  "photo-large": photoCase(looks({ bytes: 20_000_001 }), looks({ bytes: 20_000_000 })),
  "photo-turned": photoCase(looks({ turned: true }), looks({})),
  "photo-place-data": photoCase(looks({ saysPlace: true }), looks({})),
  "photo-unused": photoCase(looks({}, ["test/photos/old/green.jpg"]), looks({})),
  "photo-alt": { trips: pictured("A photo of the 7th"), passes: pictured("The 7th green in evening light") },
  // The day it ends it still holds.
  "notice-past": { trips: noticed("2026-11-24"), passes: noticed("2026-11-25") },
  "card-against-ground": {
    // 2% of 380 m are 7.6 m.
    trips: plainCourse({ rest: { cardMetres: { back: 388, forward: 340 } } }),
    passes: plainCourse({ rest: { cardMetres: { back: 387, forward: 334 } } }),
  },
  "par-against-length": { trips: plainCourse({ rest: { par: { men: 3, women: 4 } } }), passes: plainCourse() },
  "stroke-index-spread": { trips: eighteen(swapped(1, 9)), passes: eighteen(GOOD_ORDER) },
  "rating-range": { trips: rated({ slopeRating: 156 }), passes: rated({ slopeRating: 155 }) },
  "rating-par": { trips: rated({ par: 5 }), passes: rated({ par: 4 }) },
  // Straight from the green's middle 380 m up to the nearer marker at 40 m: 340 m north and the gap.
  "walk-to-next-tee": {
    trips: twoHoles(100),
    passes: course(
      [plainHole(), plainHole({ east: 30, lengthMetres: 420, rest: { number: 2 } })].map((one, i) =>
        i === 1 ? reversed(one) : one,
      ),
    ),
  },
  "tee-order": {
    trips: course([
      {
        ...plainHole(),
        features: plainHole().features.map((one) =>
          one.kind === "tee-marker" ? { ...one, tee: one.tee === "back" ? "forward" : "back" } : one,
        ),
      },
    ]),
    passes: plainCourse(),
  },
  "line-of-play-ends": {
    trips: plainCourse({ features: [], rest: { features: shifted(25) } }),
    passes: plainCourse({ rest: { features: shifted(15) } }),
  },
  "far-hazard": {
    trips: plainCourse({ features: [bunker(130, 200)] }),
    passes: plainCourse({ features: [bunker(110, 200)] }),
  },
  "impossible-overlap": {
    trips: plainCourse({ features: [bunker(9, 375)] }),
    passes: plainCourse({ features: [bunker(9.6, 375)] }),
  },
  "island-drawn-over": {
    trips: plainCourse({ features: [areaFeature("pond", "water", box(-60, 320, 60, 440))] }),
    passes: plainCourse({ features: [areaFeature("pond", "water", box(-60, 250, 60, 300))] }),
  },
  "aim-unsaid": { trips: withTip(words(60)), passes: plainCourse({ rest: { aim: "Left half" } }) },
  "crosses-boundary": {
    trips: plainCourse({
      features: [
        bunker(20, 200),
        lineFeature("wall", "out-of-bounds", [
          [24, 0],
          [24, 400],
        ]),
      ],
    }),
    passes: plainCourse({
      features: [
        bunker(20, 200),
        lineFeature("wall", "out-of-bounds", [
          [30, 0],
          [30, 400],
        ]),
      ],
    }),
  },
  "survey-age": {
    trips: plainCourse({}, { surveyed: "2021-11-24" }),
    passes: plainCourse({}, { surveyed: "2021-11-25" }),
  },
  draft: { trips: plainCourse({ rest: { placeholder: ["card"] } }), passes: plainCourse() },
  "source-licence": {
    trips: plainCourse({}, { brought: ["map.osm"] }),
    passes: plainCourse(
      {},
      {
        brought: ["map.osm"],
        sources: ["A"],
        credits: [
          {
            source: 0,
            text: "A",
            licence: "B",
            link: undefined,
            files: ["map.osm"],
            place: { file: "test/course.yaml", line: 4, column: 5 },
          },
        ],
      },
    ),
  },
  "stream-in-play": {
    trips: plainCourse({
      features: [
        lineFeature("burn", "stream", [
          [-50, 200],
          [50, 210],
        ]),
      ],
    }),
    passes: plainCourse({
      features: [
        lineFeature("burn", "stream", [
          [-50, 200],
          [-5, 210],
        ]),
      ],
    }),
  },
  "tip-length": { trips: withTip(words(59)), passes: withTip(words(60)) },
  "tip-reading": { trips: withTip(HARD), passes: withTip(words(60)) },
  "hazard-unmentioned": {
    trips: plainCourse({ features: [bunker(12, 200)], rest: { tip: tipOf("Drive down the middle.") } }),
    passes: plainCourse({
      features: [bunker(12, 200)],
      rest: { tip: tipOf("Drive down the middle, left of the bunker.") },
    }),
  },
  "tip-language": {
    trips: plainCourse({ rest: { translations: tipIn("pt-BR", "Bata no meio.") } }),
    passes: plainCourse({ rest: { translations: tipIn("de-AT", "In die Mitte schlagen.") } }),
  },
  "translation-figures": {
    trips: plainCourse({
      rest: {
        tip: tipOf("It is :length, or :carry[pit]{tee=back}."),
        translations: tipIn("de", "Es sind :length oder :carry[pit]{tee=forward}."),
      },
    }),
    passes: plainCourse({
      rest: {
        tip: tipOf("It is :length, or :carry[pit]{tee=back}."),
        translations: tipIn("de", "Es sind :carry[pit]{tee=back} und :length, ja :length."),
      },
    }),
  },
  "dead-link": {
    trips: plainCourse({ rest: { tip: tipOf("It is played like [the twentieth](../20/).") } }),
    passes: plainCourse({ rest: { tip: tipOf("Its figures are on [the card](../card/).") } }),
  },
};

/** The same hole played south, so that its tee is where the one before it ends. */
function reversed(one: ReturnType<typeof plainHole>): ReturnType<typeof plainHole> {
  return {
    ...one,
    features: [
      lineFeature("line", "line-of-play", [
        [30, 420],
        [30, 0],
      ]),
      pointFeature("tee-back", "tee-marker", [30, 420], { tee: "back" }),
      areaFeature("green", "green", box(20, -10, 40, 10)),
    ],
  };
}

/** A plain hole whose line of play begins so many metres before its marker. */
function shifted(metres: number) {
  return plainHole().features.map((one) =>
    one.kind === "line-of-play"
      ? lineFeature("line", "line-of-play", [
          [0, metres],
          [0, 380],
        ])
      : one,
  );
}

const geometryAndText = RULES.map(({ name }) => name).filter(
  (name) => !(name.replace(/^tip-says-/, "") in CLAIM_KINDS),
);

describe("every rule", () => {
  test("has its cases here or in claim-kinds.test.ts", () => {
    expect(Object.keys(CASES).sort()).toEqual([...geometryAndText].sort());
    expect(new Set(RULES.map(({ name }) => name)).size).toBe(RULES.length);
  });
  test.each(Object.keys(CASES))("%s trips where it should", (name) => {
    const diagnostics = found(name, CASES[name]!.trips, { photos: CASES[name]!.photos?.trips });
    expect(diagnostics.length).toBeGreaterThan(0);
    for (const { message } of diagnostics) expect(message).toMatch(/\.$/);
  });
  test.each(Object.keys(CASES))("%s is silent where it should be", (name) => {
    expect(found(name, CASES[name]!.passes, { photos: CASES[name]!.photos?.passes })).toEqual([]);
  });
});

describe("card against the ground", () => {
  test("allows 3 yards on a short hole, where 2% would be less", () => {
    const short = (card: number): Course =>
      plainCourse({ lengthMetres: 100, rest: { par: { men: 3, women: 3 }, cardMetres: { back: card } } });
    expect(found("card-against-ground", short(102.7))).toEqual([]);
    expect(found("card-against-ground", short(102.8))).toHaveLength(1);
  });
});

describe("par by length", () => {
  // Published: Rules of Handicapping, Appendix F, the yard column.
  test.each([
    [3, 260, "men", true],
    [3, 261, "men", false],
    [4, 239, "men", false],
    [4, 240, "men", true],
    [4, 490, "men", true],
    [4, 491, "men", false],
    [5, 449, "men", false],
    [5, 450, "men", true],
    [5, 710, "men", true],
    [6, 669, "men", false],
    [6, 670, "men", true],
    [3, 220, "women", true],
    [3, 221, "women", false],
    [4, 200, "women", true],
    [4, 420, "women", true],
    [5, 369, "women", false],
    [5, 370, "women", true],
    [6, 570, "women", true],
  ] as const)("par %i at %i yd for %s: %s", (par, yards, gender, suits) => {
    expect(parSuits(par, yards * 0.9144, gender, "yards")).toBe(suits);
  });
  // Published: the same table's metre column, which is rounded by the Rules and not converted.
  test.each([
    [3, 240, "men", true],
    [3, 241, "men", false],
    [4, 450, "men", true],
    [5, 409, "men", false],
    [5, 410, "men", true],
    [4, 380, "women", true],
    [4, 381, "women", false],
    [5, 340, "women", true],
  ] as const)("par %i at %i m for %s: %s", (par, metres, gender, suits) => {
    expect(parSuits(par, metres, gender, "metres")).toBe(suits);
  });
  test("a hole where the columns differ is held to the club's own", () => {
    // 260 yd are 237.7 m: both columns allow par 3; 238 m are 260.3 yd, rounded to 260; 239 m are 261.4 yd.
    expect(parSuits(3, 239, "men", "yards")).toBe(false);
    expect(parSuits(3, 239, "men", "metres")).toBe(true);
  });
});

describe("stroke indexes", () => {
  // Published: Rules of Handicapping, Appendix E.
  test("an order that keeps to Appendix E has no departures", () => {
    expect(departures(GOOD_ORDER)).toEqual([]);
  });
  test.each([
    ["1 outside the middle of its nine", swapped(1, 9), /^1 belongs to the middle/],
    ["odd and even mixed", swapped(9, 10), /odd indexes belong to one nine/],
    ["3 in the middle triad", swapped(3, 11), /^3 belongs to the first or last/],
    ["two hard holes in a row", swapped(12, 4), /follow one another/],
  ])("%s", (_, order, said) => {
    expect(departures(order).some((one) => said.test(one))).toBe(true);
  });
  test("even indexes on the first nine are as good as odd ones", () => {
    expect(departures([...GOOD_ORDER.slice(9), ...GOOD_ORDER.slice(0, 9)])).toEqual([]);
  });
});

describe("ratings", () => {
  test.each([
    ["a Slope Rating below 55", { slopeRating: 54 }],
    ["a Course Rating far from par", { courseRating: 11 }],
    ["a Bogey Rating below the Course Rating", { bogeyRating: 4 }],
    // Published: Slope = (Bogey Rating - Course Rating) x 5.381 for men; 8 strokes over nine holes are 16 over
    // eighteen, a slope of 86.
    ["a Slope Rating that Bogey and Course Rating do not give", { bogeyRating: 12.2, slopeRating: 110 }],
  ])("%s", (_, rating) => {
    expect(found("rating-range", rated(rating))).toHaveLength(1);
  });
  test("Bogey and Course Rating that give the Slope Rating", () => {
    expect(found("rating-range", rated({ bogeyRating: 12.2, slopeRating: 86 }))).toEqual([]);
  });
});

describe("the line of play", () => {
  test("drawn backwards is told from one that begins elsewhere", () => {
    const backwards = plainHole().features.map((one) =>
      one.kind === "line-of-play"
        ? lineFeature("line", "line-of-play", [
            [0, 380],
            [0, 0],
          ])
        : one,
    );
    const messages = found("line-of-play-ends", plainCourse({ rest: { features: backwards } })).map(
      ({ message }) => message,
    );
    expect(messages.join(" ")).toMatch(/begins at the green. Turn its positions round/);
  });
  test("that stops short of the green", () => {
    const short = plainHole().features.map((one) =>
      one.kind === "line-of-play"
        ? lineFeature("line", "line-of-play", [
            [0, 0],
            [0, 360],
          ])
        : one,
    );
    expect(found("line-of-play-ends", plainCourse({ rest: { features: short } }))).toHaveLength(1);
  });
});

describe("hazards", () => {
  test("a far one that lies by another hole is sent there", () => {
    const one = course([plainHole({ features: [bunker(290, 200)] }), plainHole({ east: 300, rest: { number: 2 } })]);
    expect(found("far-hazard", one)[0]!.message).toMatch(/by hole 2/);
  });
  test("one beyond the green is far by its distance from the green, not from the line drawn out", () => {
    expect(found("far-hazard", plainCourse({ features: [bunker(0, 510)] }))).toHaveLength(1);
  });
  test("water seen by name, by figure or by its kind is mentioned", () => {
    const pond = areaFeature("tarn", "water", box(12, 200, 30, 230), { name: "Black Tarn" });
    const said = (markdown: string) =>
      found("hazard-unmentioned", plainCourse({ features: [pond], rest: { tip: tipOf(markdown) } }));
    expect(said("Keep off Black Tarn.")).toEqual([]);
    expect(said("It is :carry[tarn] to be dry.")).toEqual([]);
    expect(said("Keep out of the water.")).toEqual([]);
    expect(said("Keep out of the sand.")).toHaveLength(1);
  });
});
