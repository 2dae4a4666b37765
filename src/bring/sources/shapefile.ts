/**
 * Shapefiles, read by shpjs once every count in them has been held against the bytes that
 * are there (ESRI Shapefile Technical Description, July 1998; dBASE level 5 tables).
 */
import { parseDbf, parseShp } from "shpjs";
import { osmElement } from "../normalise/other-tags.ts";
import { plainGeometries, type Brought, type BroughtFile } from "./brought.ts";
import { toWgs84, turned, type ToWgs84 } from "./crs.ts";
import { checkDegrees, soundGeometry } from "./geojson.ts";
import { checkBytes, checkCount, LIMITS } from "./limits.ts";
import { BringError } from "./refusal.ts";

/** The files of one shapefile; a .shp alone has shapes but no attributes. */
export interface ShapefileParts {
  readonly shp: Uint8Array;
  readonly dbf: Uint8Array | undefined;
  /** WKT of the coordinate system. */
  readonly prj: string | undefined;
  /** Encoding of the attributes. */
  readonly cpg: string | undefined;
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const [NULL_SHAPE, MULTIPATCH] = [0, 31];
const POINTS = new Set([1, 11, 21]);
const MULTIPOINTS = new Set([8, 18, 28]);
const PARTED = new Set([3, 5, 13, 15, 23, 25]);

/** @throws BringError when a count in the file would have its reader go where there is nothing, or for too long */
export function guardShp(file: string, bytes: Uint8Array): void {
  const broken = (what: string): BringError =>
    new BringError(file, `is no sound shapefile: ${what}. Save it again from the program that made it.`);
  const view = viewOf(bytes);
  if (bytes.length < 100 || view.getInt32(0) !== 9994) throw broken("its header is missing");
  if (view.getInt32(24) * 2 !== bytes.length)
    throw broken(`its header says ${view.getInt32(24) * 2} bytes, and it has ${bytes.length}`);
  let [records, positions] = [0, 0];
  for (let at = 100; at < bytes.length;) {
    if (at + 12 > bytes.length) throw broken("its last record is cut off");
    const length = view.getInt32(at + 4) * 2;
    const start = at + 8;
    if (length < 4 || start + length > bytes.length) throw broken(`record ${records + 1} is longer than the file`);
    const type = view.getInt32(start, true);
    if (type === MULTIPATCH)
      throw new BringError(
        file,
        "holds multipatches (solids), which are no areas on a map. Save its footprints as polygons.",
      );
    if (POINTS.has(type)) {
      if (length < 20) throw broken(`record ${records + 1} is too short for a point`);
      positions++;
    } else if (MULTIPOINTS.has(type)) {
      const points = length < 40 ? -1 : view.getInt32(start + 36, true);
      if (points < 0 || 40 + points * 16 > length) throw broken(`record ${records + 1} has more points than bytes`);
      positions += points;
    } else if (PARTED.has(type)) {
      const parts = length < 44 ? -1 : view.getInt32(start + 36, true);
      const points = length < 44 ? -1 : view.getInt32(start + 40, true);
      if (parts < 0 || points < 0 || 44 + parts * 4 + points * 16 > length)
        throw broken(`record ${records + 1} has more points than bytes`);
      checkCount(`${file}, shape ${records + 1}`, parts, LIMITS.parts, "rings or lines");
      for (let k = 0, before = -1; k < parts; k++) {
        const first = view.getInt32(start + 44 + k * 4, true);
        if (first <= before || first >= points || (k === 0 && first !== 0))
          throw broken(`the rings of record ${records + 1} do not follow each other`);
        before = first;
      }
      positions += points;
    } else if (type !== NULL_SHAPE) throw broken(`record ${records + 1} is of the unknown type ${type}`);
    checkCount(file, ++records, LIMITS.features, "shapes");
    checkCount(file, positions, LIMITS.positions, "positions");
    at = start + length;
  }
}

/** @throws BringError when the table says it has more than its bytes hold */
export function guardDbf(file: string, bytes: Uint8Array): void {
  const broken = (what: string): BringError =>
    new BringError(
      file,
      `is no sound dBASE table: ${what}. Save the shapefile again, or take the .dbf away to bring its shapes alone.`,
    );
  const view = viewOf(bytes);
  if (bytes.length < 33) throw broken("its header is missing");
  const [records, headerLength, recordLength] = [
    view.getUint32(4, true),
    view.getUint16(8, true),
    view.getUint16(10, true),
  ];
  checkCount(file, records, LIMITS.features, "rows");
  const fields = Math.floor((headerLength - 33) / 32);
  if (fields < 1 || fields > 255 || headerLength > bytes.length || recordLength < 2)
    throw broken("its header does not list any fields");
  if (headerLength + records * recordLength > bytes.length + 1)
    throw broken(`its header says ${records} rows, and there are bytes for fewer`);
  let width = 1;
  for (let i = 0; i < fields; i++) width += view.getUint8(32 + i * 32 + 16);
  if (width > recordLength) throw broken("its fields are wider than its rows");
}

/** @param crs the system given by hand, which goes before the .prj */
export function readShapefile(
  file: string,
  base: string,
  parts: ShapefileParts,
  crs: string | undefined,
): BroughtFile {
  checkBytes(file, parts.shp.length, LIMITS.archiveBytes, "shapes");
  guardShp(file, parts.shp);
  if (parts.dbf) {
    const table = file.replace(/\.shp$/i, ".dbf");
    checkBytes(table, parts.dbf.length, LIMITS.archiveBytes, "attributes");
    guardDbf(table, parts.dbf);
  }
  const notes: string[] = [];
  const named = crs ?? parts.prj?.replace(/^\ufeff/, "").trim();
  const { turn, note }: ToWgs84 = toWgs84(
    file,
    named ?? "EPSG:4326",
    crs === undefined ? "declares" : "is said by --crs to be in",
  );
  if (note !== undefined) notes.push(note);
  if (named === undefined)
    notes.push(
      `${file} has no .prj beside it, so its coordinates were taken for degrees on WGS 84. If they are not, say --crs "EPSG:2157", with the code of your grid.`,
    );
  const shapes = parseShp(viewOf(parts.shp));
  // The guard has seen that the rows are there; without a word on their encoding they are UTF-8 or plain ASCII.
  const rows = parts.dbf ? parseDbf(viewOf(parts.dbf), parts.cpg) : [];
  if (parts.dbf && rows.length !== shapes.length)
    notes.push(
      `${file} has ${shapes.length} shapes and ${rows.length} rows of attributes; they were joined in order as far as they go.`,
    );
  let openStreetMap = false;
  const features = shapes.flatMap((shape, i): Brought[] => {
    const from = `${file}, shape ${i + 1}`;
    const geometry = soundGeometry(shape);
    if (typeof geometry === "string") {
      notes.push(`${from} ${geometry}; it was left out.`);
      return [];
    }
    const row = rows[i] ?? {};
    // GIS number rows anew when they save, so only a field named as an identity is one.
    const own = Object.entries(row).find(([name]) => ["id", "osm_id", "fid"].includes(name.toLowerCase()))?.[1];
    const element = osmElement(row, geometry.type);
    openStreetMap ||= element !== undefined;
    const key =
      element !== undefined
        ? `osm:${element}`
        : (typeof own === "number" && Number.isFinite(own)) || (typeof own === "string" && own !== "")
          ? `${base}#${own}`
          : undefined;
    return plainGeometries(geometry).map((part) => ({
      from,
      key,
      properties: row,
      geometry: turned(part, turn),
      words: [base.replace(/\.[^.]*$/, "")],
      mapped: element !== undefined,
    }));
  });
  const keys = features.map(({ key }) => key);
  const distinct = new Set(keys).size === keys.length;
  if (crs === undefined && parts.prj === undefined) checkDegrees(file, features);
  return {
    format: "shapefile",
    features: distinct ? features : features.map((feature) => ({ ...feature, key: undefined })),
    openStreetMap,
    notes,
  };
}
