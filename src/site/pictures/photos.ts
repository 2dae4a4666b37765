/**
 * Photos as they come off a camera, made ready for a page: turned upright, in sRGB, with
 * nothing left of what a camera writes (place, time, owner), in a few widths as AVIF, WebP
 * and JPEG. Everything hangs on a photo's bytes and never on its name, so a photo put in the
 * place of another is a new one, and one that stayed is not made again.
 */
import { readFile } from "node:fs/promises";
import sharp, { type Sharp } from "sharp";
import type { PhotoLook } from "../../course/photo-look.ts";
import { slugFrom } from "../../course/schema/features.ts";
import { lookAtPhoto, READING } from "../../read/photos.ts";
import { cached, cacheKey, keep } from "../cache/cache.ts";
import { atMost } from "./at-most.ts";

export const PHOTO_WIDTHS: readonly number[] = [480, 960, 1600];

export const PHOTO_FORMATS = ["avif", "webp", "jpg"] as const;
export type PhotoFormat = (typeof PHOTO_FORMATS)[number];

export const MEDIA_TYPES: Readonly<Record<PhotoFormat, string>> = {
  avif: "image/avif",
  webp: "image/webp",
  jpg: "image/jpeg",
};

export interface PhotoVariant {
  /** File name beside its fellows: `07-tee-3f09ac21-960.webp`. */
  readonly name: string;
  readonly widthPixels: number;
  readonly heightPixels: number;
  readonly format: PhotoFormat;
}

/** Raised when the same photo would give other bytes. */
const MAKER = "photo 1";

// The library keeps opened files in mind by name, and would go on showing a photo that was replaced.
sharp.cache(false);

/** Pictures held in memory at a time: one is some 30 MB while it is turned. */
const inTurn = atMost(2);

interface Original {
  readonly bytes: Buffer;
  readonly key: string;
}

async function original(file: string): Promise<Original> {
  const bytes = await readFile(file);
  return { bytes, key: cacheKey(bytes) };
}

/** `tarvay/photos/07 Tee.JPG` to `07-tee`. */
export const photoStem = (path: string): string =>
  slugFrom((path.split("/").pop() ?? path).replace(/\.[^.]+$/, "")) || "photo";

/**
 * What is in a photo; the answer is kept by its bytes.
 *
 * @param name as the content writes it, for messages.
 * @throws PhotoError when it cannot be shown.
 */
export async function photoLook(file: string, name: string): Promise<PhotoLook> {
  const { bytes, key } = await original(file);
  return look(bytes, key, name);
}

async function look(bytes: Buffer, key: string, name: string): Promise<PhotoLook> {
  const own = cacheKey(MAKER, "look", key);
  const found = await cached(own);
  if (found) return JSON.parse(Buffer.from(found).toString()) as PhotoLook;
  const made = await inTurn(() => lookAtPhoto(bytes, name));
  await keep(own, Buffer.from(JSON.stringify(made)));
  return made;
}

/**
 * Every size a photo is served in, smallest first, never larger than it is.
 *
 * @param file where the original lies.
 * @throws PhotoError when it cannot be shown.
 */
export async function photoVariants(file: string): Promise<PhotoVariant[]> {
  const { bytes, key } = await original(file);
  return variantsOf(file, key, await look(bytes, key, photoStem(file)));
}

function variantsOf(
  file: string,
  key: string,
  { widthPixels: width, heightPixels: height }: PhotoLook,
): PhotoVariant[] {
  const widths = PHOTO_WIDTHS.filter((wanted) => wanted < width);
  if (widths.length < PHOTO_WIDTHS.length) widths.push(width);
  return widths.flatMap((widthPixels) =>
    PHOTO_FORMATS.map((format) => ({
      name: `${photoStem(file)}-${key.slice(0, 8)}-${widthPixels}.${format}`,
      widthPixels,
      heightPixels: Math.max(1, Math.round((height * widthPixels) / width)),
      format,
    })),
  );
}

const keyOf = (key: string, { widthPixels, heightPixels, format }: PhotoVariant): string =>
  cacheKey(MAKER, key, JSON.stringify([widthPixels, heightPixels, format, ENCODINGS[format]]));

/**
 * Qualities chosen by eye on grass, sea and sky. AVIF at effort 3 took five times the time of effort 1 and
 * saved no bytes.
 */
const ENCODINGS = {
  avif: { quality: 52, effort: 1, chromaSubsampling: "4:2:0" },
  webp: { quality: 76, effort: 4 },
  jpg: { quality: 78, mozjpeg: true },
} as const;

/** Makes what is not there yet of some photos, a few at a time, without waiting for them. */
export function startPhotos(files: readonly string[]): void {
  // Whoever asks for one of them is told of its failure.
  for (const file of files) makeAll(file).catch(() => undefined);
}

/** By photo's key: its sizes being made. */
const making = new Map<string, Promise<void>>();

async function makeAll(file: string): Promise<void> {
  const { bytes, key } = await original(file);
  const found = making.get(key) ?? makeMissing(file, bytes, key).finally(() => making.delete(key));
  making.set(key, found);
  await found;
}

async function makeMissing(file: string, bytes: Buffer, key: string): Promise<void> {
  const missing: PhotoVariant[] = [];
  for (const variant of variantsOf(file, key, await look(bytes, key, photoStem(file))))
    if ((await cached(keyOf(key, variant))) === undefined) missing.push(variant);
  if (missing.length === 0) return;
  await inTurn(async () => {
    // Decoded once: that and the turning are what a large original costs.
    const widest = Math.max(...missing.map(({ widthPixels }) => widthPixels));
    const { data, info } = await upright(bytes)
      .resize({ width: widest, withoutEnlargement: true })
      .raw()
      .toBuffer({ resolveWithObject: true });
    for (const variant of missing) {
      const { widthPixels, heightPixels, format } = variant;
      const small = sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } }).resize(
        widthPixels,
        heightPixels,
        { fit: "fill" },
      );
      await keep(keyOf(key, variant), await encode(small, format));
    }
  });
}

/** Upright, without transparency, its own colours turned into sRGB by the profile it carries. */
const upright = (bytes: Buffer): Sharp =>
  sharp(bytes, READING).autoOrient().flatten({ background: "#ffffff" }).toColourspace("srgb");

/** sharp writes none of the original's metadata unless told to keep it. */
function encode(picture: Sharp, format: PhotoFormat): Promise<Buffer> {
  if (format === "avif") return picture.avif(ENCODINGS.avif).toBuffer();
  return format === "webp" ? picture.webp(ENCODINGS.webp).toBuffer() : picture.jpeg(ENCODINGS.jpg).toBuffer();
}

/** The bytes of one size. @throws PhotoError when the original cannot be shown. */
export async function renderPhoto(file: string, variant: PhotoVariant): Promise<Uint8Array<ArrayBuffer>> {
  await makeAll(file);
  const { key } = await original(file);
  const found = await cached(keyOf(key, variant));
  if (found === undefined) throw new Error(`${file} was changed while its sizes were made. Build again.`);
  return found;
}
