import { describe, expect, test } from "vitest";
import { holeData } from "../../src/site/files/hole-data.ts";
import { holePlane } from "../../src/islands/map/hole-plane.ts";
import { ownLanding } from "../../src/islands/map/own-landing.ts";
import { distanceMetres } from "../../src/geo/vector.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const data = holeData(sample().holes[0]!, "metres");
const plane = holePlane(data);
const tee = data.tees[0]!;

describe("the golfer's own drive", () => {
  const landing = ownLanding(plane, tee, "middle", 200)!;
  const points = landing.arc.map((position) => FRAME.toPlane(position));

  test("is as far from the tee all along its arc, across the whole corridor", () => {
    for (const point of points) expect(distanceMetres(point, [0, 0])).toBeCloseTo(200, 1);
    expect(points[0]![0]).toBeCloseTo(-25, 1);
    expect(points[points.length - 1]![0]).toBeCloseTo(25, 1);
  });

  test("comes down on a fairway 30 m wide, 200 m from the green", () => {
    expect(landing.fairwayMetres).toBeCloseTo(30, 1);
    expect(landing.leavesMetres).toBeCloseTo(200, 1);
    const fairway = landing.fairwayArc!.map((position) => FRAME.toPlane(position)[0]);
    expect(Math.min(...fairway)).toBeCloseTo(-15, 1);
    expect(Math.max(...fairway)).toBeCloseTo(15, 1);
  });

  test("short of the fairway says so", () => {
    const short = ownLanding(plane, tee, "middle", 100)!;
    expect(short.fairwayMetres).toBe(0);
    expect(short.fairwayArc).toBeUndefined();
  });

  test("is followed by the longest stroke after it, as far from where the drive lies, short of the hole", () => {
    const { next, ...drive } = ownLanding(plane, tee, "middle", 200, 170)!;
    expect(drive).toEqual(landing);
    expect(next!.driveMetres).toBe(170);
    expect(next!.leavesMetres).toBeCloseTo(30, 1);
    for (const position of next!.arc) expect(distanceMetres(FRAME.toPlane(position), [0, 200])).toBeCloseTo(170, 1);
    expect(ownLanding(plane, tee, "middle", 200, 200)!.next).toBeUndefined();
    expect(ownLanding(plane, tee, "middle", 200)!.next).toBeUndefined();
  });

  test("as long as the hole lands nowhere", () => {
    expect(ownLanding(plane, tee, "middle", 400)).toBeUndefined();
    expect(ownLanding(plane, tee, "middle", 0)).toBeUndefined();
  });
});
