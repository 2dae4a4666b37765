import { describe, expect, test } from "vitest";
import { airFrom } from "../../src/flight/air.ts";
import { metresFromYards, yardsFromMetres } from "../../src/geo/units.ts";
import { cornerLines } from "../../src/measure/corner.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { greenLie } from "../../src/measure/green-lie.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { REFERENCE_PLAYERS, teeSetFor } from "../../src/measure/players.ts";
import { sightFromTee } from "../../src/measure/seen.ts";
import { effectiveOf, shotsOf } from "../../src/measure/shots.ts";
import type { MeasuredHole, TeeFigures } from "../../src/measure/types.ts";
import { gridOf, type HeightGrid } from "../../src/terrain/grid.ts";
import type { Feature } from "../../src/course/types.ts";
import type { Point } from "../../src/geo/position.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature, TEE_SETS } from "../support/flat-course.ts";

const STRAIGHT = [
  lineFeature("line", "line-of-play", [
    [0, 0],
    [0, 398],
  ]),
  pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
  areaFeature("green", "green", box(-10, 385, 10, 415)),
  areaFeature("fairway", "fairway", box(-12, 150, 18, 380)),
];

const measured = (features: readonly Feature[], par = 4): MeasuredHole =>
  measureCourse(course([hole(features, { par: { men: par, women: par } })])).holes[0]!;

/** Ground given in metres from the back tee, whatever the course's frame is. */
function ground(of: MeasuredHole, surface: (east: number, north: number) => number): HeightGrid {
  const [x0, y0] = of.tees[0]!.marker;
  return gridOf({ west: x0 - 200, east: x0 + 300, south: y0 - 100, north: y0 + 500 }, 2, ([x, y]: Point) =>
    surface(x - x0, y - y0),
  );
}

const tee = (of: MeasuredHole): TeeFigures => of.tees[0]!;

describe("landing ground", () => {
  const withTrouble = measured([
    ...STRAIGHT,
    areaFeature("trap", "bunker", box(20, 225, 28, 240)),
    areaFeature("gorse", "scrub", box(-60, 100, -30, 300)),
    lineFeature("wall", "wall", [
      [26, 0],
      [26, 400],
    ]),
  ]);

  test("first trouble to each side, wherever it is a hazard, gorse or a wall", () => {
    const at230 = landingAt(withTrouble, tee(withTrouble), 230)!;
    expect(at230.left).toMatchObject({ id: "gorse" });
    expect(at230.left!.metres).toBeCloseTo(30, 1);
    expect(at230.right).toMatchObject({ id: "trap" });
    expect(at230.right!.metres).toBeCloseTo(20, 1);
    const at260 = landingAt(withTrouble, tee(withTrouble), 260)!;
    expect(at260.right).toMatchObject({ id: "wall" });
    expect(at260.right!.metres).toBeCloseTo(26, 1);
    expect(at260.leavesMetres).toBeCloseTo(140, 2);
  });

  test("a drive as long as the hole has no landing ground", () => {
    expect(landingAt(withTrouble, tee(withTrouble), 400.1)).toBeUndefined();
    expect(landingAt(withTrouble, tee(withTrouble), 0)).toBeUndefined();
    expect(landingAt(withTrouble, tee(withTrouble), NaN)).toBeUndefined();
  });

  test("without a height model nothing is said of lie or sight", () => {
    expect(landingAt(withTrouble, tee(withTrouble), 230)).toMatchObject({
      lie: undefined,
      seenFromTee: undefined,
      seesGreen: undefined,
      riseMetres: undefined,
    });
  });

  test("the lie is the slope as the player stands", () => {
    // Rising 5 in 100 along the line, the left higher by 3 in 100.
    const grid = ground(withTrouble, (east, north) => 20 + 0.05 * north - 0.03 * east);
    const { lie, riseMetres } = landingAt(withTrouble, tee(withTrouble), 230, grid)!;
    expect(lie!.awayPercent).toBeCloseTo(5, 2);
    expect(lie!.rightPercent).toBeCloseTo(-3, 2);
    expect(riseMetres).toBeCloseTo(11.5, 2);
  });

  test("a ridge hides the landing ground from the tee, not the green from the landing ground", () => {
    const grid = ground(withTrouble, (_east, north) => 10 + 8 * Math.exp(-(((north - 120) / 15) ** 2)));
    const there = landingAt(withTrouble, tee(withTrouble), 230, grid)!;
    expect(there.seenFromTee).toBe(false);
    expect(there.seesGreen).toBe(true);
  });

  test("trees hide what lies behind them when their height is stated", () => {
    const wood = { ...areaFeature("wood", "wood", box(-30, 100, 30, 140)), heightMetres: 9 };
    const wooded = measured([...STRAIGHT, wood]);
    expect(
      landingAt(
        wooded,
        tee(wooded),
        230,
        ground(wooded, () => 10),
      )!.seenFromTee,
    ).toBe(false);
    expect(
      landingAt(
        withTrouble,
        tee(withTrouble),
        230,
        ground(withTrouble, () => 10),
      )!.seenFromTee,
    ).toBe(true);
  });
});

describe("sight from the tee", () => {
  test("a green in a hollow behind a bank is unseen, its flag may show", () => {
    const of = measured(STRAIGHT);
    // The ground stands 1.8 m higher than tee and green between 340 and 375 m out.
    const grid = ground(of, (_east, north) => (north > 340 && north < 375 ? 11.8 : 10));
    const sight = sightFromTee(of, tee(of), grid);
    expect(sight.greenShare).toBe(0);
    expect(sight.flag).toBe(true);
  });
});

describe("green lie", () => {
  test("tilt is told along the approach", () => {
    const of = measured(STRAIGHT);
    const lie = greenLie(
      of,
      tee(of),
      ground(of, (east, north) => 30 + 0.04 * north + 0.01 * east),
    )!;
    expect(lie.met.awayPercent).toBeCloseTo(4, 2);
    expect(lie.met.rightPercent).toBeCloseTo(1, 2);
    expect(lie.below!.side).toBe("short");
    expect(lie.tiers).toBeUndefined();
  });

  test("unknown ground has no lie", () => {
    const of = measured(STRAIGHT);
    expect(
      greenLie(
        of,
        tee(of),
        gridOf({ west: 5000, east: 5100, south: 0, north: 100 }, 5, () => 3),
      ),
    ).toBeUndefined();
  });
});

describe("corner line", () => {
  // 220 north, then 160 east: gorse inside the corner.
  const dogleg = measured([
    lineFeature("line", "line-of-play", [
      [0, 0],
      [0, 220],
      [160, 220],
    ]),
    pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
    areaFeature("green", "green", box(148, 212, 172, 228)),
    areaFeature("gorse", "scrub", box(10, 120, 100, 190)),
  ]);

  test("runs straight to the line of play past the corner, and says what it clears and saves", () => {
    const [corner] = cornerLines(dogleg, tee(dogleg));
    const length = Math.hypot(45, 220);
    expect(corner!.lengthMetres).toBeCloseTo(length, 2);
    expect(corner!.savesMetres).toBeCloseTo(265 - length, 2);
    // The line leaves the gorse where it is 190 m north.
    expect(corner!.carryMetres).toBeCloseTo((190 / 220) * length, 1);
    expect(corner!.obstacles.map(({ id }) => id)).toEqual(["gorse"]);
    // 194 m: more than a bogey man's 182.9 m and a scratch woman's 192.0 m, within a scratch man's 228.6 m.
    expect(corner!.reachableFor).toEqual(["scratch-men"]);
  });

  test("the top of what stands there is measured from the tee", () => {
    const tall = measured(dogleg.hole.features.map((one) => (one.id === "gorse" ? { ...one, heightMetres: 2 } : one)));
    const [corner] = cornerLines(
      tall,
      tee(tall),
      ground(tall, (_east, north) => 10 + north / 100),
    );
    const middleNorth = (120 + 190) / 2;
    expect(corner!.obstacles[0]!.topMetres).toBeCloseTo(2 + middleNorth / 100, 1);
  });

  test("a straight hole has no corner", () => {
    const of = measured(STRAIGHT);
    expect(cornerLines(of, tee(of))).toEqual([]);
  });
});

describe("reference players", () => {
  // Tee shots of the World Handicap System's reference players, as published by state golf associations.
  test("drive 250, 200, 210 and 150 yards", () => {
    expect(REFERENCE_PLAYERS.map(({ id, driveMetres }) => [id, Math.round(yardsFromMetres(driveMetres))])).toEqual([
      ["scratch-men", 250],
      ["bogey-men", 200],
      ["scratch-women", 210],
      ["bogey-women", 150],
    ]);
  });

  test("play from sets rated for them, and from the default where nothing is", () => {
    const rated = course([]);
    const ids = REFERENCE_PLAYERS.map((player) => teeSetFor(rated, player)!.id);
    expect(ids).toEqual(["back", "back", "forward", "forward"]);
    const unrated = course([], { tees: TEE_SETS.map((set) => ({ ...set, ratings: [] })), defaultTee: "forward" });
    expect(REFERENCE_PLAYERS.map((player) => teeSetFor(unrated, player)!.id)).toEqual([
      "forward",
      "forward",
      "forward",
      "forward",
    ]);
  });
});

describe("shots and their effective length", () => {
  const standard = airFrom({ heightMetres: 0 });
  if (!standard.ok) throw new Error(standard.message);
  const still = { air: standard.air };

  const parThree = measured(
    [
      lineFeature("line", "line-of-play", [
        [0, 0],
        [0, 148],
      ]),
      pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
      areaFeature("green", "green", box(-10, 140, 10, 160)),
      areaFeature("gully", "penalty-area-red", box(-60, 60, 60, 100)),
    ],
    3,
  );

  test("a par three is asked for its carries and its green, from the tee", () => {
    const shots = shotsOf(
      parThree,
      tee(parThree),
      ground(parThree, () => 10),
      200,
    );
    expect(shots.map(({ purpose, feature, driveMetres }) => [purpose, feature, driveMetres])).toEqual([
      ["carry", "gully", 0],
      ["green-front", undefined, 0],
      ["green-middle", undefined, 0],
      ["green-back", undefined, 0],
    ]);
  });

  test("a par four is asked for its green after a drive", () => {
    const of = measured(STRAIGHT);
    const shots = shotsOf(
      of,
      tee(of),
      ground(of, () => 10),
      230,
    );
    expect(shots.map(({ purpose }) => purpose)).toEqual(["green-front", "green-middle", "green-back"]);
    expect(shots[1]!.distanceMetres).toBeCloseTo(170, 2);
    expect(shots[1]!.driveMetres).toBe(230);
  });

  test("level in standard air plays its length; uphill plays longer, about the rise (common practice, no source)", () => {
    const middle = (surface: (east: number, north: number) => number): number => {
      const shot = shotsOf(parThree, tee(parThree), ground(parThree, surface), 200).find(
        ({ purpose }) => purpose === "green-middle",
      )!;
      const effective = effectiveOf(shot, still);
      if (!effective.ok) throw new Error(effective.message);
      return effective.lengthMetres;
    };
    expect(middle(() => 10)).toBeCloseTo(150, 1);
    const up = middle((_east, north) => (north > 110 ? 20 : 10));
    expect(up - 150).toBeGreaterThan(7);
    expect(up - 150).toBeLessThan(14);
  });

  test("a carry must come down past the hazard: over an inlet that is the cliff's top, not its foot", () => {
    // The gully's far edge is at 100 m; its bank stands 12 m higher from 103 m on.
    const grid = ground(parThree, (_east, north) => (north > 102 ? 22 : 10));
    const carry = shotsOf(parThree, tee(parThree), grid, 200).find(({ purpose }) => purpose === "carry")!;
    expect(carry.riseMetres).toBeCloseTo(12, 1);
  });

  test("over unknown ground no shot is asked", () => {
    const elsewhere = gridOf({ west: 9000, east: 9100, south: 0, north: 100 }, 10, () => 5);
    expect(shotsOf(parThree, tee(parThree), elsewhere, metresFromYards(200))).toEqual([]);
  });
});
