/** Hazards met after the golfer's own drive: told on the safe side between the drives worked out. */
import { describe, expect, test } from "vitest";
import { driveOf } from "../../src/islands/conditions-model.ts";
import { groundData } from "../../src/site/files/ground-data.ts";
import { measureFrom } from "../../src/measure/hole.ts";
import { carriedOver } from "../../src/measure/carried.ts";
import { landingAt } from "../../src/measure/landing.ts";
import { words } from "../../src/site/language/words.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import { measureCourse } from "../../src/measure/course.ts";

const course_ = measureCourse(
  course([
    hole([
      lineFeature("line", "line-of-play", [
        [0, 0],
        [0, 240],
        [180, 420],
      ]),
      pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
      areaFeature("green", "green", box(166, 406, 194, 434)),
      areaFeature(
        "pond",
        "water",
        [
          [-30, 300],
          [90, 270],
          [110, 300],
          [-20, 330],
        ],
        { name: "The Pond" },
      ),
      areaFeature("pot", "bunker", box(120, 330, 128, 338), { name: "Pot" }),
    ]),
  ]),
);
const measured = course_.holes[0]!;
const tee = measured.tees[0]!;
const data = groundData(course_, measured, "yards", words("en"));

describe("after the golfer's own drive", () => {
  test("a hazard begins no nearer and ends no further than told, at every length between those worked out", () => {
    for (let metres = 130; metres <= 240; metres += 1.7) {
      const told = driveOf(data, "back", metres)!.own.next ?? [];
      const from = measureFrom(measured, landingAt(measured, tee, metres)!.point).hazards;
      expect(told.map(([name]) => name)).toContain("The Pond");
      for (const [name, reach, carry] of told) {
        const there = from.find(({ id }) => measured.placed.get(id)!.feature.name === name)!;
        expect(reach, `${name} after ${metres}`).toBeLessThanOrEqual(there.reachMetres + 0.06);
        expect(reach).toBeGreaterThan(there.reachMetres - 10);
        const carried = carriedOver(there);
        if (carry !== null && carried) {
          expect(carry, `${name} after ${metres}`).toBeGreaterThanOrEqual(carried.metres - 0.06);
          expect(carry).toBeLessThan(carried.metres + 5);
        }
      }
    }
  });

  test("what the drive is already past is not told", () => {
    const told = driveOf(data, "back", 360)?.own.next ?? [];
    expect(told.map(([name]) => name)).not.toContain("The Pond");
  });
});
