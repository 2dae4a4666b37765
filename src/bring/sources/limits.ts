/**
 * How much of a file is read. A mapped course of 18 holes is some 10,000 positions and
 * 2 MB; a day's track recorded each second is 20,000. The limits leave ten times that,
 * and keep a hostile file within about a gigabyte of memory: sizes, depth and counts are
 * checked on the bytes, before anything is parsed.
 */
import { BringError } from "./refusal.ts";

export const LIMITS = {
  /** GeoJSON and Overpass JSON. */
  jsonBytes: 48_000_000,
  /** OSM XML, GPX and KML: a document tree takes some fifty times its file's size. */
  xmlBytes: 12_000_000,
  /** A .zip or .kmz as it lies on disk, and each file of a shapefile. */
  archiveBytes: 32_000_000,
  /** All that an archive unpacks to; for a KML in it, `xmlBytes` holds too. */
  unpackedBytes: 64_000_000,
  archiveEntries: 200,
  /** Groups or elements inside each other. */
  depth: 64,
  /** Brackets, braces and commas of a JSON file. */
  jsonTokens: 3_000_000,
  xmlElements: 400_000,
  /** Characters of one opening tag with its attributes. */
  xmlTag: 65_536,
  positions: 200_000,
  features: 20_000,
  /** Ways of one multipolygon, rings of one shape: joining them costs the square. */
  parts: 2_000,
  files: 50,
} as const;

const number = (n: number): string => n.toLocaleString("en-GB");

export const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;

const CUT =
  "Cut it to the course and its surroundings (osmium extract --bbox WEST,SOUTH,EAST,NORTH for OpenStreetMap's files, ogr2ogr -spat WEST SOUTH EAST NORTH for others), or simplify its outlines to a vertex every metre or two";

/** @throws BringError when a file is larger than its kind may be. */
export function checkBytes(file: string, bytes: number, most: number, what: string): void {
  if (bytes > most)
    throw new BringError(file, `is ${megabytes(bytes)} of ${what}: at most ${megabytes(most)} is read. ${CUT}.`);
}

/** @throws BringError when there are more of something than are read. */
export function checkCount(file: string, count: number, most: number, what: string): void {
  if (count > most)
    throw new BringError(file, `holds more than ${number(most)} ${what}, the most that is read. ${CUT}.`);
}

/** @throws BringError when groups lie deeper inside each other than any map file's. */
export function checkDepth(file: string, depth: number): void {
  if (depth > LIMITS.depth)
    throw new BringError(
      file,
      `has groups nested more than ${LIMITS.depth} deep, which no map file needs. Save it again from the program that made it.`,
    );
}
