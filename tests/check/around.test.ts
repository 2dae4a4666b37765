/** Where things lie, as words see it. */
import { describe, expect, test } from "vitest";
import { whereaboutsFinder, type Whereabouts } from "../../src/check/around.ts";
import type { Feature } from "../../src/course/types.ts";
import { longestLine } from "../../src/measure/hole.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { areaFeature, box, lineFeature } from "../support/flat-course.ts";
import { plainCourse } from "./support.ts";

/** Of a hole that plays north to a green 20 m by 20 m about [0, 380]. */
function where(feature: Feature): Whereabouts {
  const hole = measureCourse(plainCourse({ features: [feature] })).holes[0]!;
  return whereaboutsFinder(longestLine(hole), hole.tees[0]!.green)(hole.placed.get(feature.id)!);
}

const pit = (west: number, south: number, size = 6): Feature =>
  areaFeature("pit", "bunker", box(west, south, west + size, south + size));

describe("beside the line", () => {
  test("left and right", () => {
    expect([...where(pit(-30, 200)).surely]).toEqual(["left"]);
    expect([...where(pit(30, 200)).surely]).toEqual(["right"]);
  });
  test("further than a stray shot it is only perhaps there, and beyond 150 m not at all", () => {
    expect([...where(pit(100, 200)).surely]).toEqual([]);
    expect([...where(pit(100, 200)).perhaps]).toEqual(["right"]);
    expect([...where(pit(155, 200)).perhaps]).toEqual([]);
  });
  test("a long boundary of two points is on its side all the way", () => {
    const wall = where(
      lineFeature("wall", "out-of-bounds", [
        [40, -2000],
        [40, 3000],
      ]),
    );
    expect([...wall.surely]).toEqual(["right"]);
  });
  test("water whose shores are all far away is still where it is", () => {
    const sea = where(areaFeature("sea", "water", box(-3000, -3000, -20, 3000)));
    expect([...sea.surely]).toEqual(["left"]);
    expect([...sea.green.surely]).toContain("left");
  });
});

describe("about the green", () => {
  test.each([
    ["left", pit(-20, 377)],
    ["right", pit(14, 377)],
    ["short", pit(-3, 358)],
    ["long", pit(-3, 394)],
    ["short-left", pit(-18, 360)],
    ["short-right", pit(12, 360)],
    ["long-left", pit(-18, 394)],
    ["long-right", pit(12, 394)],
  ] as const)("%s", (zone, feature) => {
    const { green } = where(feature);
    expect([...green.surely]).toContain(zone);
    expect([...green.perhaps]).toContain(zone);
  });
  test.each([
    ["left", pit(14, 377)],
    ["long", pit(-3, 358)],
    ["short", pit(-3, 394)],
    ["short-left", pit(12, 394)],
    ["right", pit(-3, 358)],
  ] as const)("not even perhaps %s", (zone, feature) => {
    expect([...where(feature).green.perhaps]).not.toContain(zone);
  });
  test("what may be said is never less than what is sure", () => {
    for (let x = -60; x <= 60; x += 12) {
      for (let y = 320; y <= 440; y += 12) {
        const { green } = where(pit(x, y));
        for (const zone of green.surely) expect([...green.perhaps], `${x} ${y}`).toContain(zone);
      }
    }
  });
});
