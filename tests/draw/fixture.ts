/**
 * A made-up hole and a short one, written in metres on a plane and turned into positions:
 * everything the plate can show, at once. Not a real place.
 */
import type { Course, Feature, FeatureKind, Hole, TeeSet } from "../../src/course/types.ts";
import { featureKind } from "../../src/course/feature-kind.ts";
import { frameAt } from "../../src/geo/frame.ts";
import type { Point } from "../../src/geo/position.ts";
import { boxAround, grow } from "../../src/geo/box.ts";
import { gridOf, type HeightGrid } from "../../src/terrain/grid.ts";
import { measureCourse } from "../../src/measure/course.ts";
import type { MeasuredCourse, MeasuredHole } from "../../src/measure/types.ts";

type Tags = Readonly<Record<string, string | number | boolean>>;

const frame = frameAt([-9, 56.5]);
const place = { file: "fixture", line: 1, column: 1 };

/** Turned about the origin, so that play does not run due north. */
export const TURN_DEGREES = 28;
const lonLat = ([x, y]: Point): [number, number] => {
  const a = (TURN_DEGREES * Math.PI) / 180;
  const [longitude, latitude] = frame.toPosition([
    x * Math.cos(a) + y * Math.sin(a),
    y * Math.cos(a) - x * Math.sin(a),
  ]);
  return [longitude, latitude];
};

function feature(id: string, tags: Tags, geometry: Feature["geometry"]): Feature {
  const of = (key: string): string | undefined => (typeof tags[key] === "string" ? tags[key] : undefined);
  const size = (key: string): number | undefined => (typeof tags[key] === "number" ? tags[key] : undefined);
  const type = geometry.type;
  return {
    id,
    kind: featureKind(tags, type) satisfies FeatureKind,
    name: of("name"),
    tee: of("tee"),
    widthMetres: size("width"),
    heightMetres: size("height"),
    geometry,
    tags,
    place,
  };
}

export const area = (id: string, tags: Tags, ring: readonly Point[]): Feature =>
  feature(id, tags, { type: "Polygon", coordinates: [[...ring, ring[0]!].map(lonLat)] });
export const line = (id: string, tags: Tags, points: readonly Point[]): Feature =>
  feature(id, tags, { type: "LineString", coordinates: points.map(lonLat) });
export const point = (id: string, tags: Tags, at: Point): Feature =>
  feature(id, tags, { type: "Point", coordinates: lonLat(at) });

/** A rounded, slightly irregular blob. */
export function blob(x: number, y: number, rx: number, ry: number, turn = 0, seed = 1): Point[] {
  const n = Math.max(9, Math.round((rx + ry) / 2));
  return Array.from({ length: n }, (_, i): Point => {
    const t = (i / n) * 2 * Math.PI;
    const k =
      1 + 0.13 * Math.sin(2 * t + seed) + 0.07 * Math.sin(3 * t + seed * 2.3) + 0.05 * Math.sin(5 * t + seed * 1.7);
    const [u, v] = [Math.cos(t) * rx * k, Math.sin(t) * ry * k];
    const a = (turn * Math.PI) / 180;
    return [x + u * Math.cos(a) - v * Math.sin(a), y + u * Math.sin(a) + v * Math.cos(a)];
  });
}

export const TEES: readonly TeeSet[] = [
  { id: "slate", name: "Slate", colour: "#3b444b", ratings: [] },
  { id: "shell", name: "Shell", colour: "#f3efe4", ratings: [] },
  { id: "sand", name: "Sand", colour: "#e0b84a", ratings: [] },
  { id: "thrift", name: "Thrift", colour: "#d7607d", ratings: [] },
];

const TEE_AT: readonly Point[] = [
  [0, 0],
  [4, 18],
  [9, 36],
  [14, 66],
];

function longHole(): Hole {
  const features: Feature[] = [
    line("line", { golf: "hole" }, [
      [0, 0],
      [6, 232],
      [62, 392],
    ]),
    ...TEES.map(({ id }, i) => point(`tee-${id}`, { golf: "tee", tee: id }, TEE_AT[i]!)),
    area("ground-back", { golf: "tee" }, [
      [-5, -6],
      [5, -6],
      [9, 24],
      [-1, 24],
    ]),
    area("ground-forward", { golf: "tee" }, [
      [9, 60],
      [19, 60],
      [20, 73],
      [10, 73],
    ]),
    area("fairway", { golf: "fairway" }, [
      [2, 128],
      [12, 122],
      [24, 132],
      [28, 156],
      [26, 182],
      [33, 205],
      [42, 228],
      [50, 258],
      [62, 290],
      [74, 320],
      [80, 348],
      [74, 362],
      [58, 366],
      [44, 354],
      [34, 326],
      [22, 300],
      [4, 276],
      [-14, 254],
      [-22, 228],
      [-20, 200],
      [-14, 176],
      [-12, 150],
    ]),
    area("green", { golf: "green" }, blob(62, 393, 17, 14, 65, 2)),
    area("fiddler", { golf: "bunker", name: "The Fiddler" }, blob(-20, 212, 5, 8, 12, 1)),
    area("twins-a", { golf: "bunker" }, blob(38, 196, 5.5, 4.5, 30, 3)),
    area("twins-b", { golf: "bunker", name: "Long Tom" }, blob(44, 244, 4.5, 7, -20, 4)),
    area("front-left", { golf: "bunker" }, blob(44, 374, 5, 7, 40, 5)),
    area("front-right", { golf: "bunker", name: "Kist" }, blob(78, 372, 6, 4.5, 20, 6)),
    area("back", { golf: "bunker" }, blob(84, 398, 4, 7, 10, 7)),
    line("burn", { golf: "lateral_water_hazard", waterway: "stream", name: "Allan Burn", width: 3 }, [
      [150, 90],
      [110, 96],
      [70, 112],
      [40, 104],
      [10, 96],
      [-30, 108],
      [-60, 98],
      [-96, 104],
    ]),
    area("gorse-bank", { natural: "scrub", name: "Gorse Bank" }, blob(66, 160, 16, 34, 14, 2)),
    area("gorse-back", { natural: "scrub" }, blob(100, 410, 12, 26, 20, 5)),
    area("heath", { natural: "heath" }, blob(-44, 306, 18, 40, -20, 3)),
    area("dune", { natural: "sand", name: "White Dune" }, blob(-52, 60, 16, 30, 10, 4)),
    line("ridge", { natural: "ridge" }, [
      [34, 20],
      [44, 44],
      [40, 72],
      [48, 92],
    ]),
    line("ridge-2", { natural: "ridge" }, [
      [-34, 352],
      [-10, 376],
      [14, 384],
      [22, 404],
    ]),
    area("copse", { natural: "wood" }, blob(108, 240, 12, 22, 0, 6)),
    point("thorn", { natural: "tree" }, [-32, 140]),
    line("marches", { golf: "out_of_bounds" }, [
      [84, -40],
      [92, 60],
      [96, 140],
      [106, 200],
      [128, 270],
      [136, 350],
      [128, 460],
    ]),
    line("dyke", { barrier: "wall" }, [
      [84, -40],
      [92, 60],
      [96, 140],
      [106, 200],
      [128, 270],
      [136, 350],
      [128, 460],
    ]),
    line("road", { highway: "unclassified", width: 5 }, [
      [112, -60],
      [118, 60],
      [124, 150],
      [136, 210],
      [160, 300],
      [170, 460],
    ]),
    line("path", { golf: "path" }, [
      [-18, -20],
      [-22, 40],
      [-30, 90],
      [-34, 150],
      [-38, 240],
      [-20, 320],
      [20, 372],
      [30, 420],
    ]),
    area("hut", { building: "yes" }, [
      [112, 10],
      [120, 9],
      [121, 20],
      [113, 21],
    ]),
    point("light", { man_made: "lighthouse", name: "Skerry Light" }, [10, 700]),
    point("cairn", { man_made: "cairn", name: "North Cairn" }, [34, 430]),
  ];
  return {
    number: 7,
    name: "Harbour Light",
    slug: "07-harbour-light",
    par: { men: 4, women: 4 },
    strokeIndex: { men: 5, women: 7 },
    placeholder: [],
    proposed: [],
    aim: undefined,
    cardMetres: { slate: 395, shell: 378, sand: 360, thrift: 330 },
    photos: [],
    features,
    tip: { markdown: "Aim at the :aim[light] and stay short of :reach[fiddler].", place },
    notices: [],
    silence: [],
    translations: {},
    place,
  };
}

function shortHole(): Hole {
  const inlet: Point[] = [
    [900, 60],
    [880, 58],
    [858, 50],
    [836, 54],
    [812, 46],
    [790, 60],
    [770, 56],
    [740, 70],
    [700, 66],
    [660, 72],
    [600, 74],
    [600, 152],
    [650, 146],
    [690, 136],
    [730, 128],
    [760, 134],
    [776, 148],
    [790, 142],
    [800, 128],
    [822, 120],
    [846, 126],
    [866, 118],
    [884, 104],
    [898, 84],
  ];
  const features: Feature[] = [
    line("line", { golf: "hole" }, [
      [800, 0],
      [806, 168],
    ]),
    ...(["slate", "shell", "sand", "thrift"] as const).map((id, i) =>
      point(`tee-${id}`, { golf: "tee", tee: id }, [800 + i * 2, i * 9]),
    ),
    area("green", { golf: "green" }, blob(806, 168, 12, 16, 20, 3)),
    area("inlet", { golf: "lateral_water_hazard", natural: "water", name: "Skerry Inlet" }, inlet),
    area("bail", { golf: "fairway" }, blob(780, 158, 9, 8, 0, 2)),
    area("pot-left", { golf: "bunker" }, blob(788, 176, 3.2, 4, 0, 1)),
    area("pot-front", { golf: "bunker", name: "The Kettle" }, blob(800, 148, 4, 3, 0, 5)),
    area("pot-right", { golf: "bunker" }, blob(824, 170, 3, 5, 0, 4)),
    line("cliff", { natural: "cliff" }, [
      [800, 128],
      [822, 120],
      [846, 126],
      [866, 118],
      [884, 104],
      [898, 84],
    ]),
    area("rocks", { natural: "bare_rock" }, blob(846, 96, 5, 3, 20, 3)),
    area("whins", { natural: "scrub" }, blob(770, 186, 14, 10, 10, 4)),
    line("ridge", { natural: "ridge" }, [
      [830, 196],
      [812, 204],
      [790, 200],
    ]),
  ];
  return {
    number: 12,
    name: "Skerry",
    slug: "12-skerry",
    par: { men: 3, women: 3 },
    strokeIndex: { men: 15, women: 15 },
    placeholder: [],
    proposed: [],
    aim: undefined,
    cardMetres: { slate: 168, shell: 159, sand: 150, thrift: 141 },
    photos: [],
    features,
    tip: { markdown: "", place },
    notices: [],
    silence: [],
    translations: {},
    place,
  };
}

/** Words that would break a drawing if they were not escaped. */
export const HOSTILE = `<Tom & "Jerry's">`;

export const course = (change: (hole: Hole) => Hole = (hole) => hole): Course => ({
  id: "fixture",
  name: "Fixture Links",
  description: "",
  surveyed: "2026-05-14",
  sources: [],
  credits: [],
  brought: [],
  defaultTee: "sand",
  corridorMetres: 25,
  tees: TEES,
  features: [],
  holes: [longHole(), shortHole()].map(change),
  notices: [],
  silence: [],
  translations: {},
  orthophoto: undefined,
  ground: undefined,
});

export const measured = (change?: (hole: Hole) => Hole): MeasuredCourse => measureCourse(course(change));
export const holeOf = (all: MeasuredCourse, number: number): MeasuredHole =>
  all.holes.find(({ hole }) => hole.number === number)!;

/** Rolling ground under the fixture: a low dune, a bank and ripples. */
export const ground = (hole: MeasuredHole): HeightGrid => {
  const [minX, minY, maxX, maxY] = grow(boxAround(hole.tees[0]!.line.points), 260);
  return gridOf({ west: minX, south: minY, east: maxX, north: maxY }, 2, ([x, y]) => {
    const dune = 9 * Math.exp(-(((x - minX - 300) / 40) ** 2) - ((y - minY - 330) / 60) ** 2);
    return (
      8 +
      dune +
      6 / (1 + Math.exp(-(x - minX - 420) / 6)) +
      1.6 * Math.sin(x / 17) * Math.cos(y / 23) +
      0.6 * Math.sin(x / 7 + y / 9)
    );
  });
};
