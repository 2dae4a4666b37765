import { describe, expect, test } from "vitest";
import { measureCourse } from "../../src/measure/course.ts";
import { fairwayAt } from "../../src/measure/fairway.ts";
import { measureFrom } from "../../src/measure/hole.ts";
import { stationLeaving } from "../../src/measure/line-of-play.ts";
import { areasOfKind } from "../../src/measure/place.ts";
import type { HazardFigures, MeasuredHole, TeeFigures } from "../../src/measure/types.ts";
import type { Feature } from "../../src/course/types.ts";
import { gridOf } from "../../src/terrain/grid.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";

/** A straight hole due north: back tee at 0, forward tee at 50, green from 385 to 415, 20 wide. */
function straight(extra: readonly Feature[] = []): MeasuredHole {
  return measured([
    lineFeature(
      "line",
      "line-of-play",
      [
        [0, 0],
        [0, 398],
      ],
      { heights: [10, 18.5] },
    ),
    pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back", height: 10 }),
    pointFeature("tee-forward", "tee-marker", [2, 50], { tee: "forward", height: 12 }),
    areaFeature("green", "green", box(-10, 385, 10, 415)),
    areaFeature("fairway", "fairway", box(-12, 150, 18, 380)),
    ...extra,
  ]);
}

/** A dogleg right: 220 north, then 160 east to a green centred on (160, 220). */
function dogleg(extra: readonly Feature[] = []): MeasuredHole {
  return measured([
    lineFeature("line", "line-of-play", [
      [0, 0],
      [0, 220],
      [160, 220],
    ]),
    pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
    pointFeature("tee-forward", "tee-marker", [0, 40], { tee: "forward" }),
    areaFeature("green", "green", box(148, 212, 172, 228)),
    ...extra,
  ]);
}

const measured = (features: readonly Feature[]): MeasuredHole => measureCourse(course([hole(features)])).holes[0]!;
const from = (measuredHole: MeasuredHole, tee: string): TeeFigures =>
  measuredHole.tees.find((one) => one.tee.id === tee)!;
const hazard = (measuredHole: MeasuredHole, id: string, tee = "back", stretch = 1): HazardFigures =>
  from(measuredHole, tee).hazards.find((one) => one.id === id && one.stretch === stretch)!;

describe("length", () => {
  test("runs from the marker to the middle of the green, wherever the drawn line ends on it", () => {
    expect(from(straight(), "back").lengthMetres).toBeCloseTo(400, 3);
    expect(from(straight(), "forward").lengthMetres).toBeCloseTo(Math.hypot(2, 350), 2);
  });

  test("is the sum of the legs of a dogleg, not the straight distance", () => {
    expect(from(dogleg(), "back").lengthMetres).toBeCloseTo(380, 2);
    expect(from(dogleg(), "forward").lengthMetres).toBeCloseTo(340, 2);
  });

  test("a turning point behind a forward tee is not played round", () => {
    const short = measured([
      lineFeature("line", "line-of-play", [
        [0, 0],
        [0, 220],
        [160, 220],
      ]),
      pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
      pointFeature("tee-forward", "tee-marker", [20, 225], { tee: "forward" }),
      areaFeature("green", "green", box(148, 212, 172, 228)),
    ]);
    expect(from(short, "forward").bends).toHaveLength(0);
    expect(from(short, "forward").lengthMetres).toBeCloseTo(Math.hypot(140, 5), 0);
  });

  test("rise comes from written heights, and is not guessed without them", () => {
    expect(from(straight(), "back").riseMetres).toBeCloseTo(8.5);
    expect(from(straight(), "forward").riseMetres).toBeCloseTo(6.5);
    expect(from(dogleg(), "back").riseMetres).toBeUndefined();
  });

  test("a height model takes precedence over written heights", () => {
    const features = straight().hole.features;
    const ground = gridOf({ west: -300, east: 300, south: -500, north: 500 }, 10, ([, y]) => 100 + y / 10);
    // The frame's origin is somewhere on the hole, so only the difference is known: 400 m at a tenth.
    expect(measureCourse(course([hole(features)]), ground).holes[0]!.tees[0]!.riseMetres).toBeCloseTo(40, 2);
  });
});

describe("bends", () => {
  test("have station, angle and side", () => {
    const [bend] = from(dogleg(), "back").bends;
    expect(bend!.stationMetres).toBeCloseTo(220, 2);
    expect(bend!.angleDegrees).toBeCloseTo(90, 2);
    expect(bend!.side).toBe("right");
    expect(from(dogleg(), "forward").bends[0]!.stationMetres).toBeCloseTo(180, 2);
  });

  test("a straight hole has none", () => {
    expect(from(straight(), "back").bends).toEqual([]);
  });
});

describe("green", () => {
  test("front, middle and back are read along the line of play", () => {
    const { green } = from(straight(), "back");
    expect([green.frontMetres, green.middleMetres, green.backMetres].map(Math.round)).toEqual([385, 400, 415]);
    expect(green.depthMetres).toBeCloseTo(30, 3);
    expect(green.widthMetres).toBeCloseTo(20, 3);
    expect(green.areaSquareMetres).toBeCloseTo(600, 1);
  });

  test("depth and width follow the last leg round a dogleg", () => {
    const { green } = from(dogleg(), "back");
    expect(green.depthMetres).toBeCloseTo(24, 2);
    expect(green.widthMetres).toBeCloseTo(16, 2);
  });

  test("a horseshoe green is measured where it is green", () => {
    const horseshoe = measured([
      lineFeature("line", "line-of-play", [
        [0, 0],
        [0, 150],
      ]),
      pointFeature("tee-back", "tee-marker", [0, 0], { tee: "back" }),
      areaFeature("green", "green", [
        [-15, 140],
        [15, 140],
        [15, 170],
        [9, 170],
        [9, 146],
        [-9, 146],
        [-9, 170],
        [-15, 170],
      ]),
    ]);
    const { green } = from(horseshoe, "back");
    expect(green.depthMetres).toBeGreaterThan(4);
    expect(green.frontMetres).toBeLessThan(green.middleMetres);
  });
});

describe("reach and carry", () => {
  test("a pond across the line: near edge in the corridor, far crossing of the corridor, far crossing on the line", () => {
    // A diagonal pond: on the line from 160 to 180, at the corridor's right edge from 172.5 to 192.5.
    const pond = straight([
      areaFeature("pond", "water", [
        [-60, 130],
        [60, 190],
        [60, 210],
        [-60, 150],
      ]),
    ]);
    const figures = hazard(pond, "pond");
    expect(figures.position).toBe("across");
    expect(figures.carryOnLineMetres).toBeCloseTo(180, 1);
    expect(figures.carryMetres).toBeCloseTo(Math.hypot(25, 192.5), 1);
    expect(figures.reachMetres).toBeCloseTo(Math.hypot(25, 147.5), 1);
    expect(figures.stretches).toBe(1);
  });

  test("a bunker beside the line: nearest edge and far station", () => {
    const figures = hazard(straight([areaFeature("bunker", "bunker", box(12, 200, 20, 212))]), "bunker");
    expect(figures.position).toBe("right");
    expect(figures.inCorridor).toBe(true);
    expect(figures.reachMetres).toBeCloseTo(Math.hypot(12, 200), 2);
    expect(figures.carryMetres).toBeCloseTo(Math.hypot(20, 212), 2);
    expect(figures.offsetMetres).toBeCloseTo(12, 2);
    expect(figures.leavesMetres).toBeCloseTo(400 - 212, 2);
  });

  test("the same bunker is nearer from the forward tee", () => {
    const bunker = straight([areaFeature("bunker", "bunker", box(12, 200, 20, 212))]);
    expect(hazard(bunker, "bunker", "forward").reachMetres).toBeCloseTo(Math.hypot(10, 150), 1);
  });

  test("a bunker left is left, however its ring runs", () => {
    const ring = box(-22, 200, -14, 212);
    for (const path of [ring, [...ring].reverse()]) {
      expect(hazard(straight([areaFeature("bunker", "bunker", path)]), "bunker").position).toBe("left");
    }
  });

  test("a hazard wider than the corridor is cut at it", () => {
    const sea = straight([areaFeature("sea", "water", box(15, -200, 900, 900))]);
    const figures = hazard(sea, "sea");
    expect(figures.position).toBe("right");
    expect(figures.stationMetres[0]).toBeCloseTo(0, 6);
    expect(figures.reachMetres).toBeCloseTo(15, 2);
  });

  test("an area that covers the corridor from edge to edge is still seen between its shores", () => {
    const inlet = straight([areaFeature("inlet", "penalty-area-red", box(-400, 60, 400, 190))]);
    const figures = hazard(inlet, "inlet");
    expect(figures.stretches).toBe(1);
    expect(figures.reachMetres).toBeCloseTo(60, 2);
    expect(figures.carryOnLineMetres).toBeCloseTo(190, 2);
  });

  test("a burn that crosses twice has two stretches, in order of play", () => {
    const burn = lineFeature(
      "burn",
      "penalty-area-red",
      [
        [-80, 250],
        [80, 250],
        [80, 330],
        [-80, 330],
      ],
      { widthMetres: 4 },
    );
    const crossed = straight([burn]);
    const [first, second] = [hazard(crossed, "burn"), hazard(crossed, "burn", "back", 2)];
    expect(first.stretches).toBe(2);
    expect(first.reachMetres).toBeCloseTo(248, 1);
    expect(first.carryOnLineMetres).toBeCloseTo(252, 1);
    expect(second.reachMetres).toBeCloseTo(328, 1);
    expect(second.carryOnLineMetres).toBeCloseTo(332, 1);
  });

  test("a hazard outside the corridor says so and keeps its nearest edge", () => {
    const figures = hazard(straight([areaFeature("far", "bunker", box(40, 200, 50, 210))]), "far");
    expect(figures.inCorridor).toBe(false);
    expect(figures.position).toBe("right");
    expect(figures.offsetMetres).toBeCloseTo(40, 1);
    expect(figures.reachMetres).toBeCloseTo(Math.hypot(40, 200), 1);
  });

  test("a pot bunker smaller than the scan spacing is found", () => {
    const figures = hazard(straight([areaFeature("pot", "bunker", box(1.2, 230, 2.6, 231.5))]), "pot");
    expect(figures.inCorridor).toBe(true);
    expect(figures.reachMetres).toBeCloseTo(Math.hypot(1.2, 230), 2);
  });

  test("a boundary line beside the hole is on its side", () => {
    const wall = straight([
      lineFeature("wall", "out-of-bounds", [
        [-20, -30],
        [-22, 420],
      ]),
    ]);
    expect(hazard(wall, "wall").position).toBe("left");
  });

  test("a hazard behind the tee is not in the corridor", () => {
    expect(hazard(straight([areaFeature("behind", "bunker", box(-4, -30, 4, -20))]), "behind").inCorridor).toBe(false);
  });

  test("shared features far from the hole are left out, near ones count", () => {
    const features = straight().hole.features;
    const shared = [
      areaFeature("lake", "water", box(900, 0, 950, 400)),
      areaFeature("sea", "water", box(15, 0, 90, 400)),
    ];
    const ids = measureCourse(course([hole(features)], { features: shared })).holes[0]!.tees[0]!.hazards.map(
      ({ id }) => id,
    );
    expect(ids).toEqual(["sea"]);
  });

  test("a shared boundary that lies wholly behind the tee is no trouble of this hole's", () => {
    const features = straight().hole.features;
    const shared = [
      lineFeature("road", "out-of-bounds", [
        [-200, -30],
        [200, -30],
      ]),
    ];
    expect(measureCourse(course([hole(features)], { features: shared })).holes[0]!.tees[0]!.hazards).toEqual([]);
  });

  test("a shared landmark is placed however far it stands, since it is aimed at", () => {
    const features = straight().hole.features;
    const shared = [pointFeature("lighthouse", "landmark", [0, 2500]), pointFeature("far-pin", "pin", [0, 2500])];
    const { placed } = measureCourse(course([hole(features)], { features: shared })).holes[0]!;
    expect([placed.has("lighthouse"), placed.has("far-pin")]).toEqual([true, false]);
  });
});

describe("from anywhere", () => {
  test("a point down the hole has its own way to play, green and hazards", () => {
    const pond = straight([areaFeature("pond", "water", box(-30, 300, 30, 320))]);
    const standing = pond.frame.toPlane(pond.frame.toPosition(pond.tees[0]!.line.points[0]!));
    const there = measureFrom(pond, [standing[0], standing[1] + 200]);
    expect(there.line.lengthMetres).toBeCloseTo(200, 2);
    expect(there.green.frontMetres).toBeCloseTo(185, 2);
    expect(there.hazards[0]!.carryOnLineMetres).toBeCloseTo(120, 2);
  });
});

describe("fairway and lay-up", () => {
  const fairways = areasOfKind(straight().placed.values(), "fairway");
  const { line } = from(straight(), "back");

  test("width and each side at a drive length", () => {
    const there = fairwayAt(line, 230, fairways);
    expect(there.widthMetres).toBeCloseTo(30, 2);
    expect(there.leftMetres).toBeCloseTo(12, 2);
    expect(there.rightMetres).toBeCloseTo(18, 2);
  });

  test("off the fairway there is no width", () => {
    expect(fairwayAt(line, 100, fairways)).toMatchObject({ widthMetres: 0, edges: undefined });
  });

  test("a second fairway beyond rough does not count", () => {
    const split = straight([areaFeature("other", "fairway", box(40, 150, 60, 380))]);
    expect(fairwayAt(line, 230, areasOfKind(split.placed.values(), "fairway")).widthMetres).toBeCloseTo(30, 2);
  });

  test("the station that leaves a distance is straight to the green, also before a bend", () => {
    expect(stationLeaving(line, 100)).toBeCloseTo(300, 2);
    const bent = from(dogleg(), "back").line;
    expect(stationLeaving(bent, 100)).toBeCloseTo(280, 2);
    // Before the bend: straight distance 200 from (0, y) to (160, 220) gives y = 220 - 120.
    expect(stationLeaving(bent, 200)).toBeCloseTo(100, 1);
    expect(stationLeaving(line, 500)).toBeUndefined();
  });
});
