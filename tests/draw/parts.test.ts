import { describe, expect, test } from "vitest";
import { clipLine, clipRing, seaFromCoast } from "../../src/draw/clip.ts";
import {
  crescents,
  curveThrough,
  doubleArea,
  evenly,
  LIGHT,
  outwardNormals,
  simplified,
} from "../../src/draw/curves.ts";
import { CoverGrid } from "../../src/draw/cover.ts";
import { hachure } from "../../src/draw/growth.ts";
import { isolines } from "../../src/draw/isolines.ts";
import { around, LabelPlacer } from "../../src/draw/labels.ts";
import { strew } from "../../src/draw/scatter.ts";
import { sheetOf } from "../../src/draw/sheet.ts";
import { dotPath, escapeXml, num, polyPath, polyPaths, smoothPath } from "../../src/draw/svg.ts";
import { textWidth } from "../../src/draw/text-width.ts";
import { ribbon, waterLines } from "../../src/draw/water.ts";
import type { Box } from "../../src/geo/box.ts";
import type { Point } from "../../src/geo/position.ts";
import { pathPoints } from "./read-svg.ts";

const circle = (x: number, y: number, r: number, n = 40): Point[] =>
  Array.from({ length: n }, (_, i): Point => [
    x + r * Math.cos((i / n) * 2 * Math.PI),
    y + r * Math.sin((i / n) * 2 * Math.PI),
  ]);
const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe("numbers and paths", () => {
  test("numbers are short", () => {
    expect([0.04, -0.04, 0.5, -0.5, 12, 12.34, -7.06].map(num)).toEqual(["0", "0", ".5", "-.5", "12", "12.3", "-7.1"]);
  });

  test("text is escaped and rid of what XML cannot hold", () => {
    expect(escapeXml(`a<b>&"'\u0000\u000b`)).toBe("a&lt;b&gt;&amp;&quot;&#39;");
  });

  test("a path reads back within half a tenth everywhere, however long", () => {
    const points = Array.from({ length: 500 }, (_, i): Point => [
      i * 0.777 + Math.sin(i) * 3.33,
      Math.cos(i / 3) * 41.17,
    ]);
    for (const path of [polyPath(points, false), smoothPath(points, false), polyPaths([points], false)]) {
      const [read] = pathPoints(path);
      expect(read).toHaveLength(500);
      expect(
        Math.max(...read!.map((p, i) => Math.max(Math.abs(p[0] - points[i]![0]), Math.abs(p[1] - points[i]![1])))),
      ).toBeLessThanOrEqual(0.05 + 1e-9);
    }
  });

  test("closed shapes in one path each begin where they should", () => {
    const shapes = [circle(10, 10, 4, 7), circle(50.55, 31.2, 9, 8), circle(-20, 4, 2, 5)];
    const read = pathPoints(polyPaths(shapes, true));
    expect(read.map((shape) => shape.length)).toEqual([7, 8, 5]);
    shapes.forEach((shape, k) => shape.forEach((p, i) => expect(distance(p, read[k]![i]!)).toBeLessThan(0.08)));
  });

  test("dots stand to half a unit", () => {
    const points: Point[] = [
      [3.2, 4.9],
      [100.1, 7.7],
    ];
    const read = pathPoints(dotPath(points)).map(([start]) => start);
    expect(read).toEqual([
      [3, 5],
      [100, 7.5],
    ]);
  });
});

describe("curves", () => {
  test("a curve goes through every point it was given", () => {
    const points: Point[] = [
      [0, 0],
      [10, 2],
      [11, 3],
      [40, -20],
      [41, 30],
      [0, 35],
    ];
    const curve = curveThrough(points, true, 1);
    for (const p of points) expect(Math.min(...curve.map((q) => distance(p, q)))).toBeLessThan(1e-9);
  });

  test("even points lie evenly", () => {
    const points = evenly(
      [
        [0, 0],
        [100, 0],
        [100, 50],
      ],
      7,
      false,
    );
    const steps = points.slice(1).map((p, i) => distance(points[i]!, p));
    expect(points[0]).toEqual([0, 0]);
    expect(points[points.length - 1]).toEqual([100, 50]);
    // The one step over the corner is shorter as the crow flies.
    expect(steps.filter((step) => Math.abs(step - 150 / 22) > 1e-6)).toHaveLength(1);
  });

  test("simplifying strays no further than it may", () => {
    const points = circle(0, 0, 50, 400);
    const few = simplified(points, 0.3);
    expect(few.length).toBeLessThan(60);
    for (const p of few) expect(distance(p, [0, 0])).toBeCloseTo(50, 9);
  });

  test.each([1, -1])("normals point outward, whichever way the ring runs (%i)", (way) => {
    const ring = circle(5, -3, 10);
    if (way < 0) ring.reverse();
    expect(Math.sign(doubleArea(ring))).toBe(way);
    outwardNormals(ring).forEach((normal, i) => {
      const p = ring[i]!;
      expect(normal[0] * (p[0] - 5) + normal[1] * (p[1] + 3)).toBeGreaterThan(9.9);
    });
  });

  test("light falls from the upper left: shade lies inside the upper left lip, light inside the lower right", () => {
    const ring = circle(0, 0, 10);
    const middle = (shape: readonly Point[]): Point => [
      shape.reduce((s, p) => s + p[0], 0) / shape.length,
      shape.reduce((s, p) => s + p[1], 0) / shape.length,
    ];
    const [shade] = crescents(ring, LIGHT, 2);
    const [lit] = crescents(ring, [-LIGHT[0], -LIGHT[1]], 2);
    const [sx, sy] = middle(shade!);
    const [lx, ly] = middle(lit!);
    expect(sx < -4 && sy < -4).toBe(true);
    expect(lx > 4 && ly > 4).toBe(true);
    for (const p of [...shade!, ...lit!]) expect(distance(p, [0, 0])).toBeLessThanOrEqual(10 + 1e-9);
  });

  test("a hachure points down the slope and is thick at its head", () => {
    const [a, b, foot] = hachure([10, 10], [0, 1], 6, 2);
    expect(distance(a!, b!)).toBeCloseTo(2, 9);
    expect(foot).toEqual([10, 16]);
  });
});

describe("cutting to the sheet", () => {
  const box: Box = [0, 0, 100, 50];

  test("a ring keeps to the box", () => {
    const cut = clipRing(circle(100, 25, 40), box);
    expect(Math.max(...cut.map(([x]) => x))).toBeLessThanOrEqual(100);
    expect(Math.min(...cut.map(([, y]) => y))).toBeGreaterThanOrEqual(0);
    expect(cut.length).toBeGreaterThan(5);
    expect(clipRing(circle(300, 300, 5), box)).toEqual([]);
  });

  test("a line that leaves and returns is in two pieces", () => {
    expect(
      clipLine(
        [
          [10, 10],
          [50, 80],
          [90, 10],
        ],
        box,
      ),
    ).toHaveLength(2);
    expect(
      clipLine(
        [
          [-10, -10],
          [-5, 60],
        ],
        box,
      ),
    ).toEqual([]);
  });

  test("the sea lies to the right of a coastline", () => {
    // Northward on the sheet's left third: sea to the right, which is the larger part.
    const [sea] = seaFromCoast(
      [
        [
          [30, 80],
          [35, 30],
          [30, -20],
        ],
      ],
      box,
    );
    expect(Math.abs(doubleArea(sea!)) / 2).toBeGreaterThan(3000);
    const [other] = seaFromCoast(
      [
        [
          [30, -20],
          [35, 30],
          [30, 80],
        ],
      ],
      box,
    );
    expect(Math.abs(doubleArea(other!)) / 2).toBeLessThan(1800);
    expect(Math.abs(doubleArea(sea!)) / 2 + Math.abs(doubleArea(other!)) / 2).toBeCloseTo(5000, 6);
  });
});

describe("water", () => {
  test("level lines of a cone are circles", () => {
    const values = Array.from({ length: 41 * 41 }, (_, i) => Math.hypot((i % 41) - 20, Math.floor(i / 41) - 20));
    const lines = isolines(values, 41, 41, 12.3);
    expect(lines).toHaveLength(1);
    expect(lines[0]!.closed).toBe(true);
    for (const p of lines[0]!.points) expect(Math.abs(distance(p, [20, 20]) - 12.3)).toBeLessThan(0.05);
  });

  test("a level line that meets the grid's edge is open", () => {
    const values = Array.from({ length: 20 * 10 }, (_, i) => i % 20);
    const [line] = isolines(values, 20, 10, 7.5);
    expect(line!.closed).toBe(false);
    expect(line!.points).toHaveLength(10);
  });

  test("water lines keep their distances from a straight shore, and end at the cut", () => {
    const box: Box = [0, 0, 300, 200];
    const lines = waterLines(
      [
        [
          [
            [0, 80],
            [300, 80],
            [300, 200],
            [0, 200],
          ],
        ],
      ],
      box,
      [5, 12, 21],
      5,
    );
    expect(lines.map(({ rank }) => rank)).toEqual([0, 1, 2]);
    lines.forEach(({ points, rank, closed }) => {
      expect(closed).toBe(false);
      for (const [x, y] of points)
        if (x > 15 && x < 285) expect(Math.abs(y - 80 - [5, 12, 21][rank]!)).toBeLessThan(0.2);
    });
  });

  test("two waters that overlap have no shore between them", () => {
    const box: Box = [0, 0, 300, 200];
    const one = [
      [20, 20],
      [180, 20],
      [180, 180],
      [20, 180],
    ] as const;
    const two = [
      [100, 40],
      [280, 40],
      [280, 160],
      [100, 160],
    ] as const;
    const lines = waterLines([[one], [two]], box, [6], 5);
    expect(lines).toHaveLength(1);
    const between = lines[0]!.points.filter(([, y]) => y > 55 && y < 145);
    expect(between.length).toBeGreaterThan(5);
    for (const [x] of between) expect(Math.min(Math.abs(x - 180), Math.abs(x - 100))).toBeGreaterThan(4);
  });

  test("a burn widens the way its water runs", () => {
    const ring = ribbon(
      [
        [0, 0],
        [100, 0],
      ],
      10,
      5,
    );
    const width = (x: number): number => {
      const ys = ring.filter((p) => Math.abs(p[0] - x) < 0.01).map((p) => p[1]);
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(width(100)).toBeCloseTo(10, 6);
    expect(width(0)).toBeLessThan(7);
  });
});

describe("strewing", () => {
  const sheet = sheetOf({
    map: [0, 0, 200, 300],
    up: [0.6, 0.8],
    pxPerMetre: 2,
    centre: [500, 900],
    width: 200,
    height: 300,
  });

  test("is even, repeatable, and empty where it should be", () => {
    const spacing = ([x]: Point): number => (x < 100 ? 12 : 0);
    const points = strew(sheet, 12, 5, spacing).map(({ point }) => point);
    expect(strew(sheet, 12, 5, spacing).map(({ point }) => point)).toEqual(points);
    expect(points.length).toBeGreaterThan(100);
    expect(points.every(([x]) => x < 100)).toBe(true);
    let closest = Infinity;
    points.forEach((p, i) => points.slice(i + 1).forEach((q) => (closest = Math.min(closest, distance(p, q)))));
    expect(closest).toBeGreaterThanOrEqual(12);
  });

  test("hangs on the ground, not on the sheet", () => {
    // The same ground a little further along another sheet: shared marks stay where they were.
    const moved = sheetOf({
      map: [0, 0, 200, 300],
      up: [0.6, 0.8],
      pxPerMetre: 2,
      centre: [510, 900],
      width: 200,
      height: 300,
    });
    const here = strew(sheet, 20, 9, () => 20).map(({ point }) => sheet.toPlane(point));
    const there = strew(moved, 20, 9, () => 20).map(({ point }) => moved.toPlane(point));
    const same = here.filter((p) => there.some((q) => distance(p, q) < 1e-6));
    expect(same.length).toBeGreaterThan(here.length * 0.6);
  });
});

describe("labels", () => {
  const cover = new CoverGrid([0, 0, 200, 200], 3);
  const bounds: Box = [0, 0, 200, 200];
  const at = (x: number, y: number, cost = 0): { at: Point; cost: number } => ({ at: [x, y], cost });

  test("the cheapest free place is taken, and then it is taken", () => {
    const placer = new LabelPlacer(bounds, cover);
    const request = { width: 30, height: 10, candidates: [at(50, 50, 1), at(100, 50, 2), at(190, 50, 0)] };
    expect(placer.place(request)?.at).toEqual([50, 50]);
    expect(placer.place(request)?.at).toEqual([100, 50]);
    expect(placer.place(request)).toBeUndefined();
  });

  test("lettering keeps off the green and prefers open ground", () => {
    const green = new CoverGrid([0, 0, 200, 200], 3);
    green.fill([circle(50, 50, 30)], "green");
    expect(
      new LabelPlacer(bounds, green).place({ width: 30, height: 10, candidates: [at(50, 50), at(150, 150, 5)] })?.at,
    ).toEqual([150, 150]);
    expect(
      new LabelPlacer(bounds, green).place({ width: 30, height: 10, limit: 20, candidates: [at(50, 50)] }),
    ).toBeUndefined();
  });

  test("no label crosses a leader, and no leader a label", () => {
    const placer = new LabelPlacer(bounds, cover);
    const first = placer.place({ width: 20, height: 10, leaderTo: [150, 100], candidates: [at(50, 100)] });
    expect(first?.leader).toEqual([
      [60, 100],
      [150, 100],
    ]);
    expect(placer.place({ width: 20, height: 10, candidates: [at(100, 100)] })).toBeUndefined();
    expect(placer.place({ width: 20, height: 10, leaderTo: [50, 180], candidates: [at(50, 60)] })).toBeUndefined();
  });

  test("a branch leaves its stem as it was", () => {
    const stem = new LabelPlacer(bounds, cover);
    const request = { width: 30, height: 10, candidates: [at(50, 50)] };
    expect(stem.branch().place(request)).toBeDefined();
    expect(stem.branch().place(request)).toBeDefined();
    expect(stem.taken).toEqual([]);
  });

  test("places around a point do not cover it", () => {
    for (const candidate of around([0, 0], 40, 12, [4, 9])) {
      expect(Math.abs(candidate.at[0]) >= 20 || Math.abs(candidate.at[1]) >= 6).toBe(true);
    }
  });

  test("width grows with the text, the size and the weight", () => {
    expect(textWidth("Wreck", 10)).toBeCloseTo((118 + 48 + 55 + 54 + 61) / 10, 9);
    expect(textWidth("Wreck", 20)).toBeCloseTo(2 * textWidth("Wreck", 10), 9);
    expect(textWidth("Wreck", 10, "heavy")).toBeGreaterThan(textWidth("Wreck", 10));
    expect(textWidth("é", 10)).toBeCloseTo(textWidth("e", 10), 9);
    expect(textWidth("ab", 10, "regular", 0.1)).toBeCloseTo(textWidth("ab", 10) + 2, 9);
  });
});
