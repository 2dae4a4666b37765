/** The wind's control without a page: what it reads, keeps and works out. */
import { describe, expect, test } from "vitest";
import { keyTurn, placeOf, RIM_METRES_PER_SECOND, turnedBy, windAt } from "../../src/islands/conditions-dial.ts";
import { shotOf, writeShot } from "../../src/contract/values.ts";
import {
  compassPoint,
  dayOf,
  limitsOf,
  METRES_PER_SECOND_PER_MPH,
  nearestDrive,
  readField,
  speedFrom,
  speedIn,
  todayOf,
  STATED_TEMPERATURE_CELSIUS,
} from "../../src/islands/conditions-model.ts";
import {
  NO_CONDITIONS,
  readConditions,
  WEATHER_KEPT_MILLISECONDS,
  writeConditions,
} from "../../src/islands/conditions-store.ts";
import { answeredParts } from "../../src/islands/conditions-today.ts";
import { holeGround, STATED_TEMPERATURE_CELSIUS as BUILT_TEMPERATURE_CELSIUS } from "../../src/site/ground/figures.ts";
import { shotNumbers } from "../../src/site/files/ground-data.ts";
import { words } from "../../src/site/language/words.ts";
import { hilly, PAR_FOUR } from "../support/hilly-course.ts";

const script = words("en").ground.conditions.script;

describe("a field", () => {
  test("holds a number within its limits, an empty one nothing", () => {
    expect(readField(" 14 ", "speed", "yards")).toEqual({ ok: true, value: 14 });
    expect(readField("7,5", "temperature", "yards")).toEqual({ ok: true, value: 7.5 });
    expect(readField("\u22123", "temperature", "metres")).toEqual({ ok: true, value: -3 });
    expect(readField("", "carry", "yards")).toEqual({ ok: true, value: undefined });
  });

  test.each([
    ["200", "speed", "metres"],
    ["-1", "speed", "yards"],
    ["361", "from", "yards"],
    ["-40", "temperature", "yards"],
    ["-200", "carry", "yards"],
    ["30", "carry", "metres"],
    ["900", "carry", "yards"],
  ] as const)("refuses %s as %s in %s", (text, field, unit) => {
    expect(readField(text, field, unit)).toEqual({ ok: false, reason: "outside" });
  });

  test.each(["NaN", "Infinity", "1e9", "twelve", "0x10", "--2", "."])("takes %s for no number", (text) => {
    expect(readField(text, "speed", "metres")).toEqual({ ok: false, reason: "not-a-number" });
  });

  test("never lets through what the flight model refuses", () => {
    for (const unit of ["yards", "metres"] as const) {
      for (const key of ["least", "most"] as const) {
        const wind = {
          speedMetresPerSecond: speedFrom(limitsOf("speed", unit)[key], unit),
          fromDegrees: limitsOf("from", unit)[key],
        };
        const day = dayOf({ ...NO_CONDITIONS, wind, temperatureCelsius: limitsOf("temperature", unit)[key] }, 20);
        if (!day.ok) throw new Error(day.message);
        // A tail wind or a head wind as strong as that may put the target out of reach; it must not be refused as
        // input.
        const answer = todayOf([150, 3, 40], day.day);
        if (!answer.ok) expect(["too-long", "too-short", "unreachable"]).toContain(answer.reason);
      }
    }
  });

  test("takes miles per hour beside yards: 1 mph is 0.44704 m/s exactly", () => {
    expect(METRES_PER_SECOND_PER_MPH).toBe(1609.344 / 3600);
    expect(speedIn(speedFrom(14, "yards"), "yards")).toBeCloseTo(14, 12);
    expect(speedFrom(7, "metres")).toBe(7);
  });
});

describe("what is kept", () => {
  const kept = { wind: { speedMetresPerSecond: 6, fromDegrees: 250 }, temperatureCelsius: 9, carryMetres: 190 };
  const now = Date.UTC(2026, 5, 1, 9);

  test("comes back as it was", () => {
    expect(readConditions(writeConditions(kept, now)!, now + 1000)).toEqual(kept);
  });

  test("weather is forgotten after twelve hours, the carry is not", () => {
    expect(readConditions(writeConditions(kept, now)!, now + WEATHER_KEPT_MILLISECONDS)).toEqual({
      ...NO_CONDITIONS,
      carryMetres: 190,
    });
  });

  test("weather from the future is not believed", () => {
    expect(readConditions(writeConditions(kept, now)!, now - 1).wind).toBeUndefined();
  });

  test("nothing is kept of nothing", () => {
    expect(writeConditions(NO_CONDITIONS, now)).toBeUndefined();
  });

  test.each([
    null,
    "",
    "{",
    "null",
    "7",
    "[]",
    '{"wind":{"speedMetresPerSecond":"6","fromDegrees":1},"at":1780304400000}',
    '{"wind":{"speedMetresPerSecond":-4,"fromDegrees":1},"at":1780304400000}',
  ])("%s holds no wind", (text) => {
    expect(readConditions(text, 1780304400001).wind).toBeUndefined();
  });
});

describe("the dial", () => {
  test("has the hole's direction up: a mark at the top is a head wind", () => {
    const wind = windAt(0, -0.5, 130);
    expect(wind.fromDegrees).toBeCloseTo(130, 9);
    expect(wind.speedMetresPerSecond).toBeCloseTo(RIM_METRES_PER_SECOND / 2, 9);
    expect(windAt(0.5, 0, 130).fromDegrees).toBeCloseTo(220, 9);
  });

  test("gives a mark back the place it was dragged to", () => {
    for (const [x, y] of [
      [0.3, 0.4],
      [-0.6, 0.1],
      [0, -1],
      [-0.2, -0.2],
    ] as const) {
      const [backX, backY] = placeOf(windAt(x, y, 287), 287);
      expect(backX).toBeCloseTo(x, 9);
      expect(backY).toBeCloseTo(y, 9);
    }
  });

  test("is calm in the middle, and no stronger than its rim outside it", () => {
    expect(windAt(0.01, 0.02, 10).speedMetresPerSecond).toBe(0);
    expect(windAt(3, 4, 10).speedMetresPerSecond).toBe(RIM_METRES_PER_SECOND);
    expect(Math.hypot(...placeOf({ speedMetresPerSecond: 28, fromDegrees: 45 }, 10))).toBeCloseTo(1, 9);
  });

  test("turns by keys, round past north", () => {
    const wind = { speedMetresPerSecond: 5, fromDegrees: 2 };
    expect(turnedBy(wind, keyTurn("ArrowLeft")!).fromDegrees).toBe(357);
    expect(turnedBy(wind, keyTurn("PageUp")!).fromDegrees).toBe(47);
    expect(keyTurn("Tab")).toBeUndefined();
  });
});

describe("the day", () => {
  const measured = hilly(PAR_FOUR, (_east, north) => 20 + north / 40);
  const ground = holeGround(measured, measured.holes[0]!, measured.holes[0]!.tees[0]!);
  const rows = ground.tees[0]!.plays;

  test("in still air at the stated temperature gives the page's own figures", () => {
    expect(STATED_TEMPERATURE_CELSIUS).toBe(BUILT_TEMPERATURE_CELSIUS);
    const still = dayOf(NO_CONDITIONS, ground.heightMetres!);
    if (!still.ok) throw new Error(still.message);
    for (const { shot, effective } of rows) {
      const today = todayOf(shotOf(writeShot(shotNumbers(shot)))!, still.day);
      // The page carries distance and rise to a centimetre.
      if (today.ok) expect(today.lengthMetres).toBeCloseTo(effective!.lengthMetres, 1);
      else expect(effective).toBeUndefined();
    }
  });

  test("a head wind plays longer, a tail wind shorter, a wind from the left moves the ball right", () => {
    const { shot } = rows.find(({ shot: { purpose } }) => purpose === "green-middle")!;
    const from = (degrees: number) => {
      const day = dayOf(
        { ...NO_CONDITIONS, wind: { speedMetresPerSecond: 6, fromDegrees: shot.bearingDegrees + degrees } },
        20,
      );
      if (!day.ok) throw new Error(day.message);
      const answer = todayOf(shotNumbers(shot), day.day);
      if (!answer.ok) throw new Error(answer.message);
      return answer;
    };
    expect(from(0).lengthMetres).toBeGreaterThan(shot.distanceMetres + 10);
    expect(from(180).lengthMetres).toBeLessThan(shot.distanceMetres - 5);
    expect(from(-90).driftMetres).toBeGreaterThan(3);
    expect(from(90).driftMetres).toBeLessThan(-3);
  });

  test("cold air plays longer than warm", () => {
    const at = (temperatureCelsius: number): number => {
      const day = dayOf({ ...NO_CONDITIONS, temperatureCelsius }, 20);
      if (!day.ok) throw new Error(day.message);
      const answer = todayOf([170, 0, 0], day.day);
      if (!answer.ok) throw new Error(answer.message);
      return answer.lengthMetres;
    };
    expect(at(2)).toBeGreaterThan(at(30));
  });

  test("is written as a figure with its spread and drift, or in words", () => {
    expect(
      answeredParts(
        { ok: true, lengthMetres: 160.02, plusMinusMetres: 1.1, driftMetres: -9.2, indication: false },
        "yards",
        script,
      ),
    ).toEqual({ figure: "175", notes: ["±2", "10 left"] });
    expect(
      answeredParts(
        { ok: true, lengthMetres: 160.02, plusMinusMetres: 0.01, driftMetres: 0.4, indication: false },
        "metres",
        script,
      ),
    ).toEqual({ figure: "160", notes: ["±1"] });
    expect(
      answeredParts(
        { ok: true, lengthMetres: 160.02, plusMinusMetres: 9, driftMetres: 0, indication: true },
        "metres",
        script,
      ).notes,
    ).toEqual(["±9", script.indication]);
    for (const reason of ["too-long", "too-short", "unreachable", "not-a-number"] as const) {
      const { figure, notes } = answeredParts({ ok: false, reason, message: "x" }, "yards", script);
      expect(figure).toBe("–");
      expect(notes[0]).not.toMatch(/NaN|undefined/);
    }
  });
});

test.each([["[1,2]"], ["[1,2,null]"], ["{}"], ["x"], [""], [null], ["[1,2,3,4]"]])("%s is no shot", (text) => {
  expect(shotOf(text)).toBeUndefined();
});

test("a carry takes the nearest drive worked out", () => {
  expect(nearestDrive([110, 119, 128], 123)).toBe(1);
  expect(nearestDrive([110, 119, 128], 500)).toBe(2);
});

test("a bearing has a word, either side of north", () => {
  expect([0, 22, 23, 180, 338, 359, -90].map((degrees) => compassPoint(degrees))).toEqual([
    "n",
    "n",
    "ne",
    "s",
    "n",
    "n",
    "w",
  ]);
});
