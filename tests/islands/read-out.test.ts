import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { readOut } from "../../src/islands/map/read-out.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";
import { ENGLISH } from "./speech.ts";

const measure = tapMeasure(holeData(sample().holes[0]!, "yards"));
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};
const say = (x: number, y: number, units: "yards" | "metres") =>
  readOut(measure.read(at(x, y), "back", "middle"), units, ENGLISH);

describe("a reading in words", () => {
  test("shows whole figures in the golfer's unit", () => {
    expect(say(0, 200, "metres").figures).toEqual([
      { label: "Back tee", value: "200" },
      { label: "Front", value: "185" },
      { label: "Middle", value: "200", counts: true },
      { label: "Back", value: "215" },
    ]);
    // 200 m is 218.7 yd and 185 m 202.3 yd at 0.9144 m to the yard.
    expect(say(0, 200, "yards").figures.map(({ value }) => value)).toEqual(["219", "202", "219", "235"]);
    expect(say(0, 200, "yards").unit).toBe("yd");
  });

  test("is spoken in both units, the golfer's first", () => {
    expect(say(0, 200, "yards").spoken).toBe(
      "From the Back tee 219 yards, 200 metres. To the green: front 202 yards, 185 metres; middle 219 yards, 200 metres; back 235 yards, 215 metres. Ahead: Bunker right 8 yards to reach, 17 yards to carry; The Burn 107 yards to reach, 115 yards to carry.",
    );
    expect(say(0, 200, "metres").spoken).toMatch(/^From the Back tee 200 metres, 219 yards\./);
  });

  test("names a hazard with reach and carry", () => {
    expect(say(0, 90, "metres").lines[0]).toMatch(
      /^The Gully \(penalty area, red\): from the tee 80\u00a0m to reach, \d+\u00a0m to carry\.$/,
    );
    expect(say(0, 90, "metres").spoken).toMatch(
      /The Gully \(penalty area, red\): from the tee 80 metres, 87 yards to reach/,
    );
  });

  test("a hazard without a name is called what it is", () => {
    expect(say(11, 203, "metres").lines[0]).toMatch(/^Bunker: from the tee/);
  });

  test("a boundary is reached, never carried", () => {
    expect(say(50, 120, "metres").lines[0]).toBe("The Road (out of bounds): from the tee 50\u00a0m to reach.");
  });

  test("a landmark is only named", () => {
    expect(say(30, 480, "metres").lines[0]).toBe("The Light.");
  });

  test("on the green says so and gives the middle alone", () => {
    const { figures, spoken } = say(3, 404, "metres");
    expect(figures.map(({ label }) => label)).toEqual(["Back tee", "Middle"]);
    expect(spoken).toContain("On the green: 5 metres, 5 yards from its middle.");
  });
});
