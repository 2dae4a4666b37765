/** What a hole page says first: chosen from holes drawn in metres, so that each answer can be seen. */
import { describe, expect, test } from "vitest";
import { answer } from "../../src/tell/answer.ts";
import {
  aimFrom,
  byTee,
  glance,
  hazardName,
  mustCarryMetres,
  nearbyCautions,
  perGender,
  troubleRows,
} from "../../src/components/hole-view.ts";
import { defaultTee } from "../../src/measure/default-tee.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredHole, TeeFigures } from "../../src/measure/types.ts";
import { words } from "../../src/site/language/words.ts";
import type { Feature } from "../../src/course/types.ts";
import type { Point } from "../../src/geo/position.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";

const english = words("en");

/** Due north, 360 m from the back tee, 310 m from the forward one, with whatever else is given. */
function measured(extra: readonly Feature[], tip = ""): MeasuredHole {
  const features = [
    lineFeature("line", "line-of-play", [
      [0, 0],
      [0, 360],
    ]),
    areaFeature("green", "green", box(-10, 350, 10, 370)),
    pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
    pointFeature("tee-forward", "tee-marker", [0, 50], { tee: "forward" }),
    ...extra,
  ];
  const one = hole(features, { tip: { markdown: tip, place: { file: "test", line: 1, column: 1 } } });
  return measureCourse(course([one])).holes[0]!;
}

const tee = (of: MeasuredHole, id: string): TeeFigures => of.tees.find((one) => one.tee.id === id)!;
const gully = (south: number, north: number, id = "gully"): Feature =>
  areaFeature(id, "penalty-area-red", box(-80, south, 80, north), { name: id });

describe("the glance", () => {
  test("asks for the furthest carry first, and tells nearer trouble beside the line after it", () => {
    const of = measured([
      gully(60, 80, "near"),
      gully(120, 150, "far"),
      areaFeature("pot", "bunker", box(6, 200, 12, 206)),
    ]);
    expect(glance(tee(of, "back")).map(({ ask, hazard }) => [ask, hazard.id])).toEqual([
      ["carry", "far"],
      ["carry", "near"],
      ["reach", "pot"],
    ]);
    const far = tee(of, "back").hazards.find(({ id }) => id === "far")!;
    expect(mustCarryMetres(tee(of, "back"))).toBe(far.carryMetres);
    expect(far.carryMetres).toBeGreaterThan(150);
  });

  test("a hazard across the line beyond any tee shot is no carry of the tee shot, and is told as met later", () => {
    const of = measured([gully(300, 320)]);
    expect(mustCarryMetres(tee(of, "back"))).toBeUndefined();
    expect(glance(tee(of, "back")).map(({ ask, hazard, metres }) => [ask, hazard.id, Math.round(metres)])).toEqual([
      ["later", "gully", 300],
    ]);
  });

  test("what begins within a drive and cannot be carried is stayed short of", () => {
    const of = measured([gully(200, 265)]);
    expect(mustCarryMetres(tee(of, "back"))).toBeUndefined();
    expect(glance(tee(of, "back")).map(({ ask, metres }) => [ask, Math.round(metres)])).toEqual([["short", 200]]);
  });

  test("the same hazard asks different things of different tees", () => {
    // To the far edge 265 m from the back tee, past any asked carry; 215 m from the forward one.
    const of = measured([gully(235, 265)]);
    expect(glance(tee(of, "back")).map(({ ask }) => ask)).toEqual(["later"]);
    expect(glance(tee(of, "forward")).map(({ ask }) => ask)).toEqual(["carry"]);
  });

  test("what lies outside the corridor, behind the green or at one's feet is left out", () => {
    const of = measured([
      areaFeature("wide", "bunker", box(60, 200, 70, 210)),
      areaFeature("feet", "bunker", box(-4, 8, 4, 14)),
      areaFeature("behind", "bunker", box(-4, 372, 4, 380)),
    ]);
    expect(glance(tee(of, "back"))).toEqual([]);
  });

  test("it has room for three", () => {
    const pots = [150, 170, 190, 210].map((at) => areaFeature(`pot-${at}`, "bunker", box(6, at, 10, at + 4)));
    expect(glance(tee(measured(pots), "back")).map(({ hazard }) => hazard.id)).toEqual([
      "pot-150",
      "pot-170",
      "pot-190",
    ]);
  });
});

describe("the aim", () => {
  const mark = (id: string, at: Point, name?: string): Feature =>
    pointFeature(id, "landmark", at, { tags: { man_made: "lighthouse" }, ...(name === undefined ? {} : { name }) });

  test("is what the tip says, though another mark stands nearer the line", () => {
    const of = measured(
      [mark("cairn", [0, 900], "the cairn"), mark("light", [100, 900], "the light")],
      "Aim at the :aim[light].",
    );
    expect(aimFrom(of, tee(of, "back"), english)).toMatchObject({ name: "the light", where: "right" });
  });

  test("is nothing where the tip names nothing, whatever stands about: it could say the opposite of the tip's words", () => {
    const of = measured([mark("a", [0, 900], "the cairn")], "Start it down the left half.");
    expect(aimFrom(of, tee(of, "back"), english)).toBeUndefined();
  });

  test("stands as far off the line here as in the tip's own words, to the degree", () => {
    for (const east of [0, 4, 8, 20, 40, -30]) {
      const of = measured([mark("a", [east, 900], "the cairn")], "Aim at :aim[a].");
      const { degrees, where } = aimFrom(of, tee(of, "back"), english)!;
      const told = answer({ name: "aim", target: "a", options: {} }, of, { units: "yards", tee: "back" });
      const said = "meaning" in told ? told.meaning(english.tell) : "";
      expect(said).toBe(
        where === "on"
          ? "the cairn stands on the line of play"
          : `the cairn stands ${Math.abs(degrees)}° ${where} of the line of play`,
      );
      expect(degrees).toBe(Math.round((Math.atan(east / 900) * 180) / Math.PI) + 0);
    }
  });
});

describe("trouble", () => {
  test("every hazard has a row with each tee's figures, nearest first", () => {
    const of = measured([areaFeature("pot", "bunker", box(6, 200, 12, 206)), gully(120, 150)]);
    const rows = troubleRows(of, tee(of, "back"));
    expect(rows.map(({ hazard }) => hazard.id)).toEqual(["gully", "pot"]);
    expect(rows[0]!.reach).toEqual({ back: 120, forward: 70 });
    expect(Object.keys(rows[1]!.carry)).toEqual(["back", "forward"]);
  });

  test("a burn that comes twice has two rows and says which is which", () => {
    const burn = lineFeature(
      "burn",
      "penalty-area-yellow",
      [
        [-60, 150],
        [60, 150],
        [60, 250],
        [-60, 250],
      ],
      { name: "Allan Burn", tags: { waterway: "stream" }, widthMetres: 3 },
    );
    const of = measured([burn]);
    expect(troubleRows(of, tee(of, "back")).map(({ hazard }) => hazardName(of, hazard, english))).toEqual([
      "Allan Burn, first time",
      "Allan Burn, second time",
    ]);
  });

  test("what lies behind the tee has no row, and a boundary or a long shore no far side", () => {
    const of = measured([
      areaFeature("behind", "bunker", box(-4, -60, 4, -50)),
      lineFeature("wall", "out-of-bounds", [
        [-40, 100],
        [-40, 300],
      ]),
      areaFeature("sea", "penalty-area-red", box(30, -500, 900, 2000)),
      areaFeature("pot", "bunker", box(6, 200, 12, 206)),
    ]);
    const rows = troubleRows(of, tee(of, "back"));
    expect(rows.map(({ hazard }) => hazard.id).sort()).toEqual(["pot", "sea", "wall"]);
    for (const { hazard, reach, carry, leaves } of rows) {
      expect(Object.keys(reach), hazard.id).toContain("back");
      expect(
        [Object.keys(carry), Object.keys(leaves)].map(({ length }) => length),
        hazard.id,
      ).toEqual(hazard.id === "pot" ? [2, 2] : [0, 0]);
    }
  });

  test("a hazard without a name is called what it is", () => {
    const of = measured([areaFeature("pot", "bunker", box(6, 200, 12, 206))]);
    expect(hazardName(of, tee(of, "back").hazards[0]!, english)).toBe("Bunker");
  });
});

describe("cautions", () => {
  test("name the ground a hole runs by, and only that", () => {
    expect(nearbyCautions(measured([]))).toEqual([]);
    expect(
      nearbyCautions(
        measured([
          lineFeature("road", "road", [
            [40, -500],
            [40, 900],
          ]),
        ]),
      ),
    ).toEqual(["road"]);
    expect(
      nearbyCautions(
        measured([
          lineFeature("road", "road", [
            [90, -500],
            [90, 900],
          ]),
        ]),
      ),
    ).toEqual([]);
  });

  test("a cliff comes before water, and dry penalty areas are not water", () => {
    const cliff = lineFeature("edge", "cliff", [
      [-30, 100],
      [-30, 200],
    ]);
    expect(nearbyCautions(measured([gully(100, 120), cliff]))).toEqual(["cliff", "water"]);
    const gorse = areaFeature("gorse", "penalty-area-red", box(20, 100, 40, 140), { tags: { natural: "scrub" } });
    expect(nearbyCautions(measured([gorse]))).toEqual([]);
  });
});

test("a tee set the page does not use gives way to the longest it has", () => {
  const of = measured([]);
  expect(defaultTee(of)?.tee.id).toBe("back");
  expect(defaultTee({ ...of, course: { ...of.course, defaultTee: "nowhere" } })?.tee.id).toBe("back");
  expect(byTee(of, ({ lengthMetres }) => lengthMetres)).toEqual({ back: 360, forward: 310 });
});

test("one par where both play the same, men's first where not", () => {
  expect(perGender({ men: 4, women: 4 })).toBe("4");
  expect(perGender({ men: 4, women: 5 })).toBe("4 / 5");
});
