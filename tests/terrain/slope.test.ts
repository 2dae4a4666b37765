import { describe, expect, it } from "vitest";
import { directionOfBearing } from "../../src/geo/vector.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { gradientAt, isSteeper, risePercentToward, slopeOf, slopePercents } from "../../src/terrain/slope.ts";
import { slopeAt } from "../support/slope.ts";
import { FIELD, cone, gridOfField, hill, hillGradient, plane } from "./surfaces.ts";

describe("slopeAt", () => {
  it("is exact on a plane: 5 %, falling to the south-west by atan(4/3)", () => {
    const slope = slopeAt(gridOfField(plane, 2), [7.3, -11.9])!;
    expect(slope.percent).toBeCloseTo(5, 3);
    expect(slope.degrees).toBeCloseTo((Math.atan(0.05) * 180) / Math.PI, 4);
    expect(slope.downhillDegrees).toBeCloseTo(180 + (Math.atan2(4, 3) * 180) / Math.PI, 2);
  });

  it("is 20 % on the cone to 0.01 points ten steps from its apex, falling outward", () => {
    const grid = gridOfField(cone);
    for (let bearing = 0; bearing < 360; bearing += 15) {
      const [x, y] = directionOfBearing(bearing);
      const slope = slopeAt(grid, [x * 30, y * 30])!;
      expect(Math.abs(slope.percent - 20)).toBeLessThan(0.01);
      const off = ((slope.downhillDegrees! - bearing + 540) % 360) - 180;
      expect(Math.abs(off)).toBeLessThan(0.1);
    }
  });

  it("keeps to the Gaussian hill's own gradient within 0.2 points at a 1 m step", () => {
    const grid = gridOfField(hill);
    for (let k = 0; k < 200; k++) {
      const point = [-50 + ((k * 0.7548776662) % 1) * 100, -50 + ((k * 0.569840291) % 1) * 100] as const;
      const { east, north } = gradientAt(grid, point)!;
      const [gx, gy] = hillGradient(point);
      expect(Math.abs(east - gx)).toBeLessThan(0.002);
      expect(Math.abs(north - gy)).toBeLessThan(0.002);
    }
  });

  it("has no direction on level ground", () => {
    expect(
      slopeAt(
        gridOfField(() => 12),
        [0, 0],
      ),
    ).toEqual({ percent: 0, degrees: 0, downhillDegrees: undefined });
  });

  it("is unknown at the edge and beside unknown ground", () => {
    const grid = gridOf(FIELD, 1, (point) => (point[0] === 0 && point[1] === 0 ? undefined : plane(point)));
    expect(slopeAt(grid, [60, 0])).toBeUndefined();
    expect(slopeAt(grid, [0, 0])).toBeUndefined();
    expect(slopeAt(grid, [1, 1])).toBeUndefined();
    expect(slopeAt(grid, [2, 2])).toBeDefined();
  });
});

describe("slopePercents", () => {
  it("agrees with slopeAt at every height and leaves the edge and an unknown height's neighbours out", () => {
    const grid = gridOf({ west: 0, south: 0, east: 12, north: 9 }, 1, (point) =>
      point[0] === 4 && point[1] === 4 ? undefined : hill(point),
    );
    const slopes = slopePercents(grid);
    let unknown = 0;
    for (let row = 0; row < grid.rows; row++) {
      for (let column = 0; column < grid.columns; column++) {
        const whole = slopes[row * grid.columns + column]!;
        const single = slopeAt(grid, [column, 9 - row]);
        if (single === undefined) {
          expect(whole).toBeNaN();
          unknown++;
        } else {
          expect(whole).toBeCloseTo(single.percent, 4);
        }
      }
    }
    expect(unknown).toBe(2 * 13 + 2 * 8 + 9);
  });
});

describe("risePercentToward", () => {
  it("is positive uphill and nothing along the contour", () => {
    const gradient = { east: 0.04, north: 0.03 };
    expect(risePercentToward(gradient, [1, 0])).toBeCloseTo(4);
    expect(risePercentToward(gradient, [0, -1])).toBeCloseTo(-3);
    expect(risePercentToward(gradient, [-0.6, 0.8])).toBeCloseTo(0);
    expect(slopeOf(gradient).percent).toBeCloseTo(5);
  });
});

describe("isSteeper", () => {
  it("says what the gradient says, beside the edge and unknown ground too", () => {
    const grid = gridOfField((point) => (Math.hypot(point[0] - 20, point[1] + 30) < 6 ? undefined : hill(point)));
    const answers = { steep: 0, gentle: 0, unknown: 0 };
    for (let i = 0; i < 5000; i++) {
      const point = [-63 + ((i * 0.754877) % 1) * 126, -63 + ((i * 0.56984) % 1) * 126] as const;
      const gradient = gradientAt(grid, point);
      const percent = gradient && Math.hypot(gradient.east, gradient.north) * 100;
      for (const limit of [3, 12, 26]) {
        expect(isSteeper(grid, point, limit)).toBe(percent !== undefined && percent > limit);
        answers[percent === undefined ? "unknown" : percent > limit ? "steep" : "gentle"]++;
      }
    }
    expect(Math.min(...Object.values(answers))).toBeGreaterThan(100);
  });
});
