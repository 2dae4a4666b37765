/**
 * Courses drawn straight in metres, so that a test can say where things are and work the
 * expected figures out by hand. Everything is invented.
 */
import type { Course, Feature, FeatureKind, Hole, TeeSet } from "../../src/course/types.ts";
import { frameAt } from "../../src/geo/frame.ts";
import type { Point } from "../../src/geo/position.ts";

export const FRAME = frameAt([-9, 56.5]);

export const place = { file: "test", line: 1, column: 1 };

const lonLat = (point: Point, height?: number): number[] => {
  const [longitude, latitude] = FRAME.toPosition(point);
  return height === undefined ? [longitude, latitude] : [longitude, latitude, height];
};

interface Extras {
  readonly name?: string;
  readonly tee?: string;
  readonly widthMetres?: number;
  readonly tags?: Feature["tags"];
}

const feature = (id: string, kind: FeatureKind, geometry: Feature["geometry"], extras: Extras): Feature => ({
  id,
  kind,
  name: extras.name,
  tee: extras.tee,
  widthMetres: extras.widthMetres,
  heightMetres: undefined,
  geometry,
  tags: extras.tags ?? {},
  place,
});

export const pointFeature = (
  id: string,
  kind: FeatureKind,
  at: Point,
  extras: Extras & { readonly height?: number } = {},
): Feature => feature(id, kind, { type: "Point", coordinates: lonLat(at, extras.height) }, extras);

export const lineFeature = (
  id: string,
  kind: FeatureKind,
  path: readonly Point[],
  extras: Extras & { readonly heights?: readonly number[] } = {},
): Feature =>
  feature(id, kind, { type: "LineString", coordinates: path.map((p, i) => lonLat(p, extras.heights?.[i])) }, extras);

export const areaFeature = (id: string, kind: FeatureKind, ring: readonly Point[], extras: Extras = {}): Feature =>
  feature(id, kind, { type: "Polygon", coordinates: [[...ring, ring[0]!].map((p) => lonLat(p))] }, extras);

/** An axis-parallel rectangle, counter-clockwise, not closed. */
export const box = (west: number, south: number, east: number, north: number): Point[] => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
];

export const TEE_SETS: readonly TeeSet[] = [
  {
    id: "back",
    name: "Back",
    colour: "#203040",
    ratings: [{ gender: "men", courseRating: 72, bogeyRating: undefined, slopeRating: 130, par: 72 }],
  },
  {
    id: "forward",
    name: "Forward",
    colour: "#a05010",
    ratings: [{ gender: "women", courseRating: 72, bogeyRating: undefined, slopeRating: 126, par: 72 }],
  },
];

export const hole = (features: readonly Feature[], rest: Partial<Hole> = {}): Hole => ({
  number: 1,
  name: "Test",
  slug: "01-test",
  par: { men: 4, women: 4 },
  strokeIndex: { men: 1, women: 1 },
  placeholder: [],
  proposed: [],
  aim: undefined,
  cardMetres: { back: 400, forward: 350 },
  photos: [],
  features,
  tip: { markdown: "", place },
  notices: [],
  silence: [],
  translations: {},
  place,
  ...rest,
});

export const course = (holes: readonly Hole[], rest: Partial<Course> = {}): Course => ({
  id: "test",
  name: "Test Course",
  description: "",
  surveyed: "2026-05-01",
  sources: [],
  credits: [],
  brought: [],
  defaultTee: "back",
  corridorMetres: 25,
  tees: TEE_SETS,
  features: [],
  holes,
  notices: [],
  silence: [],
  translations: {},
  orthophoto: undefined,
  ground: undefined,
  ...rest,
});
