import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import type { Hole } from "../../src/course/types.ts";
import { COMPOSITIONS, type CompositionName } from "../../src/draw/composition.ts";
import { arcsOf, leftPoints } from "../../src/draw/arcs.ts";
import { drawPlate, type PlateOptions } from "../../src/draw/plate.ts";
import { layHole, sheetBearingDegrees } from "../../src/draw/sheet.ts";
import { overlaps } from "../../src/geo/box.ts";
import { fromUnit, type LengthUnit } from "../../src/geo/units.ts";
import { bearingDegrees, distanceMetres, directionTo } from "../../src/geo/vector.ts";
import { contoursOf } from "../../src/terrain/contours.ts";
import { ground, holeOf, HOSTILE, measured, TEES } from "./fixture.ts";
import { pathPoints, readSvg, type Tag } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

const course = measured();
const NAMES = Object.keys(COMPOSITIONS) as CompositionName[];
const cases = NAMES.flatMap((composition) => [7, 12].map((number) => ({ composition, number })));
const options = (composition: CompositionName, more: Partial<PlateOptions> = {}): PlateOptions => ({
  composition,
  idPrefix: "t",
  unit: "yards",
  words: words("en").draw,
  ...more,
});
const groundOf = (number: number): NonNullable<PlateOptions["ground"]> => {
  const grid = ground(holeOf(course, number));
  return {
    grid,
    intervalMetres: 1,
    contours: contoursOf(grid, { intervalMetres: 1, toleranceMetres: 0.4, leastLengthMetres: 25 }),
  };
};
const isIn = (tag: Tag, name: string, data: Readonly<Record<string, string>>): boolean =>
  tag.parents.some(
    ({ attributes }) =>
      attributes["class"] === name && Object.entries(data).every(([key, value]) => attributes[key] === value),
  );
const hidden = (tag: Tag): boolean => [...tag.parents, tag].some(({ attributes }) => attributes["display"] === "none");

describe.each(cases)("the $composition plate of hole $number", ({ composition, number }) => {
  const hole = holeOf(course, number);
  const plate = drawPlate(hole, options(composition, { ground: groundOf(number) }));
  const tags = readSvg(plate.svg);
  const sheet = layHole(hole, COMPOSITIONS[composition]);

  test("is the same bytes every time", () => {
    expect(drawPlate(holeOf(measured(), number), options(composition, { ground: groundOf(number) })).svg).toBe(
      plate.svg,
    );
  });

  test("holds nothing a strict page forbids and nothing from elsewhere", () => {
    expect(tags.map(({ name }) => name)).not.toEqual(expect.arrayContaining(["script"]));
    expect(tags.filter(({ name }) => name === "style" || name === "script" || name === "foreignObject")).toEqual([]);
    for (const { attributes } of tags) {
      expect(Object.keys(attributes).filter((key) => key === "style" || key.startsWith("on"))).toEqual([]);
      if (attributes["href"] !== undefined) expect(attributes["href"]).toMatch(/^#t-/);
    }
  });

  test("prefixes its ids, uses each once, and points only at ids it has", () => {
    const ids = tags.flatMap(({ attributes }) => attributes["id"] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^t-/);
    const pointed = [...plate.svg.matchAll(/(?:href="#|url\(#)([^")]+)/g)].map((match) => match[1]!);
    expect(pointed.length).toBeGreaterThan(5);
    expect(pointed.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("is named and described", () => {
    const root = tags[0]!.attributes;
    expect(root["role"]).toBe("img");
    const named = tags.find(({ attributes }) => attributes["id"] === root["aria-labelledby"]);
    expect(named?.text).toContain(hole.hole.name);
    expect(tags.some(({ attributes }) => attributes["id"] === root["aria-describedby"])).toBe(true);
  });

  test("weighs under 25 KB compressed", () => {
    expect(gzipSync(plate.svg, { level: 9 }).length).toBeLessThan(25_000);
  });

  test("keeps labels off each other and off every figure", () => {
    const { labels, blocked } = plate.lettering;
    expect(labels.length).toBeGreaterThan(3);
    labels.forEach((label, i) => {
      expect(labels.slice(i + 1).filter((other) => overlaps(label, other))).toEqual([]);
      expect(blocked.filter((other) => overlaps(label, other))).toEqual([]);
    });
  });

  test("keeps labels inside the neat line", () => {
    const [minX, minY, maxX, maxY] = sheet.map;
    for (const [x1, y1, x2, y2] of plate.lettering.labels) {
      expect(Math.min(x1 - minX, y1 - minY, maxX - x2, maxY - y2)).toBeGreaterThanOrEqual(0);
    }
  });

  test("shows each tee in the club's colour where its marker stands", () => {
    for (const { tee, marker } of hole.tees) {
      const [x, y] = sheet.toSheet(marker);
      const dot = tags.find(({ name, attributes }) => name === "circle" && attributes["fill"] === tee.colour);
      expect(Math.hypot(Number(dot?.attributes["cx"]) - x, Number(dot?.attributes["cy"]) - y)).toBeLessThan(0.1);
    }
  });

  test("draws arcs about the tee whose every end is a whole fifty away", () => {
    let arcs = 0;
    for (const tee of hole.tees) {
      for (const unit of ["yards", "metres"] as const) {
        const paths = tags.filter(
          (tag) =>
            tag.attributes["class"] === "plate-arc" &&
            isIn(tag, "plate-tee", { "data-tee": tee.tee.id, "data-unit": unit }),
        );
        const expected = arcsOf(tee, unit, hole.corridorMetres);
        const found = paths.flatMap(({ attributes }) => pathPoints(attributes["d"]!));
        if (found.length === 0) continue;
        expect(found.length).toBe(expected.length);
        found.forEach((arc, i) => {
          for (const end of arc) {
            // A tenth of a unit on the sheet is all that rounding may cost.
            expect(
              Math.abs(distanceMetres(sheet.toPlane(end), tee.marker) - fromUnit(expected[i]!.value, unit)) *
                sheet.pxPerMetre,
            ).toBeLessThan(0.1);
            expect(expected[i]!.value % 50).toBe(0);
          }
          arcs++;
        });
      }
    }
    expect(arcs).toBeGreaterThan(1);
  });

  test("shows one tee set and one unit at first", () => {
    const shown = tags
      .filter((tag) => tag.attributes["class"] === "plate-tee" && !hidden(tag))
      .map(({ attributes }) => [attributes["data-tee"], attributes["data-unit"]]);
    expect(shown.length).toBeGreaterThan(1);
    for (const [tee, unit] of shown) {
      expect(tee).toBe("sand");
      expect(unit ?? "yards").toBe("yards");
    }
  });

  test("turns the north arrow to north", () => {
    const spin = tags.find(
      (tag) =>
        tag.parents.some(({ attributes }) => attributes["class"] === "plate-north") &&
        tag.attributes["transform"]?.startsWith("rotate"),
    );
    const degrees = Number(/rotate\((-?[\d.]+)\)/.exec(spin!.attributes["transform"]!)![1]);
    const [o, n] = [sheet.toSheet([0, 0]), sheet.toSheet([0, 1])];
    // Clockwise from the top of the sheet, y down.
    const north = (Math.atan2(n[0] - o[0], -(n[1] - o[1])) * 180) / Math.PI;
    expect(Math.abs(((degrees - north + 540) % 360) - 180)).toBeLessThan(0.1);
  });
});

describe("the sheet", () => {
  test.each(NAMES)("of a %s lays play the way its composition says", (composition) => {
    const hole = holeOf(course, 7);
    const sheet = layHole(hole, COMPOSITIONS[composition]);
    const tee = hole.tees[0]!;
    const [from, to] = [sheet.toSheet(tee.marker), sheet.toSheet(tee.green.middle)];
    const along =
      composition === "card"
        ? [to[0] - from[0], Math.abs(to[1] - from[1])]
        : [from[1] - to[1], Math.abs(to[0] - from[0])];
    expect(along[0]).toBeGreaterThan(100);
    expect(along[1]!).toBeLessThan(1e-6 * along[0]!);
  });

  test("of a phone or a desk has the bearing of play at its top", () => {
    const hole = holeOf(course, 7);
    const tee = hole.tees[0]!;
    const play = bearingDegrees(directionTo(tee.marker, tee.green.middle));
    expect(sheetBearingDegrees(hole, COMPOSITIONS.phone)).toBeCloseTo(play, 9);
    expect((sheetBearingDegrees(hole, COMPOSITIONS.card) + 90) % 360).toBeCloseTo(play, 9);
  });

  test("gives a short hole the larger scale", () => {
    const scale = (number: number): number => layHole(holeOf(course, number), COMPOSITIONS.phone).pxPerMetre;
    expect(scale(12)).toBeGreaterThan(scale(7) * 1.3);
  });

  test("brings a point back to where it came from", () => {
    const sheet = layHole(holeOf(course, 7), COMPOSITIONS.desk);
    const [x, y] = sheet.toPlane(sheet.toSheet([123.4, -56.7]));
    expect(x).toBeCloseTo(123.4, 9);
    expect(y).toBeCloseTo(-56.7, 9);
  });

  test("holds every tee and the green", () => {
    for (const composition of NAMES) {
      const hole = holeOf(course, 7);
      const sheet = layHole(hole, COMPOSITIONS[composition]);
      for (const point of [...hole.tees.map(({ marker }) => marker), hole.tees[0]!.green.back]) {
        const [x, y] = sheet.toSheet(point);
        expect(x > sheet.map[0] && x < sheet.map[2] && y > sheet.map[1] && y < sheet.map[3]).toBe(true);
      }
    }
  });
});

describe("figures", () => {
  test.each<LengthUnit>(["yards", "metres"])(
    "of what is left stand just so far from the middle of the green, in %s",
    (unit) => {
      const tee = holeOf(course, 7).tees[0]!;
      const points = leftPoints(tee, unit);
      expect(points.map(({ value }) => value)).toEqual([200, 150, 100]);
      for (const { value, at } of points)
        expect(distanceMetres(at, tee.green.middle)).toBeCloseTo(fromUnit(value, unit), 3);
    },
  );

  test("of a hazard are its measured reach and carry, in the unit shown", () => {
    const tags = readSvg(drawPlate(holeOf(course, 7), options("desk")).svg);
    const hazard = holeOf(course, 7)
      .tees.find(({ tee }) => tee.id === "sand")!
      .hazards.find(({ id }) => id === "fiddler")!;
    const texts = tags.filter((tag) => tag.name === "text" && !hidden(tag)).map(({ text }) => text);
    expect(texts).toContain("The Fiddler");
    // Reach rounded down, carry up.
    expect(texts).toContain(`${Math.floor(hazard.reachMetres / 0.9144)}–${Math.ceil(hazard.carryMetres! / 0.9144)}`);
  });

  test("of all tee sets and both units are in a page's plate, one set in a card's", () => {
    const groups = (composition: CompositionName): string[] =>
      readSvg(drawPlate(holeOf(course, 7), options(composition)).svg)
        .filter(({ attributes }) => attributes["class"] === "plate-tee" && attributes["data-unit"] !== undefined)
        .map(({ attributes }) => `${attributes["data-tee"]} ${attributes["data-unit"]}`);
    expect(groups("phone").sort()).toEqual(TEES.flatMap(({ id }) => [`${id} metres`, `${id} yards`]).sort());
    expect(groups("card")).toEqual(["sand yards"]);
  });

  test("begin with the tee set asked for", () => {
    const tags = readSvg(drawPlate(holeOf(course, 7), options("phone", { tee: "thrift", unit: "metres" })).svg);
    const shown = tags.filter(
      (tag) => tag.attributes["class"] === "plate-tee" && !hidden(tag) && tag.attributes["data-unit"],
    );
    expect(shown.map(({ attributes }) => [attributes["data-tee"], attributes["data-unit"]])).toEqual([
      ["thrift", "metres"],
    ]);
  });
});

describe("words from the content", () => {
  const renamed = measured((hole: Hole) => ({
    ...hole,
    name: HOSTILE,
    features: hole.features.map((feature) => (feature.name ? { ...feature, name: HOSTILE } : feature)),
  }));

  test.each(NAMES)("that would break a %s plate are escaped", (composition) => {
    const tags = readSvg(drawPlate(holeOf(renamed, 7), options(composition)).svg);
    expect(tags.filter(({ text }) => text === HOSTILE).length).toBeGreaterThan(1);
  });

  test("that cannot begin an id are refused", () => {
    expect(() => drawPlate(holeOf(course, 7), options("phone", { idPrefix: 'x"y' }))).toThrow(/id prefix/);
  });
});

describe("what finds no room", () => {
  test("is told, and is not on the sheet", () => {
    // Forty named bunkers in one place cannot all be lettered.
    const crowded = measured((hole) => {
      const bunker = hole.features.find(({ id }) => id === "fiddler");
      if (!bunker) return hole;
      const more = Array.from({ length: 40 }, (_, i) => ({
        ...bunker,
        id: `crowd-${i}`,
        name: `Crowded Bunker ${i}`,
      }));
      return { ...hole, features: [...hole.features, ...more] };
    });
    const plate = drawPlate(holeOf(crowded, 7), options("phone"));
    const missing = plate.unplaced.filter((words) => words.startsWith("Crowded"));
    expect(missing.length).toBeGreaterThan(20);
    const shown = readSvg(plate.svg)
      .filter((tag) => tag.name === "text" && !hidden(tag))
      .map(({ text }) => text);
    for (const words of missing) expect(shown).not.toContain(words.replace(/ \d+–\d+$/, ""));
  });
});

describe("ground too rich to draw whole", () => {
  test("is thinned, with every figure kept", () => {
    const hole = holeOf(course, 7);
    const grid = ground(hole);
    // Waves of 20 m length and 4 m height all over: steep enough for hachures everywhere.
    const steep = { ...grid, heights: grid.heights.map((z, i) => z + 2 * Math.sin((i % grid.columns) / 1.6)) };
    const rich = drawPlate(
      hole,
      options("desk", {
        ground: {
          grid: steep,
          intervalMetres: 1,
          contours: contoursOf(steep, { intervalMetres: 1, toleranceMetres: 0.4 }),
        },
      }),
    );
    expect(rich.svg.length).toBeGreaterThan(drawPlate(hole, options("desk")).svg.length);
    expect(gzipSync(rich.svg, { level: 9 }).length).toBeLessThan(25_000);
    const figures = (svg: string): number =>
      readSvg(svg).filter(
        (tag) => tag.name === "text" && isIn(tag, "plate-tee", { "data-tee": "sand", "data-unit": "yards" }),
      ).length;
    expect(figures(rich.svg)).toBe(figures(drawPlate(hole, options("desk")).svg));
  });
});
