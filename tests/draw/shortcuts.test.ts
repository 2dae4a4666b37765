/** Short cuts of the drawing change nothing of what is drawn: each against the long way. */
import { describe, expect, test } from "vitest";
import { CoverGrid, type Cover } from "../../src/draw/cover.ts";
import { isolines } from "../../src/draw/isolines.ts";
import { hash01, strew } from "../../src/draw/scatter.ts";
import { sheetOf } from "../../src/draw/sheet.ts";
import { contains } from "../../src/geo/area.ts";
import type { Box } from "../../src/geo/box.ts";
import type { Point } from "../../src/geo/position.ts";
import { directionOfBearing } from "../../src/geo/vector.ts";

const map: Box = [10, 10, 390, 710];
const star = (x: number, y: number, r: number): Point[] =>
  Array.from({ length: 14 }, (_, i): Point => {
    const reach = i % 2 === 0 ? r : r * 0.55;
    return [x + reach * Math.cos((i * Math.PI) / 7), y + reach * Math.sin((i * Math.PI) / 7)];
  });

/** Three bunkers, one of them over the map's edge, on open ground. */
function bunkers(): CoverGrid {
  const cover = new CoverGrid([-12, -12, 412, 732], 3);
  for (const [x, y, r] of [
    [80, 120, 22],
    [300, 600, 31],
    [388, 300, 40],
  ] as const)
    cover.fill([star(x, y, r)], "bunker");
  return cover;
}

describe("strewing on ground known beforehand", () => {
  const cover = bunkers();
  const on = (kind: Cover): boolean => kind === "bunker";
  test.each([0, 17, 45, 90, 133, 271.5])(
    "gives the same marks as asking everywhere, on a sheet turned by %d degrees",
    (bearing) => {
      for (const [least, salt] of [
        [2.5, 37],
        [4.8, 53],
        [9, 11],
        [20, 31],
      ] as const) {
        const sheet = sheetOf({
          map,
          up: directionOfBearing(bearing),
          pxPerMetre: 2.3,
          centre: [812.5, -417.25],
          width: 400,
          height: 720,
        });
        const spacing = (p: Point): number => (cover.at(p) === "bunker" ? least * (1 + (p[1] % 7) / 10) : 0);
        const everywhere = strew(sheet, least, salt, spacing);
        expect(everywhere.length).toBeGreaterThan(3);
        expect(strew(sheet, least, salt, spacing, { cover, on })).toEqual(everywhere);
      }
    },
  );

  test("asks only where there is such ground, or near it", () => {
    const sheet = sheetOf({ map, up: [0, 1], pxPerMetre: 2.3, centre: [0, 0], width: 400, height: 720 });
    const asked = { everywhere: 0, there: 0 };
    strew(sheet, 2.5, 37, () => (asked.everywhere++, 0));
    strew(sheet, 2.5, 37, () => (asked.there++, 0), { cover, on });
    expect(asked.there).toBeGreaterThan(0);
    expect(asked.there).toBeLessThan(asked.everywhere / 10);
    strew(
      sheet,
      2.5,
      37,
      () => {
        throw new Error("There is no heath on this sheet.");
      },
      { cover, on: (kind) => kind === "heath" },
    );
  });
});

test("a mask's gap holds no ground it looks for, and is 0 on it", () => {
  const cover = bunkers();
  const mask = cover.mask(1.5, (kind) => kind === "bunker");
  let seen = 0;
  for (let i = 0; i < 2000; i++) {
    const [x, y] = [hash01(i, 1, 1) * 400, hash01(i, 2, 1) * 720];
    const gap = mask.gap(x, y);
    for (let k = 0; k < 24; k++) {
      const [ux, uy] = directionOfBearing(k * 15);
      const r = gap * 0.999;
      if (gap > 0) expect(cover.at([x + ux * r, y + uy * r])).not.toBe("bunker");
    }
    if (cover.at([x, y]) === "bunker") expect(gap).toBe(0);
    if (gap > 20) seen++;
  }
  expect(seen).toBeGreaterThan(500);
});

test("a filled cover holds the cells whose middles lie inside, even-odd", () => {
  const cover = new CoverGrid([0, 0, 120, 90], 3);
  const rings = [star(55, 45, 52), star(50, 40, 14)];
  cover.fill(rings, "green");
  for (let y = 1.5; y < 90; y += 3)
    for (let x = 1.5; x < 120; x += 3) expect(cover.at([x, y])).toBe(contains(rings, [x, y]) ? "green" : "open");
});

test("level lines within the part of a grid that holds them are the lines of the whole", () => {
  const values = Float64Array.from(
    { length: 60 * 50 },
    (_, i) => 9 - Math.hypot((i % 60) - 30, Math.floor(i / 60) - 20),
  );
  const whole = isolines(values, 60, 50, 2.2);
  expect(whole).toHaveLength(1);
  expect(isolines(values, 60, 50, 2.2, [20, 10, 40, 30])).toEqual(whole);
});
