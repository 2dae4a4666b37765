/** The golfer's own lengths without a page: what is kept, what they do on a hole, where the drive lies on a plate. */
import { describe, expect, test } from "vitest";
import { effectiveLength } from "../../src/flight/effective.ts";
import { LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "../../src/flight/family.ts";
import type { FromTee, ShotNumbers } from "../../src/contract/ground-data.ts";
import { dayOf, driveOf, shotBetween } from "../../src/islands/conditions-model.ts";
import { NO_CONDITIONS } from "../../src/islands/conditions-store.ts";
import { readLengths, withLength, writeLengths } from "../../src/islands/lengths-store.ts";
import { planeOf } from "../../src/contract/values.ts";
import { arcOnSheet } from "../../src/islands/own-plate.ts";
import { ownShots, type BeyondAnswer, type ShotAnswer } from "../../src/islands/own-shots-model.ts";
import { knownRungs, ladderOf, type KnownRung } from "../../src/measure/ladder.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { groundData } from "../../src/site/files/ground-data.ts";
import { words } from "../../src/site/language/words.ts";
import { drawPlate } from "../../src/draw/plate.ts";
import { areaFeature, box } from "../support/flat-course.ts";
import { DOGLEG, hilly, PAR_FOUR, PAR_THREE } from "../support/hilly-course.ts";

const english = words("en");
const level = (): number => 0;

function dayIn(speedMetresPerSecond: number, fromDegrees: number) {
  const answer = dayOf({ ...NO_CONDITIONS, wind: { speedMetresPerSecond, fromDegrees } }, 0);
  if (!answer.ok) throw new Error(answer.message);
  return answer.day;
}
const calm = dayIn(0, 0);

describe("kept lengths", () => {
  test("come back as they were, to the last digit", () => {
    const own = { hybrid: 150 * 0.9144, "sand-wedge": SHORTEST_CARRY_METRES, "fairway-wood": LONGEST_CARRY_METRES };
    expect(readLengths(writeLengths(own)!)).toEqual(own);
  });

  test.each([
    "",
    "{",
    "7",
    "null",
    "[]",
    '{"hybrid":"far"}',
    '{"hybrid":-4}',
    '{"hybrid":900}',
    '{"hybrid":null}',
    '{"putter":100}',
    '{"driver":200}',
  ])("nothing is made of %s", (text) => {
    expect(readLengths(text)).toEqual({});
  });

  test("none leave nothing behind; one is given and taken back without the others", () => {
    expect(writeLengths({})).toBeUndefined();
    const two = withLength(withLength({}, "hybrid", 150), "mid-iron", 120);
    expect(withLength(two, "hybrid", undefined)).toEqual({ "mid-iron": 120 });
    expect(withLength(two, "hybrid", 151)).toEqual({ hybrid: 151, "mid-iron": 120 });
  });
});

describe("a drive between two lengths worked out", () => {
  const measured = hilly(DOGLEG, level, { hole: { par: { men: 4, women: 4 } } });
  const hole = measured.holes[0]!;
  const data = groundData(measured, hole, "yards", english);

  test("leaves what landing ground at that very length leaves, and the shot to the green from there", () => {
    for (const metres of [121, 155.5, 183]) {
      const { metres: shown, own } = driveOf(data, "back", metres)!;
      const landing = landingAt(hole, hole.tees[0]!, metres, measured.ground)!;
      expect(shown).toBe(metres);
      expect(own.leavesMetres).toBeCloseTo(landing.leavesMetres, 0);
      expect(own.green![1][0]).toBeCloseTo(landing.leavesStraightMetres, 0);
    }
  });

  test("beyond the lengths worked out is the last of them, and none on a hole it is as long as", () => {
    expect(driveOf(data, "back", 30)!.metres).toBe(data.drivesMetres[0]);
    const long = hilly(PAR_FOUR, level);
    const ofLong = groundData(long, long.holes[0]!, "yards", english);
    expect(driveOf(ofLong, "back", 390)!.metres).toBe(ofLong.drivesMetres[ofLong.drivesMetres.length - 1]);
    const short = hilly(PAR_THREE, level);
    expect(driveOf(groundData(short, short.holes[0]!, "yards", english), "back", 160)).toBeUndefined();
    expect(driveOf(data, "nobody", 180)).toBeUndefined();
  });

  test("bearings go by the shorter turn", () => {
    expect(shotBetween([100, 0, 350], [100, 4, 10], 0.5)).toEqual([100, 2, 0]);
    expect(shotBetween([100, 0, 10], [80, 0, 350], 0.25)).toEqual([95, 0, 5]);
  });
});

/** Answers on a hole seen from its first tee. */
function answers(from: Partial<FromTee>, rungs: readonly KnownRung[], day = calm): readonly ShotAnswer[] {
  return ownShots(
    {
      from: {
        ahead: [],
        marker: [0, 0],
        line: [
          [0, 0],
          [0, 400],
        ],
        ...from,
      },
      drive: undefined,
      third: "middle",
    },
    rungs,
    day,
  );
}
const rungs = knownRungs(ladderOf(200, {}));
const carryOf = (id: string): number => rungs.find((rung) => rung.id === id)!.carryMetres;
const straight = (metres: number): ShotNumbers => [metres, 0, 0];

describe("a hazard to carry", () => {
  const over = (reach: number, past: number) => ({
    ahead: [{ name: "Burn", reach: straight(reach), past: straight(past), across: true }],
  });
  const first = (from: Partial<FromTee>, day = calm): ShotAnswer | undefined =>
    answers(from, rungs, day).find(({ kind }) => kind === "carry");

  test("is carried by the shortest shot that does, on the level in still air by its plain length", () => {
    // Still air at sea level and 15 °C is the air a level carry is stated in.
    expect(first(over(100, carryOf("mid-iron") - 1))).toMatchObject({
      by: { id: "mid-iron" },
      spareMetres: expect.closeTo(1, 0),
    });
    expect(first(over(100, carryOf("mid-iron") + 1))).toMatchObject({ by: { id: "long-iron" } });
  });

  test("needs a longer one against the wind, and none does when it is too far", () => {
    const past = carryOf("mid-iron") - 1;
    const into = first(over(100, past), dayIn(6, 0));
    if (into?.kind !== "carry" || !into.by) throw new Error("It can be carried.");
    const asked = effectiveLength({ distanceMetres: past, riseMetres: 0, bearingDegrees: 0 }, dayIn(6, 0));
    if (!asked.ok) throw new Error(asked.message);
    expect(into.by.carryMetres).toBeGreaterThanOrEqual(asked.lengthMetres + asked.plusMinusMetres);
    expect(into.by.carryMetres).toBeGreaterThan(carryOf("mid-iron"));
    expect(first(over(150, 205))).toMatchObject({ by: undefined });
  });

  test("goes unmentioned where the longest shot does not come near it, or every full shot flies it", () => {
    expect(first(over(260, 280))).toBeUndefined();
    expect(first(over(10, 30))).toBeUndefined();
  });
});

describe("the shot that stays short", () => {
  const beside = (name: string, reach: number, past?: number) => ({
    name,
    reach: straight(reach),
    ...(past === undefined ? {} : { past: straight(past) }),
    across: false,
  });
  const short = (ahead: FromTee["ahead"]): ShotAnswer | undefined =>
    answers({ ahead }, rungs).find(({ kind }) => kind === "short");

  test("leaves out what the longest shot flies over, and ends with its run before the hazard", () => {
    const answer = short([beside("Near", 100, 120), beside("Pot", 195, 215)]);
    expect(answer).toMatchObject({ hazard: { name: "Pot", distanceMetres: 195 } });
    if (answer?.kind !== "short") throw new Error("There is one.");
    expect(answer.gapMetres).toBeCloseTo(195 - answer.by.carryMetres, 0);
    const at = effectiveLength({ distanceMetres: 195, riseMetres: 0, bearingDegrees: 0 }, calm);
    if (!at.ok) throw new Error(at.message);
    expect(answer.by.carryMetres + at.run.metres).toBeLessThan(195);
    // The next longer one would run in.
    const longer = rungs[rungs.indexOf(answer.by) - 1]!;
    expect(longer.carryMetres + at.run.metres).toBeGreaterThan(195 - at.plusMinusMetres - 0.01);
  });

  test("ends in no other hazard either", () => {
    const alone = short([beside("Pot", 195, 215)]);
    if (alone?.kind !== "short") throw new Error("There is one.");
    const there = alone.by.carryMetres;
    const both = short([beside("Other", there - 5, there + 5), beside("Pot", 195, 215)]);
    expect(both).toMatchObject({ hazard: { name: "Pot" } });
    if (both?.kind !== "short") throw new Error("There is one.");
    expect(both.by.carryMetres).toBeLessThan(there);
  });

  test("is the longest itself where it ends in nothing; what every shot finds is no reason to lay up", () => {
    expect(short([beside("Pot", 240, 250)])).toMatchObject({ hazard: undefined, by: { id: "driver" } });
    expect(short([beside("Beach", 5)])).toBeUndefined();
  });
});

describe("the shot to the green", () => {
  const green = (front: number, middle: number, back: number): Partial<FromTee> => ({
    green: [straight(front), straight(middle), straight(back)],
  });

  test("is the nearest, with how far off it comes down", () => {
    const middle = carryOf("hybrid") - 4;
    expect(answers(green(middle - 15, middle, middle + 15), rungs)).toEqual([
      {
        kind: "green",
        driveMetres: undefined,
        distanceMetres: middle,
        by: rungs.find(({ id }) => id === "hybrid"),
        pastMetres: expect.closeTo(4, 0),
      },
    ]);
  });

  test("plays longer uphill and follows the third the hole is cut in", () => {
    const up: Partial<FromTee> = {
      green: [
        [120, 12, 0],
        [130, 12, 0],
        [150, 12, 0],
      ],
    };
    const [to] = answers(up, rungs);
    expect(to).toMatchObject({ kind: "green", distanceMetres: 130 });
    if (to?.kind !== "green") throw new Error("It can be reached.");
    expect(to.pastMetres).toBeLessThan(to.by.carryMetres - 130 - 8);
    const back = ownShots(
      {
        from: {
          ahead: [],
          marker: [0, 0],
          line: [
            [0, 0],
            [0, 140],
          ],
          ...up,
        },
        drive: undefined,
        third: "back",
      },
      rungs,
      calm,
    );
    expect(back[0]).toMatchObject({ distanceMetres: expect.closeTo(145, 9) });
  });

  test("out of reach leaves the rest, and nearer than the shortest full shot is said so", () => {
    expect(answers(green(235, 250, 265), rungs)[0]).toMatchObject({
      kind: "beyond",
      by: { id: "driver" },
      leavesMetres: expect.closeTo(50, 0),
    });
    expect(answers(green(35, 45, 55), rungs)[0]).toMatchObject({ kind: "part", by: { id: "sand-wedge" } });
  });

  test("after a drive no driver is used", () => {
    const measured = hilly(PAR_FOUR, level);
    const data = groundData(measured, measured.holes[0]!, "yards", english);
    const known = knownRungs(ladderOf(200, {}));
    const told = ownShots(
      { from: data.from["back"]!, drive: driveOf(data, "back", 200), third: "middle" },
      known,
      calm,
    );
    expect(told.find(({ kind }) => kind === "green" || kind === "beyond")).toMatchObject({
      driveMetres: 200,
      by: { id: "fairway-wood" },
      kind: "beyond",
    });
    // Out of reach too, what is asked is the third's, not the middle's.
    const drive = driveOf(data, "back", 200)!;
    const [front, middle, back] = drive.own.green!.map(([metres]) => metres) as [number, number, number];
    const beyond = (third: "front" | "middle" | "back") =>
      ownShots({ from: data.from["back"]!, drive, third }, knownRungs(ladderOf(140, {})), calm).find(
        ({ kind }) => kind === "beyond",
      ) as BeyondAnswer;
    expect(beyond("middle").distanceMetres).toBeCloseTo(drive.own.leavesMetres, 1);
    expect(beyond("front").distanceMetres - beyond("middle").distanceMetres).toBeCloseTo(
      front + (back - front) / 6 - middle,
      1,
    );
    expect(beyond("back").distanceMetres - beyond("middle").distanceMetres).toBeCloseTo(
      back - (back - front) / 6 - middle,
      1,
    );
    expect(beyond("back").leavesMetres).toBeGreaterThan(beyond("front").leavesMetres + 5);
  });
});

test("no length gives no answer", () => {
  expect(answers({ ahead: [{ name: "Burn", reach: straight(100), past: straight(120), across: true }] }, [])).toEqual(
    [],
  );
});

describe("what a hole's data say of its tees", () => {
  test("hazards in order of reach, with what is across to be carried", () => {
    const measured = hilly(PAR_FOUR, level);
    const { ahead, green } = groundData(measured, measured.holes[0]!, "yards", english).from["back"]!;
    expect(ahead.map(({ name, across }) => [name, across])).toEqual([
      ["Burn", true],
      ["Pot", false],
    ]);
    expect(ahead[0]!.reach[0]).toBeCloseTo(140, 1);
    expect(ahead[0]!.past![0]).toBeGreaterThanOrEqual(150);
    expect(green).toBeUndefined();
  });

  test("nothing that lies beyond the green's front", () => {
    const behind = areaFeature("bank", "bunker", box(-5, 420, 5, 430), { name: "Bank" });
    const measured = hilly([...PAR_FOUR, behind], level);
    const hole = measured.holes[0]!;
    expect(hole.tees[0]!.hazards.some(({ id }) => id === "bank")).toBe(true);
    expect(groundData(measured, hole, "yards", english).from["back"]!.ahead.map(({ name }) => name)).toEqual([
      "Burn",
      "Pot",
    ]);
  });

  test("of a hole reached in one, the green from the tee", () => {
    const measured = hilly(PAR_THREE, level, { hole: { par: { men: 3, women: 3 } } });
    const { green } = groundData(measured, measured.holes[0]!, "yards", english).from["back"]!;
    expect(green!.map(([distance]) => Math.round(distance))).toEqual([138, 150, 162]);
  });

  test("without heights as on the level; over unknown ground nothing", () => {
    const flat = hilly(PAR_FOUR);
    const hill = hilly(PAR_FOUR, (_east, north) => north / 20);
    const hole = (measured: typeof flat) => groundData(measured, measured.holes[0]!, "yards", english);
    const [level, uphill] = [hole(flat).from["back"]!, hole(hill).from["back"]!];
    expect(level.ahead.map(({ reach: [distance, rise] }) => [distance, rise])).toEqual(
      uphill.ahead.map(({ reach: [distance] }) => [distance, 0]),
    );
    expect(uphill.ahead[0]!.reach[1]).toBeCloseTo(7, 0);
    const partly = hilly(PAR_FOUR, (_east, north) => (north > 200 ? undefined : 0));
    expect(hole(partly).from["back"]!.ahead.map(({ name }) => name)).toEqual(["Burn"]);
  });
});

describe("the drive on a plate", () => {
  const measured = hilly(DOGLEG, level);
  const hole = measured.holes[0]!;
  const data = groundData(measured, hole, "yards", english);
  const matrix: readonly [number, number, number, number, number, number] = [2, 0, 0, -2, 50, 900];

  test("is as far from the tee as it carries, at the sheet's scale", () => {
    const from = data.from["back"]!;
    const { path, left } = arcOnSheet({ from, corridorMetres: data.corridorMetres, carryMetres: 150 }, matrix)!;
    const [x, y, radius, , , , , endX, endY] = path.match(/-?\d+(\.\d+)?/g)!.map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const tee = [2 * from.marker[0] + 50, -2 * from.marker[1] + 900] as const;
    expect(radius).toBe(300);
    expect([x, y]).toEqual(left.map((value) => Number(value.toFixed(1))));
    for (const [px, py] of [
      [x, y],
      [endX, endY],
    ] as const)
      expect(Math.hypot(px - tee[0], py - tee[1])).toBeCloseTo(300, 0);
    // Straight up the sheet: the corridor's edges stand as far to either side.
    expect(tee[0] - x).toBeCloseTo(2 * data.corridorMetres, -0.5);
    expect(endX - tee[0]).toBeCloseTo(2 * data.corridorMetres, -0.5);
  });

  test("is not drawn without a driver, nor beyond the hole", () => {
    const own = { from: data.from["back"]!, corridorMetres: data.corridorMetres };
    expect(arcOnSheet({ ...own, carryMetres: undefined }, matrix)).toBeUndefined();
    expect(arcOnSheet({ ...own, carryMetres: 310 }, matrix)).toBeUndefined();
  });

  test("plates say where they lie: the tee's marker stands where the plate draws it", () => {
    const { svg } = drawPlate(hole, { composition: "phone", unit: "yards", idPrefix: "t", words: english.draw });
    const [a, b, c, d, e, f] = planeOf(/data-plane="([^"]*)"/.exec(svg)![1]!)!;
    const { marker } = hole.tees[0]!;
    const { middle } = hole.tees[0]!.green;
    // The flag is moved to the middle of the green.
    const [, flagX, flagY] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(svg)!.map(Number) as [number, number, number];
    expect(a * middle[0] + c * middle[1] + e).toBeCloseTo(flagX, 0);
    expect(b * middle[0] + d * middle[1] + f).toBeCloseTo(flagY, 0);
    // A turn and a scale, nothing else.
    expect(a * c + b * d).toBeCloseTo(0, 6);
    expect(Math.hypot(a, b)).toBeCloseTo(Math.hypot(c, d), 4);
    expect(b * marker[0] + d * marker[1] + f).toBeGreaterThan(flagY);
  });

  test.each([null, "", "1 2 3", "a b c d e f", "1 2 3 4 5 6 7"])("%s is no place", (written) => {
    expect(planeOf(written)).toBeUndefined();
  });
});
