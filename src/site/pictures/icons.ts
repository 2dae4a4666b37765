/** The guide's icons, drawn from its crest. */
import sharp from "sharp";
import favicon from "../../../public/favicon.svg?raw";

export interface Icon {
  readonly name: string;
  readonly sizePixels: number;
  /**
   * `rounded`: as it is shown. `square`: the phone rounds the corners itself. `maskable`:
   * the phone cuts any shape that holds the middle four fifths (W3C Web Application
   * Manifest, icon masks: a circle of radius 40 %).
   */
  readonly shape: "rounded" | "square" | "maskable";
}

export const ICONS: readonly Icon[] = [
  { name: "180", sizePixels: 180, shape: "square" },
  { name: "192", sizePixels: 192, shape: "rounded" },
  { name: "512", sizePixels: 512, shape: "rounded" },
  { name: "maskable", sizePixels: 512, shape: "maskable" },
];

/** The crest's own square. */
const SIDE = 64;
const ROUNDED = 'rx="14"';
/** So that the crest's corners, which hold nothing, may be lost and its drawing not. */
const MASKABLE_MARGIN = 8;

/** Same icon, same bytes. */
export async function iconPng({ sizePixels, shape }: Icon): Promise<Uint8Array<ArrayBuffer>> {
  const margin = shape === "maskable" ? MASKABLE_MARGIN : 0;
  const svg =
    shape === "rounded"
      ? favicon
      : favicon
          .replace(ROUNDED, "")
          .replace('viewBox="0 0 64 64"', `viewBox="${-margin} ${-margin} ${SIDE + 2 * margin} ${SIDE + 2 * margin}"`)
          .replace(
            'width="64" height="64"',
            `x="${-margin}" y="${-margin}" width="${SIDE + 2 * margin}" height="${SIDE + 2 * margin}"`,
          );
  const density = (72 * sizePixels) / SIDE;
  const png = await sharp(Buffer.from(svg), { density })
    .resize(sizePixels, sizePixels)
    .png({ compressionLevel: 9 })
    .toBuffer();
  return new Uint8Array(png);
}
