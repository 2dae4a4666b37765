/** Photos as a page's markup names them. */
import { PHOTO_FORMATS, type PhotoFormat, type PhotoVariant } from "../site/pictures/photos.ts";

export interface PhotoSource {
  /** For `<source>`, by format; a browser takes the first it knows. */
  readonly sets: Readonly<Record<PhotoFormat, string>>;
  /** For browsers that take no set. */
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

/** What a `<picture>` needs, addresses made by `address` from a variant's name. */
export function photoSource(variants: readonly PhotoVariant[], address: (name: string) => string): PhotoSource {
  const of = (format: PhotoFormat): PhotoVariant[] => variants.filter((one) => one.format === format);
  const set = (format: PhotoFormat): string =>
    of(format)
      .map(({ name, widthPixels }) => `${address(name)} ${widthPixels}w`)
      .join(", ");
  const jpegs = of("jpg");
  const middle = jpegs[Math.min(1, jpegs.length - 1)]!;
  const largest = jpegs[jpegs.length - 1]!;
  const [avif, webp, jpg] = PHOTO_FORMATS.map(set) as [string, string, string];
  return {
    sets: { avif, webp, jpg },
    src: address(middle.name),
    width: largest.widthPixels,
    height: largest.heightPixels,
  };
}

/** Steps of a focal point that have a class each in the styles. */
const FOCUS_STEP = 5;

/** Classes that keep what a picture is about in view where it is cut: `fx-30 fy-60`. */
export function focusClasses(focus: readonly [number, number] | undefined): string | undefined {
  if (focus === undefined) return undefined;
  const [x, y] = focus.map((share) => Math.round((share * 100) / FOCUS_STEP) * FOCUS_STEP);
  return `fx-${x} fy-${y}`;
}
