/** The ladder of full shots. */
import { describe, expect, test } from "vitest";
import { LONGEST_CARRY_METRES, SHORTEST_CARRY_METRES } from "../../src/flight/family.ts";
import { metresFromYards } from "../../src/geo/units.ts";
import {
  knownRungs,
  ladderOf,
  longestAfter,
  outOfOrder,
  RUNG_IDS,
  SHARE_OF_DRIVER,
} from "../../src/measure/ladder.ts";
import { REFERENCE_PLAYERS } from "../../src/measure/players.ts";

const at = (ladder: ReturnType<typeof ladderOf>, id: string) => ladder.find((rung) => rung.id === id)!;

describe("derived from the driver", () => {
  test("a driver of 269 yards gives the tour's own averages", () => {
    // Published, men's professional tour averages of carry (as reprinted in a golf magazine, 2013): yards.
    const ladder = ladderOf(metresFromYards(269), {});
    const published = {
      hybrid: [225],
      "fairway-wood": [243, 230],
      "long-iron": [212, 203],
      "mid-iron": [194, 183, 172],
      "short-iron": [160, 148],
      "pitching-wedge": [136],
    };
    for (const [id, yards] of Object.entries(published)) {
      const carry = at(ladder, id).carryMetres! / 0.9144;
      expect(carry).toBeGreaterThanOrEqual(Math.min(...yards) - 1e-9);
      expect(carry).toBeLessThanOrEqual(Math.max(...yards) + 1e-9);
    }
  });

  test("the longest shot off the ground is as far of the drive as the reference players' second", () => {
    // Published, World Handicap System: 220 of 250, 170 of 200, 190 of 210, 130 of 150 yards.
    const shares = REFERENCE_PLAYERS.map(({ driveMetres, secondMetres }) => secondMetres / driveMetres);
    expect(SHARE_OF_DRIVER["fairway-wood"]).toBeGreaterThan(Math.min(...shares));
    expect(SHARE_OF_DRIVER["fairway-wood"]).toBeLessThan(Math.max(...shares));
  });

  test("each club is shorter than the one above it, whatever the driver carries", () => {
    for (let yards = 40; yards <= 340; yards += 20) {
      const ladder = ladderOf(metresFromYards(yards), {});
      expect(outOfOrder(ladder)).toEqual([]);
      const known = knownRungs(ladder).map(({ carryMetres }) => carryMetres);
      expect(known).toEqual([...known].sort((a, b) => b - a));
      for (const metres of known) expect(metres).toBeGreaterThanOrEqual(SHORTEST_CARRY_METRES);
    }
  });

  test("a short driver leaves out what is less than a full stroke", () => {
    const ladder = ladderOf(metresFromYards(90), {});
    expect(at(ladder, "sand-wedge").carryMetres).toBeUndefined();
    expect(at(ladder, "pitching-wedge").carryMetres).toBeCloseTo(metresFromYards((90 * 136) / 269), 9);
  });

  test("without a driver nothing is derived", () => {
    expect(knownRungs(ladderOf(undefined, {}))).toEqual([]);
    expect(ladderOf(undefined, {}).map(({ id }) => id)).toEqual(RUNG_IDS);
  });
});

describe("given by hand", () => {
  test("stays when the driver changes, and says what the driver would give", () => {
    for (const driver of [undefined, 150, 200]) {
      const hybrid = at(ladderOf(driver, { hybrid: 141 }), "hybrid");
      expect(hybrid).toEqual({
        id: "hybrid",
        carryMetres: 141,
        own: true,
        derivedMetres: driver === undefined ? undefined : expect.closeTo((driver * 225) / 269, 9),
      });
    }
  });

  test("known rungs go by carry, not by club", () => {
    expect(
      knownRungs(ladderOf(200, { "mid-iron": 190 }))
        .slice(0, 3)
        .map(({ id }) => id),
    ).toEqual(["driver", "mid-iron", "fairway-wood"]);
  });

  test("the longest stroke after the drive is not the driver, and may be one given by hand", () => {
    expect(longestAfter(269, {})).toBeCloseTo(236.5, 9);
    expect(longestAfter(269, { hybrid: 250 })).toBe(250);
    expect(longestAfter(undefined, {})).toBeUndefined();
  });

  test("a shorter club that carries as far as a longer is told, beside the nearest such", () => {
    expect(outOfOrder(ladderOf(200, { hybrid: 180 }))).toEqual([{ longer: "fairway-wood", shorter: "hybrid" }]);
    expect(outOfOrder(ladderOf(200, { "fairway-wood": 200 }))).toEqual([
      { longer: "driver", shorter: "fairway-wood" },
    ]);
    expect(outOfOrder(ladderOf(undefined, { hybrid: 150, "sand-wedge": LONGEST_CARRY_METRES }))).toEqual([
      { longer: "hybrid", shorter: "sand-wedge" },
    ]);
    // One rung too low: everything under it that carries further is told.
    expect(outOfOrder(ladderOf(200, { "long-iron": 120 })).map(({ shorter }) => shorter)).toEqual(["mid-iron"]);
  });
});
