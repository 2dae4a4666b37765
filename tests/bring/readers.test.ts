/** What the readers make of files, held to GDAL's ogr2ogr, which shares no code with them. */
import { createRequire } from "node:module";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Geometry } from "geojson";
import { afterAll, describe, expect, it } from "vitest";
import type { Brought } from "../../src/bring/sources/brought.ts";
import { openBrought } from "../../src/bring/sources/open.ts";
import { gdal, scratch } from "../support/gdal.ts";
import { byOgr, placesOf, positionsOf, readByOgr, sampleAt } from "./ground.ts";

// Starting GDAL takes a second or more on a busy machine.
const [folder, remove] = scratch();
afterAll(remove);

const require = createRequire(import.meta.url);
/** Real OpenStreetMap data: `map.osm` of the osmtogeojson package's own tests, a village square. */
const OSM_SAMPLES = join(dirname(require.resolve("osmtogeojson/package.json")), "test-cli/data");
/** A recorded run of some 3,900 positions a second apart: `route-1.1.gpx` of the gpx-parse package's own tests. */
const GPX_SAMPLE = join(dirname(require.resolve("gpx-parse/package.json")), "tests/integration/data/route-1.1.gpx");

const one = async (path: string, crs?: string) => {
  const files = await openBrought(path, crs);
  expect(files).toHaveLength(1);
  return files[0]!;
};

/** Furthest apart that positions in the same order are, in metres. */
function apart(a: Geometry, b: Geometry): number {
  const [p, q] = [positionsOf(a), positionsOf(b)];
  expect(p.length).toBe(q.length);
  return Math.max(
    ...p.map(([x, y], i) =>
      Math.hypot((x! - q[i]![0]!) * 111_320 * Math.cos((y! * Math.PI) / 180), (y! - q[i]![1]!) * 111_320),
    ),
  );
}

/** The same data with its nodes by number, without which GDAL's reader loses some: it looks them up by halving. */
function nodesInOrder(path: string): string {
  const text = readFileSync(path, "utf8");
  const node = /<node\b[^>]*?(?:\/>|>[\s\S]*?<\/node>)\s*/g;
  const nodes = [...text.matchAll(node)]
    .map(([found]) => found)
    .sort((a, b) => Number(/id="(\d+)"/.exec(a)![1]) - Number(/id="(\d+)"/.exec(b)![1]));
  const first = text.indexOf("<node");
  const ordered = join(folder, "ordered.osm");
  writeFileSync(ordered, text.slice(0, first) + nodes.join("") + text.slice(first).replaceAll(node, ""));
  return ordered;
}

describe("OpenStreetMap data", () => {
  const readOsmByGdal = (
    path: string,
  ): Map<string, { geometry: Geometry; tags: Readonly<Record<string, unknown>> }> => {
    const found = new Map<string, { geometry: Geometry; tags: Readonly<Record<string, unknown>> }>();
    for (const layer of ["lines", "multipolygons"]) {
      for (const { properties, geometry } of readByOgr(path, layer).features) {
        const { osm_id: id, osm_way_id: way } = properties as { osm_id?: string; osm_way_id?: string };
        found.set(layer === "lines" ? `way/${id}` : way ? `way/${way}` : `relation/${id}`, {
          geometry,
          tags: properties!,
        });
      }
    }
    return found;
  };

  it("finds GDAL's ways and areas in a real extract, vertex by vertex", async () => {
    const { format, features } = await one(join(OSM_SAMPLES, "map.osm"));
    expect(format).toBe("OSM XML");
    const ours = new Map(
      features
        .filter(({ geometry }) => !geometry.type.endsWith("Point"))
        .map((feature) => [feature.key!.slice("osm:".length), feature]),
    );
    const text = readFileSync(join(OSM_SAMPLES, "map.osm"), "utf8");
    const theirs = readOsmByGdal(nodesInOrder(join(OSM_SAMPLES, "map.osm")));
    let compared = 0;
    for (const [id, { geometry, tags }] of theirs) {
      // Of a way at the edge of the extract GDAL makes an area of one position.
      if (placesOf(geometry).length < 2) continue;
      compared++;
      // An old multipolygon has its tags on its outer way, by which ours goes.
      const outer = new RegExp(
        `<relation id="${id.slice("relation/".length)}"[\\s\\S]*?<member type="way" ref="(\\d+)" role="outer"`,
      ).exec(text)?.[1];
      const own = ours.get(id) ?? ours.get(`way/${outer}`);
      expect(own, id).toBeDefined();
      expect(placesOf(own!.geometry), id).toEqual(placesOf(geometry));
      for (const key of ["name", "barrier", "building", "landuse"]) {
        if (typeof tags[key] === "string") expect(own!.properties[key], `${id} ${key}`).toBe(tags[key]);
      }
    }
    expect(compared).toBeGreaterThan(15);
  });

  it("reads the same features from Overpass JSON as from OSM XML", async () => {
    const [xml, json] = [await one(join(OSM_SAMPLES, "map.osm")), await one(join(OSM_SAMPLES, "map.json"))];
    expect(json.format).toBe("Overpass JSON");
    const table = (features: readonly Brought[]) =>
      features
        .map(({ key, properties, geometry }) => [key, properties, geometry] as const)
        .sort(([a], [b]) => (a! < b! ? -1 : 1));
    expect(table(json.features)).toEqual(table(xml.features));
  });

  it("reads geometry written into ways and members (out geom) as if the nodes were there", async () => {
    const point = (lat: number, lon: number) => ({ lat, lon });
    const square = [point(1, 1), point(1, 2), point(2, 2), point(2, 1), point(1, 1)];
    const inner = [point(1.4, 1.4), point(1.4, 1.6), point(1.6, 1.6), point(1.4, 1.4)];
    const path = join(folder, "geom.json");
    writeFileSync(
      path,
      JSON.stringify({
        elements: [
          { type: "way", id: 7, tags: { golf: "bunker" }, nodes: [11, 12, 13, 14, 11], geometry: square },
          {
            type: "relation",
            id: 9,
            tags: { type: "multipolygon", golf: "rough" },
            members: [
              { type: "way", ref: 21, role: "outer", geometry: square },
              { type: "way", ref: 22, role: "inner", geometry: inner },
            ],
          },
          { type: "way", id: 8, tags: { golf: "green" }, nodes: [31, 32] },
        ],
      }),
    );
    const { features, notes } = await one(path);
    expect(features.map(({ key, geometry }) => [key, geometry.type, geometry.coordinates.length])).toEqual([
      ["osm:relation/9", "Polygon", 2],
      ["osm:way/7", "Polygon", 1],
    ]);
    expect(notes).toEqual([
      `${path}, way/8 lacks its positions, as when only part of the data was saved; it was left out. Ask Overpass for "out geom;", or save the area around it too.`,
    ]);
  });

  it("leaves out what an editor has marked as deleted, and refuses a file of changes", async () => {
    const path = join(folder, "editor.osm");
    writeFileSync(
      path,
      `<osm version="0.6"><node id="-1" lat="1" lon="2"><tag k="golf" v="pin"/></node><node id="5" lat="1" lon="2" action="delete"><tag k="golf" v="pin"/></node></osm>`,
    );
    expect((await one(path)).features.map(({ key }) => key)).toEqual(["osm:node/-1"]);
    const change = join(folder, "change.osm");
    writeFileSync(change, `<osmChange version="0.6"><create/></osmChange>`);
    await expect(openBrought(change)).rejects.toThrow(
      "starts with <osmChange>, a file of changes: expected <osm>. Download the area itself as .osm.",
    );
  });
});

describe("GPX", () => {
  it("reads a recorded track as ogr2ogr does, position by position with heights", async () => {
    const { format, features } = await one(GPX_SAMPLE);
    expect(format).toBe("GPX");
    const [theirs] = readByOgr(GPX_SAMPLE, "tracks", "--config", "GPX_ELE_AS_25D", "YES").features;
    const geometry = theirs!.geometry;
    const parts = geometry.type === "MultiLineString" ? geometry.coordinates : [];
    expect(parts).toHaveLength(1);
    expect(features).toHaveLength(1);
    const own = features[0]!.geometry;
    expect(own.type).toBe("LineString");
    // As texts: comparing some thousand lists member by member takes seconds.
    expect(JSON.stringify(own.coordinates)).toBe(JSON.stringify(parts[0]));
    expect(parts[0]!.length).toBeGreaterThan(3_000);
    expect(parts[0]![0]).toHaveLength(3);
  });

  it("reads waypoints and routes that ogr2ogr wrote", async () => {
    const data = sampleAt(-9, 56.5);
    const points = {
      ...data,
      features: data.features.map((feature) => ({
        ...feature,
        properties: { name: feature.properties!["name"] as string },
        geometry: { type: "Point" as const, coordinates: positionsOf(feature.geometry)[0]! },
      })),
    };
    const { features } = await one(byOgr(folder, "points.gpx", "GPX", points));
    expect(features.map(({ properties, geometry }) => [properties["name"], geometry.coordinates])).toEqual(
      points.features.map(({ properties, geometry }) => [properties.name, geometry.coordinates]),
    );
  });
});

describe("KML", () => {
  it("reads areas, holes in areas and several areas that ogr2ogr wrote", async () => {
    const data = sampleAt(-9, 56.5);
    const { format, features } = await one(byOgr(folder, "sample.kml", "KML", data));
    expect(format).toBe("KML");
    expect(features.map(({ properties }) => [properties["name"], properties["golf"]])).toEqual([
      ["Hell's & Höll", "bunker"],
      ["Ring", "bunker"],
      ["Twins", "bunker"],
    ]);
    features.forEach(({ geometry }, i) => {
      expect(geometry.type).toBe(data.features[i]!.geometry.type);
      expect(placesOf(geometry)).toEqual(placesOf(data.features[i]!.geometry));
    });
  });

  it("reads a KMZ, and takes the names of folders as words about what lies in them", async () => {
    const path = join(folder, "inside.kml");
    writeFileSync(
      path,
      `<kml xmlns="http://www.opengis.net/kml/2.2"><Document><Folder><name>Hole 7</name><Folder><name>Bunkers</name><Placemark><name>B1</name><Polygon><outerBoundaryIs><LinearRing><coordinates>-9,56.5 -8.999,56.5 -8.999,56.501 -9,56.5</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></Folder></Folder></Document></kml>`,
    );
    const { zipOf } = await import("./zips.ts");
    const kmz = join(folder, "inside.kmz");
    writeFileSync(
      kmz,
      zipOf([
        { name: "doc.kml", content: readFileSync(path) },
        { name: "files/picture.png", content: Buffer.from("not a picture") },
      ]),
    );
    const { features } = await one(kmz);
    expect(features.map(({ words }) => words)).toEqual([["Hole 7", "Bunkers"]]);
  });
});

describe("shapefiles and GeoJSON in other coordinate systems", () => {
  const HERE = [-9, 56.5] as const;
  /** By EPSG code: a place in its area, and how near to GDAL's its positions must come. */
  const SYSTEMS: readonly (readonly [name: string, code: string, place: readonly [number, number], metres: number])[] =
    [
      ["UTM zone 29N", "EPSG:32629", HERE, 0.001],
      ["Irish Transverse Mercator", "EPSG:2157", [-8, 53.5], 0.001],
      ["New York Long Island, US survey feet", "EPSG:2263", [-73.5, 40.7], 0.002],
      ["Web Mercator", "EPSG:3857", HERE, 0.001],
      ["Dutch RD New (seven parameters)", "EPSG:28992", [5.4, 52.2], 2],
      ["British National Grid (seven parameters)", "EPSG:27700", [-3, 56.3], 8],
    ];

  // The WKT of a .prj does not say how the Dutch datum lies to WGS 84; its EPSG code does.
  it.each(SYSTEMS.filter(([, code]) => code !== "EPSG:28992"))(
    "lands a shapefile in %s where ogr2ogr does",
    async (name, code, [longitude, latitude], metres) => {
      const base = name.replace(/[^A-Za-z]+/g, "-");
      const path = byOgr(
        folder,
        `${base}.shp`,
        "ESRI Shapefile",
        sampleAt(longitude, latitude),
        "-t_srs",
        code,
        "-lco",
        "ENCODING=UTF-8",
      );
      const { features } = await one(path);
      const theirs = readByOgr(path).features;
      expect(features.map(({ properties }) => properties["name"])).toEqual(
        theirs.map(({ properties }) => properties!["name"]),
      );
      features.forEach(({ geometry }, i) => expect(apart(geometry, theirs[i]!.geometry)).toBeLessThan(metres));
    },
  );

  it.each(SYSTEMS)(
    "lands a GeoJSON that names %s by its code where ogr2ogr does",
    async (name, code, [longitude, latitude], metres) => {
      const base = name.replace(/[^A-Za-z]+/g, "-");
      // The older kind of GeoJSON, whose crs member GDAL writes and reads.
      const path = byOgr(
        folder,
        `${base}.geojson`,
        "GeoJSON",
        sampleAt(longitude, latitude),
        "-t_srs",
        code,
        "-lco",
        "RFC7946=NO",
        "-lco",
        "COORDINATE_PRECISION=6",
      );
      expect(readFileSync(path, "utf8")).toContain(code.replace(":", "::"));
      const { features, notes } = await one(path);
      const theirs = readByOgr(path).features;
      features.forEach(({ geometry }, i) => expect(apart(geometry, theirs[i]!.geometry)).toBeLessThan(metres));
      expect(notes.some((note) => note.includes("good to a few metres"))).toBe(metres > 1);
    },
  );

  it("takes --crs before what the file says, and asks for it when coordinates are plainly no degrees", async () => {
    const path = byOgr(folder, "bare.shp", "ESRI Shapefile", sampleAt(...HERE), "-t_srs", "EPSG:32629");
    const bare = join(folder, "alone.shp");
    copyFileSync(path, bare);
    await expect(openBrought(bare)).rejects.toThrow(
      /is in no degrees: shape 1 starts at \d+\.?\d*, \d+\.?\d*, and no coordinate system is declared\. Say which it is: --crs "EPSG:2157"/,
    );
    const { features } = await one(bare, "EPSG:32629");
    expect(placesOf(features[0]!.geometry, 6)).toEqual(placesOf(sampleAt(...HERE).features[0]!.geometry, 6));
  });

  it("reads a zipped shapefile with its attributes", async () => {
    const path = byOgr(
      folder,
      "packed.shp",
      "ESRI Shapefile",
      sampleAt(...HERE),
      "-t_srs",
      "EPSG:32629",
      "-lco",
      "ENCODING=UTF-8",
    );
    const { zipOf } = await import("./zips.ts");
    const parts = [".shp", ".dbf", ".prj", ".cpg", ".shx"].map((ending) => ({
      name: `maps/packed${ending}`,
      content: readFileSync(path.replace(".shp", ending)),
    }));
    const zip = join(folder, "packed.zip");
    writeFileSync(zip, zipOf(parts));
    const { features } = await one(zip);
    expect(features.map(({ properties }) => properties["name"])).toEqual(["Hell's & Höll", "Ring", "Twins"]);
  });

  it("refuses a system it cannot shift to WGS 84 instead of landing a hundred metres off", async () => {
    const path = join(folder, "old-datum.geojson");
    writeFileSync(
      path,
      JSON.stringify({
        ...sampleAt(-73.5, 40.7),
        crs: { type: "name", properties: { name: "urn:ogc:def:crs:EPSG::4267" } },
      }),
    );
    await expect(openBrought(path)).rejects.toThrow("how its datum lies to WGS 84 is not built in");
    const dutch = byOgr(folder, "dutch.shp", "ESRI Shapefile", sampleAt(5.4, 52.2), "-t_srs", "EPSG:28992");
    await expect(openBrought(dutch)).rejects.toThrow("how its datum lies to WGS 84 is not built in");
    const { features } = await one(dutch, "EPSG:28992");
    expect(apart(features[0]!.geometry, readByOgr(dutch).features[0]!.geometry)).toBeLessThan(2);
    await expect(openBrought(path, "EPSG:99999")).rejects.toThrow(
      "is said by --crs to be in the coordinate system EPSG:99999, whose definition is not built in",
    );
  });

  it("agrees with GDAL on what the sample holds", () => {
    // Guards the helper itself: a reader compared with an empty list would pass.
    const path = byOgr(folder, "guard.shp", "ESRI Shapefile", sampleAt(...HERE));
    expect(gdal("ogrinfo", ["-so", path, "guard"])).toContain("Feature Count: 3");
    expect(readByOgr(path).features).toHaveLength(3);
  });
});
