/**
 * What the live map fetches: `hole.json` beside a hole's page and `course.json` beside a
 * course's. Positions are RFC 7946 (longitude, latitude) with seven decimals, about a
 * centimetre; lengths are metres to the millimetre; the map turns both into the golfer's
 * unit. Built in Node by {@link holeData} and {@link courseData}, read in the browser;
 * this module does no input or output.
 */
import type { Feature as GeoFeature, FeatureCollection, Geometry, Position as GeoPosition } from "geojson";
import type { Feature, FeatureKind, PerGender } from "../course/types.ts";
import type { Point, Position } from "../geo/position.ts";
import type { Frame } from "../geo/frame.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse, MeasuredHole, PlacedFeature, Side, TeeFigures } from "../measure/types.ts";
import type { HeightGrid } from "../terrain/grid.ts";
import { HAZARD_KINDS } from "../course/types.ts";
import { bearingDegrees, directionTo } from "../geo/vector.ts";
import { canBePassed } from "../measure/passable.ts";
import { drawnLine } from "../measure/hole.ts";
import { positionsOf } from "../measure/place.ts";

/** Raised when a reader of the older shape could misread the newer one. */
export const DATA_VERSION = 1;

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
  readonly widthMetres?: number;
  /** Only in hole data: written in course.yaml, so other holes have it too. */
  readonly shared?: true;
  /** Only in course data: number of the hole it belongs to; absent on shared features. */
  readonly hole?: number;
}

export type MapFeatures = FeatureCollection<Exclude<Geometry, { type: "GeometryCollection" }>, MapFeatureProperties>;

/** A place with the build's own figure for it, measured from the tee. */
export interface MeasuredPlace {
  readonly position: LonLat;
  readonly metres: number;
}

export interface HazardData {
  readonly id: string;
  /** Which meeting with the corridor this is, from 1 in order of play, and of how many. */
  readonly stretch: number;
  readonly stretches: number;
  readonly position: Side | "across";
  readonly inCorridor: boolean;
  readonly reach: MeasuredPlace;
  /** Absent where it has no far side to play to: a boundary, what runs on beyond the green. */
  readonly carry?: MeasuredPlace;
}

export interface TeeData {
  readonly id: string;
  readonly name: string;
  /** CSS hex colour, `#rrggbb`. */
  readonly colour: string;
  readonly marker: LonLat;
  /** From the marker through the turning points to the middle of the green. */
  readonly line: readonly LonLat[];
  readonly lengthMetres: number;
  /** Distances along the line of play, as the page prints them. */
  readonly green: { readonly front: MeasuredPlace; readonly middle: MeasuredPlace; readonly back: MeasuredPlace };
  /** In order of reach; a hazard that meets the shot corridor twice is here twice. */
  readonly hazards: readonly HazardData[];
}

export interface HoleData {
  readonly version: typeof DATA_VERSION;
  readonly course: { readonly id: string; readonly name: string };
  readonly hole: { readonly number: number; readonly name: string; readonly par: PerGender };
  /** What the club shows first; the golfer's own choice overrides it. */
  readonly units: LengthUnit;
  readonly defaultTee: string;
  /** Origin of the measuring frame: with it the map measures in the very plane the build did. */
  readonly origin: LonLat;
  /** Compass bearing from the furthest-back tee to the middle of the green: up on the plate and on the map. */
  readonly bearingDegrees: number;
  /** Around the hole's own features. */
  readonly bounds: Bounds;
  /** Around every hole's own features: where a golfer counts as being on the course. */
  readonly courseBounds: Bounds;
  /** Half-width of the shot corridor. */
  readonly corridorMetres: number;
  /** Line of play as the hole draws it; from a point of the golfer's own, its turning points still ahead count. */
  readonly drawn: readonly LonLat[];
  /** Everything but the tee markers and the line of play, which are in {@link tees}. */
  readonly features: MapFeatures;
  /** Longest first; at least one. */
  readonly tees: readonly TeeData[];
  /** Room for terrain tiles under the map; absent while a guide has none. */
  readonly ground?: GroundData;
  /** The photo from the air; absent while a course has none. */
  readonly photo?: PhotoTiles;
}

/** Where tiles of the photo from the air live. */
export interface PhotoTiles {
  /** Address pattern relative to the data file, with {z}, {x} and {y}. */
  readonly tiles: string;
  readonly minimumZoom: number;
  readonly maximumZoom: number;
  /** Where there are tiles at every zoom. */
  readonly bounds: Bounds;
}

/** Where height tiles live, for a map with relief. */
export interface GroundData {
  /** Address pattern relative to the data file, with {z}, {x} and {y}. */
  readonly tiles: string;
  readonly encoding: "terrarium";
  readonly minimumZoom: number;
  readonly maximumZoom: number;
  /** Where there are tiles at every zoom; without it the map would ask for tiles that are not there. */
  readonly bounds: Bounds;
}

export interface CourseHoleData {
  readonly number: number;
  readonly name: string;
  readonly par: PerGender;
  /** The hole page's address relative to the data file. */
  readonly path: string;
  /** Line of play from the default tee set, or the longest on the hole's card. */
  readonly line: readonly LonLat[];
  /** By tee set id. */
  readonly lengthMetres: Readonly<Record<string, number>>;
}

export interface CourseData {
  readonly version: typeof DATA_VERSION;
  readonly course: { readonly id: string; readonly name: string };
  readonly units: LengthUnit;
  readonly defaultTee: string;
  readonly origin: LonLat;
  /** Around every hole's own features. */
  readonly bounds: Bounds;
  readonly features: MapFeatures;
  readonly holes: readonly CourseHoleData[];
  readonly ground?: GroundData;
  readonly photo?: PhotoTiles;
}

/** The largest box of longitude and latitude within a height grid. */
export function groundBounds({ westMetres, northMetres, columns, rows, stepMetres }: HeightGrid, { toPosition }: Frame): Bounds {
  const [eastMetres, southMetres] = [westMetres + (columns - 1) * stepMetres, northMetres - (rows - 1) * stepMetres];
  const [northWest, northEast, southWest, southEast] = [
    toPosition([westMetres, northMetres]),
    toPosition([eastMetres, northMetres]),
    toPosition([westMetres, southMetres]),
    toPosition([eastMetres, southMetres]),
  ];
  return [
    rounded(Math.max(northWest[0], southWest[0]), 6),
    rounded(Math.max(southWest[1], southEast[1]), 6),
    rounded(Math.min(northEast[0], southEast[0]), 6),
    rounded(Math.min(northWest[1], northEast[1]), 6),
  ];
}

/** @throws RangeError when the hole has no tee set: it has nothing to measure from. */
export function holeData(measured: MeasuredHole, units: LengthUnit): HoleData {
  const { course, hole, frame } = measured;
  const longest = measured.tees[0];
  if (longest === undefined) {
    throw new RangeError(`Hole ${hole.number} has no tee set on its card: add one under "card" and its marker under "features".`);
  }
  const own = [...measured.placed.values()].filter(({ shared }) => !shared).map(({ feature }) => feature);
  const used = measured.tees.some(({ tee }) => tee.id === course.defaultTee);
  return {
    version: DATA_VERSION,
    course: { id: course.id, name: course.name },
    hole: { number: hole.number, name: hole.name, par: hole.par },
    units,
    defaultTee: used ? course.defaultTee : longest.tee.id,
    origin: lonLat(frame.origin),
    bearingDegrees: rounded(bearingDegrees(directionTo(longest.marker, longest.green.middle)), 2),
    bounds: boundsOf(own),
    courseBounds: boundsOf(course.holes.flatMap(({ features }) => features)),
    corridorMetres: measured.corridorMetres,
    drawn: positions(drawnLine(measured.placed, hole), frame),
    features: { type: "FeatureCollection", features: [...measured.placed.values()].filter(isDrawn).map((placed) => mapFeature(placed, "hole")) },
    tees: measured.tees.map((tee) => teeData(tee, measured)),
  };
}

/** @param holePath the hole page's address relative to the course's data file */
export function courseData(measured: MeasuredCourse, units: LengthUnit, holePath: (holeNumber: number) => string): CourseData {
  const { course, frame, holes } = measured;
  const own = holes.flatMap(({ hole, placed }) =>
    [...placed.values()].filter(({ shared }) => !shared).map((feature) => ({ hole: hole.number, feature })));
  const drawn = own.filter(({ feature }) => isDrawn(feature));
  return {
    version: DATA_VERSION,
    course: { id: course.id, name: course.name },
    units,
    defaultTee: course.defaultTee,
    origin: lonLat(frame.origin),
    bounds: boundsOf(own.map(({ feature: { feature } }) => feature)),
    features: {
      type: "FeatureCollection",
      features: [
        ...[...measured.placed.values()].filter(isDrawn).map((placed) => mapFeature(placed, "course")),
        ...drawn.map(({ hole, feature }) => mapFeature(feature, "course", hole)),
      ],
    },
    holes: holes.map(({ hole, tees }) => ({
      number: hole.number,
      name: hole.name,
      par: hole.par,
      path: holePath(hole.number),
      line: positions((tees.find(({ tee }) => tee.id === course.defaultTee) ?? tees[0])?.line.points ?? [], frame),
      lengthMetres: Object.fromEntries(tees.map(({ tee, lengthMetres }) => [tee.id, rounded(lengthMetres, 3)])),
    })),
  };
}

function teeData(figures: TeeFigures, { frame, placed }: MeasuredHole): TeeData {
  const { tee, marker, line, lengthMetres, green, hazards } = figures;
  const place = (point: Point, metres: number): MeasuredPlace => ({
    position: lonLat(frame.toPosition(point)),
    metres: rounded(metres, 3),
  });
  return {
    id: tee.id,
    name: tee.name,
    colour: tee.colour,
    marker: lonLat(frame.toPosition(marker)),
    line: positions(line.points, frame),
    lengthMetres: rounded(lengthMetres, 3),
    green: {
      front: place(green.front, green.frontMetres),
      middle: place(green.middle, green.middleMetres),
      back: place(green.back, green.backMetres),
    },
    hazards: hazards.map((hazard) => ({
      id: hazard.id,
      stretch: hazard.stretch,
      stretches: hazard.stretches,
      position: hazard.position,
      inCorridor: hazard.inCorridor,
      reach: place(hazard.reachPoint, hazard.reachMetres),
      ...(canBePassed(hazard, figures, placed.get(hazard.id)?.feature.kind) && { carry: place(hazard.carryPoint, hazard.carryMetres) }),
    })),
  };
}

const isDrawn = ({ feature: { kind } }: PlacedFeature): boolean => kind !== "line-of-play" && kind !== "tee-marker";

function mapFeature({ feature, shared }: PlacedFeature, data: "hole" | "course", hole?: number): GeoFeature<Feature["geometry"], MapFeatureProperties> {
  const { id, kind, name, widthMetres, tags } = feature;
  const landmark = tags["man_made"];
  return {
    type: "Feature",
    properties: {
      id,
      kind,
      ...(name !== undefined && { name }),
      ...(typeof landmark === "string" && { landmark }),
      ...(HAZARD_KINDS.has(kind) && { hazard: true as const }),
      ...(widthMetres !== undefined && { widthMetres }),
      ...(data === "hole" && shared && { shared: true as const }),
      ...(hole !== undefined && { hole }),
    },
    geometry: flat(feature.geometry),
  };
}

/** The geometry without heights, rounded. */
function flat(geometry: Feature["geometry"]): Feature["geometry"] {
  const one = ([longitude, latitude]: GeoPosition): GeoPosition => [rounded(longitude!, 7), rounded(latitude!, 7)];
  const many = (line: readonly GeoPosition[]): GeoPosition[] => line.map(one);
  switch (geometry.type) {
    case "Point": return { type: "Point", coordinates: one(geometry.coordinates) };
    case "MultiPoint": return { type: "MultiPoint", coordinates: many(geometry.coordinates) };
    case "LineString": return { type: "LineString", coordinates: many(geometry.coordinates) };
    case "MultiLineString": return { type: "MultiLineString", coordinates: geometry.coordinates.map(many) };
    case "Polygon": return { type: "Polygon", coordinates: geometry.coordinates.map(many) };
    case "MultiPolygon": return { type: "MultiPolygon", coordinates: geometry.coordinates.map((area) => area.map(many)) };
  }
}

function boundsOf(features: readonly Feature[]): Bounds {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const feature of features) {
    for (const [longitude, latitude] of positionsOf(feature)) {
      west = Math.min(west, longitude);
      south = Math.min(south, latitude);
      east = Math.max(east, longitude);
      north = Math.max(north, latitude);
    }
  }
  return [rounded(west, 7), rounded(south, 7), rounded(east, 7), rounded(north, 7)];
}

const positions = (points: readonly Point[], frame: Frame): LonLat[] => points.map((point) => lonLat(frame.toPosition(point)));

const lonLat = ([longitude, latitude]: Position): LonLat => [rounded(longitude, 7), rounded(latitude, 7)];

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));
