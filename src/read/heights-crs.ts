/**
 * Which coordinates a height file is in: from course.yaml's `crs` if given, else from the
 * file's GeoTIFF keys (OGC 19-008, GeoTIFF 1.1).
 */
import proj4 from "proj4";
import { METRES_PER_FOOT } from "../geo/units.ts";
import type { Position } from "../geo/position.ts";
import { HeightsError } from "./heights-error.ts";

/** The keys that matter here; numbers are EPSG codes, 32767 means "defined by other keys". */
export interface GeoKeys {
  readonly GTModelTypeGeoKey?: unknown;
  readonly GTRasterTypeGeoKey?: unknown;
  readonly ProjectedCSTypeGeoKey?: unknown;
  readonly GeographicTypeGeoKey?: unknown;
  readonly VerticalCSTypeGeoKey?: unknown;
  readonly VerticalUnitsGeoKey?: unknown;
}

export interface Crs {
  /** As a message names it. */
  readonly name: string;
  readonly geographic: boolean;
  /** WGS 84 degrees to the file's own x and y. */
  toFile(position: Position): readonly [x: number, y: number];
  toPosition(xy: readonly [x: number, y: number]): Position;
}

/** `crs` in course.yaml, taken apart. */
export interface CrsSetting {
  /** A proj string, an EPSG code or WKT; undefined where only heights are spoken of. */
  readonly horizontal: string | undefined;
  /** Metres to one unit of height, from `+vunits=` or `+vto_meter=`. */
  readonly metresPerHeightUnit: number | undefined;
}

/** US survey foot: 1200/3937 m (EPSG unit 9003). */
export const METRES_PER_US_SURVEY_FOOT = 1200 / 3937;

/** PROJ's names for units of height. */
const HEIGHT_UNITS: Readonly<Record<string, number>> = {
  m: 1,
  ft: METRES_PER_FOOT,
  "us-ft": METRES_PER_US_SURVEY_FOOT,
};

const EXAMPLES =
  'crs: "EPSG:32629" for a UTM zone, or the proj string of your national grid, such as crs: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80"';

/**
 * Takes the `crs` setting apart.
 *
 * @throws HeightsError for a unit of height that PROJ does not have.
 */
export function parseCrsSetting(file: string, setting: string | undefined): CrsSetting {
  let metresPerHeightUnit: number | undefined;
  const horizontal = (setting ?? "")
    .replace(/\+(vunits|vto_meter)=(\S*)/g, (_, key: string, value: string) => {
      metresPerHeightUnit = key === "vunits" ? HEIGHT_UNITS[value] : Number(value);
      if (metresPerHeightUnit === undefined || !(metresPerHeightUnit > 0)) {
        throw new HeightsError(
          file,
          `crs says +${key}=${value}, which is no unit of height. Write +vunits=m, +vunits=ft or +vunits=us-ft.`,
        );
      }
      return "";
    })
    .trim();
  return { horizontal: horizontal === "" ? undefined : horizontal, metresPerHeightUnit };
}

/**
 * The file's coordinates.
 *
 * @throws HeightsError when neither setting nor file names a system that can be computed.
 */
export function crsOf(file: string, setting: CrsSetting, keys: GeoKeys | null): Crs {
  if (setting.horizontal !== undefined) return namedCrs(file, setting.horizontal, "crs says");
  const projected = keys?.ProjectedCSTypeGeoKey;
  const geographic = keys?.GeographicTypeGeoKey;
  const code = keys?.GTModelTypeGeoKey === 2 ? geographic : (projected ?? geographic);
  if (typeof code !== "number") {
    throw new HeightsError(
      file,
      `does not say which coordinates it is in. Add crs to ground in course.yaml: ${EXAMPLES}.`,
    );
  }
  if (code === 32767) {
    throw new HeightsError(
      file,
      `defines coordinates of its own instead of naming them by an EPSG code. Add them to ground in course.yaml: ${EXAMPLES}.`,
    );
  }
  return namedCrs(file, `EPSG:${code}`, "is in");
}

function namedCrs(file: string, text: string, verb: string): Crs {
  const definition = definitionOf(text);
  if (definition === undefined) {
    throw new HeightsError(
      file,
      /^EPSG:\d+$/i.test(text)
        ? `${verb} ${text.toUpperCase()}, whose definition is not built in. Look up its PROJ string (projinfo -o PROJ ${text.toUpperCase()} prints it) and add it to ground in course.yaml: crs: "+proj=...".`
        : `crs says "${text}", which is neither an EPSG code nor a proj string. Write ${EXAMPLES}.`,
    );
  }
  // proj4 answers NaN for a grid it lacks, or, where the grid is marked optional, is some 100 m off without a word.
  if (/\+nadgrids=(?!@null\b)/.test(definition)) {
    throw new HeightsError(
      file,
      `crs "${text}" asks for a shift grid (+nadgrids), and those are not built in. Give the datum by +towgs84= instead, or convert the file to WGS 84 or UTM first.`,
    );
  }
  try {
    const converter = proj4("EPSG:4326", definition);
    const name = /^EPSG:/i.test(text) ? text.toUpperCase() : text;
    // A definition can be read and still fail when used: try it once.
    converter.forward([0, 0]);
    return {
      name,
      geographic: isGeographic(definition),
      toFile: ([longitude, latitude]) => {
        const [x, y] = converter.forward([longitude, latitude]);
        return [x, y];
      },
      toPosition: ([x, y]) => {
        const [longitude, latitude] = converter.inverse([x, y]);
        return [longitude, latitude];
      },
    };
  } catch (cause) {
    throw new HeightsError(
      file,
      `crs "${text}" cannot be computed (${cause instanceof Error ? cause.message : String(cause)}). Check it against the PROJ string of your grid, or convert the file to WGS 84 or UTM first.`,
      { cause },
    );
  }
}

/** A definition proj4 can use, or undefined. */
export function definitionOf(text: string): string | undefined {
  if (/\+proj=/.test(text) || /^[A-Z]{3,}CRS\[|^(PROJCS|GEOGCS|COMPD_CS)\[/.test(text)) return text;
  const code = Number(/^EPSG:(\d+)$/i.exec(text)?.[1]);
  if (Number.isNaN(code)) return undefined;
  // Families of one pattern that proj4 leaves out. Both datums are taken as WGS 84, which they are to within a metre
  // or two.
  if (code === 4258) return "+proj=longlat +ellps=GRS80 +no_defs";
  if (code >= 25828 && code <= 25838) return `+proj=utm +zone=${code - 25800} +ellps=GRS80 +units=m +no_defs`;
  if (code >= 26901 && code <= 26923) return `+proj=utm +zone=${code - 26900} +ellps=GRS80 +units=m +no_defs`;
  return proj4.defs(`EPSG:${code}`) ? `EPSG:${code}` : undefined;
}

/** Whether a definition's coordinates are degrees. */
const isGeographic = (definition: string): boolean =>
  /\+proj=(longlat|latlong)\b|^GEO/.test(definition) || /^(EPSG:)?(4326|4269)$/.test(definition);

/**
 * EPSG vertical systems in feet; North American Vertical Datum 1988 in international and US survey feet
 * (from memory).
 */
const FOOT_VERTICAL_SYSTEMS: Readonly<Record<number, number>> = {
  8228: METRES_PER_FOOT,
  6360: METRES_PER_US_SURVEY_FOOT,
};

/** EPSG units of length: metre, foot, US survey foot. */
const EPSG_UNITS: Readonly<Record<number, number>> = {
  9001: 1,
  9002: METRES_PER_FOOT,
  9003: METRES_PER_US_SURVEY_FOOT,
};

/** Words that GDAL writes as a band's unit. */
const UNIT_WORDS: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  meter: 1,
  metres: 1,
  meters: 1,
  ft: METRES_PER_FOOT,
  foot: METRES_PER_FOOT,
  feet: METRES_PER_FOOT,
  "us survey foot": METRES_PER_US_SURVEY_FOOT,
  "us-ft": METRES_PER_US_SURVEY_FOOT,
};

/** Metres to one unit of the file's heights, where the file says so. */
export function statedHeightUnit(keys: GeoKeys | null, bandUnit: string | undefined): number | undefined {
  const unit = keys?.VerticalUnitsGeoKey;
  if (typeof unit === "number" && EPSG_UNITS[unit] !== undefined) return EPSG_UNITS[unit];
  const system = keys?.VerticalCSTypeGeoKey;
  if (typeof system === "number" && FOOT_VERTICAL_SYSTEMS[system] !== undefined) return FOOT_VERTICAL_SYSTEMS[system];
  return bandUnit === undefined ? undefined : UNIT_WORDS[bandUnit.trim().toLowerCase()];
}
