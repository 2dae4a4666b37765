/** The table's row for a third of the green: held to the map's point and to the flight code. */
import { describe, expect, test } from "vitest";
import { effectiveLength } from "../../src/flight/effective.ts";
import type { GreenShots } from "../../src/contract/ground-data.ts";
import { dayOf } from "../../src/islands/conditions-model.ts";
import { NO_CONDITIONS } from "../../src/islands/conditions-store.ts";
import { thirdFigures } from "../../src/islands/conditions-third.ts";
import { thirdPoint } from "../../src/measure/third.ts";
import { words } from "../../src/site/language/words.ts";

const script = words("en").ground.conditions.script;
const answer = dayOf(NO_CONDITIONS, 0);
if (!answer.ok) throw new Error(answer.message);
const still = answer.day;

// The middle stands nearer to the front than to the back, and lower than half way: a third is not measured from it.
const green: GreenShots = [
  [140, 2, 358],
  [148, 3, 1],
  [170, 8, 4],
];

describe("a third's row", () => {
  test.each(["front", "middle", "back"] as const)(
    "tells the shot to the %s third's place on the map, and how it plays and runs",
    (third) => {
      const { shot, distance, plays, run } = thirdFigures(green, third, still, "metres", script);
      const place = thirdPoint(third, { front: [140, 2], middle: [148, 3], back: [170, 8] });
      expect(shot[0]).toBeCloseTo(place[0], 9);
      expect(shot[1]).toBeCloseTo(place[1], 9);
      expect(distance).toBe(String(Math.round(place[0])));
      const effective = effectiveLength({ distanceMetres: place[0], riseMetres: place[1], bearingDegrees: 0 }, still);
      if (!effective.ok) throw new Error(effective.message);
      expect(plays.figure).toBe(String(Math.round(effective.lengthMetres)));
      expect(Number(plays.figure)).toBeGreaterThan(Number(distance));
      expect(run).toBe(String(Math.round(effective.run.metres)));
    },
  );

  test("is in the golfer's unit, 0.9144 m to the yard", () => {
    const place = thirdPoint("back", { front: [140, 0], middle: [148, 0], back: [170, 0] });
    expect(thirdFigures(green, "back", still, "yards", script).distance).toBe(String(Math.round(place[0] / 0.9144)));
  });

  test("out of reach of one stroke says so, and tells no run", () => {
    const far: GreenShots = [
      [430, 0, 0],
      [440, 0, 0],
      [450, 0, 0],
    ];
    expect(thirdFigures(far, "back", still, "metres", script)).toMatchObject({
      distance: "447",
      plays: { figure: "–", notes: [script.tooLong] },
      run: "–",
    });
  });
});
