/** Photos made ready for a page. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { PHOTO_WIDTHS, photoSource, photoStem, photoVariants, renderPhoto } from "../../src/components/photo.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "marram-photo-"));
});
afterAll(() => rm(folder, { recursive: true }));

/** Left half red, right half blue; written turned, as a camera held on its side does. */
async function camera(name: string, width: number, height: number, orientation: number): Promise<string> {
  const half = await sharp({ create: { width: Math.floor(width / 2), height, channels: 3, background: "#d00000" } }).png().toBuffer();
  const file = join(folder, name);
  await sharp({ create: { width, height, channels: 3, background: "#0000d0" } })
    .composite([{ input: half, left: 0, top: 0 }])
    .jpeg({ quality: 90 })
    .withExif({ IFD0: { Artist: "A. Person", Orientation: `${orientation}` }, IFD3: { GPSLatitudeRef: "N", GPSLatitude: "56/1 30/1 0/1" } })
    .withMetadata({ orientation })
    .toFile(file);
  return file;
}

test("a photo taken on its side stands upright, with nothing of the camera left in it", async () => {
  const file = await camera("side.jpg", 1200, 800, 6);
  const variants = await photoVariants(file);
  expect(variants[0]).toMatchObject({ name: "side-480.webp", widthPixels: 480, heightPixels: 720 });
  for (const variant of variants.slice(0, 2)) {
    const bytes = await renderPhoto(file, variant);
    const made = await sharp(bytes).metadata();
    expect([made.width, made.height]).toEqual([480, 720]);
    expect([made.exif, made.xmp, made.iptc, made.orientation]).toEqual([undefined, undefined, undefined, undefined]);
    // Turned a quarter clockwise, what was left is now on top.
    const { data } = await sharp(bytes).resize(1, 2, { fit: "fill" }).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect(data[0]).toBeGreaterThan(data[2]!);
    expect(data[5]).toBeGreaterThan(data[3]!);
  }
});

test("no size is larger than the photo, which is served at its own width", async () => {
  const small = await photoVariants(await camera("small.jpg", 600, 400, 1));
  expect(small.map(({ name }) => name)).toEqual(["small-480.webp", "small-480.jpg", "small-600.webp", "small-600.jpg"]);
  const large = await photoVariants(await camera("large.jpg", 2400, 1600, 1));
  expect([...new Set(large.map(({ widthPixels }) => widthPixels))]).toEqual(PHOTO_WIDTHS);
});

test("the same photo gives the same bytes", async () => {
  const file = await camera("again.jpg", 700, 500, 1);
  const [variant] = await photoVariants(file);
  expect(Buffer.from(await renderPhoto(file, variant!)).equals(Buffer.from(await renderPhoto(file, variant!)))).toBe(true);
});

test("a picture offers every width and reserves the largest one's room", async () => {
  const source = photoSource(await photoVariants(await camera("set.jpg", 1000, 500, 1)), (name) => `p/${name}`);
  expect(source.webpSet).toBe("p/set-480.webp 480w, p/set-960.webp 960w, p/set-1000.webp 1000w");
  expect(source).toMatchObject({ src: "p/set-960.jpg", width: 1000, height: 500 });
});

test("a photo is named by its file without folder and ending", () => {
  expect(photoStem("tarvay/photos/07-tee.JPG")).toBe("07-tee");
});
