import { describe, expect, test } from "vitest";
import { courseData } from "../../src/site/files/course-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { groundBounds } from "../../src/site/files/tiles.ts";
import { frameAt } from "../../src/geo/frame.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import { sample } from "../islands/sample.ts";

const measured = sample();
const figures = measured.holes[0]!;
const data = holeData(figures, "yards");

/** The road is a boundary; the bay runs on 85 m beyond the green. */
const NEVER_PASSED = ["road", "bay"];

describe("hole data", () => {
  test("is the same after a trip through JSON", () => {
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
  });

  test("carries the build's own figures to the millimetre", () => {
    data.tees.forEach((tee, i) => {
      const built = figures.tees[i]!;
      expect(tee.id).toBe(built.tee.id);
      expect(tee.lengthMetres).toBeCloseTo(built.lengthMetres, 3);
      expect(tee.green.front.metres).toBeCloseTo(built.green.frontMetres, 3);
      expect(tee.green.back.metres).toBeCloseTo(built.green.backMetres, 3);
      expect(tee.hazards.map(({ id, reach, carry }) => [id, reach.metres, carry?.metres])).toEqual(
        built.hazards.map(({ id, reachMetres, carryMetres }) => [
          id,
          Number(reachMetres.toFixed(3)),
          NEVER_PASSED.includes(id) ? undefined : Number(carryMetres!.toFixed(3)),
        ]),
      );
    });
  });

  test("its positions give its figures back in its own frame", () => {
    const frame = frameAt(data.origin);
    for (const { marker, green, hazards } of data.tees) {
      const from = frame.toPlane(marker);
      // Seven decimals of a degree are 1.1 cm: two rounded ends, so 2 cm.
      expect(Math.abs(distanceMetres(from, frame.toPlane(green.middle.position)) - green.middle.metres)).toBeLessThan(
        0.02,
      );
      for (const { reach } of hazards) {
        expect(Math.abs(distanceMetres(from, frame.toPlane(reach.position)) - reach.metres)).toBeLessThan(0.02);
      }
    }
  });

  test("leaves tee markers and line of play to the tees, and keeps everything else", () => {
    const ids = data.features.features.map(({ properties }) => properties.id).sort();
    expect(ids).toEqual(["bay", "burn", "fairway", "green", "gully", "light", "pot", "road"]);
    expect(data.tees[0]!.line).toHaveLength(2);
  });

  test("says what a feature is, and nothing it does not know", () => {
    const of = (id: string) => data.features.features.find(({ properties }) => properties.id === id)!.properties;
    expect(of("gully")).toEqual({
      id: "gully",
      kind: "penalty-area-red",
      name: "The Gully",
      hazard: true,
      cover: "water",
    });
    expect(of("light")).toEqual({ id: "light", kind: "landmark", name: "The Light", landmark: "lighthouse" });
    expect(of("burn").widthMetres).toBe(3);
  });

  test("drops heights: the map is flat", () => {
    const positions = data.features.features.flatMap(({ geometry }) =>
      geometry.type === "Polygon" ? geometry.coordinates.flat() : [],
    );
    expect(positions.length).toBeGreaterThan(20);
    expect(positions.every((position) => position.length === 2)).toBe(true);
  });

  test("its bounds hold the hole's own features and not the shared bay", () => {
    const [west, , , north] = data.bounds;
    const frame = frameAt(data.origin);
    const [westMetres] = frame.toPlane([west, data.origin[1]]);
    const bay = data.features.features.find(({ properties }) => properties.id === "bay")!;
    const bayWest = Math.min(
      ...(bay.geometry.type === "Polygon" ? bay.geometry.coordinates[0]! : []).map(([longitude]) => longitude!),
    );
    expect(west).toBeGreaterThan(bayWest);
    const gullyWest = figures.placed.get("gully")!.shape;
    expect(gullyWest.type === "areas" && Math.min(...gullyWest.areas.flat(2).map(([x]) => x))).toBeCloseTo(
      westMetres,
      0,
    );
    expect(north).toBeGreaterThan(data.tees[0]!.green.back.position[1]);
  });

  test("play goes up: the bearing runs from the back tee to the green", () => {
    // The hole runs due north in its own plane.
    expect(Math.abs(((data.bearingDegrees + 180) % 360) - 180)).toBeLessThan(0.05);
  });

  test("a hole the default tee set does not use opens from its longest", () => {
    const without = { ...figures, tees: figures.tees.filter(({ tee }) => tee.id !== "back") };
    expect(holeData(without, "yards").defaultTee).toBe("forward");
    expect(data.defaultTee).toBe("back");
  });

  test("a hole without tee sets is refused with what to add", () => {
    expect(() => holeData({ ...figures, tees: [] }, "yards")).toThrow(/Hole 7 has no tee set on its card: add one/);
  });
});

test("the bounds of height tiles lie within the height grid, and miss it by little", () => {
  const frame = frameAt([-9, 56.5]);
  // 2 km by 1.6 km about the frame's origin.
  const grid = {
    columns: 1001,
    rows: 801,
    stepMetres: 2,
    westMetres: -1000,
    northMetres: 800,
    heights: new Float32Array(0),
  };
  const [west, south, east, north] = groundBounds(grid, frame);
  for (const [longitude, latitude] of [
    [west, south],
    [west, north],
    [east, south],
    [east, north],
  ] as const) {
    const [x, y] = frame.toPlane([longitude, latitude]);
    expect(Math.abs(x)).toBeLessThan(1000.1);
    expect(Math.abs(y)).toBeLessThan(800.1);
    expect(Math.abs(x)).toBeGreaterThan(999);
    expect(Math.abs(y)).toBeGreaterThan(799);
  }
});

describe("course data", () => {
  const whole = courseData(measured, "metres", (hole) => `${hole}/`);

  test("is the same after a trip through JSON", () => {
    expect(JSON.parse(JSON.stringify(whole))).toEqual(whole);
  });

  test("has each hole's line, address and length by tee", () => {
    expect(whole.holes).toHaveLength(1);
    const [hole] = whole.holes;
    expect(hole).toMatchObject({ number: 7, name: "Skerry", path: "7/" });
    expect(Object.keys(hole!.lengthMetres)).toEqual(["back", "forward"]);
    expect(hole!.lengthMetres["back"]! - hole!.lengthMetres["forward"]!).toBeCloseTo(50, 2);
  });

  test("has shared features once, and marks the others with their hole", () => {
    const of = (id: string) => whole.features.features.filter(({ properties }) => properties.id === id);
    expect(of("bay").map(({ properties }) => properties.hole)).toEqual([undefined]);
    expect(of("gully").map(({ properties }) => properties.hole)).toEqual([7]);
  });
});
