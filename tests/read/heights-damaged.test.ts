/**
 * Height files that are not what they say: none may come out as level ground, and none costs more than its
 * header allows.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deflateSync, zstdCompressSync } from "node:zlib";
import { afterAll, describe, expect, it } from "vitest";
import { readAll } from "../faults/height-files.ts";
import { scratch, writeGeoTiff } from "../support/gdal.ts";
import { tiffBytes, type TiffToWrite } from "../support/tiff.ts";

const [folder, remove] = scratch();
afterAll(remove);

const [COLUMNS, ROWS, STRIP] = [40, 30, 10];
const heights = Float32Array.from(
  { length: COLUMNS * ROWS },
  (_, i) => 12 + 0.37 * (i % COLUMNS) + 0.21 * Math.floor(i / COLUMNS),
);
const strips = [0, 1, 2].map((k) => Buffer.from(heights.buffer, k * STRIP * COLUMNS * 4, STRIP * COLUMNS * 4));
const plain: TiffToWrite = { columns: COLUMNS, rows: ROWS, rowsPerStrip: STRIP, strips };

let made = 0;
function read(bytes: Uint8Array): ReturnType<typeof readAll> {
  const path = join(folder, `${made++}.tif`);
  writeFileSync(path, bytes);
  return readAll(path);
}

const REMEDY =
  /^ground\/height\.tif: .* ([Cc]opy it again, or export it again|Export the heights again|Export it again)/;

async function refusal(bytes: Uint8Array): Promise<string> {
  const outcome = await read(bytes);
  expect(outcome).toEqual(expect.stringMatching(REMEDY));
  return String(outcome);
}

const packed = (compression: number, pack: (strip: Buffer) => Buffer, more: Partial<TiffToWrite> = {}): Buffer =>
  tiffBytes({ ...plain, compression, strips: strips.map(pack), ...more });

const PACKS: readonly (readonly [name: string, compression: number, pack: (strip: Buffer) => Buffer])[] = [
  ["deflate", 8, (strip) => deflateSync(strip)],
  ["ZSTD", 50000, (strip) => zstdCompressSync(strip)],
  ["no packing", 1, (strip) => strip],
];

describe("a whole file", () => {
  it.each(PACKS)("is read by %s", async (_, compression, pack) => {
    expect(await read(packed(compression, pack))).toMatchObject({ heights });
  });

  it.each(["LZW", "PACKBITS", "ZSTD", "DEFLATE", "NONE"])(
    "is read as GDAL packs it by %s, in strips, tiles, and with each predictor",
    async (name) => {
      for (const [cut, predictor, type] of [
        [[], 1, "Float32"],
        [["-co", "TILED=YES", "-co", "BLOCKXSIZE=16", "-co", "BLOCKYSIZE=16"], 3, "Float32"],
        [["-co", "BLOCKYSIZE=7"], 2, "Int16"],
      ] as const) {
        const path = join(folder, `gdal-${made++}.tif`);
        const predicted = ["LZW", "ZSTD", "DEFLATE"].includes(name) ? ["-co", `PREDICTOR=${predictor}`] : [];
        // More than 4,096 different codes, so that LZW's table fills and starts anew.
        const samples = Float32Array.from({ length: 120 * 100 }, (_, i) =>
          type === "Int16" ? (i * 7919) % 3001 : 40 + 30 * Math.sin(i),
        );
        writeGeoTiff(path, {
          columns: 120,
          rows: 100,
          samples,
          west: 5e5,
          north: 6e6,
          stepX: 1,
          stepY: 1,
          srs: "EPSG:32629",
          type,
          extra: ["-co", `COMPRESS=${name}`, ...cut, ...predicted],
        });
        expect(await readAll(path)).toMatchObject({ columns: 120, heights: samples });
      }
    },
  );
});

describe("refused, with a remedy", () => {
  it.each(PACKS)("%s: a file cut short anywhere", async (_, compression, pack) => {
    const whole = packed(compression, pack);
    for (const share of [0.1, 0.3, 0.6, 0.9, 0.999])
      await refusal(whole.subarray(0, Math.floor(whole.length * share)));
  });

  it.each(PACKS)("%s: a strip that holds fewer lines than it must", async (_, compression, pack) => {
    await refusal(
      tiffBytes({ ...plain, compression, strips: [strips[0]!, strips[1]!.subarray(0, -8), strips[2]!].map(pack) }),
    );
  });

  it("a strip that unpacks to more than its header says, before it is unpacked", async () => {
    const bomb = Buffer.alloc(200e6);
    const before = process.memoryUsage().arrayBuffers;
    for (const [compression, strip] of [
      [8, deflateSync(bomb)],
      [50000, zstdCompressSync(bomb)],
    ] as const) {
      expect(await refusal(tiffBytes({ ...plain, compression, strips: [strip, strip, strip] }))).toContain(
        "it unpacks to more than its header says",
      );
    }
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(100e6);
  });

  it("a block too large to hold, by its header alone", async () => {
    const strip = deflateSync(Buffer.alloc(1000));
    expect(
      await refusal(
        tiffBytes({ columns: 20_000, rows: 20_000, rowsPerStrip: 20_000, compression: 8, strips: [strip] }),
      ),
    ).toContain("one block of them is 1600 MB: expected at most 256 MB");
  });

  it("damaged bytes of a ZSTD strip, whichever they are", async () => {
    const strip = zstdCompressSync(strips[1]!);
    for (let at = 0; at < 12; at++) {
      const spoilt = Buffer.from(strip);
      spoilt[at] = spoilt[at]! ^ 0xff;
      await refusal(
        tiffBytes({
          ...plain,
          compression: 50000,
          strips: [zstdCompressSync(strips[0]!), spoilt, zstdCompressSync(strips[2]!)],
        }),
      );
    }
  });

  it.each([
    [7, "JPEG"],
    [34887, "LERC"],
    [50001, "WebP"],
    [34712, "JPEG 2000"],
    [4321, "method 4321"],
  ])("packing %i, which is not for heights", async (compression, name) => {
    expect(await refusal(tiffBytes({ ...plain, compression }))).toContain(
      `they are packed by ${name}, which is not read for heights`,
    );
  });

  it.each([
    ["a field that claims billions of values", { 262: [0xff, 0xff, 0xff, 0xff] }, "claims 4294967295 values"],
    ["a field of no type", { 262: [0, 0] }, "is of no type there is"],
  ] as const)("%s", async (_, spoil, words) => {
    const bytes = tiffBytes(plain);
    for (let entry = 10; entry < 10 + 13 * 12; entry += 12) {
      const change = (spoil as Record<number, readonly number[]>)[bytes.readUInt16LE(entry)];
      if (change) bytes.set(change, entry + (change.length === 4 ? 4 : 2));
    }
    expect(await refusal(bytes)).toContain(words);
  });

  it.each([
    ["columns", [256, 4, [COLUMNS + 1]]],
    ["rows to a strip", [278, 4, [STRIP + 5]]],
    ["bits", [258, 3, [16]]],
    ["no bits", [258, 3, [0]]],
    ["no columns", [256, 4, [0]]],
    ["a predictor there is not", [317, 3, [9]]],
    ["strips that begin beyond the end", [273, 4, [1000, 5000, 1e6]]],
    ["fewer strips than the image needs", [273, 4, [400]]],
  ] as const)("a header that says %s", async (_, field) => {
    await expect(read(tiffBytes({ ...plain, fields: [field] }))).resolves.toEqual(
      expect.stringMatching(/^ground\/height\.tif: /),
    );
  });

  it.each(["0", "nonsense", "1e400"])("a scale of %s, which would level everything", async (scale) => {
    const metadata = `<GDALMetadata><Item name="SCALE" sample="0" role="scale">${scale}</Item></GDALMetadata>`;
    expect(await refusal(tiffBytes({ ...plain, fields: [[42112, 2, metadata]] }))).toContain("which makes no heights");
  });
});

describe("bytes that are no heights", () => {
  it("are refused where they are many and of many kinds, as when a predictor is lost", async () => {
    const path = join(folder, "predicted.tif");
    const samples = Float32Array.from({ length: 64 * 64 }, (_, i) => 20 + (i % 64) * 0.3 + Math.sin(i));
    writeGeoTiff(path, {
      columns: 64,
      rows: 64,
      samples,
      west: 5e5,
      north: 6e6,
      stepX: 1,
      stepY: 1,
      srs: "EPSG:32629",
      extra: ["-co", "COMPRESS=DEFLATE", "-co", "PREDICTOR=3"],
    });
    const bytes = readFileSync(path);
    const entry = bytes.indexOf(Buffer.from([0x3d, 0x01, 3, 0, 1, 0, 0, 0, 3, 0]));
    expect(entry).toBeGreaterThan(0);
    bytes[entry + 8] = 1;
    expect(await refusal(bytes)).toMatch(
      /\d+ of its 4096 heights about the course are impossible, such as .* Copy it again/,
    );
  });
});

describe("a strip that was never written", () => {
  it("is unknown ground, not the height 0", async () => {
    const outcome = await read(tiffBytes({ ...plain, fields: [[279, 4, [1600, 0, 1600]]] }));
    const expected = Float32Array.from(heights).fill(NaN, STRIP * COLUMNS, 2 * STRIP * COLUMNS);
    expect(outcome).toMatchObject({ heights: expected });
  });
});
