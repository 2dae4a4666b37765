import { describe, expect, test } from "vitest";
import type { HazardData, TeeData } from "../../src/contract/hole-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { hazardsAhead, hazardsFromTee } from "../../src/islands/map/ahead.ts";
import { holePlane } from "../../src/islands/map/hole-plane.ts";
import { measureFrom } from "../../src/measure/hole.ts";
import type { Point } from "../../src/geo/position.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const measured = sample().holes[0]!;
const data = holeData(measured, "yards");
const plane = holePlane(data);
/** Metres east and north of the back tee marker, in the course's own frame. */
const at = (x: number, y: number): Point => plane.frame.toPlane(FRAME.toPosition([x, y]));
const ids = (x: number, y: number) => hazardsAhead(plane, at(x, y)).map(({ id }) => id);

// The data's seven decimals are 1.1 cm.
const CENTIMETRES = 1;

describe("hazards ahead of a point", () => {
  test("are those still to come, the nearest first", () => {
    expect(ids(0, 60)).toEqual(["gully", "pot", "burn"]);
    expect(ids(0, 150)).toEqual(["pot", "burn"]);
    expect(ids(0, 320)).toEqual([]);
  });

  test("are as the build measures them from there", () => {
    for (const [x, y] of [
      [0, 60],
      [5, 150],
      [-12, 20],
    ] as const) {
      const built = measureFrom(measured, at(x, y)).hazards;
      const ahead = hazardsAhead(plane, at(x, y));
      expect(ahead.length).toBeGreaterThan(1);
      for (const { id, reach, carry } of ahead) {
        const figures = built.find((hazard) => hazard.id === id)!;
        expect(reach.metres).toBeCloseTo(figures.reachMetres, CENTIMETRES);
        expect(carry!.metres).toBeCloseTo(figures.carryMetres!, CENTIMETRES);
      }
    }
  });

  test("by hand: a gully 20 m across, 20 m on", () => {
    const [gully] = hazardsAhead(plane, at(0, 60));
    expect(gully!.reach.metres).toBeCloseTo(20, CENTIMETRES);
    // The far crossing of a corridor 25 m to each side.
    expect(gully!.carry!.metres).toBeCloseTo(Math.hypot(40, 25), CENTIMETRES);
    expect(gully!.position).toBe("across");
  });

  test("leave out what one stands in", () => {
    expect(ids(11, 203)).not.toContain("pot");
  });

  test("are three at most, and what lies across is never crowded out", () => {
    // The burn at 300 m is beyond any stroke from the back tee, 320 yd, and within one from the forward tee at 50 m.
    expect(hazardsFromTee(data, data.tees[0]!).map(({ id }) => id)).toEqual(["gully", "pot"]);
    expect(hazardsFromTee(data, data.tees[1]!).map(({ id }) => id)).toEqual(["gully", "pot", "burn"]);
    const forward = data.tees[1]!;
    const [pot, burn] = ["pot", "burn"].map((wanted) => forward.hazards.find(({ id }) => id === wanted)!) as [
      HazardData,
      HazardData,
    ];
    const crowded: TeeData = { ...forward, hazards: [pot, pot, pot, pot, burn] };
    const shown = hazardsFromTee(data, crowded).map(({ id }) => id);
    expect(shown).toHaveLength(3);
    expect(shown).toContain("burn");
  });
});
