/** Where a golfer's drive comes down: the level carry in the day's air, wind and ground, from one place. */
import { describe, expect, test } from "vitest";
import { carryToday } from "../../src/flight/effective.ts";
import { dayOf, driveOf } from "../../src/islands/conditions-model.ts";
import { NO_CONDITIONS } from "../../src/islands/conditions-store.ts";
import { drivenMetres, golferOf, isUnmeasuredDriver, riseAlong } from "../../src/islands/driven.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { groundData } from "../../src/site/files/ground-data.ts";
import { words } from "../../src/site/language/words.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";

const YARD = 0.9144;
const english = words("en");

function dayIn(speedMetresPerSecond: number, fromDegrees: number, temperatureCelsius?: number) {
  const answer = dayOf({ ...NO_CONDITIONS, wind: { speedMetresPerSecond, fromDegrees }, temperatureCelsius }, 0);
  if (!answer.ok) throw new Error(answer.message);
  return answer.day;
}

const surfaces = {
  level: (): number => 0,
  rising: (_east: number, north: number): number => 20 + north / 25,
  falling: (_east: number, north: number): number => 40 - north / 20,
};
const groundOf = (surface: (east: number, north: number) => number) => {
  const measured = hilly(PAR_FOUR, surface);
  return { measured, hole: measured.holes[0]!, data: groundData(measured, measured.holes[0]!, "yards", english) };
};
const level = groundOf(surfaces.level);
const fromTee = (levelYards: number) => ({
  fromMetres: 0,
  levelMetres: levelYards * YARD,
  driverMetres: levelYards * YARD,
});

describe("a drive", () => {
  test("in still air at sea level on level ground is what the golfer says it is", () => {
    for (const yards of [60, 110, 200, 320])
      expect(drivenMetres(level.data, "back", fromTee(yards), dayIn(0, 0))).toBeCloseTo(yards * YARD, 1);
  });

  test("of 200 yards into 20 mph comes down well short, as the flight model has it", () => {
    const day = dayIn(20 * 0.44704, 0);
    const today = carryToday({ levelCarryMetres: 200 * YARD, riseMetres: 0, bearingDegrees: 0 }, day, {
      driverMetres: 200 * YARD,
    });
    if (!today.ok) throw new Error(today.message);
    const metres = drivenMetres(level.data, "back", fromTee(200), day);
    expect(metres).toBeCloseTo(today.carry.metres, 0);
    expect(metres / YARD).toBeLessThan(170);
    expect(metres / YARD).toBeGreaterThan(150);
  });

  test("comes down where ground and flight meet: flown to the height of the ground there, it carries as far", () => {
    for (const surface of [surfaces.rising, surfaces.falling]) {
      const { measured, hole, data } = groundOf(surface);
      for (const yards of [90, 150, 200, 250]) {
        for (const day of [dayIn(0, 0), dayIn(6, 20), dayIn(7, 170, 5)]) {
          const metres = drivenMetres(data, "back", fromTee(yards), day);
          // From the height model itself, not from the table the page has.
          const riseMetres = landingAt(hole, hole.tees[0]!, metres, measured.ground)!.riseMetres!;
          const today = carryToday({ levelCarryMetres: yards * YARD, riseMetres, bearingDegrees: 0 }, day, {
            driverMetres: yards * YARD,
          });
          if (!today.ok) throw new Error(today.message);
          expect(Math.abs(today.carry.metres - metres)).toBeLessThan(1);
        }
      }
    }
  });

  test("is shorter uphill, into the wind and in the cold, longer down and with it", () => {
    const still = drivenMetres(level.data, "back", fromTee(200), dayIn(0, 0));
    expect(drivenMetres(groundOf(surfaces.rising).data, "back", fromTee(200), dayIn(0, 0))).toBeLessThan(still - 3);
    expect(drivenMetres(groundOf(surfaces.falling).data, "back", fromTee(200), dayIn(0, 0))).toBeGreaterThan(
      still + 3,
    );
    expect(drivenMetres(level.data, "back", fromTee(200), dayIn(6, 0))).toBeLessThan(still - 8);
    expect(drivenMetres(level.data, "back", fromTee(200), dayIn(6, 180))).toBeGreaterThan(still + 5);
    expect(drivenMetres(level.data, "back", fromTee(200), dayIn(0, 0, 2))).toBeLessThan(still - 1);
  });

  test("with plain figures, and from a tee nobody knows, is the level carry", () => {
    expect(drivenMetres(groundOf(surfaces.rising).data, "back", fromTee(200), undefined)).toBe(200 * YARD);
    expect(drivenMetres(level.data, "nobody", fromTee(200), dayIn(8, 0))).toBe(200 * YARD);
  });

  test("and the stroke after it are each flown from where they are struck", () => {
    const { data } = groundOf(surfaces.falling);
    const day = dayIn(5, 0);
    const after = drivenMetres(data, "back", { fromMetres: 150, levelMetres: 120, driverMetres: 183 }, day);
    const today = carryToday({ levelCarryMetres: 120, riseMetres: -after / 20, bearingDegrees: 0 }, day, {
      driverMetres: 183,
    });
    if (!today.ok) throw new Error(today.message);
    expect(after).toBeCloseTo(today.carry.metres, 0);
  });
});

describe("drivers shorter than 120 and longer than 320 yards", () => {
  test("have landing ground of their own, and are said to be unmeasured", () => {
    for (const [yards, unmeasured] of [
      [60, true],
      [90, true],
      [119, true],
      [120, false],
      [320, false],
      [330, true],
    ] as const) {
      expect(isUnmeasuredDriver(yards * YARD)).toBe(unmeasured);
      const metres = drivenMetres(level.data, "back", fromTee(yards), dayIn(0, 0));
      const { own, metres: told } = driveOf(level.data, "back", metres)!;
      expect(told).toBeCloseTo(yards * YARD, 1);
      expect(own.leavesMetres).toBeCloseTo(400 - yards * YARD, 0);
    }
  });

  test("as no golfer has them are nobody's", () => {
    expect(golferOf(undefined)).toBeUndefined();
    expect(golferOf(10)).toBeUndefined();
    expect(golferOf(400)).toBeUndefined();
    expect(golferOf(180)).toBe(180);
  });
});

test("the rise along the line goes through the heights worked out, and on as the last of them", () => {
  const { data } = groundOf(surfaces.rising);
  expect(riseAlong(data, "back", 0)).toBe(0);
  for (const metres of [15, 100, 133, 250]) expect(riseAlong(data, "back", metres)).toBeCloseTo(metres / 25, 0);
  expect(riseAlong(data, "back", 1000)).toBe(riseAlong(data, "back", 400));
  expect(riseAlong(level.data, "nobody", 100)).toBe(0);
});
