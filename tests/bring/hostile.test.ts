/** Files that are refused: what is said, and that it costs little to say it. */
import { open, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { LIMITS } from "../../src/bring/sources/limits.ts";
import { guardJson } from "../../src/bring/sources/json-guard.ts";
import { openBrought } from "../../src/bring/sources/open.ts";
import { guardDbf, guardShp } from "../../src/bring/sources/shapefile.ts";
import { guardXml } from "../../src/bring/sources/xml-guard.ts";
import { readZip } from "../../src/bring/sources/zip.ts";
import { scratch } from "../support/gdal.ts";
import { zipOf } from "./zips.ts";

const [folder, remove] = scratch();
afterAll(remove);

const file = async (name: string, content: string | Uint8Array): Promise<string> => {
  const path = join(folder, name);
  await writeFile(path, content);
  return path;
};

/** The refusal without the file's name. */
const refusal = async (path: string, crs?: string): Promise<string> => {
  const error: unknown = await openBrought(path, crs).then(
    () => undefined,
    (found: unknown) => found,
  );
  expect(error).toBeInstanceOf(Error);
  expect((error as Error).name).toBe("CommandError");
  return (error as Error).message.replaceAll(path, "FILE");
};

const json = (text: string) => () => guardJson("x.json", Buffer.from(text));

describe("size", () => {
  it.each([
    ["huge.geojson", "FILE: is 5000 MB of data: at most 48 MB is read."],
    ["huge.kml", "FILE: is 5000 MB of data: at most 12 MB is read."],
    ["huge.shp", "FILE: is 5000 MB of data: at most 32 MB is read."],
    ["huge.zip", "FILE: is 5000 MB of data: at most 32 MB is read."],
  ])("asks the size of %s before reading any of it", async (name, said) => {
    const path = join(folder, name);
    const handle = await open(path, "w");
    // A file with a hole in it: 5 GB long, nothing on the disk.
    await handle.truncate(5_000_000_000);
    await handle.close();
    const before = process.memoryUsage().rss;
    expect(await refusal(path)).toBe(
      `${said} Cut it to the course and its surroundings (osmium extract --bbox WEST,SOUTH,EAST,NORTH for OpenStreetMap's files, ogr2ogr -spat WEST SOUTH EAST NORTH for others), or simplify its outlines to a vertex every metre or two.`,
    );
    expect(process.memoryUsage().rss - before).toBeLessThan(20e6);
  });

  it("counts positions before parsing: ten million short ones fit in the bytes allowed and are refused", async () => {
    const ten = "[0,0],".repeat(10);
    const body = Buffer.alloc(ten.length * 700_000, ten);
    const path = await file(
      "many.json",
      Buffer.concat([Buffer.from('{"type":"LineString","coordinates":['), body, Buffer.from("[1,1]]}")]),
    );
    expect(body.length).toBeLessThan(LIMITS.jsonBytes);
    expect(await refusal(path)).toContain("holds more than 200,000 positions, the most that is read");
  });

  it("counts positions as they are, up to the last that is allowed", () => {
    const line = (n: number): string =>
      `{"coordinates":[${Array.from({ length: n }, (_, i) => `[ ${i % 180} , -1.5 ]`).join(",")}]}`;
    expect(json(line(LIMITS.positions))).not.toThrow();
    expect(json(line(LIMITS.positions + 1))).toThrow("more than 200,000 positions");
  });

  it("counts positions that KML writes as text", async () => {
    const path = await file(
      "long.kml",
      `<kml xmlns="http://www.opengis.net/kml/2.2"><Placemark><LineString><coordinates>${"-9,56 ".repeat(LIMITS.positions + 1)}</coordinates></LineString></Placemark></kml>`,
    );
    expect(await refusal(path)).toContain("holds more than 200,000 positions");
  });

  it("counts values too: millions of empty lists have no positions", () => {
    expect(json(`[${"[],".repeat(LIMITS.jsonTokens)}[]]`)).toThrow("holds more than 3,000,000 values");
  });
});

describe("JSON", () => {
  it("refuses deep nesting and is not taken in by brackets in texts", () => {
    expect(json("[".repeat(LIMITS.depth) + "]".repeat(LIMITS.depth))).not.toThrow();
    expect(json("[".repeat(LIMITS.depth + 1))).toThrow("has groups nested more than 64 deep");
    expect(json(JSON.stringify("{[".repeat(100_000)))).not.toThrow();
    expect(json(JSON.stringify({ name: '\\"[[[[' + "[".repeat(100) }))).not.toThrow();
    expect(json('{"a":'.repeat(1_000_000))).toThrow("nested more than 64 deep");
  });

  it("says what other JSON is not", async () => {
    expect(await refusal(await file("other.json", '{"name":"a"}'))).toBe(
      "FILE: is JSON, but neither GeoJSON (a FeatureCollection) nor an answer of Overpass (elements). Export it as GeoJSON.",
    );
    expect(await refusal(await file("topology.json", '{"type":"Topology","objects":{}}'))).toContain(
      "neither GeoJSON",
    );
    expect(await refusal(await file("broken.geojson", '{"type":"FeatureCollection","features":['))).toContain(
      "is not valid JSON",
    );
    expect(await refusal(await file("latin.json", Buffer.from('{"type":"Feature\xe9"}', "latin1")))).toContain(
      "is not valid JSON",
    );
    expect(await refusal(await file("list.geojson", '{"type":"FeatureCollection","features":{}}'))).toContain(
      "is a FeatureCollection without a list of features",
    );
    expect(await refusal(await file("nothing.geojson", ""))).toBe("FILE: is empty.");
  });

  it("leaves out features it cannot use and says which", async () => {
    const path = await file(
      "mixed.geojson",
      JSON.stringify({
        type: "FeatureCollection",
        features: [
          null,
          { type: "Feature", geometry: null },
          { type: "Feature", geometry: { type: "Polygon", coordinates: [[0, 1]] } },
          { type: "Feature", geometry: { type: "Circle" } },
          { type: "Feature", properties: {}, geometry: { type: "Point", coordinates: [-9, 56.5] } },
        ],
      }),
    );
    const [read] = await openBrought(path);
    expect(read!.features).toHaveLength(1);
    expect(read!.notes.map((note) => note.replace(path, "FILE"))).toEqual([
      "FILE, feature 1 is no feature; it was left out.",
      "FILE, feature 2 has no geometry; it was left out.",
      "FILE, feature 3 has coordinates that are not those of a Polygon; it was left out.",
      'FILE, feature 4 has a geometry of type "Circle"; it was left out.',
    ]);
  });
});

describe("XML", () => {
  const xml = (text: string) => () => guardXml("x.kml", text);
  const laughs = `<!DOCTYPE kml [<!ENTITY a "ha"><!ENTITY b "${"&a;".repeat(10)}"><!ENTITY c "${"&b;".repeat(10)}">]><kml><name>&c;</name></kml>`;

  it("refuses a document type, whatever it declares and however it is spelled", async () => {
    expect(xml(laughs)).toThrow(
      'x.kml: declares "<!DOCTYPE": a document type can define entities that multiply to any size, so it is not read, and no GPX, KML or OSM file needs one. Delete the declaration, up to the > that closes it.',
    );
    expect(xml("<!doctype kml><kml/>")).toThrow("declares");
    expect(xml('<?xml version="1.0"?><!-- note --><!ENTITY a "b"><kml/>')).toThrow('declares "<!ENTITY"');
    expect(xml('<!DOCTYPE kml SYSTEM "file:///etc/passwd"><kml/>')).toThrow("declares");
    expect(await refusal(await file("laughs.kml", laughs))).toContain('declares "<!DOCTYPE"');
    expect(
      await refusal(
        await file(
          "external.gpx",
          '<!DOCTYPE gpx [<!ENTITY x SYSTEM "file:///etc/hostname">]><gpx><name>&x;</name></gpx>',
        ),
      ),
    ).toContain('declares "<!DOCTYPE"');
  });

  it("is not taken in by declarations in comments and CDATA, and refuses entities nobody declared", async () => {
    expect(xml("<kml><!-- <!DOCTYPE a> --><name><![CDATA[<!DOCTYPE a>]]></name></kml>")).not.toThrow();
    expect(
      await refusal(await file("entity.kml", '<kml xmlns="http://www.opengis.net/kml/2.2"><name>&lol;</name></kml>')),
    ).toContain("is not well-formed XML");
  });

  it("refuses deep nesting, endless tags and too many elements", () => {
    expect(xml("<a>".repeat(LIMITS.depth) + "</a>".repeat(LIMITS.depth))).not.toThrow();
    expect(xml("<a>".repeat(LIMITS.depth + 1))).toThrow("nested more than 64 deep");
    expect(xml(`<a b="${"x".repeat(70_000)}"/>`)).toThrow("has a tag of more than 65536 characters");
    expect(xml("<a>".concat("<b/>".repeat(LIMITS.xmlElements)))).toThrow("holds more than 400,000 elements");
    expect(xml("<a><b></b>".concat("<b></b>".repeat(1000)))).not.toThrow();
    expect(xml("<!-- never closed")).toThrow("is cut off: a comment is never closed");
    expect(xml("no tags")).toThrow("has no elements");
  });

  it("reads a > within an attribute, and a declared encoding it knows", async () => {
    const path = await file(
      "latin.kml",
      Buffer.from(
        '<?xml version="1.0" encoding="ISO-8859-1"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document><Placemark id="a>b"><name>Höll</name><Point><coordinates>-9,56.5</coordinates></Point></Placemark></Document></kml>',
        "latin1",
      ),
    );
    const [read] = await openBrought(path);
    expect(read!.features.map(({ properties }) => properties["name"])).toEqual(["Höll"]);
  });

  it("refuses other encodings and other XML", async () => {
    expect(await refusal(await file("wide.gpx", Buffer.from("\ufeff<gpx/>", "utf16le")))).toContain(
      "is in UTF-16: expected UTF-8",
    );
    expect(await refusal(await file("far.gpx", '<?xml version="1.0" encoding="Shift_JIS"?><gpx/>'))).toContain(
      'is in the encoding "shift_jis", which is not read',
    );
    expect(
      await refusal(
        await file("liar.gpx", Buffer.from('<?xml version="1.0" encoding="UTF-8"?><gpx creator="\xe9"/>', "latin1")),
      ),
    ).toContain("is not text in UTF-8 as it says");
    expect(await refusal(await file("page.xml", "<html><body/></html>"))).toBe(
      "FILE: is XML that starts with <html>: expected <gpx>, <kml> or <osm>. Export it as one of these.",
    );
    expect(await refusal(await file("crs.gpx", "<gpx/>"), "EPSG:2157")).toContain("--crs does not apply to it");
  });
});

describe("zip archives", () => {
  const content = Buffer.from('{"type":"FeatureCollection","features":[]}');

  it("reads a sound one", () => {
    expect(Buffer.from(readZip("x.zip", zipOf([{ name: "a.json", content }]))[0]!.read()).toString()).toBe(
      content.toString(),
    );
  });

  it("refuses one that declares more than is unpacked, before unpacking any of it", () => {
    const bomb = zipOf([{ name: "a.json", content, declared: { size: 70_000_000 } }]);
    expect(() => readZip("x.zip", bomb)).toThrow(
      "x.zip: unpacks to more than 64 MB, the most that is read. Pack only the map files of the course.",
    );
    const spread = zipOf(
      Array.from({ length: 100 }, (_, i) => ({ name: `${i}.json`, content, declared: { size: 700_000 } })),
    );
    expect(() => readZip("x.zip", spread)).toThrow("unpacks to more than 64 MB");
  });

  it("stops unpacking where the directory said it would end", () => {
    // 30 MB of nothing pack to 30 kB.
    const bomb = zipOf([{ name: "a.json", content: Buffer.alloc(30_000_000), declared: { size: 1000 } }]);
    const [entry] = readZip("x.zip", bomb);
    const before = process.memoryUsage().rss;
    expect(() => entry!.read()).toThrow('"a.json" unpacks to more than the 1000 bytes it declares');
    expect(process.memoryUsage().rss - before).toBeLessThan(20e6);
  });

  it("refuses what is encrypted, zip64, packed otherwise, crowded, cut off or false", () => {
    const read = (declared: object) => () =>
      readZip("x.zip", zipOf([{ name: "a.json", content, declared }])).map((entry) => entry.read());
    expect(read({ flags: 1 })).toThrow('holds "a.json" encrypted');
    expect(read({ method: 12 })).toThrow('packs "a.json" by method 12');
    expect(read({ packed: 0xffffffff })).toThrow("is a zip64 archive");
    expect(read({ crc: 1 })).toThrow('the check sum of "a.json" is wrong');
    expect(read({ size: content.length + 1 })).toThrow("unpacks to 42 bytes, not the 43 it declares");
    expect(read({ packed: 1_000_000 })).toThrow('"a.json" is cut off');
    expect(() => readZip("x.zip", zipOf(Array.from({ length: 201 }, (_, i) => ({ name: `${i}`, content }))))).toThrow(
      "holds more than 200 files",
    );
    const sound = zipOf([{ name: "a.json", content }]);
    expect(() => readZip("x.zip", sound.subarray(0, sound.length - 30))).toThrow("its directory is missing");
  });

  it("does not open archives within archives, and says when there is no map in one", async () => {
    const inner = zipOf([{ name: "a.json", content }]);
    expect(await refusal(await file("nested.zip", zipOf([{ name: "inner.zip", content: inner }])))).toContain(
      "is an archive without a map file in it",
    );
  });

  it("holds what is inside to the same limits", async () => {
    const deep = Buffer.from("[".repeat(1000));
    expect(await refusal(await file("deep.zip", zipOf([{ name: "a.geojson", content: deep }])))).toContain(
      "FILE/a.geojson: has groups nested more than 64 deep",
    );
    const laugh = Buffer.from("<!DOCTYPE kml><kml/>");
    expect(await refusal(await file("laugh.kmz", zipOf([{ name: "doc.kml", content: laugh }])))).toContain(
      'FILE/doc.kml: declares "<!DOCTYPE"',
    );
    const wide = Buffer.alloc(LIMITS.xmlBytes + 1, "<a/>");
    expect(await refusal(await file("wide.kmz", zipOf([{ name: "doc.kml", content: wide }])))).toContain(
      "FILE/doc.kml: is 12 MB of XML: at most 12 MB is read",
    );
  });
});

describe("shapefiles", () => {
  /** A .shp with one polygon record that says what it likes of itself. */
  function shp({
    parts = 1,
    points = 4,
    first = 0,
    type = 5,
    length,
  }: {
    parts?: number;
    points?: number;
    first?: number;
    type?: number;
    length?: number;
  }): Buffer {
    const body = Buffer.alloc(44 + 4 + 4 * 16);
    body.writeInt32LE(type, 0);
    body.writeInt32LE(parts, 36);
    body.writeInt32LE(points, 40);
    body.writeInt32LE(first, 44);
    const header = Buffer.alloc(108);
    header.writeInt32BE(9994, 0);
    header.writeInt32BE((100 + 8 + body.length) / 2, 24);
    header.writeInt32BE(1, 100);
    header.writeInt32BE(length ?? body.length / 2, 104);
    return Buffer.concat([header, body]);
  }

  it("takes a sound one", () => {
    expect(() => guardShp("x.shp", shp({}))).not.toThrow();
  });

  it.each([
    [{ points: 1_000_000_000 }, "record 1 has more points than bytes"],
    [{ points: -1 }, "record 1 has more points than bytes"],
    [{ parts: 100_000_000 }, "record 1 has more points than bytes"],
    [{ first: 3 }, "the rings of record 1 do not follow each other"],
    [{ length: 1_000_000 }, "record 1 is longer than the file"],
    [{ type: 99 }, "record 1 is of the unknown type 99"],
    [{ type: 31 }, "holds multipatches"],
  ])("refuses counts that its bytes do not bear out: %o", (lie, said) => {
    expect(() => guardShp("x.shp", shp(lie))).toThrow(said);
  });

  it("refuses a file that is shorter than it says, or none at all", () => {
    expect(() => guardShp("x.shp", shp({}).subarray(0, 150))).toThrow("its header says 220 bytes, and it has 150");
    expect(() => guardShp("x.shp", Buffer.from("not a shapefile"))).toThrow("its header is missing");
  });

  it("refuses a table of four thousand million rows that has bytes for none", () => {
    const table = Buffer.alloc(65);
    table.writeUInt32LE(4_000_000_000, 4);
    expect(() => guardDbf("x.dbf", table)).toThrow("holds more than 20,000 rows");
    table.writeUInt32LE(10_000, 4);
    table.writeUInt16LE(65, 8);
    table.writeUInt16LE(11, 10);
    table.writeUInt8(10, 32 + 16);
    expect(() => guardDbf("x.dbf", table)).toThrow("its header says 10000 rows, and there are bytes for fewer");
  });

  it("names the .shp when another part of it is given", async () => {
    expect(await refusal(await file("part.dbf", "x"))).toBe(
      `FILE: is one part of a shapefile. Name the .shp: ${join(folder, "part.shp")}.`,
    );
  });
});

it("says of anything else what is read", async () => {
  expect(await refusal(await file("notes.txt", "bunkers"))).toBe(
    "FILE: is of no kind that is read. Expected GeoJSON (.geojson, .json), OSM XML (.osm), Overpass JSON (.json), GPX (.gpx), KML (.kml, .kmz) and shapefiles (.shp or zipped).",
  );
  expect(await refusal(join(folder, "absent.gpx"))).toBe("FILE: cannot be read: it is not there. Check the path.");
  expect(await refusal(folder)).toContain("is no file");
});
