/** Where photos were taken, measured back from the plate. */
import { describe, expect, test } from "vitest";
import type { Photo, Viewpoint } from "../../src/course/types.ts";
import { COMPOSITIONS } from "../../src/draw/composition.ts";
import { photoLetters, viewOf } from "../../src/draw/photo-marks.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { layHole } from "../../src/draw/sheet.ts";
import { overlaps } from "../../src/geo/box.ts";
import type { Point } from "../../src/geo/position.ts";
import { directionTo, distanceMetres } from "../../src/geo/vector.ts";
import type { MeasuredHole } from "../../src/measure/types.ts";
import { holeOf, measured } from "./fixture.ts";
import { readSvg } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

const plain = holeOf(measured(), 7);
const place = { file: "fixture", line: 1, column: 1 };
const photo = (taken: Partial<Viewpoint> | undefined): Photo => ({
  file: "p.jpg",
  alt: "A",
  caption: undefined,
  credit: undefined,
  focus: undefined,
  place,
  taken: taken && { at: undefined, from: undefined, towards: undefined, ...taken },
});
const withPhotos = (...taken: (Partial<Viewpoint> | undefined)[]): MeasuredHole => ({
  ...plain,
  hole: { ...plain.hole, photos: taken.map(photo) },
});
const drawn = (hole: MeasuredHole, composition: "phone" | "desk" | "card" = "desk") =>
  drawPlate(hole, { composition, idPrefix: "t", unit: "yards", words: words("en").draw });

/** Middles of the eyes, and the arms of their cones, in sheet units. */
function marksOf(svg: string): { eyes: Point[]; cones: (readonly [Point, Point])[]; letters: string[] } {
  const tags = readSvg(svg).filter(({ parents }) =>
    parents.some(({ attributes }) => attributes["class"] === "plate-photos"),
  );
  const eyes = tags.flatMap(({ name, attributes }): Point[] => {
    const match = name === "g" && /translate\(([-\d.]+) ([-\d.]+)\)/.exec(attributes["transform"] ?? "");
    return match ? [[Number(match[1]), Number(match[2])]] : [];
  });
  const cones = tags.flatMap(({ attributes }): (readonly [Point, Point])[] => {
    const match = /^M[-\d.]+ [-\d.]+L([-\d.]+) ([-\d.]+)A\S+ \S+ 0 0 1 ([-\d.]+) ([-\d.]+)Z$/.exec(
      attributes["d"] ?? "",
    );
    return match
      ? [
          [
            [Number(match[1]), Number(match[2])],
            [Number(match[3]), Number(match[4])],
          ],
        ]
      : [];
  });
  return { eyes, cones, letters: tags.filter(({ name }) => name === "text").map(({ text }) => text) };
}

test("only photos that say where they were taken have a letter, A to Z and on", () => {
  expect(photoLetters({ photos: [photo({ from: "tee" }), photo(undefined), photo({ from: "green" })] })).toEqual([
    "A",
    undefined,
    "B",
  ]);
  const many = photoLetters({ photos: Array.from({ length: 28 }, () => photo({ from: "tee" })) });
  expect(many.slice(24)).toEqual(["Y", "Z", "AA", "AB"]);
});

describe("where a camera stood", () => {
  const tee = plain.tees.find(({ tee: { id } }) => id === plain.course.defaultTee)!;
  test("tee is the default tee's marker", () => {
    expect(viewOf(plain, { at: undefined, from: "tee", towards: undefined })?.point).toEqual(tee.marker);
  });
  test("a feature is its middle, and so is what it looks at", () => {
    const view = viewOf(plain, { at: undefined, from: "tee", towards: "green" })!;
    const wanted = directionTo(tee.marker, tee.green.middle);
    expect(view.direction![0]).toBeCloseTo(wanted[0], 1);
    expect(view.direction![1]).toBeCloseTo(wanted[1], 1);
  });
  test("a position is laid into the course's plane", () => {
    const [longitude, latitude] = plain.frame.toPosition([120, -35]);
    const { point } = viewOf(plain, { at: [longitude, latitude], from: undefined, towards: undefined })!;
    expect(distanceMetres(point, [120, -35])).toBeLessThan(0.001);
  });
  test("a feature that is not near enough to be on the hole has no mark", () => {
    expect(viewOf(plain, { at: undefined, from: "elsewhere", towards: undefined })).toBeUndefined();
  });
});

describe.each(["phone", "desk"] as const)("on the %s plate", (composition) => {
  const sheet = layHole(plain, COMPOSITIONS[composition]);
  const [minX, minY, maxX, maxY] = sheet.map;
  /** Half-way along the line of play and off it, where no marker stands. */
  const standing: Point = sheet.toPlane([minX + (maxX - minX) * 0.2, (minY + maxY) / 2]);
  const [longitude, latitude] = plain.frame.toPosition(standing);

  test("the eye stands where the camera stood and its cone opens towards what it looked at", () => {
    const {
      eyes: [eye],
      cones: [cone],
      letters,
    } = marksOf(drawn(withPhotos({ at: [longitude, latitude], towards: "green" }), composition).svg);
    expect(distanceMetres(eye!, sheet.toSheet(standing))).toBeLessThan(0.1);
    const middle: Point = [(cone![0][0] + cone![1][0]) / 2, (cone![0][1] + cone![1][1]) / 2];
    const [looked, wanted] = [
      directionTo(eye!, middle),
      directionTo(eye!, sheet.toSheet(plain.tees[0]!.green.middle)),
    ];
    // Within 5 degrees: the green's middle by area is not quite the one of its figures.
    expect(looked[0] * wanted[0] + looked[1] * wanted[1]).toBeGreaterThan(Math.cos((5 * Math.PI) / 180));
    expect(letters).toEqual(["A"]);
  });

  test("without a direction there is an eye and no cone", () => {
    const { eyes, cones } = marksOf(drawn(withPhotos({ at: [longitude, latitude] }), composition).svg);
    expect([eyes.length, cones.length]).toEqual([1, 0]);
  });

  test("from the tee it steps back, off every marker and away from the green", () => {
    const {
      eyes: [eye],
    } = marksOf(drawn(withPhotos({ from: "tee", towards: "green" }), composition).svg);
    const markers = plain.tees.map(({ marker }) => sheet.toSheet(marker));
    for (const marker of markers) expect(distanceMetres(marker, eye!)).toBeGreaterThan(7);
    const green = sheet.toSheet(plain.tees[0]!.green.middle);
    const own = sheet.toSheet(plain.tees.find(({ tee: { id } }) => id === plain.course.defaultTee)!.marker);
    expect(distanceMetres(green, eye!)).toBeGreaterThan(distanceMetres(green, own));
  });

  test("two from one place do not lie on each other", () => {
    const { eyes, letters } = marksOf(
      drawn(withPhotos({ from: "tee", towards: "green" }, { from: "tee", towards: "green" }), composition).svg,
    );
    expect(distanceMetres(eyes[0]!, eyes[1]!)).toBeGreaterThan(7);
    expect(letters).toEqual(["A", "B"]);
  });

  test("one taken beyond the sheet waits at its edge", () => {
    const [east, north] = plain.frame.toPosition(sheet.toPlane([maxX + 400, (minY + maxY) / 2]));
    const {
      eyes: [eye],
    } = marksOf(drawn(withPhotos({ at: [east, north] }), composition).svg);
    expect(eye![0]).toBeLessThan(maxX);
    expect(eye![0]).toBeGreaterThan(maxX - 20);
  });

  test("lettering keeps clear of it", () => {
    const plate = drawn(withPhotos({ at: [longitude, latitude], towards: "green" }), composition);
    const {
      eyes: [eye],
    } = marksOf(plate.svg);
    for (const label of plate.lettering.labels)
      expect(overlaps(label, [eye![0] - 3, eye![1] - 3, eye![0] + 3, eye![1] + 3])).toBe(false);
  });
});

test("plates that stand without the photos have no marks", () => {
  expect(marksOf(drawn(withPhotos({ from: "tee" }), "card").svg).eyes).toEqual([]);
  expect(drawn(withPhotos(undefined)).svg).toBe(drawn(plain).svg);
});
