import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { PALETTE } from "../../src/draw/palette.ts";
import { contains } from "../../src/geo/area.ts";
import { courseData } from "../../src/site/files/course-data.ts";
import { holeData } from "../../src/site/files/hole-data.ts";
import { longHex, mapColours } from "../../src/islands/map/colours.ts";
import { tilesFrom } from "../../src/islands/map/tiles.ts";
import { nameLabels } from "../../src/islands/map/labels.ts";
import { nearestHole } from "../../src/islands/map/nearest.ts";
import { channels, patterns } from "../../src/islands/map/patterns.ts";
import { mapStyle } from "../../src/islands/map/style.ts";
import { FRAME } from "../support/flat-course.ts";
import { sample } from "./sample.ts";

const measured = sample();
const data = holeData(measured.holes[0]!, "yards");
const fonts = ["Sheet Sans"];
const style = (scheme: "light" | "dark") =>
  mapStyle({
    colours: PALETTE[scheme],
    features: data.features,
    origin: data.origin,
    line: data.tees[0]!.line,
    fonts,
    bunkersFromZoom: 0,
    ground: undefined,
  });

describe("style", () => {
  test("fetches nothing: no glyphs, no sprite, no tiles, no address anywhere", () => {
    const made = style("light");
    expect(made.glyphs).toBeUndefined();
    expect(made.sprite).toBeUndefined();
    expect(JSON.stringify(made)).not.toMatch(/https?:|\/\//);
  });

  test("has relief where the guide has heights, from its own address, and none elsewhere", () => {
    const ground = tilesFrom(
      {
        tiles: "../ground/{z}/{x}/{y}.webp",
        encoding: "terrarium" as const,
        minimumZoom: 12,
        maximumZoom: 16,
        bounds: [-9.1, 56.4, -9, 56.5],
      },
      new URL("http://host.example/guide/links/7/hole.json"),
    );
    const made = mapStyle({
      colours: PALETTE.light,
      features: data.features,
      origin: data.origin,
      line: data.tees[0]!.line,
      fonts,
      bunkersFromZoom: 0,
      ground,
    });
    expect(made.sources["ground"]).toMatchObject({
      tiles: ["http://host.example/guide/links/ground/{z}/{x}/{y}.webp"],
      bounds: [-9.1, 56.4, -9, 56.5],
    });
    expect(made.layers.filter(({ type }) => type === "hillshade")).toHaveLength(1);
    expect(style("light").layers.filter(({ type }) => type === "hillshade")).toHaveLength(0);
    expect(tilesFrom(undefined, new URL("http://host.example/"))).toBeUndefined();
  });

  test("has the plate's colours by day and by night", () => {
    const fairway = (scheme: "light" | "dark") =>
      JSON.stringify(style(scheme).layers.find(({ id }) => id === "fairway"));
    expect(fairway("light")).toContain(PALETTE.light.fairway);
    expect(fairway("dark")).toContain(PALETTE.dark.fairway);
    expect(fairway("dark")).not.toContain(PALETTE.light.fairway);
  });

  test("draws every kind of feature of the hole", () => {
    const text = JSON.stringify(style("light").layers.map((layer) => ("filter" in layer ? layer.filter : undefined)));
    const kinds = new Set(data.features.features.map(({ properties }) => properties.kind));
    expect(kinds.size).toBeGreaterThan(5);
    for (const kind of kinds) expect(text).toContain(`"${kind}"`);
  });

  test("puts bunkers over fairways, fairways over rough, and names over ground", () => {
    const ids = style("light").layers.map(({ id }) => id);
    const order = [
      "paper",
      "rough",
      "fairway",
      "green",
      "bunker",
      "line-of-play",
      "names-large",
      "hole-numbers",
      "legs",
    ];
    const places = order.map((id) => ids.indexOf(id));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("colours", () => {
  test("are the page's own where its style sheet names them", () => {
    const page: Record<string, string> = {
      "--plate-fairway": " #123456",
      "--plate-sea": "#abc",
      "--plate-ink": "rebeccapurple",
    };
    const colours = mapColours("light", (name) => page[name] ?? "");
    expect(colours.fairway).toBe("#123456");
    expect(colours.sea).toBe("#aabbcc");
    expect(colours.ink).toBe(PALETTE.light.ink);
    expect(colours.green).toBe(PALETTE.light.green);
  });

  test("only hex is read", () => {
    expect(longHex("#ABCDEF")).toBe("#ABCDEF");
    expect(longHex("")).toBeUndefined();
    expect(longHex("#12345")).toBeUndefined();
  });
});

describe("patterns", () => {
  test.each(Object.entries(patterns(PALETTE.light, 20)))(
    "%s is a square with marks and gaps",
    (_, { width, height, data: pixels }) => {
      expect(width).toBe(height);
      expect(pixels).toHaveLength(width * height * 4);
      const alphas = Array.from({ length: width * height }, (_unused, i) => pixels[i * 4 + 3]!);
      expect(Math.max(...alphas)).toBeGreaterThan(60);
      expect(alphas.filter((alpha) => alpha === 0).length / alphas.length).toBeGreaterThan(0.4);
    },
  );

  test("bands lie across play, and meet themselves at the edges", () => {
    // Mown due north: every row is one shade, and the shade changes from row to row.
    const { width, height, data: pixels } = patterns(PALETTE.light, 0).bands;
    const alpha = (x: number, y: number) => pixels[(y * width + x) * 4 + 3]!;
    const rows = Array.from({ length: height }, (_, y) => alpha(0, y));
    expect(Array.from({ length: height }, (_, y) => alpha(width - 1, y))).toEqual(rows);
    expect(new Set(rows).size).toBeGreaterThan(2);
    const turned = patterns(PALETTE.light, 37).bands.data;
    const at = (x: number, y: number) => turned[(y * width + x) * 4 + 3]!;
    // A pixel's step is at most a ninth of a band, so neighbours across the seam differ no more than elsewhere.
    const step = (a: number, b: number) => Math.abs(a - b);
    const inner = Math.max(...Array.from({ length: height }, (_, y) => step(at(99, y), at(100, y))));
    expect(
      Math.max(...Array.from({ length: height }, (_, y) => step(at(width - 1, y), at(0, y)))),
    ).toBeLessThanOrEqual(inner * 1.3);
    expect(patterns(PALETTE.light, undefined).bands.data.every((value) => value === 0)).toBe(true);
  });

  test("a colour that is not #rrggbb is refused", () => {
    expect(channels("#0a10ff")).toEqual([10, 16, 255]);
    expect(() => channels("red")).toThrow("A pattern's colour is written #rrggbb, not red.");
  });
});

describe("names", () => {
  const labels = nameLabels(data.features, data.origin, data.tees[0]!.line);

  test("stand once each, hazards first in rank", () => {
    expect(labels.features.map(({ properties }) => properties.text).sort()).toEqual([
      "The Bay",
      "The Burn",
      "The Gully",
      "The Light",
      "The Road",
    ]);
    const rank = (text: string) => labels.features.find(({ properties }) => properties.text === text)!.properties.rank;
    expect(rank("The Gully")).toBeLessThan(rank("The Light"));
  });

  test("stand inside what they name", () => {
    const [longitude, latitude] = labels.features.find(({ properties }) => properties.text === "The Bay")!.geometry
      .coordinates;
    const ring = [
      [-400, -100],
      [-70, -100],
      [-70, 500],
      [-400, 500],
      [-400, -100],
    ] as const;
    expect(contains([ring], FRAME.toPlane([longitude!, latitude!]))).toBe(true);
  });

  test("of what is small stand beside it, of what is large within it", () => {
    const small = (text: string) =>
      labels.features.find(({ properties }) => properties.text === text)!.properties.small;
    expect(small("The Bay")).toBe(false);
    expect(small("The Light")).toBe(true);
  });

  test("know their side of the line of play; without a line they stand to the right", () => {
    const side = (made: typeof labels, text: string) =>
      made.features.find(({ properties }) => properties.text === text)!.properties.side;
    expect(side(labels, "The Bay")).toBe("left");
    expect(side(labels, "The Light")).toBe("right");
    expect(side(nameLabels(data.features, data.origin, undefined), "The Bay")).toBe("right");
  });

  test("of a line stand on its middle", () => {
    const [longitude, latitude] = labels.features.find(({ properties }) => properties.text === "The Burn")!.geometry
      .coordinates;
    const [x, y] = FRAME.toPlane([longitude!, latitude!]);
    expect(x).toBeCloseTo(0, 1);
    expect(y).toBeCloseTo(300, 1);
  });
});

describe("a tap on the course", () => {
  const course = courseData(measured, "yards", (hole) => `${hole}/`);
  const near = (x: number, y: number, within: number) => {
    const [longitude, latitude] = FRAME.toPosition([x, y]);
    return nearestHole(course, [longitude, latitude], within)?.number;
  };

  test("finds the hole whose line is near, and none further off", () => {
    expect(near(10, 200, 15)).toBe(7);
    expect(near(20, 200, 15)).toBeUndefined();
    expect(near(0, -10, 15)).toBe(7);
    expect(near(0, -20, 15)).toBeUndefined();
  });
});

describe("style sheet", () => {
  const namesIn = (file: string): Set<string> =>
    new Set(readFileSync(new URL(`../../${file}`, import.meta.url), "utf8").match(/\.maplibregl-[a-z-]+/g));

  // The library renames its classes from time to time, and its own sheet is not loaded.
  test("means the library's elements as its own sheet names them", () => {
    const own = namesIn("src/islands/map/live-map.css");
    expect(own.size).toBeGreaterThan(5);
    const library = namesIn("node_modules/maplibre-gl/dist/maplibre-gl.css");
    expect([...own].filter((name) => !library.has(name))).toEqual([]);
  });

  test("has a rule for each of them that no control, mark or attribution has", () => {
    const own = namesIn("src/islands/map/live-map.css");
    const others =
      /-(?:ctrl|control|popup|marker|user-location|attrib|logo|compact|track-pointer|touch|default|scale|globe|terrain|pseudo-fullscreen)/;
    const left = [...namesIn("node_modules/maplibre-gl/dist/maplibre-gl.css")].filter(
      (name) => !others.test(name) && !own.has(name),
    );
    expect(left).toEqual([]);
  });
});
