/**
 * RFC 7946 geometry, checked position by position. A message names the feature, the ring
 * and the vertex, all counted from 1 as a GIS counts them.
 */
import type { Position } from "geojson";
import { contains } from "../../geo/area.ts";
import type { Point } from "../../geo/position.ts";
import { isRecord } from "../record.ts";
import type { Feature } from "../types.ts";
import { errorAt, warningAt, type Finding, type Path } from "./finding.ts";
import { crossings, type Crossing } from "./ring.ts";
import { count, insteadOf, shown } from "./wording.ts";

export type CheckedGeometry = Feature["geometry"];

export const GEOMETRY_TYPES = [
  "Point",
  "MultiPoint",
  "LineString",
  "MultiLineString",
  "Polygon",
  "MultiPolygon",
] as const;
export type GeometryType = (typeof GEOMETRY_TYPES)[number];

/** How deep positions lie in the coordinates of each type: 0 for a Point. */
const DEPTH: Readonly<Record<GeometryType, number>> = {
  Point: 0,
  MultiPoint: 1,
  LineString: 1,
  MultiLineString: 2,
  Polygon: 2,
  MultiPolygon: 3,
};

/** The lowest and highest ground, generously: the Dead Sea shore is at -430 m, no course above 6,000 m. */
const HEIGHT_RANGE = [-500, 9000] as const;

/** A coast of ten thousand vertices is drawn to the metre; twice that serves nothing and costs minutes. */
const MOST_POSITIONS = 20_000;

function countPositions(value: unknown, depth: number): number {
  if (!Array.isArray(value)) return 0;
  return depth <= 1
    ? value.length * depth
    : value.reduce((sum: number, part: unknown) => sum + countPositions(part, depth - 1), 0);
}

/** Mistakes of one kind listed for one geometry; the rest are counted. */
const MOST_LISTED = 10;

export const isGeometryType = (value: unknown): value is GeometryType =>
  typeof value === "string" && (GEOMETRY_TYPES as readonly string[]).includes(value);

/** A position as a message shows it. */
export const showPosition = (position: readonly unknown[]): string =>
  `[${position
    .slice(0, 4)
    .map((n) => (typeof n === "number" ? String(n) : shown(n)))
    .join(", ")}${position.length > 4 ? ", …" : ""}]`;

/** `vertex 3`, `ring 2, vertex 3`, `polygon 1, ring 2, vertex 3`: the words for indices below coordinates. */
export function vertexName(type: GeometryType, indices: readonly number[]): string {
  const words: Readonly<Record<GeometryType, readonly string[]>> = {
    Point: [],
    MultiPoint: ["point"],
    LineString: ["vertex"],
    MultiLineString: ["line", "vertex"],
    Polygon: ["ring", "vertex"],
    MultiPolygon: ["polygon", "ring", "vertex"],
  };
  const named = indices.map((index, i) => `${words[type][i] ?? "entry"} ${index + 1}`).join(", ");
  return named === "" ? "the position" : named;
}

/** What is wrong with one position, or undefined. Latitude out of range is the usual sign of swapped coordinates. */
function positionFault(value: unknown): { rule: string; message: string } | undefined {
  const wanted = "expected [longitude, latitude] or [longitude, latitude, height in metres]";
  if (!Array.isArray(value)) return { rule: "position", message: `is ${shown(value)}: ${wanted}.` };
  if (value.length < 2 || value.length > 3)
    return {
      rule: "position",
      message: `is ${showPosition(value)} with ${count(value.length, "number")}: ${wanted}.`,
    };
  const wrong = value.find((n) => typeof n !== "number" || !Number.isFinite(n));
  if (value.some((n) => typeof n !== "number" || !Number.isFinite(n))) {
    return {
      rule: "position-number",
      message: `is ${showPosition(value)}: ${shown(wrong)} is not a finite number. Write decimal degrees such as -9.0123456.`,
    };
  }
  const [longitude, latitude, height] = value as [number, number, number?];
  if (Math.abs(latitude) > 90 && Math.abs(latitude) <= 180 && Math.abs(longitude) <= 90) {
    return {
      rule: "position-swapped",
      message: `is ${showPosition(value)}: latitude ${latitude} is beyond 90 degrees, so latitude and longitude are swapped. Write ${showPosition([latitude, longitude, ...value.slice(2)])}.`,
    };
  }
  if (Math.abs(latitude) > 90)
    return {
      rule: "position-range",
      message: `is ${showPosition(value)}: latitude ${latitude} is not within -90 to 90 degrees. Write degrees on WGS 84, longitude first.`,
    };
  if (Math.abs(longitude) > 180)
    return {
      rule: "position-range",
      message: `is ${showPosition(value)}: longitude ${longitude} is not within -180 to 180 degrees. Write degrees on WGS 84, longitude first.`,
    };
  if (height !== undefined && (height < HEIGHT_RANGE[0] || height > HEIGHT_RANGE[1])) {
    return {
      rule: "position-height",
      message: `is ${showPosition(value)}: a height of ${height} m is not within ${HEIGHT_RANGE[0]} to ${HEIGHT_RANGE[1]}. Write metres.`,
    };
  }
  return undefined;
}

/** The rest of a finding's message is prefixed with whose geometry it is. */
class Check {
  readonly findings: Finding[] = [];
  readonly #name: string;
  readonly #type: GeometryType;
  readonly #coordinatesPath: Path;
  readonly #listed = new Map<string, number>();
  readonly #overflow = new Map<string, number>();

  constructor(name: string, type: GeometryType, coordinatesPath: Path) {
    this.#name = name;
    this.#type = type;
    this.#coordinatesPath = coordinatesPath;
  }

  where(indices: readonly number[]): string {
    return vertexName(this.#type, indices);
  }

  say(indices: readonly number[], rule: string, message: string, severity: "error" | "warning" = "error"): void {
    const listed = (this.#listed.get(rule) ?? 0) + 1;
    this.#listed.set(rule, listed);
    const make = severity === "error" ? errorAt : warningAt;
    if (listed <= MOST_LISTED)
      this.findings.push(make([...this.#coordinatesPath, ...indices], rule, `${this.#name}: ${message}`));
    else this.#overflow.set(rule, (this.#overflow.get(rule) ?? 0) + 1);
  }

  /** Adds how many more there were to the last listed mistake of each kind. */
  close(): readonly Finding[] {
    for (const [rule, more] of this.#overflow) {
      const last = this.findings.findLastIndex((finding) => finding.rule === rule);
      const finding = this.findings[last]!;
      this.findings[last] = {
        ...finding,
        message: `${finding.message} (and ${count(more, "more mistake")} of this kind in this feature)`,
      };
    }
    return this.findings;
  }
}

/** Checks positions at a depth; true when all are sound. */
function checkPositions(value: unknown, depth: number, indices: readonly number[], check: Check): boolean {
  if (depth === 0) {
    const fault = positionFault(value);
    if (fault) check.say(indices, fault.rule, `${check.where(indices)} ${fault.message}`);
    return fault === undefined;
  }
  if (!Array.isArray(value)) {
    check.say(
      indices,
      "coordinates",
      `${indices.length === 0 ? "coordinates" : check.where(indices)} is ${shown(value)}: expected a list of ${depth === 1 ? "positions" : "lists of positions"}.`,
    );
    return false;
  }
  if (value.length === 0) {
    check.say(
      indices,
      "coordinates",
      `${indices.length === 0 ? "coordinates" : check.where(indices)} is an empty list: expected positions [longitude, latitude]. Remove the feature if it has none.`,
    );
    return false;
  }
  if (depth === 1 && typeof value[0] === "number") {
    check.say(
      indices,
      "coordinates",
      `${indices.length === 0 ? "coordinates" : check.where(indices)} is the single position ${showPosition(value)}: expected a list of positions. Put another pair of brackets around it, or check the geometry's type.`,
    );
    return false;
  }
  let sound = true;
  value.forEach((entry: unknown, i) => {
    sound = checkPositions(entry, depth - 1, [...indices, i], check) && sound;
  });
  return sound;
}

const samePlace = (a: Position, b: Position): boolean => a[0] === b[0] && a[1] === b[1];

function checkLine(positions: readonly Position[], indices: readonly number[], check: Check): void {
  const where = indices.length === 0 ? "the line" : check.where(indices);
  if (positions.length < 2) {
    check.say(indices, "line-length", `${where} has 1 position, a line needs at least two. Write where it ends.`);
    return;
  }
  if (positions.every((p) => samePlace(p, positions[0]!))) {
    check.say(
      indices,
      "line-length",
      `${where} has all its positions in one place ${showPosition(positions[0]!)}, so it has no length.`,
    );
  }
}

/** Closed, long enough and with an extent; true when its edges are worth testing for crossings. */
function checkRing(ring: readonly Position[], indices: readonly number[], check: Check): boolean {
  const where = check.where(indices);
  const [first, last] = [ring[0]!, ring[ring.length - 1]!];
  const closed = samePlace(first, last) && first[2] === last[2];
  if (ring.length < 4) {
    const advice = closed ? "" : " Repeat the first position at the end to close it.";
    check.say(
      indices,
      "ring-length",
      `${where} has ${count(ring.length, "position")}, a ring needs at least four, the last the same as the first.${advice}`,
    );
    return false;
  }
  if (!closed) {
    check.say(
      [...indices, ring.length - 1],
      "ring-open",
      `${where} is not closed: it starts at ${showPosition(first)} and ends at ${showPosition(last)}. Repeat the first position at the end.`,
    );
    return false;
  }
  if (new Set(ring.map(([x, y]) => `${x},${y}`)).size < 3) {
    check.say(indices, "ring-length", `${where} has fewer than three different positions, so it has no area.`);
    return false;
  }
  return true;
}

/** Touches of neighbouring edges are one mistake seen twice. */
function distinct(found: readonly Crossing[], lengths: readonly number[]): Crossing[] {
  const kept: Crossing[] = [];
  const close = (a: Crossing["first"], b: Crossing["first"]): boolean => {
    if (a.ring !== b.ring) return false;
    const gap = Math.abs(a.edge - b.edge);
    return gap <= 1 || gap >= lengths[a.ring]! - 2;
  };
  for (const next of found) {
    const again = kept.some(
      (k) =>
        (k.how === "touch" || next.how === "touch") &&
        ((close(k.first, next.first) && close(k.second, next.second)) ||
          (close(k.first, next.second) && close(k.second, next.first))),
    );
    if (!again) kept.push(next);
  }
  return kept;
}

function checkPolygon(rings: readonly (readonly Position[])[], indices: readonly number[], check: Check): void {
  const closed = rings.map((ring, r) => checkRing(ring, [...indices, r], check));
  if (!closed.every(Boolean)) return;
  const found = distinct(
    crossings(rings),
    rings.map((ring) => ring.length),
  );
  const edge = ({ ring, edge: from }: Crossing["first"]): string =>
    `the edge from vertex ${from + 1} to ${from + 2} of ${check.where([...indices, ring])}`;
  for (const { first, second, how } of found) {
    const other =
      first.ring === second.ring ? `the edge from vertex ${second.edge + 1} to ${second.edge + 2}` : edge(second);
    const advice =
      first.ring === second.ring
        ? "Put the vertices in order around the area, or split it in two."
        : "Keep a hole inside its outline.";
    check.say(
      [...indices, first.ring, first.edge],
      "ring-crossing",
      `${edge(first)} ${how === "cross" ? "crosses" : "touches"} ${other}. ${advice}`,
    );
  }
  if (found.length > 0) return;
  rings.slice(1).forEach((hole, i) => {
    const outline = rings[0]!.map(planar);
    // A vertex on the outline may fall either way.
    const inside = hole.some((p) => contains([outline], planar(p)));
    if (!inside)
      check.say(
        [...indices, i + 1],
        "ring-outside",
        `${check.where([...indices, i + 1])} lies outside ring 1. The first ring is the outline, further rings are holes in it: make it a feature of its own.`,
      );
  });
}

const planar = ([x, y]: Position): Point => [x!, y!];

/**
 * A geometry of a feature, or what is wrong with it.
 *
 * @param name whose it is, for messages: a feature's id in quotes.
 */
export function checkGeometry(
  value: unknown,
  path: Path,
  name: string,
): { geometry: CheckedGeometry | undefined; findings: readonly Finding[] } {
  const refuse = (finding: Finding) => ({ geometry: undefined, findings: [finding] });
  if (!isRecord(value)) {
    const rule = value === undefined ? "missing-field" : "geometry";
    return refuse(
      errorAt(
        path,
        rule,
        `${name}: geometry is ${shown(value)}: expected a geometry. Write geometry: { type: Point, coordinates: [longitude, latitude] }.`,
      ),
    );
  }
  const { type, coordinates } = value;
  if (type === "GeometryCollection") {
    return refuse(
      errorAt(
        [...path, "type"],
        "geometry-type",
        `${name}: a GeometryCollection cannot be measured. Write a feature for each of its geometries.`,
      ),
    );
  }
  if (!isGeometryType(type)) {
    const instead =
      typeof type === "string" ? insteadOf(type, GEOMETRY_TYPES) : `Write type: ${GEOMETRY_TYPES.join(", ")}.`;
    return refuse(errorAt([...path, "type"], "geometry-type", `${name}: geometry type is ${shown(type)}. ${instead}`));
  }
  const findings: Finding[] = [];
  for (const key of Object.keys(value)) {
    if (key === "crs")
      findings.push(
        errorAt(
          [...path, key],
          "geometry-crs",
          `${name}: GeoJSON has no crs any more: positions are longitude and latitude on WGS 84. Convert the coordinates and remove crs.`,
          "key",
        ),
      );
    else if (!["type", "coordinates", "bbox"].includes(key))
      findings.push(
        errorAt(
          [...path, key],
          "unknown-field",
          `${name}: a geometry has no field ${JSON.stringify(key)}. ${insteadOf(key, ["type", "coordinates"])}`,
          "key",
        ),
      );
  }
  if (coordinates === undefined) {
    findings.push(
      errorAt(
        path,
        "missing-field",
        `${name}: coordinates are missing. Write coordinates: and the positions as [longitude, latitude].`,
      ),
    );
    return { geometry: undefined, findings };
  }
  const positions = countPositions(coordinates, DEPTH[type]);
  if (positions > MOST_POSITIONS) {
    return refuse(
      errorAt(
        [...path, "coordinates"],
        "geometry-size",
        `${name} has ${positions} positions: expected at most ${MOST_POSITIONS}. Simplify it to a vertex every metre or two.`,
      ),
    );
  }
  const check = new Check(name, type, [...path, "coordinates"]);
  if (checkPositions(coordinates, DEPTH[type], [], check)) {
    // Every position is sound from here on, so the shape is what the type says.
    if (type === "LineString") checkLine(coordinates as Position[], [], check);
    else if (type === "MultiLineString")
      (coordinates as Position[][]).forEach((line, i) => checkLine(line, [i], check));
    else if (type === "Polygon") checkPolygon(coordinates as Position[][], [], check);
    else if (type === "MultiPolygon")
      (coordinates as Position[][][]).forEach((rings, i) => checkPolygon(rings, [i], check));
  }
  findings.push(...check.close());
  const sound = findings.every(({ severity }) => severity !== "error");
  return { geometry: sound ? ({ type, coordinates } as CheckedGeometry) : undefined, findings };
}

/** Calls back for every position of a geometry with its indices below coordinates; copy the indices to keep them. */
export function forEachPosition(
  { type, coordinates }: CheckedGeometry,
  visit: (position: Position, indices: readonly number[]) => void,
): void {
  const indices: number[] = [];
  const walk = (value: unknown, depth: number): void => {
    if (depth === 0) {
      visit(value as Position, indices);
      return;
    }
    (value as unknown[]).forEach((entry, i) => {
      indices.push(i);
      walk(entry, depth - 1);
      indices.pop();
    });
  };
  walk(coordinates, DEPTH[type]);
}
