/**
 * Height files as GDAL writes them, in several coordinates. What stands where in a file is
 * worked out by GDAL (PROJ), so proj4, the georeference and the frame are held to it too.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { frameAt } from "../../src/geo/frame.ts";
import type { Point, Position } from "../../src/geo/position.ts";
import { type HeightsOptions, HeightsError, readHeights } from "../../src/read/heights.ts";
import { boundsOf } from "../../src/terrain/grid.ts";
import { heightAt } from "../../src/terrain/sample.ts";
import { type RasterToWrite, gdal, scratch, writeGeoTiff } from "../support/gdal.ts";

const frame = frameAt([-9, 56.5]);
const bounds = { west: -60, south: -50, east: 60, north: 50 };
const [folder, remove] = scratch();
afterAll(remove);

const IRISH_LIKE =
  "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80 +units=m +no_defs";
/** A national grid on an older ellipsoid, its datum tied to WGS 84 by seven parameters. */
const AIRY_GRID =
  "+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy +towgs84=446.448,-125.157,542.06,0.15,0.247,0.842,-20.489 +units=m +no_defs";

/** Rolling ground, gentle enough that two metres between heights lose nothing that matters. */
const ground = ([x, y]: Point): number => 30 + 0.05 * x + 6 * Math.sin(x / 40) * Math.cos(y / 50);

interface Making {
  readonly srs: string;
  /** Step in the file's own unit. */
  readonly step: number;
  readonly samples?: number;
  readonly value?: (point: Point, height: number) => number;
  readonly more?: Partial<RasterToWrite>;
  /** Middle of the file, degrees. */
  readonly about?: Position;
}

/** Where the samples of one layout stand, worked out once. */
const layouts = new Map<string, { west: number; north: number; points: Point[] }>();

/** Writes a file of the ground about the origin and returns its path. */
function make(
  name: string,
  { srs, step, samples = 120, value = (_, height) => height, more = {}, about = [-9, 56.5] }: Making,
): string {
  const stepX = srs === "EPSG:4326" ? step / Math.cos((56.5 * Math.PI) / 180) : step;
  const key = JSON.stringify([srs, step, samples, about]);
  const layout = layouts.get(key) ?? layOut(srs, stepX, step, samples, about);
  layouts.set(key, layout);
  const values = layout.points.map((point) => value(point, ground(point)));
  const path = join(folder, `${name}.tif`);
  writeGeoTiff(path, {
    columns: samples,
    rows: samples,
    samples: values,
    west: layout.west,
    north: layout.north,
    stepX,
    stepY: step,
    srs,
    ...more,
  });
  return path;
}

function layOut(
  srs: string,
  stepX: number,
  step: number,
  samples: number,
  about: Position,
): { west: number; north: number; points: Point[] } {
  const transform = (from: string, to: string, places: readonly (readonly number[])[]): number[][] =>
    gdal(
      "gdaltransform",
      ["-s_srs", from, "-t_srs", to, "-output_xy"],
      places.map((place) => place.join(" ")).join("\n"),
    )
      .trim()
      .split("\n")
      .map((line) => line.split(" ").map(Number));
  const lonLat = "+proj=longlat +datum=WGS84";
  const degrees = srs === "EPSG:4326";
  const [x0, y0] = degrees ? about : (transform(lonLat, srs, [[about[0], about[1]]])[0] as [number, number]);
  const [west, north] = [x0 - (samples / 2) * stepX, y0 + (samples / 2) * step];
  const places: [number, number][] = [];
  for (let row = 0; row < samples; row++) {
    for (let column = 0; column < samples; column++)
      places.push([west + (column + 0.5) * stepX, north - (row + 0.5) * step]);
  }
  const positions = degrees ? places : transform(srs, lonLat, places);
  return { west, north, points: positions.map(([longitude, latitude]) => frame.toPlane([longitude!, latitude!])) };
}

const options = (more: Partial<HeightsOptions> = {}): HeightsOptions => ({
  file: "ground/height.tif",
  frame,
  bounds,
  marginMetres: 20,
  ...more,
});

const somePoints: Point[] = Array.from({ length: 300 }, (_, k) => [
  -58 + ((k * 0.7548776662) % 1) * 116,
  -48 + ((k * 0.569840291) % 1) * 96,
]);

async function worstOf(path: string, more: Partial<HeightsOptions> = {}): Promise<number> {
  const { grid } = await readHeights(path, options(more));
  return Math.max(
    ...somePoints.map((point) => Math.abs((heightAt(grid, point, "bicubic") ?? Infinity) - ground(point))),
  );
}

describe("readHeights", () => {
  it.each([
    ["UTM zone 29", { srs: "EPSG:32629", step: 2 }, undefined],
    ["degrees", { srs: "EPSG:4326", step: 2 / 111_000 }, undefined],
    ["Web Mercator", { srs: "EPSG:3857", step: 3 }, undefined],
    ["ETRS89 UTM zone 29", { srs: "EPSG:25829", step: 2 }, undefined],
    ["a national grid by its proj string", { srs: IRISH_LIKE, step: 2 }, IRISH_LIKE],
    ["a national grid on another datum", { srs: AIRY_GRID, step: 2 }, AIRY_GRID],
  ] as const)("puts each height where it belongs, to 1 mm: %s", async (name, making, crs) => {
    const path = make(name.replaceAll(" ", "-"), making);
    expect(await worstOf(path, { crs })).toBeLessThan(0.001);
  });

  it("keeps the file's own step and covers the course with its margin, no more", async () => {
    const read = await readHeights(make("step", { srs: "EPSG:32629", step: 2 }), options());
    expect(read.grid.stepMetres).toBe(2);
    expect(read.fileStepMetres).toBeCloseTo(2, 2);
    expect(boundsOf(read.grid)).toEqual({ west: -80, south: -70, east: 80, north: 70 });
    expect(read.crs).toBe("EPSG:32629");
    expect(read.unknownShare).toBe(0);
    expect(read.notes).toEqual([]);
  });

  it("takes a step and a sampling that are asked for, and widens a step that is too fine to hold", async () => {
    const path = join(folder, "step.tif");
    expect((await readHeights(path, options({ stepMetres: 5 }))).grid.stepMetres).toBe(5);
    const few = await readHeights(path, options({ mostHeights: 1000 }));
    expect(few.grid.columns * few.grid.rows).toBeLessThan(1100);
    expect(few.notes).toEqual([expect.stringContaining("it is kept at")]);
    const bilinear = await readHeights(path, options({ stepMetres: 1, sampling: "bilinear" }));
    const bicubic = await readHeights(path, options({ stepMetres: 1 }));
    expect(bilinear.grid.heights).not.toEqual(bicubic.grid.heights);
  });

  it.each([
    [
      "tiled, deflated floats",
      {
        extra: [
          "-co",
          "TILED=YES",
          "-co",
          "BLOCKXSIZE=64",
          "-co",
          "BLOCKYSIZE=64",
          "-co",
          "COMPRESS=DEFLATE",
          "-co",
          "PREDICTOR=3",
        ],
      },
    ],
    ["LZW strips", { extra: ["-co", "COMPRESS=LZW", "-co", "PREDICTOR=2"] }],
    ["big-endian", { extra: ["-co", "ENDIANNESS=BIG"] }],
    ["a BigTIFF", { extra: ["-co", "BIGTIFF=YES"] }],
    ["doubles", { type: "Float64" }],
    ["pixels that are points", { extra: ["-mo", "AREA_OR_POINT=Point"] }],
  ] as const)("reads %s", async (name, more) => {
    const path = make(name.replaceAll(/[ ,]+/g, "-"), { srs: "EPSG:32629", step: 2, more });
    expect(await worstOf(path)).toBeLessThan(0.001);
  });

  it("reads 16-bit whole numbers, tiled: whole metres to half a metre, and centimetres by scale and offset to 1 cm", async () => {
    const tiled = ["-co", "TILED=YES", "-co", "BLOCKXSIZE=32", "-co", "BLOCKYSIZE=32"];
    const whole = make("int16", {
      srs: "EPSG:32629",
      step: 2,
      value: (_, height) => Math.round(height),
      more: { type: "Int16", extra: tiled },
    });
    const worst = await worstOf(whole, { sampling: "bilinear" });
    expect(worst).toBeLessThan(0.6);
    expect(worst).toBeGreaterThan(0.2);
    const scaled = make("scaled", {
      srs: "EPSG:32629",
      step: 2,
      value: (_, height) => Math.round((height - 10) * 100),
      more: { type: "Int16", extra: [...tiled, "-a_scale", "0.01", "-a_offset", "10"] },
    });
    expect(await worstOf(scaled)).toBeLessThan(0.015);
  });

  it("reads a turned raster by its full transformation", async () => {
    const plain = make("plain", { srs: "EPSG:32629", step: 2, samples: 4 });
    const [x, y] = gdal(
      "gdaltransform",
      ["-s_srs", "+proj=longlat +datum=WGS84", "-t_srs", "EPSG:32629", "-output_xy"],
      "-9 56.5",
    )
      .trim()
      .split(" ")
      .map(Number);
    const vrt = join(folder, "turned.vrt");
    gdal("gdal_translate", ["-q", "-of", "VRT", "-a_nodata", "none", plain, vrt]);
    // 2 m steps turned by 30 degrees, 4 by 4 samples about the origin: x = ox + c i + s j.
    const [c, s] = [2 * Math.cos(Math.PI / 6), 2 * Math.sin(Math.PI / 6)];
    const text = gdal("gdal_translate", ["-q", "-of", "VRT", plain, "/vsistdout/"])
      .replace(
        /<GeoTransform>.*<\/GeoTransform>/,
        `<GeoTransform>${x! - 2 * c - 2 * s}, ${c}, ${s}, ${y! - 2 * s + 2 * c}, ${s}, ${-c}</GeoTransform>`,
      )
      .replace(/relativeToVRT="\d">[^<]*</, `relativeToVRT="0">${plain}<`);
    writeFileSync(vrt, text);
    const turned = join(folder, "turned.tif");
    gdal("gdal_translate", ["-q", vrt, turned]);
    const printed = Number(gdal("gdallocationinfo", ["-valonly", plain, "1", "1"]));
    // Sample (1, 1) is half a step back along both turned axes from the origin.
    const at: Point = [-c / 2 - s / 2, -s / 2 + c / 2];
    const { grid } = await readHeights(
      turned,
      options({
        bounds: { west: at[0], south: at[1] - 0.1, east: at[0] + 0.1, north: at[1] },
        marginMetres: 0,
        stepMetres: 0.1,
        sampling: "bilinear",
      }),
    );
    expect(grid.heights[0]).toBeCloseTo(printed, 2);
  });

  it("finds a file counted from 0 to 360 degrees", async () => {
    const path = make("degrees-0", { srs: "EPSG:4326", step: 2 / 111_000 });
    const info = JSON.parse(gdal("gdalinfo", ["-json", path])) as { geoTransform: number[]; size: number[] };
    const [west, dx, , north, , dy] = info.geoTransform as [number, number, number, number, number, number];
    const moved = join(folder, "degrees-360.tif");
    gdal("gdal_translate", [
      "-q",
      "-a_ullr",
      ...[west + 360, north, west + 360 + dx * info.size[0]!, north + dy * info.size[1]!].map(String),
      path,
      moved,
    ]);
    expect(await worstOf(moved)).toBeLessThan(0.001);
  });
});

describe("unknown ground", () => {
  const pond =
    (radius: number) =>
    (point: Point, height: number): number =>
      Math.hypot(point[0] - 10, point[1] - 5) < radius ? -32768 : height;

  it("is filled in a small gap, from its rim", async () => {
    const path = make("small-gap", { srs: "EPSG:32629", step: 2, value: pond(4.5), more: { nodata: -32768 } });
    const read = await readHeights(path, options());
    expect(read.gapsFilled).toBe(1);
    expect(read.unknownShare).toBe(0);
    expect(Math.abs(heightAt(read.grid, [10, 5])! - ground([10, 5]))).toBeLessThan(0.1);
  });

  it("stays unknown in a large one, and the ground about it stands", async () => {
    const path = make("large-gap", { srs: "EPSG:32629", step: 2, value: pond(15), more: { nodata: -32768 } });
    const read = await readHeights(path, options());
    expect(read.gapsFilled).toBe(0);
    expect(heightAt(read.grid, [10, 5])).toBeUndefined();
    expect(heightAt(read.grid, [40, 5])).toBeCloseTo(ground([40, 5]), 2);
    const area = (Math.PI * 15 ** 2) / (160 * 140);
    expect(read.unknownShare).toBeGreaterThan(area);
    expect(read.unknownShare).toBeLessThan(area * 1.5);
    expect((await readHeights(path, options({ gapMetres: 40 }))).gapsFilled).toBe(1);
    expect((await readHeights(join(folder, "small-gap.tif"), options({ gapMetres: 4 }))).gapsFilled).toBe(0);
  });

  it("is not filled where it is open to the edge, such as the sea", async () => {
    const path = make("sea", {
      srs: "EPSG:32629",
      step: 2,
      value: ([x], height) => (x < -40 ? -32768 : height),
      more: { nodata: -32768 },
    });
    const read = await readHeights(path, options());
    expect(read.gapsFilled).toBe(0);
    expect(heightAt(read.grid, [-50, 0])).toBeUndefined();
  });

  it.each([
    ["a float's lowest number", -3.4028234663852886e38, "Float32"],
    ["NaN", NaN, "Float32"],
    ["a whole number", -9999, "Int16"],
  ] as const)("is recognised by %s", async (name, nodata, type) => {
    const path = make(`nodata-${name.replaceAll(/[ ']/g, "-")}`, {
      srs: "EPSG:32629",
      step: 2,
      value: (point, height) => (pond(15)(point, 0) === -32768 ? nodata : height),
      more: { nodata, type },
    });
    const read = await readHeights(path, options());
    expect(heightAt(read.grid, [10, 5])).toBeUndefined();
    expect(heightAt(read.grid, [40, 5])).toBeDefined();
    expect(read.notes).toEqual([]);
  });

  it("is guessed, and said, where the file marks it and does not declare the mark", async () => {
    const path = make("undeclared", {
      srs: "EPSG:32629",
      step: 2,
      value: (point, height) => (pond(15)(point, 0) === -32768 ? -9999 : height),
    });
    const read = await readHeights(path, options());
    expect(heightAt(read.grid, [10, 5])).toBeUndefined();
    expect(read.notes).toEqual([expect.stringMatching(/^\d+ heights are impossible \(such as -9999\)/)]);
  });
});

describe("cover", () => {
  it("is partial: said, and the rest stays unknown", async () => {
    const path = make("partial", { srs: "EPSG:32629", step: 2, samples: 50 });
    const read = await readHeights(path, options());
    expect(read.notes).toEqual(["Covers 81 % of the ground about the course; the rest stays unknown."]);
    expect(heightAt(read.grid, [0, 0])).toBeCloseTo(ground([0, 0]), 2);
    expect(heightAt(read.grid, [75, 65])).toBeUndefined();
  });

  it("must reach every position that needs ground", async () => {
    const outside = frame.toPosition([70, 10]);
    await expect(
      readHeights(join(folder, "partial.tif"), options({ positions: [frame.toPosition([0, 0]), outside] })),
    ).rejects.toThrowErrorMatchingInlineSnapshot(
      `[HeightsError: ground/height.tif: does not cover the whole course: 1 of 2 positions lie off it, one at 56.5001 N, 8.9989 W. Give a file that reaches further, or take ground out of course.yaml to build without heights.]`,
    );
    await expect(
      readHeights(join(folder, "partial.tif"), options({ positions: [frame.toPosition([45, 10])] })),
    ).resolves.toBeDefined();
  });

  it("elsewhere is an error that names both places", async () => {
    const path = make("elsewhere", { srs: "EPSG:32629", step: 2, samples: 40, about: [-8.5, 56.2] });
    await expect(readHeights(path, options())).rejects.toThrowErrorMatchingInlineSnapshot(
      `[HeightsError: ground/height.tif: does not cover the course: read as EPSG:32629 it lies about 56.2000 N, 8.5000 W, and the course about 56.5000 N, 9.0000 W. Give the file for the course's place; if it is the right file, its coordinates are named wrongly: add crs: "EPSG:..." or crs: "+proj=..." to ground in course.yaml.]`,
    );
  });

  it("by a wrong crs is the same error", async () => {
    await expect(readHeights(join(folder, "step.tif"), options({ crs: "EPSG:32630" }))).rejects.toThrow(
      /read as EPSG:32630 it lies about .* named wrongly: add crs/,
    );
  });

  it("of nothing but nodata is an error", async () => {
    const path = make("void", { srs: "EPSG:32629", step: 2, value: () => -1, more: { nodata: -1 } });
    await expect(readHeights(path, options())).rejects.toThrowErrorMatchingInlineSnapshot(
      `[HeightsError: ground/height.tif: holds no heights about the course: all is nodata there. Give a file whose data covers the course.]`,
    );
  });
});

describe("one height everywhere", () => {
  it("is no survey, with gaps or without", async () => {
    const path = make("filled-up", {
      srs: "EPSG:32629",
      step: 2,
      value: ([x]) => (x < -40 ? -1 : 0),
      more: { nodata: -1 },
    });
    await expect(readHeights(path, options())).rejects.toThrowErrorMatchingInlineSnapshot(
      `[HeightsError: ground/height.tif: holds one and the same height everywhere about the course (0): it was made without data. Export it again, or take ground out of course.yaml to build without heights.]`,
    );
  });
});

describe("the unit of height", () => {
  const written = (offset = 0): Position[] =>
    somePoints.slice(0, 12).map((point) => {
      const [longitude, latitude] = frame.toPosition(point);
      return [longitude, latitude, ground(point) + offset];
    });
  const feet = (_: Point, height: number): number => height / 0.3048;
  let inFeet: string;
  beforeAll(() => {
    inFeet = make("feet", { srs: "EPSG:32629", step: 2, value: feet });
  });

  it("is refused when the written heights show that it is feet and the file does not say so", async () => {
    await expect(readHeights(inFeet, options({ positions: written() }))).rejects.toThrowErrorMatchingInlineSnapshot(
      `[HeightsError: ground/height.tif: seems to hold feet: at 12 positions of the course its heights vary 3.28 times as much as the heights written there in metres, and the file names no unit. Add crs: "+vunits=ft" (or "+vunits=us-ft") to ground in course.yaml; if it does hold metres, correct the written heights or say crs: "+vunits=m".]`,
    );
  });

  it("is refused through a constant between the two surveys, such as a geoid's 57 m", async () => {
    await expect(readHeights(inFeet, options({ positions: written(57) }))).rejects.toThrow("seems to hold feet");
  });

  it("raises no alarm over metres, over few or level places, or over noise", async () => {
    const metres = join(folder, "step.tif");
    await expect(readHeights(metres, options({ positions: written(57) }))).resolves.toMatchObject({
      metresPerHeightUnit: 1,
    });
    await expect(readHeights(inFeet, options({ positions: written().slice(0, 3) }))).resolves.toBeDefined();
    const level = written().map(([x, y], k): Position => [x, y, 30 + 0.1 * k]);
    await expect(readHeights(inFeet, options({ positions: level }))).resolves.toBeDefined();
    const noise = written().map(([x, y], k): Position => [x, y, 30 + ((k * 7) % 5) * 3]);
    await expect(readHeights(inFeet, options({ positions: noise }))).resolves.toBeDefined();
  });

  it.each([
    ["+vunits=ft", undefined],
    ["EPSG:32629 +vunits=ft", undefined],
    [undefined, ["-mo", "x=y"]],
  ])("is taken from crs %s or the file", async (crs, extra) => {
    const stated = crs ?? undefined;
    const path = stated ? inFeet : statedFeet(extra!);
    const worst = await worstOf(path, { crs: stated, positions: written() });
    expect(worst).toBeLessThan(0.001);
  });

  /** The band's unit is set in a VRT, which gdal_translate then writes as GDAL metadata. */
  function statedFeet(extra: readonly string[]): string {
    const vrt = join(folder, "stated.vrt");
    const text = gdal("gdal_translate", ["-q", "-of", "VRT", ...extra, inFeet, "/vsistdout/"])
      .replace(/(<VRTRasterBand [^>]*>)/, "$1<UnitType>ft</UnitType>")
      .replace(/relativeToVRT="\d">[^<]*</, `relativeToVRT="0">${inFeet}<`);
    writeFileSync(vrt, text);
    const path = join(folder, "stated.tif");
    gdal("gdal_translate", ["-q", vrt, path]);
    return path;
  }

  it("is read from the file's compound coordinates: UTM and heights in US survey feet", async () => {
    const path = make("compound", {
      srs: "EPSG:32629",
      step: 2,
      value: (_, height) => (height * 3937) / 1200,
      more: { extra: ["-a_srs", "EPSG:32629+6360"] },
    });
    const read = await readHeights(path, options({ positions: written() }));
    expect(read.metresPerHeightUnit).toBeCloseTo(1200 / 3937, 12);
    expect(await worstOf(path)).toBeLessThan(0.001);
  });

  it("is refused when PROJ has no such unit", async () => {
    await expect(readHeights(inFeet, options({ crs: "+vunits=fathom" }))).rejects.toThrow(
      "Write +vunits=m, +vunits=ft or +vunits=us-ft",
    );
  });
});

describe("a file that cannot be used", () => {
  const refusal = async (path: string, more: Partial<HeightsOptions> = {}): Promise<string> => {
    const error: unknown = await readHeights(path, options(more)).catch((reason: unknown) => reason);
    expect(error).toBeInstanceOf(HeightsError);
    return (error as HeightsError).message;
  };

  it("is missing", async () => {
    expect(await refusal(join(folder, "none.tif"))).toMatchInlineSnapshot(
      `"ground/height.tif: there is no such file. Put the GeoTIFF there, correct heights under ground in course.yaml, or take ground out to build without heights."`,
    );
  });

  it("is no TIFF", async () => {
    const path = join(folder, "text.tif");
    writeFileSync(path, "heights, but written down\n".repeat(20));
    expect(await refusal(path)).toMatch(
      /^ground\/height.tif: cannot be read as a GeoTIFF .* Export the heights again/,
    );
  });

  it("is a picture", async () => {
    const path = join(folder, "picture.tif");
    gdal("gdal_translate", ["-q", "-ot", "Byte", "-b", "1", "-b", "1", "-b", "1", join(folder, "step.tif"), path]);
    expect(await refusal(path)).toMatchInlineSnapshot(
      `"ground/height.tif: has 3 bands: it looks like a picture, not heights. Give the single-band elevation file (a picture of the ground does not go under heights)."`,
    );
  });

  it("has no place", async () => {
    const path = join(folder, "nowhere.tif");
    gdal("gdal_translate", ["-q", "-co", "PROFILE=BASELINE", join(folder, "step.tif"), path]);
    expect(await refusal(path)).toMatchInlineSnapshot(
      `"ground/height.tif: does not say where on earth it lies. Export it again as a GeoTIFF with its georeference kept (a plain TIFF, or one with a separate world file, will not do)."`,
    );
  });

  it("does not name its coordinates", async () => {
    const path = make("unnamed", { srs: "EPSG:32629", step: 2, samples: 4, more: { srs: undefined } });
    expect(await refusal(path)).toMatchInlineSnapshot(
      `"ground/height.tif: does not say which coordinates it is in. Add crs to ground in course.yaml: crs: "EPSG:32629" for a UTM zone, or the proj string of your national grid, such as crs: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80"."`,
    );
  });

  it("defines its own", async () => {
    expect(await refusal(join(folder, "a-national-grid-by-its-proj-string.tif"))).toMatch(
      "instead of naming them by an EPSG code",
    );
  });

  it("is in coordinates that are not built in", async () => {
    const path = make("code", { srs: "EPSG:2157", step: 2, samples: 4 });
    expect(await refusal(path)).toMatchInlineSnapshot(
      `"ground/height.tif: is in EPSG:2157, whose definition is not built in. Look up its PROJ string (projinfo -o PROJ EPSG:2157 prints it) and add it to ground in course.yaml: crs: "+proj=..."."`,
    );
    expect(await refusal(path, { crs: "EPSG:2157" })).toMatch(/crs says EPSG:2157, whose definition is not built in/);
  });

  it("is given a crs that is none, or that needs a file", async () => {
    const path = join(folder, "step.tif");
    expect(await refusal(path, { crs: "UTM 29" })).toMatchInlineSnapshot(
      `"ground/height.tif: crs says "UTM 29", which is neither an EPSG code nor a proj string. Write crs: "EPSG:32629" for a UTM zone, or the proj string of your national grid, such as crs: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80"."`,
    );
    expect(await refusal(path, { crs: "+proj=tmerc +lat_0=49 +lon_0=-2 +ellps=airy +nadgrids=shift.gsb" })).toMatch(
      "asks for a shift grid (+nadgrids)",
    );
    expect(await refusal(path, { crs: "+proj=nonsense" })).toMatch("cannot be computed");
  });

  it("is cut short", async () => {
    const whole = readFileSync(
      make("whole", { srs: "EPSG:32629", step: 2, more: { extra: ["-co", "COMPRESS=DEFLATE"] } }),
    );
    const path = join(folder, "cut.tif");
    writeFileSync(path, whole.subarray(0, whole.length / 2));
    expect(await refusal(path)).toMatch(/ground\/height.tif: .*(copy it again|Export the heights again)/i);
  });
});
