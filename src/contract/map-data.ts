/**
 * What `hole.json` and `course.json` have in common. Positions are RFC 7946 (longitude,
 * latitude) with seven decimals, about a centimetre; lengths are metres to the millimetre;
 * the map turns both into the golfer's unit.
 */
import type { FeatureCollection, Geometry } from "geojson";
import type { FeatureKind, GroundCover } from "../course/kinds.ts";
import type { PerGender } from "../course/types.ts";
import type { LengthUnit } from "../geo/units.ts";
import { byName, listOf, maybe, number, object, oneOf, text, tuple, type Read } from "./reading.ts";

/** Raised when a reader of the older shape could misread the newer one. */
export const DATA_VERSION = 2;

export type LonLat = readonly [longitude: number, latitude: number];

/** RFC 7946, 5: west, south, east, north. */
export type Bounds = readonly [west: number, south: number, east: number, north: number];

export interface MapFeatureProperties {
  /** The feature's own id; a GeoJSON id that is not a number is lost inside the map. */
  readonly id: string;
  readonly kind: FeatureKind;
  readonly name?: string;
  /** What a landmark is: the value of its `man_made` tag. */
  readonly landmark?: string;
  /** A ball can be lost or trapped in it, so it has reach and carry. */
  readonly hazard?: true;
  /** The ground that lies there and is drawn. */
  readonly cover?: Exclude<GroundCover, "none">;
  readonly widthMetres?: number;
  /** Only in hole data: written in course.yaml, so other holes have it too. */
  readonly shared?: true;
  /** Only in course data: number of the hole it belongs to; absent on shared features. */
  readonly hole?: number;
}

export type MapFeatures = FeatureCollection<Exclude<Geometry, { type: "GeometryCollection" }>, MapFeatureProperties>;

/** Where tiles lie. */
export interface Tiles {
  /** Address pattern relative to the data file, with {z}, {x} and {y}. */
  readonly tiles: string;
  readonly minimumZoom: number;
  readonly maximumZoom: number;
  /** Where there are tiles at every zoom; without it the map would ask for tiles that are not there. */
  readonly bounds: Bounds;
}

/** Tiles of the photo from the air. */
export type PhotoTiles = Tiles;

/** Tiles of heights, for a map with relief. */
export interface HeightTiles extends Tiles {
  readonly encoding: "terrarium";
}

/** What both files begin with. */
export interface MapData {
  readonly version: typeof DATA_VERSION;
  readonly course: { readonly id: string; readonly name: string };
  /** What the club shows first; the golfer's own choice overrides it. */
  readonly units: LengthUnit;
  readonly defaultTee: string;
  /** Origin of the measuring frame: with it the map measures in the very plane the build did. */
  readonly origin: LonLat;
  readonly features: MapFeatures;
  /** Absent while a guide has no heights. */
  readonly ground?: HeightTiles;
  /** Absent while a course has no photo from the air. */
  readonly photo?: PhotoTiles;
}

export const lonLat: Read<LonLat> = tuple(number, number);
export const bounds: Read<Bounds> = tuple(number, number, number, number);
export const perGender: Read<PerGender> = object<PerGender>({ men: number, women: number });

const position = listOf(number, 2);

/** How deep positions lie in each type of geometry (RFC 7946, 3.1). */
const COORDINATES: Readonly<Record<MapFeatures["features"][number]["geometry"]["type"], Read<unknown>>> = {
  Point: position,
  MultiPoint: listOf(position),
  LineString: listOf(position),
  MultiLineString: listOf(listOf(position)),
  Polygon: listOf(listOf(position)),
  MultiPolygon: listOf(listOf(listOf(position))),
};

const geometryType = oneOf("Point", "MultiPoint", "LineString", "MultiLineString", "Polygon", "MultiPolygon");

const geometry: Read<MapFeatures["features"][number]["geometry"]> = (value, at) => {
  const { type } = object<{ readonly type: keyof typeof COORDINATES }>({ type: geometryType })(value, at);
  return object<{ readonly coordinates: unknown }>({ coordinates: COORDINATES[type] })(
    value,
    at,
  ) as MapFeatures["features"][number]["geometry"];
};

const properties: Read<MapFeatureProperties> = object<MapFeatureProperties>({
  id: text,
  // A kind this page does not know is not drawn.
  kind: text as Read<FeatureKind>,
  name: maybe(text),
  landmark: maybe(text),
  hazard: maybe(oneOf(true)),
  cover: maybe(text as Read<Exclude<GroundCover, "none">>),
  widthMetres: maybe(number),
  shared: maybe(oneOf(true)),
  hole: maybe(number),
});

const tiles = { tiles: text, minimumZoom: number, maximumZoom: number, bounds };

/** Readers of what both files have. */
export const mapData = {
  version: oneOf(DATA_VERSION),
  course: object<MapData["course"]>({ id: text, name: text }),
  units: oneOf("yards", "metres"),
  defaultTee: text,
  origin: lonLat,
  features: object<Pick<MapFeatures, "type" | "features">>({
    type: oneOf("FeatureCollection"),
    features: listOf(object({ type: oneOf("Feature"), geometry, properties })) as Read<MapFeatures["features"]>,
  }),
  ground: maybe(object<HeightTiles>({ ...tiles, encoding: oneOf("terrarium") })),
  photo: maybe(object<PhotoTiles>(tiles)),
} as const satisfies { readonly [K in keyof MapData]-?: Read<MapData[K]> };

export const metresByTee = byName(number);
