/** GeoJSON: RFC 7946, and the older kind that names its coordinate system. */
import { isRecord } from "../../course/record.ts";
import type { Geometry } from "geojson";
import { isGeometryType } from "../../course/schema/geometry.ts";
import { osmElement } from "../normalise/other-tags.ts";
import { plainGeometries, type Brought, type BroughtFile } from "./brought.ts";
import { toWgs84, turned, type ToWgs84 } from "./crs.ts";
import { checkCount, LIMITS } from "./limits.ts";
import { BringError } from "./refusal.ts";

type Json = Readonly<Record<string, unknown>>;

/** The coordinate system of a 2008 GeoJSON's `crs` member. */
function declaredCrs(file: string, crs: unknown): string | undefined {
  if (crs === undefined || crs === null) return undefined;
  const name =
    isRecord(crs) && crs["type"] === "name" && isRecord(crs["properties"]) ? crs["properties"]["name"] : undefined;
  if (typeof name !== "string")
    throw new BringError(
      file,
      'has a crs member that names no coordinate system. Say which it is: --crs "EPSG:2157".',
    );
  return name;
}

const isPosition = (value: unknown): boolean =>
  Array.isArray(value) && value.length >= 2 && value.every((n) => typeof n === "number" && Number.isFinite(n));

const DEPTH = { Point: 0, MultiPoint: 1, LineString: 1, MultiLineString: 2, Polygon: 2, MultiPolygon: 3 } as const;

function hasPositions(value: unknown, depth: number): boolean {
  if (depth === 0) return isPosition(value);
  return Array.isArray(value) && value.length > 0 && value.every((entry) => hasPositions(entry, depth - 1));
}

/** A geometry whose coordinates have the shape its type says, or what is wrong with it. */
export function soundGeometry(value: unknown): Geometry | string {
  if (!isRecord(value)) return "has no geometry";
  if (value["type"] === "GeometryCollection") {
    const parts = Array.isArray(value["geometries"])
      ? value["geometries"].map(soundGeometry)
      : ["is an empty collection"];
    const fault = parts.find((part) => typeof part === "string");
    return fault ?? { type: "GeometryCollection", geometries: parts as Geometry[] };
  }
  if (!isGeometryType(value["type"])) return `has a geometry of type ${JSON.stringify(value["type"])}`;
  if (!hasPositions(value["coordinates"], DEPTH[value["type"]]))
    return `has coordinates that are not those of a ${value["type"]}`;
  // The shape has been seen to be that of the type.
  return { type: value["type"], coordinates: value["coordinates"] } as Geometry;
}

/** @param crs the system given by hand, which goes before what the file says */
export function readGeoJson(file: string, base: string, json: Json, crs: string | undefined): BroughtFile {
  const declared = declaredCrs(file, json["crs"]);
  const { turn, note }: ToWgs84 =
    crs !== undefined ? toWgs84(file, crs, "is said by --crs to be in") : toWgs84(file, declared ?? "EPSG:4326");
  const list =
    json["type"] === "FeatureCollection"
      ? json["features"]
      : [json["type"] === "Feature" ? json : { type: "Feature", properties: {}, geometry: json }];
  if (!Array.isArray(list))
    throw new BringError(
      file,
      "is a FeatureCollection without a list of features. Save it again from the program that made it.",
    );
  checkCount(file, list.length, LIMITS.features, "features");
  const notes: string[] = note === undefined ? [] : [note];
  const features: Brought[] = [];
  // Overpass turbo says whose the data is in its export.
  let openStreetMap = /openstreetmap/i.test(String(json["copyright"] ?? json["attribution"] ?? ""));
  list.forEach((entry: unknown, i) => {
    const from = `${file}, feature ${i + 1}`;
    const geometry = isRecord(entry) ? soundGeometry(entry["geometry"]) : "is no feature";
    if (typeof geometry === "string") {
      notes.push(`${from} ${geometry}; it was left out.`);
      return;
    }
    const { id, properties } = entry as Json;
    const element = isRecord(properties) ? osmElement(properties, geometry.type) : undefined;
    const own =
      element !== undefined
        ? `osm:${element}`
        : typeof id === "string" || typeof id === "number"
          ? `${base}#${id}`
          : undefined;
    openStreetMap ||= element !== undefined;
    const parts = plainGeometries(geometry);
    parts.forEach((part, k) => {
      features.push({
        from,
        key: own === undefined ? undefined : parts.length > 1 ? `${own}+${k + 1}` : own,
        properties: isRecord(properties) ? properties : {},
        geometry: turned(part, turn),
        words: [],
        mapped: element !== undefined,
      });
    });
  });
  if (crs === undefined && declared === undefined) checkDegrees(file, features);
  return { format: "GeoJSON", features, openStreetMap, notes };
}

/** @throws BringError when positions are plainly metres of some grid that nobody named */
export function checkDegrees(file: string, features: readonly Brought[]): void {
  for (const { from, geometry } of features) {
    let position: unknown = geometry.coordinates;
    while (Array.isArray(position) && Array.isArray(position[0])) position = position[0];
    const [x, y] = position as number[];
    if (Math.abs(x!) > 360 || Math.abs(y!) > 180) {
      throw new BringError(
        file,
        `is in no degrees: ${from.slice(file.length + 2)} starts at ${x}, ${y}, and no coordinate system is declared. Say which it is: --crs "EPSG:2157", with the code of your grid.`,
      );
    }
  }
}
