/**
 * Small repeating marks, so ground reads by texture and not by hue alone. Made from
 * numbers: no image is fetched and no canvas needed. Drawn at twice the size they show.
 */
import { distanceToPiece } from "../../geo/segment.ts";
import type { MapColours } from "./colours.ts";

export type PatternName = "scrub" | "wood" | "heath" | "sand" | "water" | "out" | "bands";

export interface Pattern {
  readonly width: number;
  readonly height: number;
  /** RGBA, rows from the top. */
  readonly data: Uint8ClampedArray;
}

/** Pixels of a pattern to one CSS pixel. */
export const PATTERN_PIXEL_RATIO = 2;

/** A mark: signed distance in pixels from its edge, negative within. */
type Mark = (x: number, y: number) => number;

const disc =
  (cx: number, cy: number, radius: number): Mark =>
  (x, y) =>
    Math.hypot(x - cx, y - cy) - radius;

const ring =
  (cx: number, cy: number, radius: number, stroke: number): Mark =>
  (x, y) =>
    Math.abs(Math.hypot(x - cx, y - cy) - radius) - stroke / 2;

/** A stroke between two points. */
const bar =
  (x1: number, y1: number, x2: number, y2: number, stroke: number): Mark =>
  (x, y) =>
    distanceToPiece([x1, y1], [x2, y2], x, y) - stroke / 2;

const tuft = (x: number, y: number): Mark[] => [
  bar(x, y, x - 4, y - 7, 1.6),
  bar(x, y, x, y - 9, 1.6),
  bar(x, y, x + 4, y - 7, 1.6),
];

/** @param playDegrees bearing the mower follows; without it fairways are left plain */
export function patterns(
  colours: MapColours,
  playDegrees: number | undefined,
): Readonly<Record<PatternName, Pattern>> {
  return {
    bands: bands(colours.band, playDegrees),
    scrub: paint(36, colours["gorse-shade"], 0.75, [...tuft(10, 14), ...tuft(28, 32)]),
    wood: paint(40, colours["tree-shade"], 0.8, [
      ring(11, 11, 7, 1.6),
      ring(30, 30, 8, 1.6),
      disc(13, 13, 1.5),
      disc(32, 32, 1.5),
    ]),
    heath: paint(28, colours.heather, 0.8, [
      bar(4, 8, 8, 4, 1.5),
      bar(8, 4, 12, 8, 1.5),
      bar(18, 22, 22, 18, 1.5),
      bar(22, 18, 26, 22, 1.5),
    ]),
    sand: paint(24, colours["sand-dot"], 0.55, [
      disc(4, 5, 1.1),
      disc(15, 3, 1),
      disc(9, 13, 1.1),
      disc(20, 15, 1),
      disc(4, 21, 1),
      disc(15, 21, 1.1),
    ]),
    water: paint(48, colours["sea-line"], 0.5, [
      bar(4, 10, 20, 10, 1.2),
      bar(28, 22, 42, 22, 1.2),
      bar(8, 36, 26, 36, 1.2),
    ]),
    out: paint(24, colours.ink, 0.35, [bar(0, 24, 24, 0, 1.4), bar(-12, 12, 12, -12, 1.4), bar(12, 36, 36, 12, 1.4)]),
  };
}

/** Side of the square that mowing bands repeat in, a power of two, and the length of one light and one dark band. */
const BANDS_PIXELS = 256;
const BAND_PAIR_PIXELS = 44;

/**
 * Bands across the line of play. They must meet themselves at the square's edges, so the
 * wave is turned to the nearest direction that has whole numbers of waves along both sides.
 */
function bands(colour: string, playDegrees: number | undefined): Pattern {
  const [red, green, blue] = channels(colour);
  const data = new Uint8ClampedArray(BANDS_PIXELS * BANDS_PIXELS * 4);
  if (playDegrees !== undefined) {
    const waves = BANDS_PIXELS / BAND_PAIR_PIXELS;
    const bearing = (playDegrees * Math.PI) / 180;
    const [across, down] = [Math.round(waves * Math.sin(bearing)), Math.round(-waves * Math.cos(bearing))];
    // A whole wave's opacities: the map waits for this, and there are 65 thousand pixels.
    const opacities = Uint8ClampedArray.from({ length: BANDS_PIXELS }, (_, i) =>
      Math.round(
        255 * Math.min(1, Math.max(0, 0.5 + 4 * Math.sin((2 * Math.PI * (i + (across + down) / 2)) / BANDS_PIXELS))),
      ),
    );
    for (let y = 0, i = 0; y < BANDS_PIXELS; y++) {
      for (let x = 0; x < BANDS_PIXELS; x++) {
        data[i++] = red;
        data[i++] = green;
        data[i++] = blue;
        data[i++] = opacities[(across * x + down * y) & (BANDS_PIXELS - 1)]!;
      }
    }
  }
  return { width: BANDS_PIXELS, height: BANDS_PIXELS, data };
}

function paint(size: number, colour: string, opacity: number, marks: readonly Mark[]): Pattern {
  const [red, green, blue] = channels(colour);
  const data = new Uint8ClampedArray(size * size * 4);
  for (let y = 0, i = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      let nearest = Infinity;
      for (const mark of marks) nearest = Math.min(nearest, mark(x + 0.5, y + 0.5));
      // One pixel of soft edge.
      const cover = Math.min(1, Math.max(0, 0.5 - nearest));
      data[i++] = red;
      data[i++] = green;
      data[i++] = blue;
      data[i++] = Math.round(255 * opacity * cover);
    }
  }
  return { width: size, height: size, data };
}

/** @throws RangeError unless the colour is `#rrggbb`. */
export function channels(colour: string): readonly [red: number, green: number, blue: number] {
  const match = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (match === null) throw new RangeError(`A pattern's colour is written #rrggbb, not ${colour}.`);
  return [parseInt(match[1]!, 16), parseInt(match[2]!, 16), parseInt(match[3]!, 16)];
}
