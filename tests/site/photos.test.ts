/** Photos made ready for a page, held to the bytes that come out. */
import { mkdtemp, readFile, readdir, rm, stat, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp, { type Sharp } from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  PHOTO_FORMATS,
  PHOTO_WIDTHS,
  photoLook,
  photoStem,
  photoVariants,
  renderPhoto,
  startPhotos,
  type PhotoVariant,
} from "../../src/site/pictures/photos.ts";
import { displayP3Profile } from "../support/display-p3.ts";
import { camera, half } from "../support/photos.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-photo-"));
  process.env["MARRAM_CACHE"] = join(folder, "cache");
});
afterAll(async () => {
  delete process.env["MARRAM_CACHE"];
  await rm(folder, { recursive: true });
});

const named = async (name: string, bytes: Uint8Array): Promise<string> => {
  const file = join(folder, name);
  await writeFile(file, bytes);
  return file;
};

/** One variant of each format, the smallest. */
const smallest = (variants: readonly PhotoVariant[]): PhotoVariant[] =>
  PHOTO_FORMATS.map((format) => variants.find((one) => one.format === format)!);

/** Red, green and blue of the pixel at a share of width and height. */
async function pixel(bytes: Uint8Array, x: number, y: number): Promise<number[]> {
  const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const at = (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels;
  return [...data.subarray(at, at + 3)];
}

describe("what a camera writes", () => {
  test("a photo taken on its side stands upright in every format", async () => {
    const variants = await photoVariants(
      await named("side.jpg", await camera({ width: 1200, height: 800, orientation: 6 })),
    );
    expect(variants[0]).toMatchObject({ widthPixels: 480, heightPixels: 720 });
    for (const variant of smallest(variants)) {
      const bytes = await renderPhoto(join(folder, "side.jpg"), variant);
      const { width, height, orientation } = await sharp(bytes).metadata();
      expect([width, height, orientation], variant.format).toEqual([480, 720, undefined]);
      // Turned a quarter clockwise, what was left is now on top.
      const [top, bottom] = [await pixel(bytes, 0.5, 0.25), await pixel(bytes, 0.5, 0.75)];
      expect(top[0], variant.format).toBeGreaterThan(150);
      expect(bottom[2], variant.format).toBeGreaterThan(150);
    }
  });

  test.each([1, 2, 3, 4, 5, 6, 7, 8])("orientation %i comes out as it was seen", async (orientation) => {
    // The scene is red on the left and blue on the right; it is stored as a camera held so would have.
    const seen = await half(960, 640);
    const stored = await storedAs(seen, orientation);
    const file = await named(`turn-${orientation}.jpg`, stored);
    const [variant] = await photoVariants(file);
    const bytes = await renderPhoto(file, variant!);
    expect([variant!.widthPixels, variant!.heightPixels]).toEqual([480, 320]);
    expect((await pixel(bytes, 0.2, 0.5))[0]).toBeGreaterThan(150);
    expect((await pixel(bytes, 0.8, 0.5))[2]).toBeGreaterThan(150);
  });

  test("nothing of it is left in any byte of any format: place, owner, serial number, XMP, IPTC", async () => {
    const source = await camera({ width: 1000, height: 600, orientation: 1, secrets: true });
    const secrets = ["SECRET-OWNER", "SECRET-XMP", "SECRET-IPTC", "SECRET-COMMENT"];
    // They are in the original, or their absence would say nothing.
    for (const secret of secrets) expect(source.includes(secret), secret).toBe(true);
    expect(source.includes(GPS_LATITUDE)).toBe(true);
    const file = await named("secrets.jpg", source);
    expect(await photoLook(file, "secrets.jpg")).toMatchObject({ saysPlace: true });
    const variants = await photoVariants(file);
    expect(new Set(variants.map(({ format }) => format))).toEqual(new Set(PHOTO_FORMATS));
    for (const variant of variants) {
      const bytes = Buffer.from(await renderPhoto(file, variant));
      for (const trace of [
        ...secrets,
        "Exif\0\0",
        "http://ns.adobe.com/xap",
        "<x:xmpmeta",
        "8BIM",
        "GPSLatitude",
        GPS_LATITUDE,
      ]) {
        expect(bytes.includes(trace), `${variant.name}: ${String(trace)}`).toBe(false);
      }
      const { exif, xmp, iptc, icc, comments } = await sharp(bytes).metadata();
      expect([exif, xmp, iptc, icc, comments], variant.name).toEqual([
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
      ]);
    }
  });

  test("nor from PNG, WebP and AVIF originals", async () => {
    for (const format of ["png", "webp", "avif"] as const) {
      const source = await sharp(await half(700, 500))
        .toFormat(format)
        .withExif({ IFD0: { Artist: "SECRET-OWNER" }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "56/1 30/1 7/1" } })
        .withXmp(XMP)
        .toBuffer();
      // Compressed in PNG, so it is asked for and not looked for.
      expect((await sharp(source).metadata()).xmp?.includes("SECRET-XMP"), format).toBe(true);
      const file = await named(`secrets.${format}`, source);
      expect((await photoLook(file, file)).saysPlace, format).toBe(true);
      for (const variant of smallest(await photoVariants(file))) {
        const bytes = Buffer.from(await renderPhoto(file, variant));
        for (const trace of ["SECRET", GPS_LATITUDE, "Exif\0\0"])
          expect(bytes.includes(trace), `${format} to ${variant.format}`).toBe(false);
      }
    }
  });

  test("what says a place and what does not", async () => {
    const plain = await half(100, 80);
    const withGps = { IFD0: { Artist: "A" }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "56/1 30/1 7/1" } };
    const cases: [string, Uint8Array, boolean][] = [
      ["nothing", await sharp(plain).jpeg().toBuffer(), false],
      [
        "owner",
        await sharp(plain)
          .jpeg()
          .withExif({ IFD0: { Artist: "GPSLatitude" } })
          .toBuffer(),
        false,
      ],
      ["gps", await sharp(plain).jpeg().withExif(withGps).toBuffer(), true],
      [
        "gps-date",
        await sharp(plain)
          .jpeg()
          .withExif({ IFD3: { GPSDateStamp: "2026:05:14" } })
          .toBuffer(),
        false,
      ],
      ["xmp", await sharp(plain).jpeg().withXmp(XMP).toBuffer(), true],
    ];
    for (const [name, bytes, says] of cases)
      expect((await photoLook(await named(`place-${name}.jpg`, bytes), name)).saysPlace, name).toBe(says);
  });
});

const GPS_LATITUDE = Buffer.from(new Uint32Array([56, 1, 30, 1, 7, 1]).buffer);
const XMP = `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="56,30.1N" exif:UserComment="SECRET-XMP"/></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;

/** A scene as the sensor stored it for an EXIF orientation: what the mark undoes, done backwards. */
async function storedAs(seen: Buffer, orientation: number): Promise<Buffer> {
  // EXIF: 2 mirrored, 3 half turn, 4 mirrored half turn, 5 mirrored quarter, 6 needs a quarter clockwise, 7, 8 a
  // quarter the other way.
  const undo: Readonly<Record<number, (picture: Sharp) => Sharp>> = {
    1: (p) => p,
    2: (p) => p.flop(),
    3: (p) => p.rotate(180),
    4: (p) => p.flip(),
    6: (p) => p.rotate(270),
    8: (p) => p.rotate(90),
  };
  if (orientation === 5 || orientation === 7) {
    const turned = await sharp(seen)
      .rotate(orientation === 5 ? 90 : 270)
      .png()
      .toBuffer();
    return sharp(turned).flop().jpeg({ quality: 95 }).withMetadata({ orientation }).toBuffer();
  }
  return undo[orientation]!(sharp(seen)).jpeg({ quality: 95 }).withMetadata({ orientation }).toBuffer();
}

describe("colour", () => {
  test("a Display P3 original keeps its colours, converted to sRGB", async () => {
    // Display P3 numbers of a colour inside sRGB, worked out by hand from the two spaces' definitions.
    const { profile, fromSrgb } = displayP3Profile();
    const wanted = [200, 60, 40] as const;
    const numbers = fromSrgb(wanted);
    // The same numbers taken for sRGB would be plainly another red, so a forgotten conversion shows.
    expect(Math.abs(numbers[0] - wanted[0])).toBeGreaterThan(8);
    const icc = await named("p3.icc", profile);
    const raw = await sharp({
      create: { width: 800, height: 600, channels: 3, background: { r: numbers[0], g: numbers[1], b: numbers[2] } },
    })
      .png()
      .toBuffer();
    const tagged = await attach(raw, icc);
    expect((await sharp(tagged).metadata()).icc?.includes("Display P3")).toBe(true);
    const file = await named("p3.jpg", tagged);
    for (const variant of smallest(await photoVariants(file))) {
      const got = await pixel(await renderPhoto(file, variant), 0.5, 0.5);
      got.forEach((value, i) =>
        expect(Math.abs(value - wanted[i]!), `${variant.format}: ${got.join(" ")}`).toBeLessThanOrEqual(4),
      );
    }
  });

  test("an original without a profile is sRGB already", async () => {
    const file = await named(
      "plain.jpg",
      await sharp({ create: { width: 800, height: 600, channels: 3, background: "#507830" } })
        .jpeg({ quality: 95 })
        .toBuffer(),
    );
    for (const variant of smallest(await photoVariants(file))) {
      const got = await pixel(await renderPhoto(file, variant), 0.5, 0.5);
      [0x50, 0x78, 0x30].forEach((value, i) =>
        expect(Math.abs(got[i]! - value), variant.format).toBeLessThanOrEqual(3),
      );
    }
  });
});

/** Puts a profile on pixels without converting them. */
async function attach(png: Buffer, icc: string): Promise<Buffer> {
  const converted = await sharp(png).jpeg({ quality: 98, chromaSubsampling: "4:4:4" }).toBuffer();
  const profile = await readFile(icc);
  // APP2 "ICC_PROFILE", one chunk of one (ICC.1:2022, annex B.4).
  const head = Buffer.concat([Buffer.from("ICC_PROFILE\0", "latin1"), Buffer.from([1, 1])]);
  const length = Buffer.alloc(2);
  length.writeUInt16BE(2 + head.length + profile.length);
  return Buffer.concat([
    converted.subarray(0, 2),
    Buffer.from([0xff, 0xe2]),
    length,
    head,
    profile,
    converted.subarray(2),
  ]);
}

describe("sizes", () => {
  test("none is larger than the photo, which is served at its own width too", async () => {
    const widths = async (width: number): Promise<number[]> => {
      const variants = await photoVariants(
        await named(`${width}.jpg`, await camera({ width, height: 400, orientation: 1 })),
      );
      return [...new Set(variants.map(({ widthPixels }) => widthPixels))];
    };
    expect(await widths(300)).toEqual([300]);
    expect(await widths(600)).toEqual([480, 600]);
    expect(await widths(2400)).toEqual(PHOTO_WIDTHS);
  });

  test("a photo is named by its file without folder and ending, in words that are safe in an address", () => {
    expect(photoStem("tarvay/photos/07-tee.JPG")).toBe("07-tee");
    expect(photoStem("tarvay/photos/From the Tée (2).jpg")).toBe("from-the-tee-2");
    expect(photoStem("tarvay/photos/海.jpg")).toBe("photo");
  });

  test("transparency comes out on white, not on black", async () => {
    const file = await named(
      "clear.png",
      await sharp({ create: { width: 600, height: 400, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } })
        .png()
        .toBuffer(),
    );
    for (const variant of smallest(await photoVariants(file)))
      expect(Math.min(...(await pixel(await renderPhoto(file, variant), 0.5, 0.5)))).toBeGreaterThan(250);
  });
});

describe("again", () => {
  test("the same photo gives the same bytes, made anew too", async () => {
    const file = await named("again.jpg", await camera({ width: 700, height: 500, orientation: 1 }));
    const variants = smallest(await photoVariants(file));
    const first = await Promise.all(variants.map((variant) => renderPhoto(file, variant)));
    process.env["MARRAM_CACHE"] = join(folder, "other-cache");
    try {
      const second = await Promise.all(variants.map((variant) => renderPhoto(file, variant)));
      second.forEach((bytes, i) =>
        expect(Buffer.from(bytes).equals(Buffer.from(first[i]!)), variants[i]!.format).toBe(true),
      );
    } finally {
      process.env["MARRAM_CACHE"] = join(folder, "cache");
    }
  });

  test("a photo put in another's place under its name is noticed in one process, even of the same size and time", async () => {
    const plain = (colour: string) =>
      sharp({ create: { width: 640, height: 480, channels: 3, background: colour } })
        .tiff({ compression: "none" })
        .toBuffer();
    const [red, blue] = [await plain("#c00000"), await plain("#0000c0")];
    expect(red.length).toBe(blue.length);
    const file = await named("same.tif", red);
    const { atime, mtime } = await stat(file);
    const [before] = await photoVariants(file);
    expect((await pixel(await renderPhoto(file, before!), 0.5, 0.5))[0]).toBeGreaterThan(150);
    await writeFile(file, blue);
    await utimes(file, atime, mtime);
    const [after] = await photoVariants(file);
    // Another address too, so that no browser shows the one it kept.
    expect(after!.name).not.toBe(before!.name);
    expect((await pixel(await renderPhoto(file, after!), 0.5, 0.5))[2]).toBeGreaterThan(150);
  });

  test("what was made is not made again", async () => {
    const file = await named("kept.jpg", await camera({ width: 500, height: 300, orientation: 1 }));
    const [variant] = await photoVariants(file);
    await renderPhoto(file, variant!);
    const cache = join(folder, "cache");
    const times = async (): Promise<string[]> => {
      const entries = await readdir(cache, { recursive: true, withFileTypes: true });
      return Promise.all(
        entries
          .filter((entry) => entry.isFile())
          .map(async (entry) => `${entry.name} ${(await stat(join(entry.parentPath, entry.name))).mtimeMs}`),
      );
    };
    const before = await times();
    startPhotos([file]);
    for (const each of await photoVariants(file)) await renderPhoto(file, each);
    expect(await times()).toEqual(before);
  });
});

describe("files that cannot be shown", () => {
  const told = (name: string): Promise<string> =>
    photoLook(join(folder, name), name).then(
      () => "shown",
      (error: Error) => error.message,
    );

  test("are told in words", async () => {
    const whole = await camera({ width: 900, height: 600, orientation: 1 });
    await named("cut.jpg", whole.subarray(0, whole.length / 2));
    await named("text.jpg", Buffer.from("From the tee, looking west."));
    await named(
      "renamed.jpg",
      Buffer.concat([Buffer.from([0, 0, 0, 0x18]), Buffer.from("ftypheic\0\0\0\0mif1heic"), Buffer.alloc(200)]),
    );
    const png = await sharp(whole).png().toBuffer();
    await named("bent.png", Buffer.concat([png.subarray(0, 200), Buffer.alloc(400, 7), png.subarray(600)]));
    expect(await Promise.all(["cut.jpg", "text.jpg", "renamed.jpg", "bent.png"].map(told))).toMatchInlineSnapshot(`
      [
        ""cut.jpg" is damaged: it begins as a picture and cannot be read to its end. Copy it again from the camera, or export it again.",
        ""text.jpg" is not a picture the guide can read. Open it in a picture program, export it as JPEG, and put that into the folder.",
        ""renamed.jpg" is, whatever its name says, a HEIC picture, as some phones keep them, and the guide cannot read those. Export it as JPEG (on the phone: share it, or set the camera to its most compatible format), put that into the folder, and write its name.",
        ""bent.png" is damaged: it begins as a picture and cannot be read to its end. Copy it again from the camera, or export it again.",
      ]
    `);
  });
});
