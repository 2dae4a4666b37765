/** Photos from the air, held to GDAL: a known pixel must come out at its place on earth. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Course, Orthophoto } from "../../src/course/types.ts";
import { coursePhoto, photoTile, provePhoto, type CoursePhoto } from "../../src/site/pictures/orthophoto.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { metresPerPixel, tileOf } from "../../src/terrain/web-mercator.ts";
import { pixelOn, tileBounds } from "../support/tiles.ts";
import { plant, withClub, writeInto } from "../fixtures/marked.ts";
import { gdal, scratch } from "../support/gdal.ts";
import { areaFeature, box, course, hole, lineFeature } from "../support/flat-course.ts";

const [folder, remove] = scratch();
beforeAll(() => {
  process.env["MARRAM_CACHE"] = join(folder, "cache");
});
afterAll(() => {
  delete process.env["MARRAM_CACHE"];
  remove();
});

/** UTM zone 29 about 9 degrees west, 56.5 north: 500,000 m east by definition. */
const UTM = "EPSG:32629";
const NORTHING = Number(gdal("gdaltransform", ["-s_srs", "EPSG:4326", "-t_srs", UTM], "-9 56.5\n").split(" ")[1]);
const [WEST, NORTH] = [499_900, Math.round(NORTHING) + 300];
const STEP = 0.5;
const [COLUMNS, ROWS] = [600, 800];
/** Marks of 3 by 3 pixels, by their middle one. */
const MARKS = [
  [120, 90],
  [310, 140],
  [480, 110],
  [150, 420],
  [300, 400],
  [455, 380],
  [130, 700],
  [290, 640],
  [470, 690],
] as const;

/** Dull green with red marks. */
async function picture(columns = COLUMNS, rows = ROWS): Promise<Buffer> {
  const red = await sharp({ create: { width: 3, height: 3, channels: 3, background: "#ff0000" } })
    .png()
    .toBuffer();
  return sharp({ create: { width: columns, height: rows, channels: 3, background: "#406030" } })
    .composite(MARKS.map(([x, y]) => ({ input: red, left: x - 1, top: y - 1 })))
    .removeAlpha()
    .png()
    .toBuffer();
}

/** By PROJ, from middles of pixels in the file's coordinates. */
function positionsOf(srs: string, points: readonly (readonly [number, number])[]): [number, number][] {
  const text = gdal(
    "gdaltransform",
    ["-s_srs", srs, "-t_srs", "EPSG:4326"],
    `${points.map(([x, y]) => `${x} ${y}`).join("\n")}\n`,
  );
  return text
    .trim()
    .split("\n")
    .map((line) => line.split(" ").slice(0, 2).map(Number) as [number, number]);
}
const MARK_POSITIONS = positionsOf(
  UTM,
  MARKS.map(([x, y]) => [WEST + (x + 0.5) * STEP, NORTH - (y + 0.5) * STEP]),
);

async function geoTiff(
  name: string,
  srs: string | undefined,
  ullr: readonly number[],
  extra: readonly string[] = [],
): Promise<string> {
  const png = join(folder, `${name}.png`);
  await writeFile(png, await picture());
  await mkdir(join(folder, "test/ground"), { recursive: true });
  const path = join(folder, "test/ground", name);
  gdal("gdal_translate", [
    "-q",
    "-of",
    "GTiff",
    ...(srs === undefined ? [] : ["-a_srs", srs]),
    ...(ullr.length === 0 ? [] : ["-a_ullr", ...ullr.map(String)]),
    ...extra,
    png,
    path,
  ]);
  return `test/ground/${name}`;
}
const ULLR = [WEST, NORTH, WEST + COLUMNS * STEP, NORTH - ROWS * STEP];

const place = { file: "test/course.yaml", line: 9, column: 12 };
/** A hole that lies over most of the picture. */
const courseWith = (orthophoto: Partial<Orthophoto> & { file: string }): Course =>
  course(
    [
      hole([
        lineFeature("line", "line-of-play", [
          [-60, -60],
          [140, 260],
        ]),
        areaFeature("green", "green", box(120, 240, 150, 270)),
      ]),
    ],
    { orthophoto: { crs: undefined, corners: undefined, place, ...orthophoto } },
  );

/** The middle of what is red on a tile near a place, in the tile's pixels. */
async function redNear(
  bytes: Uint8Array,
  [x, y]: readonly [number, number],
  reach: number,
): Promise<[number, number]> {
  const { data, info } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  let [sum, sumX, sumY] = [0, 0, 0];
  for (let j = Math.max(0, Math.floor(y - reach)); j < Math.min(info.height, y + reach); j++) {
    for (let i = Math.max(0, Math.floor(x - reach)); i < Math.min(info.width, x + reach); i++) {
      const at = (j * info.width + i) * 4;
      const redness = Math.max(0, data[at]! - data[at + 1]! - 20);
      [sum, sumX, sumY] = [sum + redness, sumX + redness * (i + 0.5), sumY + redness * (j + 0.5)];
    }
  }
  return [sumX / sum, sumY / sum];
}

async function marksAtTheirPlaces(one: Course): Promise<void> {
  const photo = (await coursePhoto(one, folder))!;
  let found = 0;
  for (const zoom of [17, photo.maximumZoom]) {
    for (const position of MARK_POSITIONS) {
      const tile = tileOf(position, zoom);
      const wanted = pixelOn(tile, position);
      // A mark cut by a tile's edge has no middle to compare.
      if (wanted.some((value) => value < 8 || value > 248)) continue;
      if (!photo.tiles.some(({ z, x, y }) => z === tile.z && x === tile.x && y === tile.y)) continue;
      const got = await redNear((await photoTile(one, folder, tile))!, wanted, 7);
      expect(Math.hypot(got[0] - wanted[0], got[1] - wanted[1]), `${zoom} ${position}`).toBeLessThan(1);
      found++;
    }
  }
  expect(found).toBeGreaterThan(7);
}

describe("a known pixel lands within a pixel of its place", () => {
  test("from a GeoTIFF in UTM", async () => {
    await marksAtTheirPlaces(courseWith({ file: await geoTiff("utm.tif", UTM, ULLR) }));
  });

  test("tiled and compressed by JPEG, as orthophotos come", async () => {
    await marksAtTheirPlaces(
      courseWith({
        file: await geoTiff("jpeg.tif", UTM, ULLR, [
          "-co",
          "TILED=YES",
          "-co",
          "COMPRESS=JPEG",
          "-co",
          "PHOTOMETRIC=YCBCR",
          "-co",
          "JPEG_QUALITY=95",
        ]),
      }),
    );
  });

  test("from one in geographic coordinates, made by GDAL's own warp", async () => {
    await geoTiff("source.tif", UTM, ULLR);
    gdal("gdalwarp", [
      "-q",
      "-overwrite",
      "-t_srs",
      "EPSG:4326",
      "-r",
      "cubic",
      join(folder, "test/ground/source.tif"),
      join(folder, "test/ground/degrees.tif"),
    ]);
    await marksAtTheirPlaces(courseWith({ file: "test/ground/degrees.tif" }));
  });

  test("that does not say its coordinates, given by the content", async () => {
    await marksAtTheirPlaces(courseWith({ file: await geoTiff("plain.tif", undefined, ULLR), crs: UTM }));
  });

  test("from a picture with its four corners", async () => {
    await writeInto(folder, "test/ground/air.png", await picture());
    const corners = positionsOf(UTM, [
      [ULLR[0]!, ULLR[1]!],
      [ULLR[2]!, ULLR[1]!],
      [ULLR[2]!, ULLR[3]!],
      [ULLR[0]!, ULLR[3]!],
    ]);
    await marksAtTheirPlaces(courseWith({ file: "test/ground/air.png", corners }));
  });

  test("from a picture turned a quarter, its corners in its own order", async () => {
    await writeInto(
      folder,
      "test/ground/turned.png",
      await sharp(await picture())
        .rotate(90)
        .png()
        .toBuffer(),
    );
    const [upperLeft, upperRight, lowerRight, lowerLeft] = positionsOf(UTM, [
      [ULLR[0]!, ULLR[1]!],
      [ULLR[2]!, ULLR[1]!],
      [ULLR[2]!, ULLR[3]!],
      [ULLR[0]!, ULLR[3]!],
    ]);
    // Turned clockwise, the old lower left is the new upper left.
    await marksAtTheirPlaces(
      courseWith({ file: "test/ground/turned.png", corners: [lowerLeft!, upperLeft!, upperRight!, lowerRight!] }),
    );
  });
});

describe("tiles", () => {
  let photo: CoursePhoto;
  let one: Course;
  beforeAll(async () => {
    one = courseWith({ file: await geoTiff("tiles.tif", UTM, ULLR) });
    photo = (await coursePhoto(one, folder))!;
  });

  test("go no finer than the photo's own pixels, and cover the course at every zoom", () => {
    // 0.5 m pixels: zoom 18 has 0.33 m at this latitude, zoom 17 0.66 m.
    expect(photo.source.metresPerPixel).toBeCloseTo(STEP, 2);
    expect([photo.minimumZoom, photo.maximumZoom]).toEqual([14, 18]);
    expect(metresPerPixel(56.5, 17)).toBeGreaterThan(STEP);
    for (let zoom = 14; zoom <= 18; zoom++) {
      const covered = photo.tiles.filter(({ z }) => z === zoom).map(tileBounds);
      expect(Math.min(...covered.map(([west]) => west))).toBeLessThanOrEqual(photo.bounds[0]);
      expect(Math.max(...covered.map(([, , east]) => east))).toBeGreaterThanOrEqual(photo.bounds[2]);
    }
  });

  test("are 256 pixels wide WebP, clear where the photo has nothing, of the photo's colour where it has", async () => {
    const wide = photo.tiles.find(({ z }) => z === 14)!;
    const bytes = (await photoTile(one, folder, wide))!;
    expect(await sharp(bytes).metadata()).toMatchObject({ format: "webp", width: 256, height: 256 });
    const { data } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const opacities = new Set<number>();
    for (let i = 3; i < data.length; i += 4) opacities.add(data[i]! > 200 ? 255 : data[i]! < 50 ? 0 : 128);
    expect(opacities.has(0) && opacities.has(255)).toBe(true);
    const middle = tileOf([-9, 56.5005], 18);
    const {
      data: [red, green, blue],
    } = await sharp(await photoTile(one, folder, middle))
      .resize(1, 1)
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    for (const [got, wanted] of [
      [red, 0x40],
      [green, 0x60],
      [blue, 0x30],
    ] as const)
      expect(Math.abs(got! - wanted)).toBeLessThan(12);
  });

  test("are the same bytes again, and not made again", async () => {
    const tile = tileOf([-9, 56.5005], 18);
    const first = await photoTile(one, folder, tile);
    process.env["MARRAM_CACHE"] = join(folder, "other");
    try {
      expect(await photoTile(courseWith({ file: one.orthophoto!.file }), folder, tile)).toEqual(first);
    } finally {
      process.env["MARRAM_CACHE"] = join(folder, "cache");
    }
  });

  test("declared nodata is clear", async () => {
    const nodata = courseWith({
      file: await geoTiff("nodata.tif", UTM, ULLR, ["-scale", "64", "64", "0", "0", "-ot", "Byte", "-a_nodata", "0"]),
    });
    const { data } = await sharp(await photoTile(nodata, folder, tileOf([-9, 56.5005], 17)))
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(data.filter((_, i) => i % 4 === 3).every((opacity) => opacity === 0)).toBe(true);
  });
});

describe("a photo that cannot be used", () => {
  const told = async (one: Course): Promise<string> =>
    provePhoto(one, folder).then(
      () => "used",
      (error: Error) => error.message,
    );

  test("is told in words", async () => {
    await writeInto(folder, "test/ground/bare.png", await picture());
    await writeInto(folder, "test/ground/text.tif", "not a picture");
    const whole = await readFile(
      join(folder, await geoTiff("whole.tif", UTM, ULLR, ["-co", "COMPRESS=DEFLATE", "-co", "TILED=YES"])),
    );
    await writeInto(
      folder,
      "test/ground/cut.tif",
      Buffer.concat([whole.subarray(0, 600), Buffer.alloc(whole.length - 1200, 3), whole.subarray(-600)]),
    );
    const corners: [number, number][] = [
      [-8.5, 56.51],
      [-8.49, 56.51],
      [-8.49, 56.5],
      [-8.5, 56.5],
    ];
    const cases: Course[] = [
      courseWith({ file: "test/ground/bare.png" }),
      courseWith({ file: "test/ground/text.tif" }),
      courseWith({ file: "test/ground/cut.tif" }),
      courseWith({
        file: await geoTiff("bands.tif", UTM, ULLR, ["-b", "1", "-b", "2", "-b", "3", "-b", "1", "-b", "2"]),
      }),
      courseWith({ file: await geoTiff("nowhere.tif", undefined, []) }),
      courseWith({ file: await geoTiff("unnamed.tif", undefined, ULLR) }),
      courseWith({ file: "test/ground/bare.png", corners }),
    ];
    expect(await Promise.all(cases.map(told))).toMatchInlineSnapshot(`
      [
        "test/ground/bare.png does not say where on earth it lies. Write its corners, clockwise from the upper left: photo: { file: ground/bare.png, corners: [[-9.01, 56.51], [-8.99, 56.51], [-8.99, 56.50], [-9.01, 56.50]] }, or give a GeoTIFF.",
        "test/ground/text.tif cannot be read as a picture. Export it again as a GeoTIFF with red, green and blue, or as JPEG.",
        "test/ground/cut.tif cannot be read to its end: it is damaged, or compressed in a way the guide does not know. Export it again as a GeoTIFF compressed by JPEG or deflate.",
        "test/ground/bands.tif has 5 bands: expected red, green and blue, and perhaps transparency. Export those alone.",
        "test/ground/nowhere.tif: does not say where on earth it lies. Export it again as a GeoTIFF with its georeference kept (a plain TIFF, or one with a separate world file, will not do).",
        "test/ground/unnamed.tif: does not say which coordinates it is in. Write it with the photo in course.yaml, photo: { file: ..., crs: ... }: crs: "EPSG:32629" for a UTM zone, or the proj string of your national grid, such as crs: "+proj=tmerc +lat_0=53.5 +lon_0=-8 +k=0.99982 +x_0=600000 +y_0=750000 +ellps=GRS80".",
        "test/ground/bare.png does not lie on the course: nothing of it is between [-9.0026, 56.4986] and [-8.9959, 56.5033]. Give the sheet that covers the course, or correct its corners.",
      ]
    `);
  });

  test("is a mistake where course.yaml names it, and the same run tells the others", async () => {
    await withClub(async (content) => {
      await writeInto(content, "course-1/ground/air.png", await picture());
      const expected = await plant(content, [
        { file: "course-1/course.yaml", from: "defaultTee:", to: "ground: { photo: ¶ground/air.png }\ndefaultTee:" },
      ]);
      const { guide, diagnostics } = await loadGuide(content);
      expect(guide).toBeUndefined();
      expect(diagnostics.map(({ file, line, column, rule }) => [`${file}:${line}:${column}`, rule])).toEqual([
        [expected[0], "photo-from-the-air"],
      ]);
    });
  });
});
