import { describe, expect, test } from "vitest";
import type { LonLat } from "../../src/contract/map-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { holePlane } from "../../src/islands/map/hole-plane.ts";
import { MOST_SHOTS, readShots, shotChain, shotsKey, writeShots } from "../../src/islands/map/shots.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const data = holeData(sample().holes[0]!, "metres");
const plane = holePlane(data);
const tee = data.tees[0]!;
const at = (x: number, y: number): LonLat => {
  const [longitude, latitude] = FRAME.toPosition([x, y]);
  return [longitude, latitude];
};

describe("a chain of shots", () => {
  test("starts at the tee and tells each leg and what is left", () => {
    const { legs, left } = shotChain(plane, tee, "middle", [at(0, 190), at(30, 230), at(0, 310)]);
    expect(legs.map(({ metres }) => Math.round(metres * 10) / 10)).toEqual([190, 50, 85.4]);
    expect(left!.metres).toBeCloseTo(90, 1);
    expect(legs[1]!.from).toEqual(legs[0]!.to);
    expect(FRAME.toPlane(legs[0]!.halfway)[1]).toBeCloseTo(95, 1);
  });

  test("with no shots leaves the whole way", () => {
    const { legs, left } = shotChain(plane, tee, "middle", []);
    expect(legs).toEqual([]);
    expect(left!.metres).toBeCloseTo(400, 1);
  });

  test("that ends on the green leaves nothing", () => {
    expect(shotChain(plane, tee, "middle", [at(0, 190), at(3, 404)]).left).toBeUndefined();
  });
});

describe("kept on the device", () => {
  test("comes back as it was, to a centimetre", () => {
    const kept = readShots(writeShots([at(0, 190), at(30, 230)]) ?? null);
    expect(kept).toHaveLength(2);
    expect(FRAME.toPlane(kept[1]!)[0]).toBeCloseTo(30, 1);
    expect(FRAME.toPlane(kept[1]!)[1]).toBeCloseTo(230, 1);
  });

  test("nothing is kept as nothing, and what is not ours is no shot", () => {
    expect(writeShots([])).toBeUndefined();
    for (const text of [null, "", "{", "{}", "[1,2]", '[["a",2]]', "[[1,2,3]]", "[[1,null]]", "[[0,91]]"])
      expect(readShots(text), String(text)).toEqual([]);
    expect(readShots(JSON.stringify(Array.from({ length: 40 }, () => [1, 2])))).toHaveLength(MOST_SHOTS);
  });

  test("is each hole's own", () => {
    expect(new Set([shotsKey("links", 1), shotsKey("links", 11), shotsKey("moor", 1)]).size).toBe(3);
  });
});
