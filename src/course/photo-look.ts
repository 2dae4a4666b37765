/** What the check asks of a photo, found out by whoever read its file. */
export interface PhotoLook {
  /** As seen, once turned upright. */
  readonly widthPixels: number;
  readonly heightPixels: number;
  readonly bytes: number;
  /** Stored on its side or head, with a mark in the file that says so (EXIF Orientation, 2 to 8). */
  readonly turned: boolean;
  /** The file says where on earth it was taken (EXIF or XMP). */
  readonly saysPlace: boolean;
}

/** The photos of a course as the check needs them. Files are named from the content folder. */
export interface PhotoFacts {
  lookOf(file: string): PhotoLook | undefined;
  /** Files of photos that no page shows. */
  readonly unused: readonly string[];
}
