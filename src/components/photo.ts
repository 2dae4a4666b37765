/**
 * Photos as they come off a camera, made ready for a page: turned upright, stripped of
 * everything a camera writes (place, time, owner), in a few widths, as WebP with a JPEG for
 * browsers without it. The same photo gives the same bytes.
 */
import { readFile } from "node:fs/promises";
import sharp from "sharp";

export const PHOTO_WIDTHS: readonly number[] = [480, 960, 1600];

export type PhotoFormat = "webp" | "jpg";

export interface PhotoVariant {
  /** File name beside its fellows: `07-tee-960.webp`. */
  readonly name: string;
  readonly widthPixels: number;
  readonly heightPixels: number;
  readonly format: PhotoFormat;
}

/** Size as seen, once turned upright. */
async function uprightSize(file: string): Promise<{ width: number; height: number }> {
  const { autoOrient } = await sharp(file).metadata();
  return autoOrient;
}

/** `tarvay/photos/07-tee.JPG` to `07-tee`. */
export const photoStem = (path: string): string => (path.split("/").pop() ?? path).replace(/\.[^.]+$/, "");

const known = new Map<string, Promise<PhotoVariant[]>>();

/**
 * Every size a photo is served in, smallest first, never larger than it is.
 *
 * @param file where the original lies
 */
export function photoVariants(file: string): Promise<PhotoVariant[]> {
  const found = known.get(file) ?? measureVariants(file);
  known.set(file, found);
  return found;
}

async function measureVariants(file: string): Promise<PhotoVariant[]> {
  const { width, height } = await uprightSize(file);
  const widths = PHOTO_WIDTHS.filter((wanted) => wanted < width);
  if (widths.length < PHOTO_WIDTHS.length) widths.push(width);
  return widths.flatMap((widthPixels) =>
    (["webp", "jpg"] as const).map((format) => ({
      name: `${photoStem(file)}-${widthPixels}.${format}`,
      widthPixels,
      heightPixels: Math.round((height * widthPixels) / width),
      format,
    })),
  );
}

/** The bytes of one size. sharp drops EXIF and other metadata unless told to keep it. */
export async function renderPhoto(file: string, { widthPixels, heightPixels, format }: PhotoVariant): Promise<Uint8Array<ArrayBuffer>> {
  const resized = sharp(await readFile(file)).autoOrient().resize(widthPixels, heightPixels, { fit: "fill" }).toColourspace("srgb");
  const encoded = format === "webp" ? resized.webp({ quality: 76, effort: 4 }) : resized.jpeg({ quality: 78, mozjpeg: true });
  const { data } = await encoded.toBuffer({ resolveWithObject: true });
  return new Uint8Array(data);
}

export interface PhotoSource {
  /** `<source>` for browsers with WebP. */
  readonly webpSet: string;
  readonly jpegSet: string;
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

/** What a `<picture>` needs, addresses made by `address` from a variant's name. */
export function photoSource(variants: readonly PhotoVariant[], address: (name: string) => string): PhotoSource {
  const set = (format: PhotoFormat): string =>
    variants.filter((one) => one.format === format).map((one) => `${address(one.name)} ${one.widthPixels}w`).join(", ");
  const jpegs = variants.filter(({ format }) => format === "jpg");
  const middle = jpegs[Math.min(1, jpegs.length - 1)]!;
  const largest = jpegs[jpegs.length - 1]!;
  return { webpSet: set("webp"), jpegSet: set("jpg"), src: address(middle.name), width: largest.widthPixels, height: largest.heightPixels };
}
