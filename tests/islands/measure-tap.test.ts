import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { tapMeasure } from "../../src/islands/map/measure-tap.ts";
import { measureFrom } from "../../src/measure/hole.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const measured = sample().holes[0]!;
const data = holeData(measured, "yards");
const measure = tapMeasure(data);
const back = measured.tees[0]!;

/** Metres east and north of the back tee marker, as the sample is drawn. */
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};

// The data's seven decimals are 1.1 cm.
const CENTIMETRES = 1;

describe("a tapped point", () => {
  test("on the line is so far from the tee and so far from the green", () => {
    const reading = measure.read(at(0, 200), "back", "middle");
    expect(reading.startMetres).toBeCloseTo(200, CENTIMETRES);
    expect(reading.toFrontMetres).toBeCloseTo(185, CENTIMETRES);
    expect(reading.toHoleMetres).toBeCloseTo(200, CENTIMETRES);
    expect(reading.toBackMetres).toBeCloseTo(215, CENTIMETRES);
  });

  test("is measured from the tee that is asked for", () => {
    expect(measure.read(at(0, 200), "forward", "middle").startMetres).toBeCloseTo(150, CENTIMETRES);
    expect(() => measure.read(at(0, 200), "gold", "middle")).toThrow(/no gold tee: choose one of back, forward/);
  });

  test("beside the line is measured straight, green along the line from there", () => {
    const reading = measure.read(at(100, 400), "back", "middle");
    expect(reading.startMetres).toBeCloseTo(Math.hypot(100, 400), CENTIMETRES);
    // The green is 20 wide: seen from its right, 10 to each side of its middle.
    expect(reading.toFrontMetres).toBeCloseTo(90, CENTIMETRES);
    expect(reading.toBackMetres).toBeCloseTo(110, CENTIMETRES);
  });

  test("on the tee marker gives the build's own green figures", () => {
    const reading = measure.read(data.tees[0]!.marker, "back", "middle");
    expect(reading.startMetres).toBeCloseTo(0, CENTIMETRES);
    expect(reading.toFrontMetres).toBeCloseTo(back.green.frontMetres, CENTIMETRES);
    expect(reading.toHoleMetres).toBeCloseTo(back.green.middleMetres, CENTIMETRES);
    expect(reading.toBackMetres).toBeCloseTo(back.green.backMetres, CENTIMETRES);
  });

  test("anywhere agrees with the build measuring from there", () => {
    for (const [x, y] of [
      [40, 60],
      [-30, 250],
      [12, 330],
      [-80, 420],
    ] as const) {
      const built = measureFrom(measured, measured.frame.toPlane(at(x, y))).green;
      const reading = measure.read(at(x, y), "back", "middle");
      expect(reading.toFrontMetres).toBeCloseTo(built.frontMetres, CENTIMETRES);
      expect(reading.toHoleMetres).toBeCloseTo(built.middleMetres, CENTIMETRES);
      expect(reading.toBackMetres).toBeCloseTo(built.backMetres, CENTIMETRES);
    }
  });

  test("on the green has only its middle ahead", () => {
    const reading = measure.read(at(3, 404), "back", "middle");
    expect(reading.toFrontMetres).toBeUndefined();
    expect(reading.toBackMetres).toBeUndefined();
    expect(reading.toHoleMetres).toBeCloseTo(5, CENTIMETRES);
  });

  test("is joined to tee and green by two legs", () => {
    const { legs } = measure.read(at(0, 200), "back", "middle");
    expect(legs[0]).toEqual(data.tees[0]!.marker);
    expect(legs[1]).toEqual(at(0, 200));
    expect(FRAME.toPlane(legs[2])[1]).toBeCloseTo(400, 1);
  });

  test("in a hazard names it, with the build's reach and carry", () => {
    const { under } = measure.read(at(0, 90), "back", "middle");
    expect(under?.properties.name).toBe("The Gully");
    const built = back.hazards.find(({ id }) => id === "gully")!;
    expect(under?.hazards.map(({ reach, carry }) => [reach.metres, carry?.metres])).toEqual([
      [Number(built.reachMetres.toFixed(3)), Number(built.carryMetres!.toFixed(3))],
    ]);
  });

  test("in a bunker within a fairway is in the bunker; on the fairway alone in nothing with a name", () => {
    expect(measure.read(at(11, 203), "back", "middle").under?.properties.id).toBe("pot");
    expect(measure.read(at(-10, 203), "back", "middle").under).toBeUndefined();
  });

  test("a burn drawn as a line answers within a fingertip, not beyond", () => {
    expect(measure.read(at(0, 303), "back", "middle").under?.properties.name).toBe("The Burn");
    expect(measure.read(at(0, 306), "back", "middle").under).toBeUndefined();
  });
});

test("a hole without a green is refused", () => {
  const features = {
    ...data.features,
    features: data.features.features.filter(({ properties }) => properties.kind !== "green"),
  };
  expect(() => tapMeasure({ ...data, features })).toThrow("Hole 7 has no green to measure to.");
});
