/** Coordinates a file declares, turned into WGS 84. */
import type { Position } from "geojson";
import proj4 from "proj4";
import proj4List from "proj4-list";
import { definitionOf } from "../../read/heights-crs.ts";
import type { PlainGeometry } from "./brought.ts";
import { BringError } from "./refusal.ts";

export interface ToWgs84 {
  /** Turns a position of a file into longitude, latitude and, as it was, height. */
  readonly turn: (position: Position) => Position;
  /** What the positions lose on the way, in a sentence. */
  readonly note: string | undefined;
}

const CONVERT = "convert it first (ogr2ogr -t_srs EPSG:4326 wgs84.geojson FILE)";

/**
 * proj4's marks for how a datum is shifted: by three or seven parameters; by a grid; not at all, since
 * nothing is known of it.
 */
const [BY_THREE, BY_SEVEN, BY_GRID, UNKNOWN] = [1, 2, 3, 5];

interface Datum {
  readonly datum_type?: number;
  readonly a?: number;
  readonly datum_params?: readonly number[];
}

/**
 * The way from a coordinate system to WGS 84.
 *
 * @param text an EPSG code, a proj string or WKT
 * @param verb how the file came to name it, for messages: `declares` or `is said by --crs to be in`
 * @throws BringError for a system that cannot be computed, or only to some hundred metres
 */
export function toWgs84(file: string, text: string, verb = "declares"): ToWgs84 {
  // `EPSG:2157`, `urn:ogc:def:crs:EPSG::2157`, `http://www.opengis.net/def/crs/EPSG/0/2157`.
  const code = /(?:^EPSG:|:EPSG:[\d.]*:|\/EPSG\/[\d.]+\/)(\d+)$/i.exec(text.trim())?.[1];
  const short = code === undefined ? text.trim() : `EPSG:${code}`;
  const shown = short.length > 80 ? `${short.slice(0, 80)}…` : short;
  if (/CRS:?84$/i.test(short) || /^EPSG:(4326|4979)$/.test(short))
    return { turn: (position) => position, note: undefined };
  const definition = definitionOf(short) ?? proj4List[short.toUpperCase()]?.[1];
  if (definition === undefined) {
    throw new BringError(
      file,
      `${verb} the coordinate system ${shown}, whose definition is not built in. Give its PROJ string (projinfo -o PROJ ${code ? short : "NAME"} prints it) as --crs "+proj=...", or ${CONVERT}.`,
    );
  }
  if (/\+nadgrids=(?!@null\b)/.test(definition)) {
    throw new BringError(
      file,
      `${verb} the coordinate system ${shown}, which asks for a shift grid, and those are not built in. Give it with +towgs84= instead, or ${CONVERT}.`,
    );
  }
  let converter: { forward(xy: number[]): number[] };
  let datum: Datum | undefined;
  try {
    converter = proj4(definition, "EPSG:4326");
    datum = (proj4.Proj(definition) as unknown as { datum?: Datum }).datum;
    converter.forward([0, 0]);
  } catch (cause) {
    throw new BringError(
      file,
      `${verb} the coordinate system ${shown}, which cannot be computed (${cause instanceof Error ? cause.message : String(cause)}). Give it as --crs "EPSG:..." or --crs "+proj=...", or ${CONVERT}.`,
      { cause },
    );
  }
  // Both would come out some hundred metres off without a word.
  const foreign = Math.abs((datum?.a ?? 6_378_137) - 6_378_137) > 0.5;
  if (datum?.datum_type === BY_GRID || (datum?.datum_type === UNKNOWN && foreign)) {
    throw new BringError(
      file,
      `${verb} the coordinate system ${shown}, and how its datum lies to WGS 84 is not built in. Give it with +towgs84= as --crs "+proj=... +towgs84=...", or ${CONVERT}.`,
    );
  }
  const shifted =
    (datum?.datum_type === BY_THREE || datum?.datum_type === BY_SEVEN) &&
    (datum.datum_params ?? []).slice(0, 3).some((metres) => Math.abs(metres) > 1);
  return {
    turn(position) {
      const [x, y] = converter.forward([position[0]!, position[1]!]);
      return position.length > 2 ? [x!, y!, position[2]!] : [x!, y!];
    },
    note:
      shifted && datum
        ? `${file} ${verb} the coordinate system ${shown}, whose datum was shifted to WGS 84 by ${datum.datum_type === BY_SEVEN ? "seven" : "three"} parameters, good to a few metres. For a survey, ${CONVERT}, with its shift grid.`
        : undefined,
  };
}

/** A geometry with every position turned. */
export function turned(geometry: PlainGeometry, turn: ToWgs84["turn"]): PlainGeometry {
  switch (geometry.type) {
    case "Point":
      return { type: geometry.type, coordinates: turn(geometry.coordinates) };
    case "MultiPoint":
    case "LineString":
      return { type: geometry.type, coordinates: geometry.coordinates.map(turn) };
    case "MultiLineString":
    case "Polygon":
      return { type: geometry.type, coordinates: geometry.coordinates.map((line) => line.map(turn)) };
    case "MultiPolygon":
      return {
        type: geometry.type,
        coordinates: geometry.coordinates.map((area) => area.map((ring) => ring.map(turn))),
      };
  }
}
