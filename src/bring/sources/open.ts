/** Files to bring: what each is, by its content, and the reader it needs. */
import { isRecord } from "../../course/record.ts";
import { open, stat } from "node:fs/promises";
import { basename } from "node:path";
import { systemFault } from "../../read/text-file.ts";
import type { BroughtFile } from "./brought.ts";
import { readGeoJson } from "./geojson.ts";
import { readGpx, readKml } from "./gpx-kml.ts";
import { guardJson } from "./json-guard.ts";
import { checkBytes, checkCount, LIMITS } from "./limits.ts";
import { readOsm } from "./osm.ts";
import { elementsOfJson, elementsOfXml } from "./osm-elements.ts";
import { BringError } from "./refusal.ts";
import { readShapefile } from "./shapefile.ts";
import { parseXml } from "./xml-guard.ts";
import { isZip, readZip, type ZipEntry } from "./zip.ts";

export const FORMATS =
  "GeoJSON (.geojson, .json), OSM XML (.osm), Overpass JSON (.json), GPX (.gpx), KML (.kml, .kmz) and shapefiles (.shp or zipped)";

/**
 * The bytes of a file, its size asked first so that a huge one costs nothing.
 *
 * @throws BringError when it is too large or cannot be read
 */
async function bytesOf(path: string, most: number, what: string): Promise<Uint8Array> {
  try {
    const found = await stat(path);
    if (!found.isFile()) throw new BringError(path, `is no file. Name files: ${FORMATS}.`);
    checkBytes(path, found.size, most, what);
    const handle = await open(path);
    try {
      const bytes = Buffer.allocUnsafeSlow(found.size);
      let at = 0;
      while (at < bytes.length) {
        const { bytesRead } = await handle.read(bytes, at, bytes.length - at, at);
        if (bytesRead === 0) break;
        at += bytesRead;
      }
      return bytes.subarray(0, at);
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (error instanceof BringError) throw error;
    throw new BringError(path, `cannot be read: ${systemFault(error)}. Check the path.`, { cause: error });
  }
}

/** A file's bytes where it exists. */
async function optional(path: string, most: number): Promise<Uint8Array | undefined> {
  for (const name of [path, path.replace(/\.\w+$/, (ending) => ending.toUpperCase())]) {
    if (
      await stat(name).then(
        (found) => found.isFile(),
        () => false,
      )
    )
      return bytesOf(name, most, "data");
  }
  return undefined;
}

const SMALL_BYTES = 100_000;

const text = (bytes: Uint8Array | undefined): string | undefined =>
  bytes === undefined ? undefined : new TextDecoder().decode(bytes);

function readJson(file: string, base: string, bytes: Uint8Array, crs: string | undefined): BroughtFile {
  checkBytes(file, bytes.length, LIMITS.jsonBytes, "JSON");
  guardJson(file, bytes);
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch (cause) {
    throw new BringError(
      file,
      `is not valid JSON (${cause instanceof Error ? cause.message : String(cause)}). Save it again from the program that made it.`,
      { cause },
    );
  }
  if (isRecord(value) && Array.isArray(value["elements"]))
    return readOsm(file, "Overpass JSON", elementsOfJson(file, value["elements"]));
  if (
    isRecord(value) &&
    typeof value["type"] === "string" &&
    (value["type"].startsWith("Feature") || "coordinates" in value || "geometries" in value)
  ) {
    return readGeoJson(file, base, value, crs);
  }
  throw new BringError(
    file,
    "is JSON, but neither GeoJSON (a FeatureCollection) nor an answer of Overpass (elements). Export it as GeoJSON.",
  );
}

function readXml(file: string, base: string, bytes: Uint8Array): BroughtFile {
  const document = parseXml(file, bytes);
  const root = document.documentElement!.localName;
  if (root === "gpx") return readGpx(file, base, document);
  if (root === "kml") return readKml(file, base, document);
  if (root === "osm" || root === "osmChange") return readOsm(file, "OSM XML", elementsOfXml(file, document));
  throw new BringError(
    file,
    `is XML that starts with <${String(root).slice(0, 40)}>: expected <gpx>, <kml> or <osm>. Export it as one of these.`,
  );
}

/** The layers of an archive: each .kml, .shp and GeoJSON in it. */
function readArchive(file: string, base: string, bytes: Uint8Array, crs: string | undefined): BroughtFile[] {
  const entries = readZip(file, bytes);
  const ending = ({ name }: ZipEntry): string => /\.[^./\\]*$/.exec(name)?.[0].toLowerCase() ?? "";
  const beside = (shp: ZipEntry, wanted: string): Uint8Array | undefined =>
    entries
      .find(
        (entry) =>
          ending(entry) === wanted && entry.name.slice(0, -4).toLowerCase() === shp.name.slice(0, -4).toLowerCase(),
      )
      ?.read();
  const files = entries.flatMap((entry): BroughtFile[] => {
    const inside = `${file}/${entry.name}`;
    const own = `${base}/${entry.name}`;
    switch (ending(entry)) {
      case ".shp":
        return [
          readShapefile(
            inside,
            own,
            {
              shp: entry.read(),
              dbf: beside(entry, ".dbf"),
              prj: text(beside(entry, ".prj")),
              cpg: text(beside(entry, ".cpg")),
            },
            crs,
          ),
        ];
      case ".kml":
      case ".gpx":
      case ".osm":
        return [readXml(inside, own, entry.read())];
      case ".geojson":
      case ".json":
        return [readJson(inside, own, entry.read(), crs)];
      default:
        return [];
    }
  });
  if (files.length === 0) throw new BringError(file, `is an archive without a map file in it. Expected ${FORMATS}.`);
  return files;
}

/**
 * What a file holds. An archive may hold several.
 *
 * @param crs coordinate system given by hand, before any the file declares; GPX, KML and OSM are WGS 84 by definition
 * @throws BringError for a file that is refused, with what was found and what to type
 */
export async function openBrought(path: string, crs?: string): Promise<BroughtFile[]> {
  const files = await openAny(path, crs);
  let positions = 0;
  const look = (value: unknown): void => {
    if (!Array.isArray(value)) return;
    if (typeof value[0] === "number") positions++;
    else value.forEach(look);
  };
  // Counted before reading where a format allows it; KML writes them as text, and an archive has several files.
  for (const { features } of files) for (const { geometry } of features) look(geometry.coordinates);
  checkCount(path, positions, LIMITS.positions, "positions");
  return files;
}

async function openAny(path: string, crs: string | undefined): Promise<BroughtFile[]> {
  const base = basename(path);
  if (/\.(dbf|prj|shx|cpg)$/i.test(path))
    throw new BringError(path, `is one part of a shapefile. Name the .shp: ${path.replace(/\.\w+$/, ".shp")}.`);
  const most = /\.(osm|gpx|kml|xml)$/i.test(path)
    ? LIMITS.xmlBytes
    : /\.(shp|zip|kmz)$/i.test(path)
      ? LIMITS.archiveBytes
      : LIMITS.jsonBytes;
  const bytes = await bytesOf(path, most, "data");
  if (bytes.length === 0) throw new BringError(path, "is empty.");
  if (isZip(bytes)) {
    checkBytes(path, bytes.length, LIMITS.archiveBytes, "archive");
    return readArchive(path, base, bytes, crs);
  }
  if (/\.shp$/i.test(path)) {
    const part = (ending: string, size: number): Promise<Uint8Array | undefined> =>
      optional(path.replace(/\.shp$/i, ending), size);
    const [dbf, prj, cpg] = [
      await part(".dbf", LIMITS.archiveBytes),
      await part(".prj", SMALL_BYTES),
      await part(".cpg", SMALL_BYTES),
    ];
    return [readShapefile(path, base, { shp: bytes, dbf, prj: text(prj), cpg: text(cpg) }, crs)];
  }
  const first = bytes.find((byte) => ![0x20, 0x09, 0x0a, 0x0d, 0xef, 0xbb, 0xbf].includes(byte));
  if (first === 0x7b || first === 0x5b) return [readJson(path, base, bytes, crs)];
  if (first === 0x3c || bytes[0] === 0xff || bytes[0] === 0xfe) {
    if (crs !== undefined)
      throw new BringError(
        path,
        "is in WGS 84 by the definition of its format, so --crs does not apply to it. Bring it on its own, without --crs.",
      );
    return [readXml(path, base, bytes)];
  }
  throw new BringError(path, `is of no kind that is read. Expected ${FORMATS}.`);
}
