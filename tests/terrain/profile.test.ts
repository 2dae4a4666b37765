import { describe, expect, it } from "vitest";
import { lineThrough } from "../../src/geo/line.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { climbOf, profileAlong } from "../../src/terrain/profile.ts";
import { FIELD, cone, gridOfField, plane } from "./surfaces.ts";

describe("profileAlong", () => {
  it("stops at each turning point and keeps to the spacing between", () => {
    const line = lineThrough([
      [-30, 0],
      [0, 0],
      [0, 25],
    ]);
    const profile = profileAlong(gridOfField(plane), line, 10);
    expect(profile.map(({ stationMetres }) => stationMetres)).toEqual([0, 10, 20, 30, 30 + 25 / 3, 30 + 50 / 3, 55]);
    for (const { point, heightMetres } of profile) expect(heightMetres).toBeCloseTo(plane(point), 4);
    expect(profile.at(-1)!.point).toEqual([0, 25]);
  });

  it("leaves unknown ground unknown and goes on behind it", () => {
    const grid = gridOf(FIELD, 1, (point) => (Math.abs(point[0]) < 3 ? undefined : plane(point)));
    const heights = profileAlong(
      grid,
      lineThrough([
        [-10, 0.5],
        [10, 0.5],
      ]),
      2,
    ).map(({ heightMetres }) => heightMetres);
    expect(heights.filter((height) => height === undefined)).toHaveLength(3);
    expect(heights[0]).toBeDefined();
    expect(heights.at(-1)).toBeDefined();
  });

  it("refuses a spacing that would never end", () => {
    expect(() =>
      profileAlong(
        gridOfField(plane),
        lineThrough([
          [0, 0],
          [1, 0],
        ]),
        0,
      ),
    ).toThrow("spacing above 0");
  });
});

describe("climbOf", () => {
  const along = (heights: (number | undefined)[]) =>
    heights.map((heightMetres, k) => ({ stationMetres: k, point: [k, 0] as const, heightMetres }));

  it("goes up and down the cone by the same", () => {
    const climb = climbOf(
      profileAlong(
        gridOfField(cone),
        lineThrough([
          [-50, 0],
          [50, 0],
        ]),
        1,
      ),
    );
    expect(climb.upMetres).toBeCloseTo(10, 3);
    expect(climb.downMetres).toBeCloseTo(10, 3);
  });

  it("passes over ups and downs below its threshold", () => {
    const noisy = Array.from({ length: 200 }, (_, k) => 5 + 0.02 * k + (k % 2 === 0 ? 0.1 : -0.1));
    const { upMetres, downMetres } = climbOf(along(noisy), 0.5);
    expect(upMetres - downMetres).toBeCloseTo(noisy.at(-1)! - noisy[0]!, 0);
    expect(downMetres).toBe(0);
    expect(climbOf(along(noisy), 0.01).downMetres).toBeGreaterThan(15);
  });

  it("counts an unknown stretch by the difference across it", () => {
    expect(climbOf(along([2, undefined, undefined, 7, 4]))).toEqual({ upMetres: 5, downMetres: 3 });
    expect(climbOf(along([undefined]))).toEqual({ upMetres: 0, downMetres: 0 });
    expect(climbOf([])).toEqual({ upMetres: 0, downMetres: 0 });
  });
});
