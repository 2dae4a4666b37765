/** The third of the green that a golfer's hole is cut in, on the live map. */
import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { playDrawing, readingDrawing } from "../../src/islands/map/hole-drawing.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { ownLanding } from "../../src/islands/map/own-landing.ts";
import { readOut } from "../../src/islands/map/read-out.ts";
import { openingOut, shotsOut } from "../../src/islands/map/read-out-more.ts";
import { shotChain } from "../../src/islands/map/shots.ts";
import { thirdPoint, thirdMetres } from "../../src/measure/third.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";
import { ENGLISH } from "./speech.ts";

const data = holeData(sample().holes[0]!, "metres");
const measure = tapMeasure(data);
const { plane } = measure;
const tee = data.tees[0]!;
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};

// The sample's green runs from 385 to 415 m: its front third's middle is 390, its back third's 410.
describe("a reading", () => {
  test.each([
    ["front", 190],
    ["middle", 200],
    ["back", 210],
  ] as const)("goes on to the %s: figure, leg and drawing", (third, metres) => {
    const reading = measure.read(at(0, 200), tee.id, third);
    expect(reading.toHoleMetres).toBeCloseTo(metres, 1);
    expect(FRAME.toPlane(reading.legs[2])[1]).toBeCloseTo(200 + metres, 1);
    expect(reading.toFrontMetres).toBeCloseTo(185, 1);
    expect(reading.toBackMetres).toBeCloseTo(215, 1);
    expect(
      readingDrawing(reading, (length) => length.toFixed(0)).map(({ properties }) => properties?.["leg"]),
    ).toContain(String(metres));
  });

  test("agrees with the glance: the page's own figure from the tee", () => {
    const { front, middle, back } = tee.green;
    for (const third of ["front", "middle", "back"] as const) {
      const glance = thirdMetres(third, { front: front.metres, middle: middle.metres, back: back.metres });
      expect(measure.read(tee.marker, tee.id, third).toHoleMetres).toBeCloseTo(glance, 1);
    }
  });

  test("shows the third in the middle's place, marked as the one that counts, under the name the settings give it", () => {
    const shown = (third: "front" | "middle" | "back") =>
      readOut(measure.read(at(0, 200), tee.id, third), "metres", ENGLISH)
        .figures.slice(1)
        .map(({ label, value, counts }) => [label, value, counts]);
    expect(shown("front")).toEqual([
      ["Front", "185", undefined],
      ["Front third", "190", true],
      ["Back", "215", undefined],
    ]);
    expect(shown("middle")).toEqual([
      ["Front", "185", undefined],
      ["Middle", "200", true],
      ["Back", "215", undefined],
    ]);
    expect(shown("back")).toEqual([
      ["Front", "185", undefined],
      ["Back third", "210", true],
      ["Back", "215", undefined],
    ]);
  });

  test("says it, and how the leg there plays under its own figure", () => {
    const leg = (lengthMetres: number) => ({
      riseMetres: 0,
      plays: { lengthMetres, plusMinusMetres: 1, driftMetres: 0, indication: false },
    });
    const { figures, lines, spoken } = readOut(measure.read(at(0, 200), tee.id, "back"), "metres", ENGLISH, {
      legs: [leg(200), leg(212)],
      wind: false,
      temperatureCelsius: 15,
    });
    expect(figures.map(({ note }) => note)).toEqual(["plays 200 ±1", undefined, "plays 212 ±1", undefined]);
    expect(lines.at(-1)).toContain("On to the back third: level, plays 212 ±1.");
    expect(spoken).toContain("hole in the back third 210 metres, 230 yards;");
  });

  test("on the green is to the middle of the third", () => {
    // 3 m right of the line and 6 m short of 410: √45 is 6.7.
    const { figures, spoken } = readOut(measure.read(at(3, 404), tee.id, "back"), "metres", ENGLISH);
    expect(figures.at(-1)).toEqual({ label: "Back third", value: "7", counts: true });
    expect(spoken).toContain("On the green: 7 metres, 7 yards from the middle of its back third.");
  });
});

test("the golfer's shots leave what is left to the third", () => {
  const chain = shotChain(plane, tee, "front", [at(0, 190)]);
  expect(chain.left!.metres).toBeCloseTo(200, 1);
  expect(shotsOut({ chain, tee, third: "front", under: undefined, full: false }, "metres", ENGLISH).spoken).toContain(
    "left to the front third of the green.",
  );
});

test("the golfer's drive leaves what is left to the third; as long as the way there it lands nowhere", () => {
  expect(ownLanding(plane, tee, "back", 200)!.leavesMetres).toBeCloseTo(210, 1);
  expect(ownLanding(plane, tee, "front", 200)!.leavesMetres).toBeCloseTo(190, 1);
  expect(ownLanding(plane, tee, "front", 392)).toBeUndefined();
  expect(ownLanding(plane, tee, "middle", 392)!.leavesMetres).toBeCloseTo(8, 1);
  expect(openingOut([], ownLanding(plane, tee, "back", 200), "back", "metres", ENGLISH).lines[1]).toMatch(
    /210\u00a0m left to the back third\.$/,
  );
});

test("the green bears one mark for it, and none while nobody has said where the hole is", () => {
  const marks = (cut: LonLat | undefined) =>
    playDrawing(data, { tee, cut, ahead: [], own: undefined }, String, ENGLISH.say).features.filter(
      ({ properties }) => properties?.["cut"] === true,
    );
  expect(marks(undefined)).toEqual([]);
  expect(marks(at(0, 390)).map(({ geometry }) => geometry)).toEqual([{ type: "Point", coordinates: at(0, 390) }]);
});

test("a third's point lies a sixth of the green within its edge, in any direction", () => {
  const green = { front: [0, 0], middle: [7, 9], back: [12, 18] } as const;
  expect(thirdPoint("front", green)).toEqual([2, 3]);
  expect(thirdPoint("back", green)).toEqual([10, 15]);
  expect(thirdPoint("middle", green)).toEqual([7, 9]);
});
