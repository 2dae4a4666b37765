/** The table of feature kinds: each fact is what the code that lives by it does. */
import { describe, expect, test } from "vitest";
import { featureKind, geometriesOf, valuesOf } from "../../src/course/feature-kind.ts";
import { coverOf } from "../../src/course/ground-cover.ts";
import { ALL_KINDS, isBoundary, isHazard, isPrepared, kindFacts, type FeatureKind } from "../../src/course/kinds.ts";
import { checkVocabulary } from "../../src/course/schema/vocabulary.ts";
import { sayIn } from "../../src/check/say.ts";
import { crossesBoundary } from "../../src/check/rules/crosses-boundary.ts";
import { carriedOver } from "../../src/measure/carried.ts";
import { lieAt, landingAt } from "../../src/measure/landing.ts";
import { cornerLines } from "../../src/measure/corner.ts";
import { seenFrom } from "../../src/measure/seen.ts";
import type { MeasuredCourse } from "../../src/measure/types.ts";
import { club } from "../check/support.ts";
import { areaFeature, box, lineFeature } from "../support/flat-course.ts";
import { DOGLEG, hilly, PAR_FOUR } from "../support/hilly-course.ts";

/** Kinds an area can be laid down as beside a hole's own line, green and tees. */
const LAID = ALL_KINDS.filter((kind) => !["line-of-play", "green", "tee-marker", "pin"].includes(kind));

const bare = PAR_FOUR.filter(({ id }) => !["fairway", "burn", "pot"].includes(id));
const flat = (): number => 20;
const withArea = (kind: FeatureKind, ring: ReturnType<typeof box>, heightMetres?: number): MeasuredCourse =>
  hilly([...bare, { ...areaFeature("it", kind, ring), heightMetres }], flat);

/** What a rule that looks at the ground alone asks for. */
const NO_CONTEXT = {
  club: club([]),
  today: "2026-05-01",
  say: sayIn("metres"),
  photos: undefined,
  pages: undefined,
  factsOf: () => undefined,
};

describe("tags", () => {
  test("each says its kind, in every geometry it may have", () => {
    for (const kind of ALL_KINDS) {
      for (const tag of kindFacts(kind).tags) {
        const [key, value] = tag.split("=") as [string, string];
        for (const type of kindFacts(kind).geometry)
          expect(featureKind({ [key]: value === "*" ? "yes" : value }, type), `${tag} ${type}`).toBe(kind);
      }
    }
  });

  test("golf tags are refused in every other geometry, and only there", () => {
    const types = ["Point", "MultiPoint", "LineString", "MultiLineString", "Polygon", "MultiPolygon"] as const;
    for (const golf of valuesOf("golf")) {
      for (const type of types) {
        const refused = checkVocabulary({ golf }, type, [], "it").some(({ rule }) => rule === "golf-geometry");
        expect(refused, `${golf} ${type}`).toBe(!geometriesOf(`golf=${golf}`).includes(type));
      }
    }
  });

  test("what no kind has is other", () => {
    for (const tags of [{}, { natural: "geyser" }, { golf: "windmill" }, { landuse: "quarry" }])
      expect(featureKind(tags, "Polygon")).toBe("other");
  });
});

test("a penalty area is water unless its tags name other ground, and no other kind hangs on its tags", () => {
  for (const kind of ["penalty-area-yellow", "penalty-area-red"] as const) {
    for (const wet of [
      {},
      { natural: "water" },
      { natural: "coastline" },
      { waterway: "stream" },
      { man_made: "pier" },
    ]) {
      expect(coverOf({ kind, tags: wet }), JSON.stringify(wet)).toBe("water");
    }
    for (const ground of ["scrub", "heath", "wood", "grassland", "sand", "bare_rock"]) {
      expect(coverOf({ kind, tags: { natural: ground } })).toBe(
        kindFacts(featureKind({ natural: ground }, "Polygon")).cover,
      );
    }
    for (const unknown of [{ natural: "wetland" }, { wetland: "marsh" }, { landuse: "meadow" }])
      expect(coverOf({ kind, tags: unknown })).toBe("none");
  }
  for (const kind of LAID.filter((one) => !one.startsWith("penalty")))
    expect(coverOf({ kind, tags: { natural: "scrub" } })).toBe(kindFacts(kind).cover);
});

describe.each(LAID)("%s", (kind) => {
  const beside = withArea(kind, box(20, 190, 60, 240)).holes[0]!;
  const [tee] = beside.tees;

  test("has figures as a hazard if it is one, and is played past unless it is a boundary", () => {
    const own = tee!.hazards.filter(({ id }) => id === "it");
    expect(own.length > 0).toBe(isHazard(kind));
    for (const hazard of own) expect(carriedOver(hazard) !== undefined).toBe(!isBoundary(kind));
  });

  test("ends a good lie unless a ball is played from it", () => {
    expect(landingAt(beside, tee!, 200)!.right?.id === "it").toBe(kindFacts(kind).ball !== "played");
  });

  test("stands in the way of a corner if it is a hazard or must be flown, and is a risk on it if it is a boundary", () => {
    const dogleg = hilly(
      [
        ...DOGLEG.filter(({ id }) => id !== "gorse" && id !== "fairway"),
        areaFeature("it", kind, box(10, 120, 100, 190)),
      ],
      flat,
    ).holes[0]!;
    const { obstacles, outOfBounds } = cornerLines(dogleg, dogleg.tees[0]!)[0]!;
    expect(obstacles.some(({ id }) => id === "it")).toBe(
      !isBoundary(kind) && (isHazard(kind) || kindFacts(kind).inTheWay),
    );
    expect(outOfBounds.some(({ id }) => id === "it")).toBe(isBoundary(kind));
  });

  test("hides what lies behind it, where it is tall and of a kind that does", () => {
    const across = withArea(kind, box(-40, 100, 40, 110), 12);
    expect(
      seenFrom(
        across.holes[0]!,
        across.ground!,
        [...across.holes[0]!.tees[0]!.marker],
        across.holes[0]!.tees[0]!.green.middle,
      ),
    ).toBe(!kindFacts(kind).hides);
  });

  test("is told of where it reaches out of bounds, if it is prepared for play", () => {
    const over = hilly([
      ...bare,
      areaFeature("it", kind, box(20, 190, 60, 240)),
      lineFeature("bounds", "out-of-bounds", [
        [40, 0],
        [40, 400],
      ]),
    ]);
    const told = crossesBoundary
      .run({ ...NO_CONTEXT, measured: over })
      .some(({ message }) => message.startsWith("it "));
    expect(told).toBe(isPrepared(kind));
  });
});

test("the plane under a ball is found whatever lies on it", () => {
  const { ground, holes } = withArea("bunker", box(-5, 190, 5, 210));
  expect(lieAt(ground!, holes[0]!.tees[0]!.marker, [0, 1])!.percent).toBeCloseTo(0);
});
