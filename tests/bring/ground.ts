/** A small set of map features for reader tests, and ogr2ogr to write and read them with. All invented. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Feature, FeatureCollection, Geometry, Position } from "geojson";
import { gdal } from "../support/gdal.ts";

/** Two bunkers, one of them ring-shaped, a line, and two points, near a given place. */
export function sampleAt(longitude: number, latitude: number): FeatureCollection {
  const at = (x: number, y: number): Position => [
    Number((longitude + x / 1e5).toFixed(7)),
    Number((latitude + y / 1e5).toFixed(7)),
  ];
  const feature = (id: number, name: string, golf: string, geometry: Geometry): Feature => ({
    type: "Feature",
    properties: { id, name, golf },
    geometry,
  });
  return {
    type: "FeatureCollection",
    features: [
      feature(1, "Hell's & Höll", "bunker", {
        type: "Polygon",
        coordinates: [[at(0, 0), at(30, 2), at(28, 25), at(1, 22), at(0, 0)]],
      }),
      feature(2, "Ring", "bunker", {
        type: "Polygon",
        coordinates: [
          [at(100, 0), at(140, 0), at(140, 40), at(100, 40), at(100, 0)],
          [at(110, 10), at(110, 30), at(130, 30), at(130, 10), at(110, 10)],
        ],
      }),
      feature(3, "Twins", "bunker", {
        type: "MultiPolygon",
        coordinates: [
          [[at(200, 0), at(210, 0), at(205, 9), at(200, 0)]],
          [[at(220, 0), at(230, 0), at(225, 9), at(220, 0)]],
        ],
      }),
    ],
  };
}

/** Every position of any GeoJSON, in the order written. */
export function positionsOf(value: unknown): number[][] {
  if (!Array.isArray(value))
    return value !== null && typeof value === "object" ? Object.values(value).flatMap(positionsOf) : [];
  return typeof value[0] === "number" ? [value as number[]] : value.flatMap(positionsOf);
}

/** Positions without order or doubled ends, for readers that start a ring elsewhere or turn it round. */
export const placesOf = (geometry: Geometry, decimals = 7): string[] =>
  [...new Set(positionsOf(geometry).map(([x, y]) => `${x!.toFixed(decimals)} ${y!.toFixed(decimals)}`))].sort();

/** A file written by ogr2ogr from GeoJSON. */
export function byOgr(
  folder: string,
  name: string,
  format: string,
  data: FeatureCollection,
  ...more: string[]
): string {
  const source = join(folder, `${name}.source.geojson`);
  writeFileSync(source, JSON.stringify(data));
  const path = join(folder, name);
  gdal("ogr2ogr", ["-f", format, path, source, ...more]);
  return path;
}

/** A file read by ogr2ogr, as GeoJSON on WGS 84. */
export function readByOgr(path: string, ...more: string[]): FeatureCollection {
  return JSON.parse(
    gdal("ogr2ogr", [
      "-f",
      "GeoJSON",
      "-t_srs",
      "EPSG:4326",
      "-lco",
      "COORDINATE_PRECISION=10",
      "/vsistdout/",
      path,
      ...more,
    ]),
  ) as FeatureCollection;
}

export const readBytes = (path: string): Buffer => readFileSync(path);
