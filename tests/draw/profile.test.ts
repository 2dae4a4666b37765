/** The section measured back from its drawing. */
import { describe, expect, test } from "vitest";
import { drawProfile, MOST_EXAGGERATION } from "../../src/draw/profile.ts";
import { seenAlong, sectionAlong, stretchesOf } from "../../src/draw/profile-ground.ts";
import { painter } from "../../src/draw/palette.ts";
import { yardsFromMetres } from "../../src/geo/units.ts";
import { areaFeature, box } from "../support/flat-course.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";
import { HOSTILE } from "./fixture.ts";
import { pathPoints, readSvg, type Tag } from "./read-svg.ts";
import { words } from "../../src/site/language/words.ts";

const up = (_east: number, north: number): number => 20 + north / 20;
const drawn = (surface: (east: number, north: number) => number, driveMetres?: Record<string, number>) => {
  const course = hilly(PAR_FOUR, surface);
  return drawProfile(course.holes[0]!, course.ground!, {
    idPrefix: "s",
    unit: "yards",
    words: words("en").drawGround,
    ...(driveMetres ? { driveMetres } : {}),
  })!;
};
const textsIn = (tags: readonly Tag[], data: Readonly<Record<string, string>>): string[] =>
  tags
    .filter(
      ({ name, parents }) =>
        name === "text" &&
        Object.entries(data).every(([key, value]) => parents.some(({ attributes }) => attributes[key] === value)),
    )
    .map(({ text }) => text);

describe("the section", () => {
  const profile = drawn(up);
  const tags = readSvg(profile.svg);
  const lineOf = (tee: string) =>
    pathPoints(tags.find(({ attributes }) => attributes["id"] === `s-${tee}`)!.attributes["d"]!)[0]!;

  test("rises by the ground's rise times the stated exaggeration", () => {
    const line = lineOf("back");
    const [first, last] = [line[0]!, line[line.length - 1]!];
    // The ground rises 1 in 20 throughout, whatever stretch of it is drawn.
    expect((first[1] - last[1]) / (last[0] - first[0])).toBeCloseTo(profile.exaggeration / 20, 2);
  });

  test("gives every tee set and unit a group, and shows one of each", () => {
    const groups = tags.filter(
      ({ attributes }) => attributes["class"] === "plate-unit" && attributes["data-unit"] !== undefined,
    );
    expect(groups.map(({ attributes }) => `${attributes["data-tee"]} ${attributes["data-unit"]}`)).toEqual([
      "back yards",
      "back metres",
      "forward yards",
      "forward metres",
    ]);
    expect(
      groups
        .filter(({ attributes }) => attributes["display"] === undefined)
        .map(({ attributes }) => attributes["data-tee"]),
    ).toEqual(["back"]);
  });

  test("stands the flag of every tee set in one place", () => {
    const flags = tags
      .filter(({ name, attributes }) => name === "g" && attributes["transform"]?.startsWith("translate("))
      .map(({ attributes }) => attributes["transform"]);
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
    for (const [, y] of pathPoints(
      readSvg(steep.svg).find(({ attributes }) => attributes["id"] === "s-back")!.attributes["d"]!,
    )[0]!) {
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(steep.height);
    }
  });

  test("names itself, and holds no style and no number that is none", () => {
    const { attributes } = tags[0]!;
    expect(attributes["role"]).toBe("img");
    for (const key of ["aria-labelledby", "aria-describedby"])
      expect(tags.find(({ attributes: { id } }) => id === attributes[key])!.text).not.toBe("");
    expect(profile.svg).not.toMatch(/NaN|Infinity|undefined| style=/);
  });

  test("is the same for the same hole, and escapes what a club writes", () => {
    expect(drawn(up).svg).toBe(profile.svg);
    const hostile = hilly(
      PAR_FOUR.map((one) => (one.name ? { ...one, name: HOSTILE } : one)),
      up,
    );
    const read = readSvg(
      drawProfile(hostile.holes[0]!, hostile.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround })!
        .svg,
    );
    expect(read.some(({ text }) => text.includes(HOSTILE))).toBe(true);
  });

  test("is not drawn where the ground is unknown at an end or over much of the way", () => {
    const unknown = (where: (north: number) => boolean) =>
      hilly(PAR_FOUR, (_east, north) => (where(north) ? undefined : 10));
    for (const course of [unknown((north) => north > 390), unknown((north) => north > 100 && north < 250)]) {
      expect(
        drawProfile(course.holes[0]!, course.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround }),
      ).toBeUndefined();
    }
  });
});

describe("the ground along a line", () => {
  // A ridge 8 m high at 100 m hides the ground behind it.
  const course = hilly(PAR_FOUR, (_east, north) => 10 + 8 * Math.exp(-(((north - 100) / 12) ** 2)));
  const [hole] = course.holes;
  const [tee] = hole!.tees;
  const section = sectionAlong(hole!, course.ground!, tee!.line, {
    behindMetres: 10,
    beyondMetres: 20,
    spacingMetres: 4,
  })!;

  test("knows what lies on top", () => {
    const surfaceAt = (station: number) =>
      section.reduce((best, one) =>
        Math.abs(one.stationMetres - station) < Math.abs(best.stationMetres - station) ? one : best,
      ).surface;
    expect([145, 250, 400, 60].map(surfaceAt)).toEqual(["water", "fairway", "green", "other"]);
  });

  test("is hidden from the tee behind the ridge, not before it", () => {
    const seen = seenAlong(hole!, course.ground!, tee!.marker, section);
    const hidden = stretchesOf(section, (_, i) => !seen[i]).map(([a, b]) => [
      section[a]!.stationMetres,
      section[b]!.stationMetres,
    ]);
    expect(hidden.length).toBeGreaterThan(0);
    expect(hidden[0]![0]).toBeGreaterThan(95);
  });
});

test("broad water lies level at its lower shore, whatever the bed does; a burn keeps its ground", () => {
  // The burn is 10 m wide: too narrow to be filled. Widened to 24 m, short of the fairway, it is.
  const bed = (_east: number, north: number): number =>
    north > 140 && north < 168 ? 4 - Math.sin(((north - 140) / 28) * Math.PI) : 5;
  const sectionOver = (far: number) => {
    const features = PAR_FOUR.map((one) =>
      one.id === "burn" ? areaFeature("burn", "penalty-area-red", box(-80, 142, 80, far)) : one,
    );
    const course = hilly(features, bed);
    const [hole] = course.holes;
    return sectionAlong(hole!, course.ground!, hole!.tees[0]!.line, {
      behindMetres: 0,
      beyondMetres: 0,
      spacingMetres: 2,
    })!
      .filter(({ surface }) => surface === "water")
      .map(({ heightMetres }) => heightMetres);
  };
  const pond = sectionOver(166);
  const shore = Math.min(pond[0]!, pond[pond.length - 1]!);
  expect(Math.min(...pond)).toBe(shore);
  expect(pond.filter((height) => height === shore).length).toBeGreaterThan(pond.length * 0.6);
  const burn = sectionOver(150);
  expect(Math.max(...burn) - Math.min(...burn)).toBeGreaterThan(0.3);
});

describe("the section's scales", () => {
  // Down 10 m to the middle of the hole, up 20 m from there: rules above and below the tee.
  const valley = (_east: number, north: number): number => 20 + (north < 200 ? -north / 20 : (north - 200) / 10 - 10);
  const course = hilly([...PAR_FOUR, areaFeature("cross", "bunker", box(-5, 300, 5, 310), { name: "Cross" })], valley);
  const { svg, exaggeration } = drawProfile(course.holes[0]!, course.ground!, {
    idPrefix: "s",
    unit: "yards",
    words: words("en").drawGround,
    driveMetres: { back: 182.88 },
  })!;
  const tags = readSvg(svg);
  const within = (tag: Tag, data: Readonly<Record<string, string>>): boolean =>
    Object.entries(data).every(([key, value]) => tag.parents.some(({ attributes }) => attributes[key] === value));
  const number = (tag: Tag, name: string): number => Number(tag.attributes[name]);
  const lettering = (tee: string, unit: string): Tag[] =>
    tags.filter((tag) => tag.name === "text" && within(tag, { "data-tee": tee, "data-unit": unit }));

  /**
   * Where a tee set's marker and flag stand: from those, what a metre of length and one of height are on the
   * sheet.
   */
  function scaleOf(tee: string, lengthMetres: number) {
    const outline = pathPoints(tags.find(({ attributes }) => attributes["id"] === `s-${tee}`)!.attributes["d"]!)[0]!;
    const marker =
      tags.find(
        (tag) => tag.name === "circle" && tag.attributes["r"] === "3.200" && within(tag, { "data-tee": tee }),
      ) ?? tags.find((tag) => tag.name === "circle" && number(tag, "r") === 3.2 && within(tag, { "data-tee": tee }))!;
    const flagX = Number(
      /translate\(([-\d.]+)/.exec(
        tags.find(
          (tag) =>
            tag.name === "g" &&
            tag.attributes["transform"]?.startsWith("translate(") &&
            within(tag, { "data-tee": tee }),
        )!.attributes["transform"]!,
      )![1],
    );
    const teeX = number(marker, "cx");
    const groundAt = (x: number): number =>
      outline.reduce((best, point) => (Math.abs(point[0] - x) < Math.abs(best[0] - x) ? point : best))[1];
    const perMetre = (flagX - teeX) / lengthMetres;
    return { outline, marker, teeX, teeY: groundAt(teeX), groundAt, perMetre, perMetreUp: perMetre * exaggeration };
  }

  test.each([
    ["back", 400],
    ["forward", 350],
  ] as const)(
    "of the %s tee: every rule stands as far above or below the tee as it says, in feet and in metres",
    (tee, length) => {
      const { teeY, perMetreUp } = scaleOf(tee, length);
      for (const [unit, metres, name] of [
        ["yards", 0.3048, "ft"],
        ["metres", 1, "m"],
      ] as const) {
        const rules = lettering(tee, unit).flatMap((tag) => {
          const match = /^([+\u2212]?)(\d+)$/.exec(tag.text);
          return match && number(tag, "x") < 30
            ? [
                {
                  height: (match[1] === "\u2212" ? -1 : 1) * Number(match[2]),
                  signed: match[1] !== "",
                  y: number(tag, "y") - 3.2,
                },
              ]
            : [];
        });
        expect(rules.filter(({ height }) => height > 0).length).toBeGreaterThan(0);
        expect(rules.filter(({ height }) => height < 0).length).toBeGreaterThan(0);
        for (const { height, signed, y } of rules) {
          expect(signed).toBe(height !== 0);
          expect(Math.abs(y - (teeY - height * metres * perMetreUp)), `${height} ${name}`).toBeLessThan(1.5);
        }
        expect(lettering(tee, unit).some(({ text }) => text === name)).toBe(true);
      }
    },
  );

  test("the tee marker stands on the ground at the tee, and the foot counts from there", () => {
    const { marker, teeX, teeY, perMetre } = scaleOf("back", 400);
    expect(Math.abs(number(marker, "cy") - (teeY - 10))).toBeLessThan(1.5);
    for (const [unit, metres] of [
      ["yards", 0.9144],
      ["metres", 1],
    ] as const) {
      for (const count of [100, 200]) {
        const tag = lettering("back", unit).find(
          ({ text, attributes }) => text === String(count) && Number(attributes["x"]) > 40,
        )!;
        expect(number(tag, "x")).toBeCloseTo(teeX + count * metres * perMetre, 0);
      }
    }
    const drive = lettering("back", "yards").find(({ text }) => text === "drive 200")!;
    expect(number(drive, "x")).toBeCloseTo(teeX + 182.88 * perMetre, 0);
  });

  test.each([
    ["water", "sea", 140, 150],
    ["fairway", "fairway", 170, 300],
    ["bunker", "bunker", 300, 310],
    ["green", "green", 385, 415],
  ] as const)("a ribbon of %s is painted so, where it lies", (surface, mark, from, to) => {
    const { teeX, perMetre } = scaleOf("back", 400);
    const windows = pathPoints(
      tags.find(
        (tag) => tag.name === "path" && tag.parents.some(({ attributes }) => attributes["id"] === `s-back-${surface}`),
      )!.attributes["d"]!,
    );
    // The first window of each kind; half a sample at each edge.
    expect(Math.abs(windows[0]![0]![0] - (teeX + from * perMetre))).toBeLessThan(4);
    expect(Math.abs(windows[0]![1]![0] - (teeX + to * perMetre))).toBeLessThan(4);
    const ribbon = tags.find(
      (tag) =>
        tag.name === "use" &&
        tag.parents.some(({ attributes }) => attributes["clip-path"] === `url(#s-back-${surface})`),
    )!;
    expect(ribbon.attributes["fill"]).toBe(painter("light")(mark)["fill"]);
  });

  test("hatches what is not seen from the tee, and nothing that is", () => {
    const ridge = hilly(PAR_FOUR, (_east, north) => 10 + 8 * Math.exp(-(((north - 100) / 12) ** 2)));
    const read = readSvg(
      drawProfile(ridge.holes[0]!, ridge.ground!, { idPrefix: "s", unit: "yards", words: words("en").drawGround })!
        .svg,
    );
    const hatched = pathPoints(
      read.find(
        (tag) => tag.name === "path" && tag.parents.some(({ attributes }) => attributes["id"] === "s-back-unseen"),
      )!.attributes["d"]!,
    );
    const line = pathPoints(read.find(({ attributes }) => attributes["id"] === "s-back")!.attributes["d"]!)[0]!;
    const crest = line.reduce((best, point) => (point[1] < best[1] ? point : best))[0];
    expect(hatched.length).toBeGreaterThan(0);
    for (const [[from], [to]] of hatched as [readonly [number, number], readonly [number, number]][]) {
      expect(from).toBeGreaterThan(crest - 4);
      expect(to).toBeGreaterThan(from);
    }
    // Just behind the crest is hidden.
    expect(hatched.some(([from, to]) => from![0] < crest + 12 && to![0] > crest + 12)).toBe(true);
  });
});
