import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { meDrawing } from "../../src/islands/map/hole-drawing.ts";
import { holePlane } from "../../src/islands/map/hole-plane.ts";
import { isNews, ringAbout, whereabouts } from "../../src/islands/map/whereabouts.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const data = holeData(sample().holes[0]!, "yards");
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};
const where = (x: number, y: number, accuracyMetres: number) =>
  whereabouts({ position: at(x, y), accuracyMetres }, data.courseBounds, FRAME);

describe("a position on the course", () => {
  test("is told apart by how well it is known: fifty metres are the limit", () => {
    expect(where(0, 200, 5).state).toBe("on-course");
    expect(where(0, 200, 50).state).toBe("on-course");
    expect(where(0, 200, 50.1).state).toBe("coarse");
    expect(where(0, 200, 5).beyondMetres).toBe(0);
  });

  test("a little off the holes is still on it", () => {
    // The light at 480 is the northernmost thing of the hole.
    expect(where(0, 560, 5).state).toBe("on-course");
    expect(where(0, 560, 5).beyondMetres).toBeCloseTo(80, 0);
  });
});

describe("a position off the course", () => {
  test("says how far beyond its edge", () => {
    expect(where(0, 2480, 10)).toMatchObject({ state: "outside" });
    expect(where(0, 2480, 10).beyondMetres).toBeCloseTo(2000, 0);
  });

  test("counts as off only when every place it may be is", () => {
    expect(where(0, 480 + 150, 20).state).toBe("outside");
    expect(where(0, 480 + 150, 60).state).toBe("coarse");
  });

  test("across the world is a finite number of about the right size", () => {
    // From 56.5 N to the equator on one meridian, computed: 56.5 degrees of 111.2 km.
    const far = whereabouts({ position: [-9, 0], accuracyMetres: 10 }, data.courseBounds, FRAME);
    expect(far.beyondMetres / 1000).toBeGreaterThan(6250);
    expect(far.beyondMetres / 1000).toBeLessThan(6310);
    expect(
      Number.isFinite(
        whereabouts({ position: [171, -56], accuracyMetres: 10 }, data.courseBounds, FRAME).beyondMetres,
      ),
    ).toBe(true);
  });
});

test("the circle of accuracy is closed and as wide as it says", () => {
  const ring = ringAbout([10, 20], 35, (point) => at(...point));
  expect(ring[0]).toEqual(ring[ring.length - 1]);
  for (const position of ring) expect(distanceMetres(FRAME.toPlane(position), [10, 20])).toBeCloseTo(35, 3);
});

test("a golfer far off, or known to within a country, is not drawn", () => {
  const drawn = (x: number, y: number, accuracyMetres: number) =>
    meDrawing(where(x, y, accuracyMetres), undefined, holePlane(data), String);
  expect(drawn(0, 100, 8).map(({ geometry }) => geometry.type)).toEqual(["Polygon", "Point"]);
  expect(drawn(0, 30_000, 8)).toEqual([]);
  expect(drawn(0, 100, 150_000)).toEqual([]);
});

test("a golfer walking is told anew after ten metres and fifteen seconds, and at once when things change", () => {
  const told = { where: where(0, 100, 5), at: 0 };
  expect(isNews(told, where(0, 130, 5), 5_000)).toBe(false);
  expect(isNews(told, where(0, 105, 5), 60_000)).toBe(false);
  expect(isNews(told, where(0, 130, 5), 15_000)).toBe(true);
  expect(isNews(told, where(0, 130, 80), 1_000)).toBe(true);
});
