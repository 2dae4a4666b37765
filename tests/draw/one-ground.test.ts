/** Plate, live map, section, landing strip and cautions hold one opinion of the ground. */
import { describe, expect, test } from "vitest";
import { nearbyCautions } from "../../src/components/hole-view.ts";
import { calledBy } from "../../src/course/ground-cover.ts";
import { ALL_KINDS, isHazard, kindFacts, type FeatureKind, type GroundCover } from "../../src/course/kinds.ts";
import type { Feature } from "../../src/course/types.ts";
import { COMPOSITIONS } from "../../src/draw/composition.ts";
import { drawLanding } from "../../src/draw/landing.ts";
import { PALETTE } from "../../src/draw/palette.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { sectionAlong } from "../../src/draw/profile-ground.ts";
import { sceneOf } from "../../src/draw/scene.ts";
import { layHole } from "../../src/draw/sheet.ts";
import type { MapFeatureProperties } from "../../src/contract/map-data.ts";
import { runOn } from "../../src/islands/map/run-on.ts";
import { mapStyle } from "../../src/islands/map/style.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { areaFeature, box, lineFeature, pointFeature } from "../support/flat-course.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { words } from "../../src/site/language/words.ts";

const bare = PAR_FOUR.filter(({ id }) => !["fairway", "burn", "pot"].includes(id));
const holeWith = (...features: readonly Feature[]) => hilly([...bare, ...features], () => 20);
const AREA = box(-40, 190, 40, 240);

/** Whether a map layer's filter lets a feature through; the few expressions our filters are made of. */
function passes(filter: unknown, properties: MapFeatureProperties, geometry: string): boolean {
  const value = (part: unknown): unknown => {
    if (!Array.isArray(part)) return part;
    const [operator, a, b] = part as [string, unknown, unknown];
    switch (operator) {
      case "get":
        return properties[a as keyof MapFeatureProperties];
      case "geometry-type":
        return geometry;
      case "literal":
        return a;
      case "==":
        return value(a) === value(b);
      case "!=":
        return value(a) !== value(b);
      case "in":
        return (value(b) as unknown[]).includes(value(a));
      case "all":
        return part.slice(1).every((one) => value(one) === true);
      default:
        throw new Error(`The test does not know the expression ${operator}.`);
    }
  };
  return value(filter) === true;
}

/** Ids of the map's layers that show a feature of a hole, from the bottom up. */
function mapLayersOf(measured: ReturnType<typeof holeWith>, id: string): string[] {
  const data = holeData(measured.holes[0]!, "yards");
  const { geometry, properties } = data.features.features.find((one) => one.properties.id === id)!;
  const { layers } = mapStyle({
    colours: PALETTE.light,
    features: data.features,
    origin: data.origin,
    line: undefined,
    fonts: ["Sans"],
    bunkersFromZoom: 0,
    ground: undefined,
  });
  return layers
    .filter(
      (layer) => "source" in layer && layer.source === "features" && passes(layer.filter, properties, geometry.type),
    )
    .map((layer) => layer.id);
}

/** What each place says of the ground of the feature `it`. */
function opinions(measured: ReturnType<typeof holeWith>) {
  const [hole] = measured.holes;
  const [tee] = hole!.tees;
  const placed = hole!.placed.get("it")!;
  const scene = sceneOf(hole!.placed.values(), layHole(hole!, COMPOSITIONS.desk), COMPOSITIONS.desk.knots);
  const landing = drawLanding(hole!, [{ player: "scratch-men", figures: landingAt(hole!, tee!, 215)! }], {
    idPrefix: "l",
    unit: "metres",
    words: words("en").drawGround,
  })!.svg;
  const section = sectionAlong(hole!, measured.ground!, tee!.line, {
    behindMetres: 0,
    beyondMetres: 0,
    spacingMetres: 5,
  })!;
  return {
    cover: placed.cover,
    plate: scene.water.some(({ feature }) => feature.id === "it"),
    map: mapLayersOf(measured, "it").includes("water"),
    section: section.some(({ stationMetres, surface }) => Math.abs(stationMetres - 215) < 20 && surface === "water"),
    landing: landing.includes("plate-sea"),
  };
}

describe("wet or dry", () => {
  const cases: readonly (readonly [FeatureKind, Feature["tags"]])[] = [
    ...ALL_KINDS.filter((kind) => !["line-of-play", "green", "tee-marker", "pin"].includes(kind)).map(
      (kind) => [kind, {}] as const,
    ),
    ...(["penalty-area-yellow", "penalty-area-red"] as const).flatMap((kind) =>
      [
        { natural: "scrub" },
        { natural: "heath" },
        { natural: "wood" },
        { natural: "sand" },
        { natural: "grassland" },
        { natural: "wetland" },
        { natural: "water" },
        { waterway: "pond" },
        { landuse: "meadow" },
      ].map((tags) => [kind, tags] as const),
    ),
  ];

  test.each(cases)("%s %j is one or the other everywhere", (kind, tags) => {
    const { cover, ...said } = opinions(holeWith(areaFeature("it", kind, AREA, { tags })));
    const wet = cover === "water";
    expect(said).toEqual({ plate: wet, map: wet, section: wet, landing: wet });
  });

  test.each(cases)("%s %j is warned of as water only where it is wet", (kind, tags) => {
    const measured = holeWith(areaFeature("it", kind, AREA, { tags }));
    const wet = measured.holes[0]!.placed.get("it")!.cover === "water";
    expect(nearbyCautions(measured.holes[0]!).includes("water")).toBe(wet);
  });

  test("stakes round a pond or a burn leave the bank dry, and the water wet, on plate and map alike", () => {
    const around = areaFeature("it", "penalty-area-red", AREA);
    const pond = areaFeature("pond", "water", box(-20, 200, 20, 230));
    const burn = lineFeature(
      "burn",
      "stream",
      [
        [-60, 215],
        [60, 215],
      ],
      { widthMetres: 3 },
    );
    for (const water of [pond, burn]) {
      const measured = holeWith(around, water);
      const { section, landing, ...bank } = opinions(measured);
      expect(bank).toEqual({ cover: "none", plate: false, map: false });
      expect([section, landing]).toEqual([true, true]);
      expect(mapLayersOf(measured, water.id)).toContain(water === pond ? "water" : "burn");
    }
    // A sea that the area ends at lies beside it, not in it.
    expect(opinions(holeWith(around, areaFeature("sea", "water", box(30, -400, 900, 900)))).cover).toBe("water");
    // A pond told by its tags stays one, whatever else is drawn in it.
    expect(
      opinions(holeWith(areaFeature("it", "penalty-area-red", AREA, { tags: { natural: "water" } }), pond)).cover,
    ).toBe("water");
  });

  test("only water runs on beyond the sheet", () => {
    for (const natural of ["water", "scrub"]) {
      const measured = holeWith(
        areaFeature(
          "it",
          "penalty-area-red",
          [
            [-800, -90],
            [-60, -90],
            [-60, 900],
            [-800, 900],
          ],
          { tags: { natural } },
        ),
      );
      const { features, origin } = holeData(measured.holes[0]!, "yards");
      expect(JSON.stringify(runOn(features, origin)) !== JSON.stringify(features)).toBe(natural === "water");
    }
  });
});

test("gorse in a penalty area is drawn as gorse is, and a tip may call it so", () => {
  const natural = (tag: string, kind: FeatureKind) =>
    holeWith(areaFeature("it", kind, AREA, { tags: { natural: tag } }));
  for (const [tag, cover] of [
    ["scrub", "scrub"],
    ["wood", "wood"],
    ["heath", "heath"],
    ["sand", "strand"],
  ] as const satisfies readonly (readonly [string, GroundCover])[]) {
    const marked = natural(tag, "penalty-area-red");
    expect(mapLayersOf(marked, "it")).toEqual(expect.arrayContaining([cover, "penalty-red"]));
    const scene = sceneOf(
      marked.holes[0]!.placed.values(),
      layHole(marked.holes[0]!, COMPOSITIONS.desk),
      COMPOSITIONS.desk.knots,
    );
    expect(scene.covered(cover).map(({ feature }) => feature.id)).toEqual(["it"]);
  }
  expect(calledBy(natural("scrub", "penalty-area-red").holes[0]!.placed.get("it")!)).toEqual(
    kindFacts("scrub").called,
  );
});

describe("every kind is drawn", () => {
  const shapes = (kind: FeatureKind): Feature[] => {
    const { geometry } = kindFacts(kind);
    const types = new Set<string>(geometry);
    return [
      ...(types.has("Polygon") ? [areaFeature("it", kind, AREA, { tags: { man_made: "tower" } })] : []),
      ...(types.has("LineString")
        ? [
            lineFeature(
              "it",
              kind,
              [
                [-40, 190],
                [40, 230],
              ],
              { tags: {} },
            ),
          ]
        : []),
      ...(types.has("Point") ? [pointFeature("it", kind, [12, 210], { tags: { man_made: "tower" } })] : []),
    ];
  };
  const plateOf = (measured: ReturnType<typeof holeWith>): string =>
    drawPlate(measured.holes[0]!, { idPrefix: "p", composition: "desk", unit: "yards", words: words("en").draw }).svg;
  const plain = plateOf(holeWith());
  /** What only bounds a course, or is none of ours, is not drawn; what the hole has itself is drawn from its tees. */
  const kinds = ALL_KINDS.filter((kind) => !["line-of-play", "green", "tee-marker", "course", "other"].includes(kind));

  test.each(kinds)("%s shows on the plate and on the map, in one of its geometries at least", (kind) => {
    const laid = shapes(kind).map((feature) => holeWith(feature));
    expect(laid.some((measured) => plateOf(measured) !== plain)).toBe(true);
    expect(laid.some((measured) => mapLayersOf(measured, "it").length > 0)).toBe(true);
  });

  test("hazards are hazards on the map, and nothing else is", () => {
    for (const kind of kinds) {
      const data = holeData(holeWith(areaFeature("it", kind, AREA)).holes[0]!, "yards");
      expect(
        data.features.features.find(({ properties }) => properties.id === "it")!.properties.hazard === true,
        kind,
      ).toBe(isHazard(kind));
    }
  });
});
