/**
 * The five holes the corpus speaks of, drawn in metres. All play north from [0, 0].
 *
 * A  par 4, 380 m, straight, level. Bunkers: short right of the green, left of the fairway at
 *    210 m. Out of bounds right. A burn across 35 m short of the green. Fairway 50 m wide.
 *    Green 30 m deep, 20 m wide, falls to the front.
 * B  par 4, 364 m, bends left 56 degrees round a wood. Up 12 m, most of it on the approach,
 *    which is blind. Bunkers left of and behind the green. Fairway 18 m wide. Green 10 m deep,
 *    30 m wide, perched, two tiers, false front.
 * C  par 3, 150 m, down 10 m from a high tee, over an inlet that also lies left of the green.
 *    No bunker. Green 16 m deep, 34 m wide, falls to the right.
 * D  par 5, 525 m, bends right, then left. Sea right, out of bounds left. Blind drive to a
 *    fairway that falls to the right. Bunkers left of the fairway at 225 m and short left of
 *    the green, which is 18 m by 16 m and level.
 * E  par 4, 320 m, straight; no heights known. Pond right of the green, three bunkers left of
 *    it. Fairway 32 m wide. Green 24 m by 24 m.
 */
import type { Course, Feature, Hole } from "../../src/course/types.ts";
import type { Point } from "../../src/geo/position.ts";
import { along, rightOf } from "../../src/geo/vector.ts";
import { areaFeature, box, course, hole, lineFeature, pointFeature } from "../support/flat-course.ts";
import type { GroundFacts, GroundProvider } from "../../src/check/ground.ts";
import { holeFacts, type HoleFacts } from "../../src/check/facts.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { HoleName } from "./corpus.ts";

/** A rectangle about a middle, `depth` along a unit direction and `width` across it. */
export function turned(middle: Point, direction: Point, depth: number, width: number): Point[] {
  const right = rightOf(direction);
  const corner = (u: number, v: number): Point =>
    along(along(middle, direction, (u * depth) / 2), right, (v * width) / 2);
  return [corner(-1, -1), corner(-1, 1), corner(1, 1), corner(1, -1)];
}

/** A point so far along and to the right of a middle, seen along a direction. */
const seen = (middle: Point, direction: Point, u: number, v: number): Point =>
  along(along(middle, direction, u), rightOf(direction), v);

/** Markers, at a height where the hole's heights are known. */
const tees = (back: Point, forward: Point, height?: number): Feature[] => {
  const at = height === undefined ? {} : { height };
  return [
    pointFeature("tee-back", "tee-marker", back, { tee: "back", ...at }),
    pointFeature("tee-forward", "tee-marker", forward, { tee: "forward", ...at }),
  ];
};

const A = hole(
  [
    lineFeature(
      "line",
      "line-of-play",
      [
        [0, 0],
        [0, 380],
      ],
      { heights: [5, 5.2] },
    ),
    ...tees([0, 0], [0, 40], 5),
    areaFeature("fairway", "fairway", box(-25, 120, 25, 350)),
    areaFeature("green", "green", box(-10, 365, 10, 395)),
    areaFeature("bunker-short", "bunker", box(14, 350, 22, 360)),
    areaFeature("bunker-fairway", "bunker", box(-40, 210, -30, 222)),
    lineFeature("boundary", "out-of-bounds", [
      [45, -20],
      [45, 420],
    ]),
    lineFeature(
      "burn",
      "penalty-area-red",
      [
        [-80, 330],
        [80, 330],
      ],
      { widthMetres: 3, name: "Mill Burn" },
    ),
  ],
  {
    number: 1,
    name: "A",
    slug: "01-a",
    par: { men: 4, women: 4 },
    strokeIndex: { men: 5, women: 5 },
    cardMetres: { back: 380, forward: 340 },
  },
);

const B_GREEN: Point = [-120, 300];
const B_WAY: Point = [-0.8320502943378437, 0.5547001962252291];
const B = hole(
  [
    lineFeature("line", "line-of-play", [[0, 0], [0, 220], B_GREEN], { heights: [5, 7, 17] }),
    ...tees([0, 0], [0, 30], 5),
    areaFeature("fairway", "fairway", box(-9, 100, 9, 240)),
    areaFeature("green", "green", turned(B_GREEN, B_WAY, 10, 30)),
    areaFeature("bunker-left", "bunker", turned(seen(B_GREEN, B_WAY, 0, -22), B_WAY, 6, 8)),
    areaFeature("bunker-back", "bunker", turned(seen(B_GREEN, B_WAY, 12, 0), B_WAY, 6, 10)),
    areaFeature("wood", "wood", box(-70, 120, -15, 200)),
  ],
  {
    number: 2,
    name: "B",
    slug: "02-b",
    par: { men: 4, women: 4 },
    strokeIndex: { men: 1, women: 1 },
    cardMetres: { back: 364, forward: 334 },
  },
);

const C = hole(
  [
    lineFeature(
      "line",
      "line-of-play",
      [
        [0, 0],
        [0, 150],
      ],
      { heights: [20, 10] },
    ),
    ...tees([0, 0], [0, 25], 20),
    areaFeature("green", "green", box(-17, 142, 17, 158)),
    areaFeature(
      "inlet",
      "penalty-area-red",
      [
        [-200, 30],
        [60, 30],
        [60, 120],
        [-30, 120],
        [-30, 200],
        [-200, 200],
      ],
      { name: "Gull Inlet" },
    ),
  ],
  {
    number: 3,
    name: "C",
    slug: "03-c",
    par: { men: 3, women: 3 },
    strokeIndex: { men: 9, women: 9 },
    cardMetres: { back: 150, forward: 125 },
  },
);

const D_GREEN: Point = [60, 500];
const D_WAY: Point = [-0.26311740579, 0.96476382124];
const D = hole(
  [
    lineFeature("line", "line-of-play", [[0, 0], [0, 210], [90, 390], D_GREEN], { heights: [5, 5, 5, 6] }),
    ...tees([0, 0], [0, 60], 5),
    areaFeature("fairway", "fairway", [
      [-18, 130],
      [18, 130],
      [18, 205],
      [108, 385],
      [78, 480],
      [45, 475],
      [70, 390],
      [-18, 215],
    ]),
    areaFeature("green", "green", turned(D_GREEN, D_WAY, 18, 16)),
    areaFeature("bunker-drive", "bunker", box(-32, 220, -24, 232)),
    areaFeature("bunker-short", "bunker", turned(seen(D_GREEN, D_WAY, -16, -14), D_WAY, 6, 8)),
    areaFeature(
      "sea",
      "water",
      [
        [60, -50],
        [600, -50],
        [600, 560],
        [130, 560],
        [150, 380],
        [60, 150],
      ],
      { name: "Sound" },
    ),
    lineFeature("boundary", "out-of-bounds", [
      [-60, -20],
      [-60, 560],
    ]),
  ],
  {
    number: 4,
    name: "D",
    slug: "04-d",
    par: { men: 5, women: 5 },
    strokeIndex: { men: 3, women: 3 },
    cardMetres: { back: 525, forward: 465 },
  },
);

const E = hole(
  [
    lineFeature("line", "line-of-play", [
      [0, 0],
      [0, 320],
    ]),
    ...tees([0, 0], [0, 30]),
    areaFeature("fairway", "fairway", box(-16, 100, 16, 300)),
    areaFeature("green", "green", box(-12, 308, 12, 332)),
    areaFeature("pond", "water", box(18, 310, 40, 340)),
    areaFeature("bunker-1", "bunker", box(-24, 305, -16, 312)),
    areaFeature("bunker-2", "bunker", box(-24, 316, -16, 322)),
    areaFeature("bunker-3", "bunker", box(-24, 328, -16, 334)),
  ],
  {
    number: 5,
    name: "E",
    slug: "05-e",
    par: { men: 4, women: 4 },
    strokeIndex: { men: 7, women: 7 },
    cardMetres: { back: 320, forward: 290 },
  },
);

export const HOLES: Readonly<Record<HoleName, Hole>> = { A, B, C, D, E };

export const CORPUS_COURSE: Course = course([A, B, C, D, E]);

const UNKNOWN: GroundFacts = {
  teeShot: undefined,
  approach: undefined,
  fairwayRightPercent: undefined,
  green: undefined,
  greenAboveMetres: undefined,
  teeAboveMetres: undefined,
  seen: { landing: undefined, greenFromTee: undefined, greenFromLanding: undefined, flagFromLanding: undefined },
};

/** What a height model would say of each hole; E has none. */
const GROUND: Readonly<Record<HoleName, GroundFacts | undefined>> = {
  A: {
    teeShot: { distanceMetres: 229, riseMetres: 0.1, extraMetres: 0.1 },
    approach: { distanceMetres: 151, riseMetres: 0.1, extraMetres: 0.1 },
    fairwayRightPercent: 0.1,
    green: { awayPercent: 4, rightPercent: 0, tiers: 1, falseFront: false },
    greenAboveMetres: 0.6,
    teeAboveMetres: 0.1,
    seen: { landing: 1, greenFromTee: 1, greenFromLanding: true, flagFromLanding: true },
  },
  B: {
    teeShot: { distanceMetres: 229, riseMetres: 2, extraMetres: 2.5 },
    approach: { distanceMetres: 136, riseMetres: 10, extraMetres: 11 },
    fairwayRightPercent: 0,
    green: { awayPercent: 2, rightPercent: 0.4, tiers: 2, falseFront: true },
    greenAboveMetres: 3,
    teeAboveMetres: 0,
    seen: { landing: 1, greenFromTee: 0, greenFromLanding: false, flagFromLanding: false },
  },
  C: {
    teeShot: { distanceMetres: 150, riseMetres: -10, extraMetres: -10 },
    approach: { distanceMetres: 150, riseMetres: -10, extraMetres: -10 },
    fairwayRightPercent: undefined,
    green: { awayPercent: 0.1, rightPercent: -3, tiers: 1, falseFront: false },
    greenAboveMetres: 0.2,
    teeAboveMetres: 9,
    seen: { landing: undefined, greenFromTee: 1, greenFromLanding: undefined, flagFromLanding: undefined },
  },
  D: {
    teeShot: { distanceMetres: 229, riseMetres: 0.4, extraMetres: 0.5 },
    approach: { distanceMetres: 80, riseMetres: 0.4, extraMetres: 0.4 },
    fairwayRightPercent: -6,
    green: { awayPercent: 0.6, rightPercent: 0.2, tiers: 1, falseFront: false },
    greenAboveMetres: 0.1,
    teeAboveMetres: 0,
    seen: { landing: 0, greenFromTee: 0, greenFromLanding: true, flagFromLanding: true },
  },
  E: UNKNOWN,
};

const NAMES: readonly HoleName[] = ["A", "B", "C", "D", "E"];

/** The ground of the corpus's course, as the check asks for it. */
export const corpusGround: GroundProvider = ({ hole: { name } }) => GROUND[name as HoleName];

/** The facts of each hole: its figures measured, its heights as given above. */
export function corpusFacts(): Readonly<Record<HoleName, HoleFacts>> {
  const measured = measureCourse(CORPUS_COURSE);
  const one = (name: HoleName, index: number): [HoleName, HoleFacts] => {
    const facts = holeFacts(measured, measured.holes[index]!, corpusGround);
    if (!facts) throw new Error(`Hole ${name} has no tee.`);
    return [name, facts];
  };
  return Object.fromEntries(NAMES.map(one)) as Record<HoleName, HoleFacts>;
}
