/** The section measured back from its drawing. */
import { describe, expect, test } from "vitest";
import { drawProfile, MOST_EXAGGERATION } from "../../src/draw/profile.ts";
import { seenAlong, sectionAlong, stretchesOf } from "../../src/draw/profile-ground.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import { areaFeature, box } from "../support/flat-course.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { HOSTILE } from "./fixture.ts";
import { pathPoints, readSvg, type Tag } from "./read-svg.ts";
import { words } from "../../src/site/words.ts";

const up = (_east: number, north: number): number => 20 + north / 20;
const drawn = (surface: (east: number, north: number) => number, driveMetres?: Record<string, number>) => {
  const course = hilly(PAR_FOUR, surface);
  return drawProfile(course.holes[0]!, course.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround, ...(driveMetres ? { driveMetres } : {}) })!;
};
const textsIn = (tags: readonly Tag[], data: Readonly<Record<string, string>>): string[] =>
  tags
    .filter(({ name, parents }) => name === "text" && Object.entries(data).every(([key, value]) => parents.some(({ attributes }) => attributes[key] === value)))
    .map(({ text }) => text);

describe("the section", () => {
  const profile = drawn(up);
  const tags = readSvg(profile.svg);
  const lineOf = (tee: string) => pathPoints(tags.find(({ attributes }) => attributes["id"] === `s-${tee}`)!.attributes["d"]!)[0]!;

  test("rises by the ground's rise times the stated exaggeration", () => {
    const line = lineOf("back");
    const [first, last] = [line[0]!, line[line.length - 1]!];
    // The ground rises 1 in 20 throughout, whatever stretch of it is drawn.
    expect((first[1] - last[1]) / (last[0] - first[0])).toBeCloseTo(profile.exaggeration / 20, 2);
  });

  test("gives every tee set and unit a group, and shows one of each", () => {
    const groups = tags.filter(({ attributes }) => attributes["class"] === "plate-unit" && attributes["data-unit"] !== undefined);
    expect(groups.map(({ attributes }) => `${attributes["data-tee"]} ${attributes["data-unit"]}`)).toEqual(["back yards", "back metres", "forward yards", "forward metres"]);
    expect(groups.filter(({ attributes }) => attributes["display"] === undefined).map(({ attributes }) => attributes["data-tee"])).toEqual(["back"]);
  });

  test("stands the flag of every tee set in one place", () => {
    const flags = tags.filter(({ name, attributes }) => name === "g" && attributes["transform"]?.startsWith("translate(")).map(({ attributes }) => attributes["transform"]);
    expect(new Set(flags).size).toBe(1);
    expect(flags).toHaveLength(2);
  });

  test("prints the measured reach and carry of each hazard in play, and the length", () => {
    const course = hilly(PAR_FOUR, up);
    const [tee] = course.holes[0]!.tees;
    const texts = textsIn(tags, { "data-tee": "back", "data-unit": "yards" });
    for (const hazard of tee!.hazards) {
      const reach = Math.floor(yardsFromMetres(hazard.reachMetres));
      const carry = Math.ceil(yardsFromMetres(hazard.carryMetres!));
      expect(texts.some((text) => text.includes(`${reach}–${carry}`))).toBe(true);
    }
    expect(texts).toContain(`${Math.round(yardsFromMetres(400))} yd`);
    expect(texts.some((text) => text.startsWith("Pot") && text.endsWith("right"))).toBe(true);
  });

  test("marks the drive's landing ground where one is given", () => {
    expect(textsIn(tags, { "data-tee": "back", "data-unit": "yards" })).not.toContain("drive 200");
    const marked = readSvg(drawn(up, { back: 182.88 }).svg);
    expect(textsIn(marked, { "data-tee": "back", "data-unit": "yards" })).toContain("drive 200");
    expect(textsIn(marked, { "data-tee": "forward", "data-unit": "yards" })).not.toContain("drive 200");
  });

  test("keeps flat ground flat, and steep ground on the sheet", () => {
    expect(drawn(() => 10).exaggeration).toBe(MOST_EXAGGERATION);
    const steep = drawn((_east, north) => 20 + north / 4);
    expect(steep.exaggeration).toBeLessThan(2);
    for (const [, y] of pathPoints(readSvg(steep.svg).find(({ attributes }) => attributes["id"] === "s-back")!.attributes["d"]!)[0]!) {
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(steep.height);
    }
  });

  test("names itself, and holds no style and no number that is none", () => {
    const { attributes } = tags[0]!;
    expect(attributes["role"]).toBe("img");
    for (const key of ["aria-labelledby", "aria-describedby"]) expect(tags.find(({ attributes: { id } }) => id === attributes[key])!.text).not.toBe("");
    expect(profile.svg).not.toMatch(/NaN|Infinity|undefined| style=/);
  });

  test("is the same for the same hole, and escapes what a club writes", () => {
    expect(drawn(up).svg).toBe(profile.svg);
    const hostile = hilly(PAR_FOUR.map((one) => (one.name ? { ...one, name: HOSTILE } : one)), up);
    const read = readSvg(drawProfile(hostile.holes[0]!, hostile.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround })!.svg);
    expect(read.some(({ text }) => text.includes(HOSTILE))).toBe(true);
  });

  test("is not drawn where the ground is unknown at an end or over much of the way", () => {
    const unknown = (where: (north: number) => boolean) => hilly(PAR_FOUR, (_east, north) => (where(north) ? undefined : 10));
    for (const course of [unknown((north) => north > 390), unknown((north) => north > 100 && north < 250)]) {
      expect(drawProfile(course.holes[0]!, course.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround })).toBeUndefined();
    }
  });
});

describe("the ground along a line", () => {
  // A ridge 8 m high at 100 m hides the ground behind it.
  const course = hilly(PAR_FOUR, (_east, north) => 10 + 8 * Math.exp(-(((north - 100) / 12) ** 2)));
  const [hole] = course.holes;
  const [tee] = hole!.tees;
  const section = sectionAlong(hole!, course.ground!, tee!.line, { behindMetres: 10, beyondMetres: 20, spacingMetres: 4 })!;

  test("knows what lies on top", () => {
    const surfaceAt = (station: number) => section.reduce((best, one) => (Math.abs(one.stationMetres - station) < Math.abs(best.stationMetres - station) ? one : best)).surface;
    expect([145, 250, 400, 60].map(surfaceAt)).toEqual(["water", "fairway", "green", "other"]);
  });

  test("is hidden from the tee behind the ridge, not before it", () => {
    const seen = seenAlong(hole!, course.ground!, tee!.marker, section);
    const hidden = stretchesOf(section, (_, i) => !seen[i]).map(([a, b]) => [section[a]!.stationMetres, section[b]!.stationMetres]);
    expect(hidden.length).toBeGreaterThan(0);
    expect(hidden[0]![0]).toBeGreaterThan(95);
  });
});

test("broad water lies level at its lower shore, whatever the bed does; a burn keeps its ground", () => {
  // The burn is 10 m wide: too narrow to be filled. Widened to 24 m, short of the fairway, it is.
  const bed = (_east: number, north: number): number => (north > 140 && north < 168 ? 4 - Math.sin(((north - 140) / 28) * Math.PI) : 5);
  const sectionOver = (far: number) => {
    const features = PAR_FOUR.map((one) => (one.id === "burn" ? areaFeature("burn", "penalty-area-red", box(-80, 142, 80, far)) : one));
    const course = hilly(features, bed);
    const [hole] = course.holes;
    return sectionAlong(hole!, course.ground!, hole!.tees[0]!.line, { behindMetres: 0, beyondMetres: 0, spacingMetres: 2 })!.filter(({ surface }) => surface === "water").map(({ heightMetres }) => heightMetres);
  };
  const pond = sectionOver(166);
  const shore = Math.min(pond[0]!, pond[pond.length - 1]!);
  expect(Math.min(...pond)).toBe(shore);
  expect(pond.filter((height) => height === shore).length).toBeGreaterThan(pond.length * 0.6);
  const burn = sectionOver(150);
  expect(Math.max(...burn) - Math.min(...burn)).toBeGreaterThan(0.3);
});
