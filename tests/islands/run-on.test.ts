import { describe, expect, test } from "vitest";
import type { Polygon } from "geojson";
import { contains } from "../../src/geo/area.ts";
import type { Point } from "../../src/geo/position.ts";
import type { MapFeatures } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { runOn } from "../../src/islands/map/run-on.ts";
import { areaFeature, box, course, FRAME, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import { measureCourse } from "../../src/measure/course.ts";

/** A sea along the west of the sheet and round its south, a pond at the east edge, a wood at the north one. */
const data = holeData(
  measureCourse(
    course(
      [
        hole([
          lineFeature("line", "line-of-play", [
            [0, 0],
            [0, 400],
          ]),
          pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
          areaFeature("green", "green", box(-10, 385, 10, 415)),
          areaFeature("pond", "water", box(110, 100, 150, 140)),
          areaFeature("wood", "wood", box(-20, 450, 140, 600)),
        ]),
      ],
      {
        features: [
          areaFeature("sea", "penalty-area-red", [
            [-120, -120],
            [149, -120],
            [149, -60],
            [-60, -60],
            [-60, 600],
            [-120, 600],
          ]),
        ],
      },
    ),
  ).holes[0]!,
  "yards",
);
const on = runOn(data.features, data.origin);

const rings = (features: MapFeatures, id: string): Point[][] => {
  const geometry = features.features.find(({ properties }) => properties.id === id)!.geometry as Polygon;
  return geometry.coordinates.map((ring) =>
    ring.map(([longitude, latitude]) => FRAME.toPlane([longitude!, latitude!])),
  );
};

describe("water that the sheet cuts", () => {
  test("runs on beyond it on every side it reaches", () => {
    const sea = [rings(on, "sea")];
    const inSea = (point: Point) => sea.some((area) => contains(area, point));
    for (const point of [
      [-100, 200],
      [-3000, 200],
      [-3000, -3000],
      [50, -3000],
      [3000, -90],
    ] as const)
      expect(inSea(point), String(point)).toBe(true);
    for (const point of [
      [0, 200],
      [3000, 200],
      [-50, 3000],
    ] as const)
      expect(inSea(point), String(point)).toBe(false);
  });

  test("keeps its shore", () => {
    const shore = (features: MapFeatures) =>
      rings(features, "sea")[0]!.filter(([x, y]) => Math.abs(x + 60) < 1 && y < 599);
    expect(shore(on)).toEqual(shore(data.features));
    expect(shore(on).length).toBeGreaterThan(0);
  });
});

test("a pond at the edge and land stay as they are, and nothing is measured anew", () => {
  for (const id of ["pond", "wood", "green"]) expect(rings(on, id)).toEqual(rings(data.features, id));
});

test("a course without water is left alone", () => {
  const dry = {
    ...data.features,
    features: data.features.features.filter(({ properties }) => properties.kind === "green"),
  };
  expect(runOn(dry, data.origin)).toEqual(dry);
  expect(runOn({ type: "FeatureCollection", features: [] }, data.origin).features).toEqual([]);
});
