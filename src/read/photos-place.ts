/** Whether a picture says where on earth it was taken. */
import type { Metadata } from "sharp";

/**
 * TIFF tag of the pointer to the GPS directory, and that directory's latitude (Exif 2.32, 4.6.3 and 4.6.6;
 * from memory).
 */
const GPS_DIRECTORY = 0x8825;
const GPS_LATITUDE = 0x0002;

export const saysPlace = ({ exif, xmp }: Pick<Metadata, "exif" | "xmp">): boolean =>
  (exif !== undefined && hasGps(exif)) || (xmp !== undefined && /GPSLatitude/.test(xmp.toString("latin1")));

/** Walks a TIFF directory only as far as needed; a damaged one says nothing. */
function hasGps(exif: Buffer): boolean {
  // JPEG writes Exif and two zeros before the TIFF header.
  const start = exif.subarray(0, 4).toString("latin1") === "Exif" ? 6 : 0;
  const tiff = exif.subarray(start);
  const little = tiff.subarray(0, 2).toString("latin1") === "II";
  const word = (at: number): number =>
    at + 2 > tiff.length ? 0 : little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at);
  const long = (at: number): number =>
    at + 4 > tiff.length ? 0 : little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at);
  const entry = (directory: number, tag: number): number | undefined => {
    const count = word(directory);
    for (let i = 0; i < count; i++) {
      const at = directory + 2 + i * 12;
      if (at + 12 > tiff.length) return undefined;
      if (word(at) === tag) return at;
    }
    return undefined;
  };
  const pointer = entry(long(4), GPS_DIRECTORY);
  if (pointer === undefined) return false;
  const directory = long(pointer + 8);
  return directory > 0 && directory < tiff.length && entry(directory, GPS_LATITUDE) !== undefined;
}
