/** Features to holes, on two parallel holes drawn in metres: hole 1 north along x = 0, hole 2 south along x = 120. */
import { describe, expect, it } from "vitest";
import type { FeatureKind } from "../../src/course/types.ts";
import type { Point } from "../../src/geo/position.ts";
import { sortToHoles, type Placing, type SortHole, type ToSort } from "../../src/bring/place/sort.ts";
import { box, FRAME } from "../support/flat-course.ts";

const lonLat = (points: readonly Point[]): number[][] => points.map((p) => [...FRAME.toPosition(p)] as number[]);

const area = (kind: FeatureKind, ring: readonly Point[], hole?: ToSort["hole"]): ToSort => ({
  kind,
  hole,
  geometry: { type: "Polygon", coordinates: [lonLat([...ring, ring[0]!])] },
});
const point = (kind: FeatureKind, at: Point, hole?: ToSort["hole"]): ToSort => ({
  kind,
  hole,
  geometry: { type: "Point", coordinates: lonLat([at])[0]! },
});
const path = (kind: FeatureKind, points: readonly Point[]): ToSort => ({
  kind,
  hole: undefined,
  geometry: { type: "LineString", coordinates: lonLat(points) },
});

const at = (x: number, y: number, half = 5): Point[] => box(x - half, y - half, x + half, y + half);

const line = (points: readonly Point[]) => lonLat(points).map(([x, y]) => [x!, y!]);
const HOLES: readonly SortHole[] = [
  {
    number: 1,
    line: line([
      [0, 0],
      [0, 200],
      [0, 400],
    ]),
    green: undefined,
  },
  {
    number: 2,
    line: line([
      [120, 400],
      [120, 0],
    ]),
    green: undefined,
  },
];

const sort = (feature: ToSort, holes: readonly SortHole[] = HOLES): Placing[] =>
  sortToHoles([feature], holes, FRAME)[0]!;
const brief = (placings: readonly Placing[]): string =>
  placings
    .map((one) =>
      one.to === "nowhere"
        ? `nowhere: ${one.reason}`
        : `${one.to === "hole" ? `hole ${one.hole}` : "course"}${one.guessed ? "?" : ""}: ${one.reason}`,
    )
    .join(" | ");

describe("greens, tees, fairways", () => {
  it("gives a green to the hole whose line ends on it, and to both when two do", () => {
    expect(brief(sort(area("green", at(0, 400, 12))))).toBe("hole 1: the line of play ends on it");
    const double = [
      ...HOLES,
      {
        number: 8,
        line: line([
          [-200, 400],
          [5, 405],
        ]),
        green: undefined,
      },
    ];
    expect(brief(sort(area("green", at(0, 400, 12)), double))).toBe(
      "hole 1: the lines of holes 1 and 8 end on it | hole 8: the lines of holes 1 and 8 end on it",
    );
  });

  it("guesses when the line stops short of the green, and leaves a practice green over", () => {
    expect(brief(sort(area("green", at(0, 425, 12))))).toBe("hole 1?: 13 m beyond the end of the line of play");
    expect(brief(sort(area("green", at(60, 200, 12))))).toMatch(
      /^nowhere: no line of play of the 2 ends on it, as with a practice green: the nearest is that of hole \d, \d+ m away$/,
    );
  });

  it("gives tees to the hole that starts there, forward ones along its line", () => {
    expect(brief(sort(area("teeing-ground", at(0, 0))))).toBe("hole 1: the line of play starts on it");
    expect(brief(sort(point("tee-marker", [4, 60])))).toBe(
      "hole 1: 4 m right of the line of play, 60 m from its start",
    );
    expect(brief(sort(point("tee-marker", [124, 330])))).toBe(
      "hole 2: 4 m left of the line of play, 70 m from its start",
    );
    // Beside hole 2's green, so not hole 2's tee, and too far from hole 1's line.
    expect(brief(sort(point("tee-marker", [110, 10])))).toContain("nowhere: it is a tee at no line of play");
  });

  it("gives a fairway to the hole played along it, and to the course when two are", () => {
    expect(brief(sort(area("fairway", box(-15, 100, 15, 380))))).toBe(
      "hole 1: 280 m of the line of play run along it",
    );
    expect(brief(sort(area("fairway", box(-20, 50, 140, 350))))).toBe("course: holes 1 and 2 are played along it");
  });
});

describe("hazards", () => {
  it("gives a bunker to the hole it lies beside, with side and station", () => {
    const [placing] = sort(area("bunker", at(-20, 250)));
    expect(brief([placing!])).toBe("hole 1: 15 m left of the line of play");
    expect(
      placing!.to === "hole" && [
        Math.round(placing!.lie.stationMetres),
        Math.round(placing!.lie.offsetMetres),
        placing!.lie.side,
      ],
    ).toEqual([245, -15, "left"]);
    const [other] = sort(area("bunker", at(100, 250)));
    // Hole 2 is played south, so what lies west of it lies right.
    expect(other!.to === "hole" && [other!.hole, other!.lie.side]).toEqual([2, "right"]);
  });

  it("guesses between two holes with nearly the same claim", () => {
    expect(brief(sort(area("bunker", at(57, 200))))).toBe(
      "hole 1?: 52 m right of the line of play; hole 2 is nearly as near, 58 m",
    );
  });

  it("lets a green count as its hole: a bunker behind it is not the next hole's", () => {
    const withGreen = [
      { ...HOLES[0]!, green: area("green", box(-60, 390, 12, 412)).geometry },
      {
        number: 3,
        line: line([
          [-90, 425],
          [-400, 425],
        ]),
        green: undefined,
      },
    ];
    const bunker = area("bunker", at(-62, 418, 3));
    expect(brief(sort(bunker, [HOLES[0]!, withGreen[1]!]))).toMatch(/^hole 3/);
    expect(brief(sort(bunker, withGreen))).toMatch(/^hole 1/);
  });

  it("knows what the line crosses", () => {
    const [placing] = sort(
      path("penalty-area-red", [
        [-30, 300],
        [30, 300],
      ]),
    );
    expect(brief([placing!])).toBe("hole 1: the line of play crosses it");
    expect(placing!.to === "hole" && [placing!.lie.side, Math.round(placing!.lie.stationMetres)]).toEqual([
      "across",
      300,
    ]);
  });

  it("gives water by several holes to the course", () => {
    expect(
      brief(
        sort(
          path("penalty-area-red", [
            [-30, 300],
            [150, 300],
          ]),
        ),
      ),
    ).toBe("course: it lies by holes 1 and 2");
  });

  it("leaves over a bunker that is by no hole", () => {
    expect(brief(sort(area("bunker", at(-250, 200))))).toBe(
      "nowhere: it is a bunker beside no line of play: the nearest is that of hole 1, 245 m away",
    );
  });
});

describe("the rest", () => {
  it("keeps roads, walls and boundaries for the course, within reach of it", () => {
    expect(
      brief(
        sort(
          path("road", [
            [-140, 0],
            [-140, 400],
          ]),
        ),
      ),
    ).toBe("course: kept once for the whole course");
    expect(
      brief(
        sort(
          path("road", [
            [-300, 0],
            [-300, 400],
          ]),
        ),
      ),
    ).toBe("nowhere: it lies 300 m from the nearest line of play, that of hole 1");
    expect(
      brief(
        sort(
          path("coastline", [
            [-300, 0],
            [-300, 400],
          ]),
        ),
      ),
    ).toBe("course: kept once for the whole course");
    expect(
      brief(
        sort(
          path("road", [
            [-3000, 0],
            [-3000, 400],
          ]),
        ),
      ),
    ).toBe("nowhere: it lies 3.0 km from the nearest line of play, that of hole 1");
  });

  it("believes a hole that is stated, within reason", () => {
    expect(brief(sort(area("bunker", at(57, 200), 2)))).toBe("hole 2: it says hole 2");
    expect(brief(sort(area("bunker", at(57, 200), 5)))).toBe(
      "nowhere: it says hole 5, and there is no line of play for hole 5",
    );
    expect(brief(sort(area("bunker", at(1200, 200), 1)))).toBe(
      "nowhere: it says hole 1, but lies 1.2 km from that hole's line of play",
    );
    expect(brief(sort(area("water", at(0, 200), "all")))).toBe("course: it says that holes share it");
  });

  it("says what it needs when there are no lines, and what it cannot use", () => {
    expect(brief(sort(area("bunker", at(0, 0)), []))).toContain("nowhere: there is no line of play yet to sort it by");
    expect(brief(sort(point("other", [0, 0])))).toBe("nowhere: its tags are none that the guide draws or measures");
  });

  it("keeps rough with the hole that runs through it", () => {
    expect(brief(sort(area("rough", box(-45, -10, 45, 410))))).toBe(
      "hole 1: most of the line of play runs through it",
    );
    expect(brief(sort(area("rough", box(-60, -10, 180, 410))))).toBe("course: it lies by holes 1 and 2");
  });
});
