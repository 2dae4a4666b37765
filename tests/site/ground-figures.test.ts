/** What a page says of the ground agrees with what is measured, and is left out where nothing is known. */
import { describe, expect, test } from "vitest";
import { airFrom } from "../../src/flight/air.ts";
import { effectiveLength } from "../../src/flight/effective.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { shotsOf } from "../../src/measure/shots.ts";
import { courseHeight, holeGround, pageShots, STATED_TEMPERATURE_CELSIUS } from "../../src/site/ground/figures.ts";
import { driveLengths, groundData } from "../../src/site/files/ground-data.ts";
import { playerOfTee } from "../../src/site/ground/players.ts";
import { words } from "../../src/site/language/words.ts";
import { TEE_SETS, course } from "../support/flat-course.ts";
import { DOGLEG, hilly, PAR_FOUR, PAR_THREE } from "../support/hilly-course.ts";

const english = words("en");
const groundOf = (measured: ReturnType<typeof hilly>) =>
  holeGround(measured, measured.holes[0]!, measured.holes[0]!.tees[0]!);
const up = (_east: number, north: number): number => 20 + north / 40;

describe("without heights", () => {
  const ground = groundOf(hilly(PAR_FOUR));

  test("nothing is said of rise, effective length, sight or the green's lie", () => {
    expect(ground.grid).toBeUndefined();
    expect(ground.heightMetres).toBeUndefined();
    expect(ground.green).toBeUndefined();
    for (const { rise, plays, sight } of ground.tees)
      expect({ rise, plays, sight }).toEqual({ rise: undefined, plays: [], sight: undefined });
  });

  test("landing ground keeps its widths and loses its lie", () => {
    expect(ground.landings.length).toBeGreaterThan(0);
    for (const { figures } of ground.landings) {
      expect(figures.lie).toBeUndefined();
      expect(figures.seenFromTee).toBeUndefined();
    }
    expect(ground.landings.map(({ figures }) => Math.round(figures.fairway.widthMetres))).toContain(30);
  });

  test("a golfer's own drives are told as on the level, and marked so", () => {
    const data = groundData(hilly(PAR_FOUR), hilly(PAR_FOUR).holes[0]!, "yards", english);
    expect(data.level).toBe(true);
    expect(data.tees["back"]!.some((own) => own !== null)).toBe(true);
    for (const own of data.tees["back"]!) {
      expect(own?.lie).toBeUndefined();
      for (const [, rise] of own?.green ?? []) expect(rise).toBe(0);
    }
    expect(groundData(hilly(PAR_FOUR, up), hilly(PAR_FOUR, up).holes[0]!, "yards", english).level).toBeUndefined();
  });
});

describe("effective lengths", () => {
  const measured = hilly(PAR_FOUR, up);
  const ground = groundOf(measured);
  const back = ground.tees[0]!;

  test("are the flight model's, for the measured shot, in still air at the course's height", () => {
    const air = airFrom({ heightMetres: courseHeight(measured)!, temperatureCelsius: STATED_TEMPERATURE_CELSIUS });
    if (!air.ok) throw new Error(air.message);
    const shots = shotsOf(measured.holes[0]!, measured.holes[0]!.tees[0]!, measured.ground!, back.player.driveMetres);
    const middle = shots.find(({ purpose }) => purpose === "green-middle")!;
    const row = back.plays.find(({ shot }) => shot.purpose === "green-middle")!;
    expect(row.shot).toEqual(middle);
    const answer = effectiveLength(middle, { air: air.air });
    if (!answer.ok) throw new Error(answer.message);
    expect(row.effective!.lengthMetres).toBe(answer.lengthMetres);
    expect(row.effective!.plusMinusMetres).toBe(answer.plusMinusMetres);
  });

  test("the course's height is the mean of its tees'", () => {
    expect(courseHeight(measured)).toBeCloseTo((20 + 21.25) / 2, 2);
  });

  test("start where the tee's own reference player's drive ends", () => {
    const drive = back.player.driveMetres;
    expect(back.plays.find(({ shot }) => shot.purpose === "green-middle")!.shot.distanceMetres).toBeCloseTo(
      400 - drive,
      1,
    );
  });

  test("a carry comes down on the ground past the edge, not on the foot of its bank", () => {
    // Tee and far side 10 m above the inlet; the outline's far edge is already down on the water.
    const inlet = hilly(PAR_THREE, (_east, north) => (north > 36 && north < 133 ? 0 : 10), {
      hole: { par: { men: 3, women: 3 } },
    });
    const hole = inlet.holes[0]!;
    const told = pageShots(hole, hole.tees[0]!, inlet.ground!, 180).find(({ purpose }) => purpose === "carry")!;
    expect(told.riseMetres).toBeCloseTo(0, 5);
    const [own] = groundOf(inlet).tees;
    const row = own!.plays.find(({ shot }) => shot.purpose === "carry")!;
    expect(row.effective!.lengthMetres).toBeGreaterThan(row.shot.distanceMetres - 1);
  });

  test("a par 3 is played from the tee, and has no landing ground", () => {
    const inlet = hilly(PAR_THREE, () => 10, { hole: { par: { men: 3, women: 3 } } });
    const ground = groundOf(inlet);
    expect(ground.landings).toEqual([]);
    expect(ground.tees[0]!.driveMetres).toBeUndefined();
    for (const { shot } of ground.tees[0]!.plays) expect(shot.driveMetres).toBe(0);
  });
});

describe("corner", () => {
  test("asks for what stands on it at its height, and is for those whose drive is longer", () => {
    const [flat, raised] = [() => 10, (_east: number, north: number) => (north > 110 ? 22 : 10)].map(
      (surface) => groundOf(hilly(DOGLEG, surface)).tees[0]!.corners[0]!,
    );
    expect(flat!.hardest!.id).toBe("gorse");
    expect(flat!.clearing!.shot.riseMetres).toBeCloseTo(3, 3);
    expect(raised!.clearing!.shot.riseMetres).toBeCloseTo(15, 3);
    expect(raised!.clearing!.effective!.lengthMetres).toBeGreaterThan(flat!.clearing!.effective!.lengthMetres + 10);
    // 194 m of carry: within a scratch man's 228.6 m, past everyone else's.
    expect(flat!.reachableFor).toEqual(["scratch-men"]);
  });

  test("without heights its carry and saving stand alone", () => {
    const corner = groundOf(hilly(DOGLEG)).tees[0]!.corners[0]!;
    expect(corner.clearing).toBeUndefined();
    expect(corner.line.carryMetres).toBeGreaterThan(0);
  });
});

describe("players", () => {
  const rated = course([], {
    tees: [
      { ...TEE_SETS[0]!, id: "long", ratings: TEE_SETS[0]!.ratings },
      { ...TEE_SETS[0]!, id: "mid", ratings: [...TEE_SETS[0]!.ratings, ...TEE_SETS[1]!.ratings] },
      { ...TEE_SETS[1]!, id: "short" },
    ],
    defaultTee: "mid",
  });

  test("the usual tees speak for bogey men, the longest for scratch men, those rated for women alone for bogey women", () => {
    expect(rated.tees.map((tee) => playerOfTee(rated, tee).id)).toEqual(["scratch-men", "bogey-men", "bogey-women"]);
  });
});

describe("a golfer's own drives", () => {
  const measured = hilly(PAR_FOUR, up);
  const data = groundData(measured, measured.holes[0]!, "yards", english);

  test("are every ten yards or every ten metres, and every twenty where only a short driver, a long one or a strong wind ends", () => {
    const yards = data.drivesMetres.map((metres) => Math.round(metres / 0.9144));
    expect([yards[0], yards.at(-1)]).toEqual([40, 380]);
    yards.slice(1).forEach((next, i) => expect(next - yards[i]!).toBe(next > 120 && next <= 320 ? 10 : 20));
    expect(driveLengths("metres").every((metres) => metres % 10 === 0)).toBe(true);
  });

  test("say what landing ground at that length says", () => {
    const at = 8;
    const landing = landingAt(
      measured.holes[0]!,
      measured.holes[0]!.tees[0]!,
      data.drivesMetres[at]!,
      measured.ground,
    )!;
    const own = data.tees["back"]![at]!;
    expect(own.leavesMetres).toBeCloseTo(landing.leavesMetres, 1);
    expect(own.fairwayMetres).toBeCloseTo(landing.fairway.widthMetres, 1);
    expect(own.lie![0]).toBeCloseTo(landing.lie!.awayPercent, 1);
    expect(own.seen).toBe(landing.seenFromTee);
    expect(own.green![1][0]).toBeCloseTo(landing.leavesStraightMetres, 2);
  });

  test("name the first trouble to each side", () => {
    const atPot = data.drivesMetres.findIndex((metres) => metres > 215 && metres < 228);
    expect(data.tees["back"]![atPot]!.right![0]).toBe("Pot");
    expect(data.tees["back"]![atPot]!.right![1]).toBeCloseTo(20, 1);
  });

  test("hold nothing for a drive as long as the hole", () => {
    const short = hilly(PAR_THREE, () => 5);
    const ofShort = groundData(short, short.holes[0]!, "yards", english);
    expect(ofShort.tees["back"]![ofShort.tees["back"]!.length - 1]).toBeNull();
  });
});
