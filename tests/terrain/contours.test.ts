import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geo/position.ts";
import { cross } from "../../src/geo/vector.ts";
import { clipLine } from "../../src/terrain/clip-line.ts";
import { type Contour, contoursOf } from "../../src/terrain/contours.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { FIELD, HILL_SIGMA, cone, disc, gridOfField, hill, plane, rectangle } from "./surfaces.ts";

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - points[i]![0], y - points[i]![1]), 0);

const areaOf = (points: readonly Point[]): number =>
  Math.abs(points.slice(1).reduce((sum, b, i) => sum + cross(points[i]!, b), 0)) / 2;

describe("contoursOf", () => {
  it("draws circles on the cone, each at its radius within 1 cm", () => {
    const lines = contoursOf(gridOfField(cone), { intervalMetres: 2 });
    const closed = lines.filter((line) => line.closed);
    // 20 m is at radius 50, 18 m would be at 60: it only touches the field's edge.
    expect(closed.map(({ heightMetres }) => heightMetres)).toEqual([20, 22, 24, 26, 28]);
    for (const { heightMetres, points } of closed) {
      const radius = (30 - heightMetres) / 0.2;
      for (const [x, y] of points) expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(0.02);
      expect(Math.abs(lengthOf(points) / (2 * Math.PI * radius) - 1)).toBeLessThan(0.004);
    }
  });

  it("encloses the hill's areas: 2 pi sigma² ln(top / level), within 0.5 %", () => {
    for (const { heightMetres, points, closed } of contoursOf(gridOfField(hill), { intervalMetres: 1 })) {
      if (!closed || heightMetres > 9) continue;
      expect(
        Math.abs(areaOf(points) / (2 * Math.PI * HILL_SIGMA ** 2 * Math.log(10 / heightMetres)) - 1),
      ).toBeLessThan(0.005);
    }
  });

  it("keeps every point on its level and higher ground to the left", () => {
    const grid = gridOfField((point) => hill(point) + plane(point));
    for (const { heightMetres, points } of contoursOf(grid, { intervalMetres: 0.5 })) {
      points.forEach((point, i) => {
        expect(heightAt(grid, point)).toBeCloseTo(heightMetres, 4);
        const next = points[i + 1];
        if (!next || Math.hypot(next[0] - point[0], next[1] - point[1]) < 0.2) return;
        const middle: Point = [(point[0] + next[0]) / 2, (point[1] + next[1]) / 2];
        const [dx, dy] = [next[0] - point[0], next[1] - point[1]];
        const right = heightAt(grid, [middle[0] + dy * 0.05, middle[1] - dx * 0.05]);
        const left = heightAt(grid, [middle[0] - dy * 0.05, middle[1] + dx * 0.05]);
        if (right !== undefined && left !== undefined) expect(left).toBeGreaterThan(right);
      });
    }
  });

  it("draws one unbroken line across the seams of its blocks", () => {
    const wide = gridOf({ west: 0, south: 0, east: 300, north: 300 }, 1, ([x, y]) => (0.02 * x + 0.03 * y) / 2);
    const lines = contoursOf(wide, { intervalMetres: 1 });
    // Levels 0 (its corner only) to 7.5 m: seven lines, each right across.
    expect(lines.map(({ heightMetres }) => heightMetres)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    for (const { points, heightMetres } of lines) {
      const x = (y: number): number => (2 * heightMetres - 0.03 * y) / 0.02;
      const y = (x: number): number => (2 * heightMetres - 0.02 * x) / 0.03;
      const from: Point = y(0) <= 300 ? [0, y(0)] : [x(300), 300];
      const to: Point = x(0) <= 300 ? [x(0), 0] : [300, y(300)];
      expect(lengthOf(points)).toBeCloseTo(Math.hypot(to[0] - from[0], to[1] - from[1]), 2);
    }
    const big = gridOf(
      { west: -200, south: -200, east: 200, north: 200 },
      1,
      ([x, y]) => 40 - 0.2 * Math.hypot(x + 0.3, y),
    );
    const ring = contoursOf(big, { intervalMetres: 10 }).filter(({ heightMetres }) => heightMetres === 10);
    expect(ring).toHaveLength(1);
    expect(ring[0]!.closed).toBe(true);
    expect(lengthOf(ring[0]!.points)).toBeCloseTo(2 * Math.PI * 150, 0);
  });

  it("ends at the field's edge and at unknown ground instead of running along them", () => {
    const grid = gridOf(FIELD, 1, (point) => (Math.hypot(point[0] - 20, point[1]) < 8 ? undefined : plane(point)));
    for (const { points, closed } of contoursOf(grid, { intervalMetres: 0.5 })) {
      expect(closed).toBe(false);
      for (const point of points) {
        expect(heightAt(grid, point)).toBeDefined();
        // On a plane every line is straight; one along an edge would not be.
        expect(plane(point)).toBeCloseTo(plane(points[0]!), 3);
      }
    }
  });

  it("keeps a ring in one piece when unknown ground bites into it", () => {
    const grid = gridOf(FIELD, 1, (point) => (point[0] === 30 && point[1] === 0 ? undefined : cone(point)));
    const [line, ...others] = contoursOf(grid, { intervalMetres: 24 }).filter(
      ({ heightMetres }) => heightMetres === 24,
    );
    expect(others).toEqual([]);
    expect(line!.closed).toBe(false);
    expect(lengthOf(line!.points)).toBeGreaterThan(2 * Math.PI * 30 - 5);
  });

  it("keeps heights that are the level itself from breaking lines or doubling points", () => {
    const steps = gridOf(FIELD, 1, ([x, y]) => Math.round(plane([x, y])));
    for (const { points } of contoursOf(steps, { intervalMetres: 1 })) {
      expect(points.length).toBeGreaterThan(1);
      points.slice(1).forEach((point, i) => expect(point).not.toEqual(points[i]));
    }
    expect(
      contoursOf(
        gridOfField(() => 5),
        { intervalMetres: 1 },
      ),
    ).toEqual([]);
  });

  it("counts levels from a base", () => {
    const levels = contoursOf(gridOfField(plane), { intervalMetres: 2, baseMetres: 0.5 }).map(
      ({ heightMetres }) => heightMetres,
    );
    expect(levels).toEqual([16.5, 18.5, 20.5, 22.5]);
  });

  it("cuts to an area, leaves points out within the tolerance and specks altogether", () => {
    const grid = gridOfField(hill);
    const within = disc([10, 0], 15);
    const full = contoursOf(grid, { intervalMetres: 1, within });
    const thin = contoursOf(grid, { intervalMetres: 1, within, toleranceMetres: 0.1 });
    const count = (lines: readonly Contour[]): number => lines.reduce((sum, { points }) => sum + points.length, 0);
    expect(count(thin)).toBeLessThan(count(full) / 2);
    for (const { points, heightMetres } of thin) {
      const radius = HILL_SIGMA * Math.sqrt(2 * Math.log(10 / heightMetres));
      for (const [x, y] of points) {
        expect(Math.hypot(x - 10, y)).toBeLessThan(15.001);
        expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(0.1);
      }
    }
    const long = contoursOf(grid, { intervalMetres: 1, within, leastLengthMetres: 25 });
    expect(long.length).toBeLessThan(full.length);
    for (const { points } of long) expect(lengthOf(points)).toBeGreaterThanOrEqual(25);
  });

  it("draws nothing on unknown ground and refuses an interval of 0", () => {
    expect(
      contoursOf(
        gridOfField(() => undefined),
        { intervalMetres: 1 },
      ),
    ).toEqual([]);
    expect(() => contoursOf(gridOfField(hill), { intervalMetres: 0 })).toThrow("interval above 0");
  });

  it("is the same every time", () => {
    const options = { intervalMetres: 0.5, within: rectangle(-30, -30, 30, 30), toleranceMetres: 0.1 };
    expect(contoursOf(gridOfField(hill), options)).toEqual(contoursOf(gridOfField(hill), options));
  });
});

describe("contours within an area", () => {
  it("are those of the whole grid, cut: levels that do not reach the area are only left out sooner", () => {
    const grid = gridOfField(hill);
    for (const area of [disc([22, -11], 9), rectangle(-40, -55, 3, -12), disc([0, 0], 7)]) {
      const cut = contoursOf(grid, { intervalMetres: 0.25 }).flatMap(({ heightMetres, points }) =>
        clipLine(points, area).map((part) => ({ heightMetres, points: part })),
      );
      expect(cut.length).toBeGreaterThan(0);
      expect(
        contoursOf(grid, { intervalMetres: 0.25, within: area }).map(({ heightMetres, points }) => ({
          heightMetres,
          points,
        })),
      ).toEqual(cut);
    }
  });
});
