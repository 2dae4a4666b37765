/** The corner line over a boundary: a risk with a place, never a carry. */
import { describe, expect, test } from "vitest";
import type { Feature } from "../../src/course/types.ts";
import { contains } from "../../src/geo/area.ts";
import type { Area, Point } from "../../src/geo/position.ts";
import { wholeIn, type LengthUnit } from "../../src/geo/units.ts";
import { along, directionTo } from "../../src/geo/vector.ts";
import { cornerLines } from "../../src/measure/corner.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredCourse } from "../../src/measure/types.ts";
import { holeGround } from "../../src/site/ground/figures.ts";
import { cornerText } from "../../src/site/ground/text.ts";
import { LANGUAGES, words } from "../../src/site/language/words.ts";
import { seeded } from "../faults/random.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";

type Ring = readonly Point[];

/** A dogleg: north, then to the right or left by `turn` degrees. */
function dogleg(turn: number, more: readonly Feature[]): MeasuredCourse {
  const bend: Point = [0, 220];
  const angle = (turn * Math.PI) / 180;
  const green: Point = [170 * Math.sin(angle), 220 + 170 * Math.cos(angle)];
  return measureCourse(
    course([
      hole([
        lineFeature("line", "line-of-play", [[0, 0], bend, green]),
        pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
        areaFeature("green", "green", box(green[0] - 10, green[1] - 10, green[0] + 10, green[1] + 10)),
        areaFeature("gorse", "scrub", box(Math.min(12, green[0]), 120, Math.max(-12, green[0]), 130), {
          name: "Whins",
        }),
        ...more,
      ]),
    ]),
  );
}

const cornerOf = (measured: MeasuredCourse) => {
  const [only] = measured.holes;
  return cornerLines(only!, only!.tees[0]!)[0]!;
};

/** Where the corner line ends, as seen from the tee. */
function endOf(turn: number): Point {
  const measured = dogleg(turn, []);
  const [{ marker }, { target }] = [measured.holes[0]!.tees[0]!, cornerOf(measured)];
  return [target[0] - marker[0], target[1] - marker[1]];
}

/** A box standing somewhere over the corner line, turned by some angle; it holds neither the tee nor the target. */
function someGround(random: () => number, turn: number): Ring {
  const target = endOf(turn);
  const share = 0.35 + 0.3 * random();
  const middle: Point = [target[0] * share, target[1] * share];
  const [half, deep, by] = [10 + 25 * random(), 5 + 25 * random(), Math.PI * random()];
  return (
    [
      [-half, -deep],
      [half, -deep],
      [half, deep],
      [-half, deep],
    ] as const
  ).map(([x, y]): Point => [
    middle[0] + x * Math.cos(by) - y * Math.sin(by),
    middle[1] + x * Math.sin(by) + y * Math.cos(by),
  ]);
}

const TRIALS = 60;

/** Some doglegs either way with ground that is out over their corner. */
function trials(): { readonly turn: number; readonly ring: Ring }[] {
  const { next: random } = seeded(18);
  return Array.from({ length: TRIALS }, () => {
    const turn = (random() < 0.5 ? -1 : 1) * (20 + 65 * random());
    return { turn, ring: someGround(random, turn) };
  });
}

const fence = (ring: Ring): Feature => lineFeature("fence", "out-of-bounds", [...ring, ring[0]!], { name: "Fence" });
const field = (ring: Ring): Feature => areaFeature("field", "out-of-bounds", ring, { name: "Field" });

describe("a corner line over a boundary", () => {
  test("is beyond it from where it goes out to where it is back, as far as that is true to a millimetre", () => {
    for (const { turn, ring } of trials()) {
      const measured = dogleg(turn, [field(ring)]);
      const corner = cornerOf(measured);
      const { marker } = measured.holes[0]!.tees[0]!;
      const area = measured.holes[0]!.placed.get("field")!.shape;
      const inside = (metres: number): boolean =>
        area.type === "areas" &&
        area.areas.some((one: Area) => contains(one, along(marker, directionTo(marker, corner.target), metres)));
      expect(corner.outOfBounds).toHaveLength(1);
      const { outMetres, backMetres = NaN } = corner.outOfBounds[0]!;
      expect([-0.001, 0.001].map((by) => inside(outMetres + by))).toEqual([false, true]);
      expect([-0.001, 0.001].map((by) => inside(backMetres + by))).toEqual([true, false]);
    }
  });

  test("goes out and comes back at the same places whether the boundary is drawn as ground or as a line", () => {
    for (const { turn, ring } of trials()) {
      const [ground, line] = [field(ring), fence(ring)].map((one) => cornerOf(dogleg(turn, [one])).outOfBounds);
      expect(line!.length).toBe(ground!.length);
      line!.forEach(({ outMetres, backMetres }, i) => {
        expect(outMetres).toBeCloseTo(ground![i]!.outMetres, 3);
        expect(backMetres!).toBeCloseTo(ground![i]!.backMetres!, 3);
      });
    }
  });

  test("is in reach of nobody, and has no carry and no obstacle by it", () => {
    for (const { turn, ring } of trials()) {
      const without = cornerOf(dogleg(turn, []));
      for (const boundary of [field(ring), fence(ring)]) {
        const corner = cornerOf(dogleg(turn, [boundary]));
        expect(corner.reachableFor).toEqual([]);
        expect(corner.obstacles.map(({ id }) => id)).toEqual(without.obstacles.map(({ id }) => id));
        expect(corner.carryMetres).toBeCloseTo(without.carryMetres, 3);
      }
    }
  });

  test("that meets a boundary line once is out and not back", () => {
    const target = endOf(60);
    const [x, y] = [target[0] / 2, target[1] / 2];
    const [stay, ...more] = cornerOf(
      dogleg(60, [
        lineFeature("stub", "out-of-bounds", [
          [x - 15, y + 6],
          [x + 15, y - 6],
        ]),
      ]),
    ).outOfBounds;
    expect(more).toEqual([]);
    expect(stay!.outMetres).toBeCloseTo(Math.hypot(x, y), 0);
    expect(stay!.backMetres).toBeUndefined();
  });

  test("leaves a corner with no boundary over it as it is", () => {
    const away: Ring = [
      [-200, 0],
      [-180, 0],
      [-180, 300],
      [-200, 300],
    ];
    const plain = cornerOf(dogleg(60, []));
    const beside = cornerOf(dogleg(60, [field(away)]));
    expect(beside.outOfBounds).toEqual([]);
    expect(beside.reachableFor).toEqual(plain.reachableFor);
    expect(plain.reachableFor.length).toBeGreaterThan(0);
  });

  test("is told as a risk in the Rules' words with both distances on the safe side, and offered to nobody, in every language", () => {
    const units: readonly LengthUnit[] = ["yards", "metres"];
    for (const { turn, ring } of trials().slice(0, 12)) {
      for (const boundary of [field(ring), fence(ring)]) {
        const measured = dogleg(turn, [boundary]);
        const [tee] = holeGround(measured, measured.holes[0]!, measured.holes[0]!.tees[0]!).tees;
        const corner = tee!.corners[0]!;
        expect(corner.reachableFor).toEqual([]);
        expect(corner.clearing).toBeUndefined();
        const { outMetres, backMetres = NaN } = corner.line.outOfBounds[0]!;
        for (const language of LANGUAGES) {
          const spoken = words(language);
          const say = spoken.ground.corner;
          for (const unit of units) {
            const { plain, beyond, reach } = cornerText(measured.holes[0]!, corner, unit, spoken);
            const told = [...plain, ...beyond, ...reach].join(" ");
            expect(told).toContain("18.2");
            expect(told).toContain(String(wholeIn(outMetres, unit, "down")));
            expect(told).toContain(String(wholeIn(backMetres, unit, "up")));
            for (const offered of [say.reachableNone, say.caution, say.saves({ length: "" }).slice(0, 6)])
              expect(told).not.toContain(offered);
          }
        }
      }
    }
  });
});
