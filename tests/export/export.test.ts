/** Exports: read by ogr2ogr, true to their schemas, and back again through bring without a change. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DOMParser } from "@xmldom/xmldom";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Course } from "../../src/course/types.ts";
import { readContent } from "../../src/read/content.ts";
import { prepareBring, writeBring } from "../../src/bring/run.ts";
import { courseGeoJson, writeGeoJson } from "../../src/tell/export/geojson.ts";
import { courseGpx, waypointOf } from "../../src/tell/export/gpx.ts";
import { courseKml } from "../../src/tell/export/kml.ts";
import { courseYaml, oval, position, writeClub } from "../fixtures/club.ts";
import {
  areaFeature,
  box,
  course as flat,
  hole as flatHole,
  lineFeature,
  pointFeature,
} from "../support/flat-course.ts";
import { placesOf, readByOgr } from "../bring/ground.ts";

let content: string;
let course: Course;
const out = (name: string): string => join(content, name);

beforeAll(async () => {
  content = mkdtempSync(join(tmpdir(), "marram-export-"));
  await writeClub(content, { holes: 3, vertices: 12 });
  const [a, b] = [oval(65, 60, 20, 30, 8), oval(65, 60, 5, 6, 8).reverse()];
  // What holes share: an area with a hole in it, two areas, two lines, a mark with a name that XML must escape.
  const shared = [
    {
      type: "Feature",
      id: "mere",
      properties: { golf: "water_hazard", name: 'Mere & "Moss" <old>', depth: 2, tidal: true },
      geometry: { type: "Polygon", coordinates: [a, b] },
    },
    {
      type: "Feature",
      id: "whins",
      properties: { natural: "scrub", height: 1.5 },
      geometry: { type: "MultiPolygon", coordinates: [[oval(60, 200, 6, 6, 6)], [oval(70, 230, 6, 6, 6)]] },
    },
    {
      type: "Feature",
      id: "walls",
      properties: { barrier: "wall" },
      geometry: {
        type: "MultiLineString",
        coordinates: [
          [
            [-9.002, 56.5],
            [-9.002, 56.501, 12.5],
          ],
          [
            [-9.002, 56.502],
            [-9.002, 56.503],
          ],
        ],
      },
    },
    {
      type: "Feature",
      id: "light",
      properties: { man_made: "lighthouse" },
      geometry: { type: "Point", coordinates: [-9.001, 56.505, 31.25] },
    },
  ];
  writeFileSync(
    out("course-1/course.yaml"),
    `${courseYaml("Sample & Links", 9)}features: ${JSON.stringify({ type: "FeatureCollection", features: shared })}\n`,
  );
  const { club, diagnostics } = await readContent(content);
  expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
  course = club!.courses[0]!;
  writeFileSync(out("sample.geojson"), writeGeoJson(courseGeoJson(course)));
  writeFileSync(out("sample.gpx"), courseGpx(course));
  writeFileSync(out("sample.kml"), courseKml(course));
});
afterAll(() => rmSync(content, { recursive: true, force: true }));

const all = () => [
  ...course.features.map((feature) => ({ hole: "all", feature })),
  ...course.holes.flatMap(({ number, features }) => features.map((feature) => ({ hole: String(number), feature }))),
];
const request = (file: string, folder = content) => ({
  content: folder,
  course: "course-1",
  files: [out(file)],
  crs: undefined,
  distUnit: undefined,
  lines: undefined,
});

describe("GeoJSON", () => {
  it("holds every feature with tags, hole and id, and what the card says on the lines of play", () => {
    const { features } = courseGeoJson(course);
    expect(features.map(({ geometry }) => geometry)).toEqual(all().map(({ feature }) => feature.geometry));
    expect(new Set(features.map(({ id }) => id)).size).toBe(features.length);
    expect(features.find(({ id }) => id === "mere")!.properties).toEqual({
      hole: "all",
      id: "mere",
      golf: "water_hazard",
      name: 'Mere & "Moss" <old>',
      depth: 2,
      tidal: true,
    });
    // 150 m and 120 m are 164 and 131 yards, as the pages say.
    expect(features.find(({ id }) => id === "3/line")!.properties).toEqual({
      hole: 3,
      id: "line",
      golf: "hole",
      ref: "3",
      name: "Hole 3",
      par: 3,
      handicap: 3,
      "dist:white": "164 yd",
      "dist:red": "131 yd",
    });
  });

  it("reads in ogr2ogr as it was written", () => {
    const theirs = readByOgr(out("sample.geojson")).features;
    expect(theirs.map(({ geometry }) => geometry.type)).toEqual(all().map(({ feature }) => feature.geometry.type));
    theirs.forEach(({ geometry }, i) => expect(placesOf(geometry)).toEqual(placesOf(all()[i]!.feature.geometry)));
  });
});

describe("KML", () => {
  it("reads in ogr2ogr with every place, a layer for each hole", () => {
    const layers = ["Shared by the holes", ...course.holes.map(({ number, name }) => `Hole ${number} ${name}`)];
    const theirs = layers.flatMap((layer) => readByOgr(out("sample.kml"), layer).features);
    expect(theirs.map(({ properties }) => String(properties!["Name"]))).toEqual(
      all().map(
        ({ feature, hole }) => feature.name ?? (feature.kind === "line-of-play" ? `Hole ${hole}` : feature.id),
      ),
    );
    theirs.forEach(({ geometry }, i) => expect(placesOf(geometry)).toEqual(placesOf(all()[i]!.feature.geometry)));
  });

  it("follows the schema's order and namespace", () => {
    const root = new DOMParser().parseFromString(
      readFileSync(out("sample.kml"), "utf8"),
      "application/xml",
    ).documentElement!;
    expect(root.namespaceURI).toBe("http://www.opengis.net/kml/2.2");
    const placemark = root.getElementsByTagName("Placemark")[0]!;
    // OGC 07-147r2: a feature's name, styleUrl and extended data come before its geometry.
    expect(Array.from(placemark.childNodes, ({ nodeName }) => nodeName)).toEqual([
      "name",
      "styleUrl",
      "ExtendedData",
      "Polygon",
    ]);
  });
});

describe("what a club writes", () => {
  const HOSTILE = `<Tom & "Jerry's">`;
  const at = (x: number, y: number) => ({ type: "Point" as const, coordinates: position(x, y) });
  const hostile: Course = {
    ...flat([
      flatHole(
        [
          lineFeature("line", "line-of-play", [
            [0, 0],
            [0, 300],
          ]),
          areaFeature("pond", "penalty-area-red", box(0, 0, 10, 10), {
            name: HOSTILE,
            tags: { golf: "lateral_water_hazard", name: HOSTILE, [`note${HOSTILE}`]: HOSTILE },
          }),
        ],
        { name: HOSTILE },
      ),
    ]),
    name: HOSTILE,
    features: [
      { ...pointFeature("light", "landmark", [5, 5], { name: HOSTILE, tags: { name: HOSTILE } }), geometry: at(5, 5) },
    ],
  };
  const parsed = (text: string) =>
    new DOMParser({
      onError: (level, message) => {
        throw new Error(`${level}: ${message}`);
      },
    }).parseFromString(text, "application/xml").documentElement!;
  const textsOf = (root: ReturnType<typeof parsed>, tag: string): string[] =>
    Array.from(root.getElementsByTagName(tag), ({ textContent }) => textContent ?? "");

  it("comes back from KML as it was: names of course, holes, features and tags", () => {
    const root = parsed(courseKml(hostile));
    expect(textsOf(root, "name")).toEqual([
      HOSTILE,
      "Shared by the holes",
      HOSTILE,
      `Hole 1 ${HOSTILE}`,
      HOSTILE,
      HOSTILE,
    ]);
    const names = Array.from(root.getElementsByTagName("Data"), (data) => data.getAttribute("name"));
    expect(names).toContain(`note${HOSTILE}`);
    expect(textsOf(root, "value").filter((text) => text === HOSTILE).length).toBeGreaterThanOrEqual(4);
  });

  it("comes back from GPX as it was", () => {
    const names = textsOf(parsed(courseGpx(hostile)), "name");
    expect(names).toEqual([HOSTILE, HOSTILE, `1 ${HOSTILE}`, `1 ${HOSTILE}`]);
  });

  it("is without the characters XML 1.0 does not allow, and keeps every other", () => {
    // XML 1.0 (W3C), 2.2: tab, line feed, return, and from U+0020 on without surrogates, U+FFFE and U+FFFF.
    const allowed = "\t é ü 火 \u{1f3cc} '";
    const root = parsed(courseKml({ ...hostile, name: `a\u0000\u0007\ufffe\ud83c${allowed}\udfff z` }));
    expect(textsOf(root, "name")[0]).toBe(`a${allowed} z`);
  });

  it("keeps the Rules' colours: yellow and red penalty areas, white boundaries", () => {
    const kinds = [
      ["penalty-area-yellow", [255, 215, 0]],
      ["penalty-area-red", [255, 0, 0]],
      ["out-of-bounds", [255, 255, 255]],
    ] as const;
    const root = parsed(
      courseKml({ ...hostile, features: kinds.map(([kind]) => areaFeature(kind, kind, box(0, 0, 9, 9))) }),
    );
    for (const [kind, colour] of kinds) {
      const placemark = Array.from(root.getElementsByTagName("Placemark")).find(
        (one) => one.getElementsByTagName("name")[0]!.textContent === kind,
      )!;
      const style = Array.from(root.getElementsByTagName("Style")).find(
        (one) => `#${one.getAttribute("id")}` === placemark.getElementsByTagName("styleUrl")[0]!.textContent,
      )!;
      for (const { textContent } of Array.from(style.getElementsByTagName("color"))) {
        // OGC 07-147r2, 16.1: aabbggrr.
        const [, blue, green, red] = /^[0-9a-f]{2}([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/
          .exec(textContent ?? "")!
          .map((part) => Number.parseInt(part, 16));
        expect([red, green, blue], kind).toEqual(colour);
      }
    }
  });
});

describe("GPX", () => {
  it("stands for several areas by a point in the largest, wherever it comes among them", () => {
    const rings = (ring: ReturnType<typeof box>): number[][][] => [
      [...ring, ring[0]!].map(([x, y]) => position(x, y)),
    ];
    const [small, large] = [rings(box(0, 0, 6, 6)), rings(box(100, 0, 160, 60))];
    for (const coordinates of [
      [small, large],
      [large, small],
    ]) {
      const [longitude, latitude] = waypointOf({
        ...areaFeature("whins", "scrub", box(0, 0, 1, 1)),
        geometry: { type: "MultiPolygon", coordinates },
      });
      expect(longitude).toBeGreaterThan(position(100, 0)[0]);
      expect(longitude).toBeLessThan(position(160, 0)[0]);
      expect(latitude).toBeLessThan(position(0, 60)[1]);
    }
  });

  it("writes the line of 180 degrees as the schema's -180", () => {
    // GPX 1.1, longitudeType: from -180 on, below 180.
    const edge = courseGpx({
      ...course,
      features: [{ ...pointFeature("buoy", "landmark", [0, 0]), geometry: { type: "Point", coordinates: [180, 10] } }],
      holes: [],
    });
    expect(edge).toContain('lat="10" lon="-180"');
  });

  /** GPX 1.1 schema (topografix.com/GPX/1/1/gpx.xsd): the children of a point and of a route are sequences. */
  const POINT = ["ele", "time", "magvar", "geoidheight", "name", "cmt", "desc", "src", "link", "sym", "type"];
  const ROUTE = ["name", "cmt", "desc", "src", "link", "number", "type", "extensions", "rtept"];

  it("follows the schema's order", () => {
    const root = new DOMParser().parseFromString(
      readFileSync(out("sample.gpx"), "utf8"),
      "application/xml",
    ).documentElement!;
    expect([root.namespaceURI, root.getAttribute("version"), root.hasAttribute("creator")]).toEqual([
      "http://www.topografix.com/GPX/1/1",
      "1.1",
      true,
    ]);
    const names = (tag: string) =>
      Array.from(root.getElementsByTagName(tag), (element) =>
        Array.from(element.childNodes, ({ nodeName }) => nodeName).filter((name) => name !== "#text"),
      );
    const inOrder = (found: readonly string[], order: readonly string[]): boolean =>
      found.every(
        (name, i) => order.includes(name) && (i === 0 || order.indexOf(found[i - 1]!) <= order.indexOf(name)),
      );
    for (const found of [...names("wpt"), ...names("rtept")]) expect(inOrder(found, POINT), found.join()).toBe(true);
    for (const found of names("rte")) expect(inOrder(found, ROUTE), found.join()).toBe(true);
    const top = Array.from(root.childNodes, ({ nodeName }) => nodeName).filter((name) => name !== "#text");
    expect(inOrder(top, ["metadata", "wpt", "rte", "trk", "extensions"])).toBe(true);
  });

  it("reads in ogr2ogr: a waypoint for each feature but the lines of play, a route for each of those", () => {
    const waypoints = readByOgr(out("sample.gpx"), "waypoints", "--config", "GPX_ELE_AS_25D", "YES").features;
    expect(waypoints).toHaveLength(all().filter(({ feature }) => feature.kind !== "line-of-play").length);
    const light = waypoints.find(({ properties }) => properties!["name"] === "light")!;
    expect(light.geometry).toEqual({ type: "Point", coordinates: [-9.001, 56.505, 31.25] });
    const routes = readByOgr(out("sample.gpx"), "routes").features;
    expect(routes.map(({ properties, geometry }) => [properties!["name"], placesOf(geometry)])).toEqual(
      course.holes.map(({ number, name, features }) => [
        `${number} ${name}`,
        placesOf(features.find(({ kind }) => kind === "line-of-play")!.geometry),
      ]),
    );
  });

  it("puts an area's waypoint within it", () => {
    const mere = readByOgr(out("sample.gpx"), "waypoints").features.find(
      ({ properties }) => properties!["name"] === 'Mere & "Moss" <old>',
    )!;
    const [x, y] = mere.geometry.type === "Point" ? (mere.geometry.coordinates as [number, number]) : [0, 0];
    const inside = (ring: readonly (readonly number[])[]): boolean => {
      let odd = false;
      ring.forEach(([x1, y1], i) => {
        const [x2, y2] = ring[(i + 1) % ring.length]! as [number, number];
        if (y1! > y !== y2 > y && x < x1! + ((y - y1!) / (y2 - y1!)) * (x2 - x1!)) odd = !odd;
      });
      return odd;
    };
    const rings = course.features[0]!.geometry.coordinates as number[][][];
    expect([inside(rings[0]!), inside(rings[1]!)]).toEqual([true, false]);
  });
});

describe("back again", () => {
  it.each(["sample.geojson", "sample.kml"])("%s brought into its own course changes nothing", async (file) => {
    const plan = await prepareBring(request(file));
    expect(plan.files.map(({ file: name }) => name)).toEqual([]);
    expect(plan.leftOver).toEqual([]);
    expect(plan.changes.map(({ what }) => what)).toEqual(all().map(() => "same"));
  });

  it("sample.gpx brings points and lines of play back, and leaves over what stands for an outline", async () => {
    const plan = await prepareBring(request("sample.gpx"));
    expect(plan.files).toEqual([]);
    const whole = all().filter(
      ({ feature }) => feature.kind === "line-of-play" || feature.geometry.type === "Point",
    ).length;
    expect(plan.changes).toHaveLength(whole);
    expect(new Set(plan.leftOver.map(({ reason }) => reason))).toEqual(
      new Set(["it is a waypoint that stands for an outline, which GPX cannot hold: bring the GeoJSON or KML export"]),
    );
    expect(plan.leftOver).toHaveLength(all().length - whole);
  });

  it.each(["sample.geojson", "sample.kml"])("%s makes the same course in an empty folder", async (file) => {
    const empty = mkdtempSync(join(tmpdir(), "marram-export-"));
    try {
      await writeClub(empty, { holes: 0 });
      await writeBring(empty, "course-1", await prepareBring(request(file, empty)));
      const { sound, diagnostics } = await readContent(empty);
      expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
      const table = ({ features, holes }: Course) => [
        features.map(({ id, kind, geometry }) => [id, kind, placesOf(geometry)]).sort(),
        holes.map((hole) => [
          hole.number,
          hole.name,
          hole.par,
          hole.strokeIndex,
          hole.cardMetres,
          hole.features.map(({ id, kind, name, tee, geometry }) => [id, kind, name, tee, placesOf(geometry)]).sort(),
        ]),
      ];
      expect(table(sound[0]!)).toEqual(table(course));
    } finally {
      rmSync(empty, { recursive: true, force: true });
    }
  });
});
