/** The green's sheet measured back: its scale, its size, its slopes. */
import { describe, expect, test } from "vitest";
import { drawGreenSheet, GREEN_SHEET_PX_PER_METRE } from "../../src/draw/green-sheet.ts";
import { greenLie } from "../../src/measure/green-lie.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { pathPoints, readSvg, type Tag } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

const sheetOf = (surface?: (east: number, north: number) => number) => {
  const course = hilly(PAR_FOUR, surface);
  const hole = course.holes[0]!;
  const [tee] = hole.tees;
  return drawGreenSheet(hole, {
    idPrefix: "g",
    unit: "yards",
    words: words("en").drawGround,
    ...(course.ground ? { ground: { grid: course.ground, lie: greenLie(hole, tee!, course.ground) } } : {}),
  });
};
const slopesIn = (tags: readonly Tag[]): Tag[] =>
  tags.filter(({ parents }) => parents.some(({ attributes }) => attributes["data-beyond-distance"] !== undefined));

describe("the green's sheet", () => {
  test("keeps under the scale the Rules of Golf hold printed greens to", () => {
    // 3/8 inch to 5 yards is 9.525 mm to 4.572 m, 1:480 (published: clarification 4.3a/1); a CSS inch is 96 units.
    const mostPxPerMetre = ((9.525 / 25.4) * 96) / 4.572;
    expect(GREEN_SHEET_PX_PER_METRE).toBeLessThan(mostPxPerMetre);
    const tags = readSvg(sheetOf().svg);
    // The dimension line stands for 30 m, front to back.
    const [front, back] = pathPoints(
      tags.find(({ attributes, parents }) => attributes["class"] === "plate-tick" && parents.length === 1)!.attributes[
        "d"
      ]!,
    )[0]!;
    expect((front![1] - back![1]) / 30).toBeCloseTo(GREEN_SHEET_PX_PER_METRE, 1);
    expect((front![1] - back![1]) / 30).toBeLessThan(mostPxPerMetre);
  });

  test("prints depth and width in both units, one shown", () => {
    const tags = readSvg(sheetOf().svg);
    const texts = (unit: string): string[] =>
      tags
        .filter(
          ({ name, parents }) => name === "text" && parents.some(({ attributes }) => attributes["data-unit"] === unit),
        )
        .map(({ text }) => text);
    expect(texts("yards")).toEqual([`${Math.round(yardsFromMetres(30))} yd`, `${Math.round(yardsFromMetres(20))} yd`]);
    expect(texts("metres")).toEqual(["30 m", "20 m"]);
    expect(
      tags
        .filter(({ attributes }) => attributes["data-unit"] !== undefined && attributes["display"] === undefined)
        .map(({ attributes }) => attributes["data-unit"]),
    ).toEqual(["yards"]);
  });

  test("without heights has no slopes", () => {
    expect(slopesIn(readSvg(sheetOf().svg))).toEqual([]);
  });

  test("draws a contour for every quarter metre, and arrows down the slope", () => {
    // 4 in 100 toward the player: 1.2 m over 30 m of depth.
    const slopes = slopesIn(readSvg(sheetOf((_east, north) => 10.01 + north * 0.04).svg));
    const contours = pathPoints(
      slopes.find(({ attributes }) => attributes["class"] === "plate-contour")!.attributes["d"]!,
    );
    expect(contours.length).toBeGreaterThanOrEqual(4);
    expect(contours.length).toBeLessThanOrEqual(5);
    for (const line of contours)
      expect(Math.max(...line.map(([, y]) => y)) - Math.min(...line.map(([, y]) => y))).toBeLessThan(2);
    const arrows = pathPoints(
      slopes.find(({ attributes }) => attributes["class"] === "plate-hachure")!.attributes["d"]!,
    );
    expect(arrows.length).toBeGreaterThan(10);
    // The approach comes from below and the front is low, so every arrow's point, its fourth vertex, lies under its
    // tail.
    for (const arrow of arrows) expect(arrow[3]![1]).toBeGreaterThan(arrow[0]![1]);
  });

  test("a level green has neither arrows nor contours", () => {
    expect(slopesIn(readSvg(sheetOf(() => 10.1).svg))).toEqual([]);
  });

  test("marks a false front and two tiers where the ground has them", () => {
    const front = sheetOf((_east, north) => 10 + Math.min(Math.max(north - 383, 0), 8) * 0.15);
    expect(front.svg).toContain("false front");
    const tiers = sheetOf((_east, north) => (north > 401 ? 10.8 : north < 399 ? 10 : 10 + (north - 399) * 0.4));
    expect(tiers.svg).toContain(">upper<");
    const [upper, lower] = ["upper", "lower"].map((text) =>
      Number(readSvg(tiers.svg).find((tag) => tag.text === text)!.attributes["y"]),
    );
    expect(upper!).toBeLessThan(lower!);
  });

  test("is the same for the same hole, without styles or numbers that are none", () => {
    const surface = (east: number, north: number): number => 10 + Math.sin(east / 9) + north / 50;
    expect(sheetOf(surface).svg).toBe(sheetOf(surface).svg);
    expect(sheetOf(surface).svg).not.toMatch(/NaN|Infinity|undefined| style=/);
  });
});
