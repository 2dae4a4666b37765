/**
 * Random holes with hazards of every sort, anywhere between 70 degrees south and north, a
 * fifth of them across 180 degrees. The same seed gives the same hole. Everything is
 * invented.
 */
import type { Course, Feature, FeatureKind } from "../../../src/course/types.ts";
import { frameAt } from "../../../src/geo/frame.ts";
import type { Point } from "../../../src/geo/position.ts";
import { course, hole, place, TEE_SETS } from "../../support/flat-course.ts";

/** Uniform numbers below 1 from a seed (mulberry32, a public-domain generator). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const TURN = Math.PI / 180;

/** What a hazard is drawn as; each is a property the figures must hold for. */
const SORTS = [
  "across",
  "slanting",
  "alongside",
  "round the bend",
  "pond",
  "pond with island",
  "burn twice",
  "lake",
  "at the tee",
  "round the green",
  "two pots",
  "ditch without width",
  "boundary",
] as const;

export interface RandomHole {
  readonly course: Course;
  readonly sorts: Readonly<Record<string, (typeof SORTS)[number]>>;
}

export function randomHole(seed: number): RandomHole {
  const random = randomFrom(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const pick = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;

  const longitude = random() < 0.2 ? pick([179.998, -179.998, 180]) : between(-180, 180);
  const frame = frameAt([longitude, between(-70, 70)]);
  const heading = between(0, 360);

  // The line: no bend, or one to three of at most 90 degrees each and 120 in all.
  const bends = pick([0, 0, 1, 1, 1, 2, 3]);
  let budget = 120;
  const line: Point[] = [[0, 0]];
  let direction = heading;
  for (let i = 0; i <= bends; i++) {
    const metres = bends === 0 ? between(90, 520) : between(i === 0 ? 120 : 60, 230);
    const [x, y] = line[line.length - 1]!;
    line.push([x + metres * Math.sin(direction * TURN), y + metres * Math.cos(direction * TURN)]);
    const angle = Math.min(between(5, 90), budget);
    budget -= angle;
    direction += random() < 0.5 ? angle : -angle;
  }
  const lengths = line.slice(1).map((p, i) => Math.hypot(p[0] - line[i]![0], p[1] - line[i]![1]));
  const total = lengths.reduce((a, b) => a + b, 0);
  /** A point at a station and an offset to the right. */
  const at = (station: number, offset: number): Point => {
    let rest = station;
    let leg = 0;
    while (leg < lengths.length - 1 && rest > lengths[leg]!) rest -= lengths[leg++]!;
    const [a, b] = [line[leg]!, line[leg + 1]!];
    const [dx, dy] = [(b[0] - a[0]) / lengths[leg]!, (b[1] - a[1]) / lengths[leg]!];
    return [a[0] + dx * rest + dy * offset, a[1] + dy * rest - dx * offset];
  };

  const lonLat = (p: Point): number[] => {
    const [east, north] = frame.toPosition(p);
    return [east, north];
  };
  const feature = (
    id: string,
    kind: FeatureKind,
    geometry: Feature["geometry"],
    rest: Partial<Feature> = {},
  ): Feature => ({
    id,
    kind,
    name: undefined,
    tee: undefined,
    widthMetres: undefined,
    heightMetres: undefined,
    geometry,
    tags: {},
    place,
    ...rest,
  });
  const ringOf = (points: readonly Point[]): number[][] => [...points, points[0]!].map(lonLat);
  const area = (id: string, kind: FeatureKind, ...rings: Point[][]): Feature =>
    feature(id, kind, { type: "Polygon", coordinates: rings.map(ringOf) });
  const path = (id: string, kind: FeatureKind, points: readonly Point[], widthMetres?: number): Feature =>
    feature(
      id,
      kind,
      { type: "LineString", coordinates: points.map(lonLat) },
      widthMetres === undefined ? {} : { widthMetres },
    );
  /** A lumpy outline about a point: a pond, a bunker. */
  const blob = (centre: Point, radius: number, lumps = 0.3): Point[] => {
    const count = 7 + Math.floor(random() * 20);
    return Array.from({ length: count }, (_, i): Point => {
      const r = radius * (1 - lumps * random());
      const angle = (2 * Math.PI * i) / count;
      return [centre[0] + r * Math.cos(angle), centre[1] + r * Math.sin(angle)];
    });
  };
  /** A strip from one station and offset to another, of a width along the hole. */
  const strip = (station: number, width: number, slant: number, reach: number): Point[] => [
    at(station - slant, -reach),
    at(station + slant, reach),
    at(station + slant + width, reach),
    at(station - slant + width, -reach),
  ];

  const sorts: Record<string, (typeof SORTS)[number]> = {};
  const water = (): FeatureKind => pick(["water", "penalty-area-red", "penalty-area-yellow", "bunker"]);
  const hazards = Array.from({ length: 6 }, (_, i): Feature => {
    const id = `hazard-${i}`;
    const sort = pick(SORTS);
    sorts[id] = sort;
    const station = between(10, total - 15);
    switch (sort) {
      case "across":
        return area(id, water(), strip(station, between(3, 60), 0, between(20, 80)));
      case "slanting":
        return area(id, water(), strip(station, between(3, 40), between(-40, 40), between(26, 60)));
      case "alongside": {
        const side = pick([-1, 1]);
        const count = 3 + Math.floor(random() * 8);
        const from = between(0, total * 0.7);
        const step = between(20, total - from) / count;
        const near = Array.from({ length: count + 1 }, (_, k) => at(from + k * step, side * between(-4, 24)));
        const far = Array.from({ length: count + 1 }, (_, k) => at(from + k * step, side * 70)).reverse();
        return area(id, water(), simple([...near, ...far]) ? [...near, ...far] : blob(at(station, side * 20), 14));
      }
      case "round the bend": {
        const corner = line[1 + Math.floor(random() * (line.length - 2))] ?? at(station, 0);
        const [dx, dy] = [between(-30, 30), between(-30, 30)];
        return area(id, water(), blob([corner[0] + dx, corner[1] + dy], between(4, 40)));
      }
      case "pond":
        return area(id, water(), blob(at(station, between(-40, 40)), between(3, 45)));
      case "pond with island": {
        const centre = at(station, between(-12, 12));
        return area(id, water(), blob(centre, between(34, 70), 0.2), blob(centre, between(4, 20), 0.2));
      }
      case "burn twice": {
        const gap = between(8, 120);
        const side = pick([-1, 1]);
        const reach = between(30, 60);
        return path(
          id,
          "penalty-area-red",
          [
            at(station, -side * reach),
            at(station, side * reach),
            at(station + gap, side * reach),
            at(station + gap, -side * reach),
          ],
          between(1, 6),
        );
      }
      case "lake":
        return area(id, water(), blob(at(station, between(-30, 30)), between(80, 180), 0.2));
      case "at the tee":
        return area(id, water(), blob(at(0, between(-10, 10)), between(6, 60)));
      case "round the green":
        return area(id, water(), blob(at(total, 0), between(40, 90), 0.15), blob(at(total, 0), between(12, 30), 0.15));
      case "two pots": {
        const pots = [-1, 1].map((side) => [
          ringOf(blob(at(station + between(0, 14), side * between(6, 22)), between(1, 6))),
        ]);
        return feature(id, "bunker", { type: "MultiPolygon", coordinates: pots });
      }
      case "ditch without width":
        return path(id, "penalty-area-red", [at(station, -50), at(station + between(-20, 20), 5), at(station, 50)]);
      case "boundary":
        return path(id, "out-of-bounds", [at(station, -60), at(station + between(-30, 30), 60)]);
    }
  });

  const tees = [at(0, 0), at(between(12, Math.min(80, lengths[0]! - 11)), between(-8, 8))];
  return {
    course: course(
      [
        hole([
          path("line", "line-of-play", line),
          ...tees.map((p, i) =>
            feature(`tee-${i}`, "tee-marker", { type: "Point", coordinates: lonLat(p) }, { tee: TEE_SETS[i]!.id }),
          ),
          area("green", "green", blob(at(total, 0), between(7, 11), 0.15)),
          ...hazards,
        ]),
      ],
      { corridorMetres: pick([15, 25, 25, 25, 40]) },
    ),
    sorts,
  };
}

/** Whether a closed outline nowhere crosses itself: a strip beside a bend may fold over. */
function simple(ring: readonly Point[]): boolean {
  const side = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const closed = [...ring, ring[0]!];
  for (let i = 1; i < closed.length; i++) {
    for (let j = i + 2; j < closed.length; j++) {
      if (i === 1 && j === closed.length - 1) continue;
      const [a, b, c, d] = [closed[i - 1]!, closed[i]!, closed[j - 1]!, closed[j]!];
      if (side(a, b, c) > 0 !== side(a, b, d) > 0 && side(c, d, a) > 0 !== side(c, d, b) > 0) return false;
    }
  }
  return true;
}
