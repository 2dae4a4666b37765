/** A photo as it came off a camera: whether it can be read at all, and what is in it. */
import sharp, { type Metadata } from "sharp";
import type { PhotoLook } from "../course/photo-look.ts";
import { quote } from "../course/schema/wording.ts";
import { HEIC_ADVICE } from "./asset.ts";
import { saysPlace } from "./photos-place.ts";

/** A photo that cannot be shown: what is wrong, then what to do. */
export class PhotoError extends Error {
  override readonly name = "PhotoError";
}

/** 200 million pixels: more than any camera takes, and what can still be turned in memory. */
export const MOST_PIXELS = 200_000_000;

/** A JPEG that ends early would otherwise come out half grey; odd but whole files are taken. */
export const READING = { failOn: "error", limitInputPixels: MOST_PIXELS } as const;

/**
 * Looks a photo through, every pixel of it, so that a build does not fall over it later.
 *
 * @param name as the content writes it, for messages.
 * @throws PhotoError
 */
export async function lookAtPhoto(bytes: Uint8Array, name: string): Promise<PhotoLook> {
  if (isHeic(bytes)) throw new PhotoError(`${quote(name)} is, whatever its name says, ${HEIC_ADVICE}`);
  let found: Metadata;
  try {
    found = await sharp(bytes, { limitInputPixels: false }).metadata();
  } catch {
    throw new PhotoError(
      `${quote(name)} is not a picture the guide can read. Open it in a picture program, export it as JPEG, and put that into the folder.`,
    );
  }
  const { width, height } = found.autoOrient;
  if (width * height > MOST_PIXELS) {
    throw new PhotoError(
      `${quote(name)} is ${width} by ${height} pixels: expected at most ${MOST_PIXELS / 1e6} million in all. Export it smaller; 4000 pixels wide is plenty.`,
    );
  }
  try {
    // Small on purpose: all of the file is still read.
    await sharp(bytes, READING).resize(64, 64, { fit: "inside" }).raw().toBuffer();
  } catch {
    throw new PhotoError(
      `${quote(name)} is damaged: it begins as a picture and cannot be read to its end. Copy it again from the camera, or export it again.`,
    );
  }
  return {
    widthPixels: width,
    heightPixels: height,
    bytes: bytes.length,
    turned: (found.orientation ?? 1) !== 1,
    saysPlace: saysPlace(found),
  };
}

/** ISO/IEC 23008-12 files whose pictures are HEVC; AVIF is the same box with another brand. */
function isHeic(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 64)).toString("latin1");
  if (text.slice(4, 8) !== "ftyp") return false;
  const brands = text.slice(8, Math.min(64, bytes[3] ?? 64));
  return /hei[cxms]|hev[cxms]/.test(brands) || (brands.startsWith("mif1") && !brands.includes("avif"));
}
