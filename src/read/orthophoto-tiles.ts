/** A photo from the air as Web Mercator tiles. */
import sharp from "sharp";
import { positionOnTile, TILE_PIXELS, type Tile } from "../terrain/web-mercator.ts";
import type { OrthophotoSource, Pixels } from "./orthophoto.ts";

/** Half as many pixels each way, the mean of four; what is left over at an odd edge is dropped. */
export function halved({ columns, rows, rgba, fromFile }: Pixels): Pixels {
  const [half, rowsHalf] = [Math.max(1, columns >> 1), Math.max(1, rows >> 1)];
  const out = new Uint8Array(half * rowsHalf * 4);
  for (let y = 0; y < rowsHalf; y++) {
    for (let x = 0; x < half; x++) {
      let [red, green, blue, opacity] = [0, 0, 0, 0];
      for (let k = 0; k < 4; k++) {
        const at = (Math.min(rows - 1, 2 * y + (k >> 1)) * columns + Math.min(columns - 1, 2 * x + (k & 1))) * 4;
        const alpha = rgba[at + 3]!;
        red += rgba[at]! * alpha;
        green += rgba[at + 1]! * alpha;
        blue += rgba[at + 2]! * alpha;
        opacity += alpha;
      }
      const to = (y * half + x) * 4;
      if (opacity === 0) continue;
      out[to] = Math.round(red / opacity);
      out[to + 1] = Math.round(green / opacity);
      out[to + 2] = Math.round(blue / opacity);
      out[to + 3] = Math.round(opacity / 4);
    }
  }
  return {
    columns: half,
    rows: rowsHalf,
    rgba: out,
    fromFile: (column, row) => {
      const [x, y] = fromFile(column, row);
      return [(x - 0.5) / 2, (y - 0.5) / 2];
    },
  };
}

/** Pixels between places worked out exactly; between them a course's ground is flat enough. */
const KNOT = 16;

/**
 * A tile's pixels: each takes the mean of the four about its place, weighted by nearness; clear where the
 * photo has nothing.
 */
export function tilePixels({ toPixel }: Pick<OrthophotoSource, "toPixel">, pixels: Pixels, tile: Tile): Uint8Array {
  const out = new Uint8Array(TILE_PIXELS * TILE_PIXELS * 4);
  const knots = TILE_PIXELS / KNOT + 1;
  const places: (readonly [number, number])[] = [];
  for (let j = 0; j < knots; j++) {
    for (let i = 0; i < knots; i++)
      places.push(pixels.fromFile(...toPixel(positionOnTile(tile, [i * KNOT, j * KNOT]))));
  }
  const colour = [0, 0, 0, 0];
  for (let y = 0; y < TILE_PIXELS; y++) {
    const j = Math.floor(y / KNOT);
    const v = (y + 0.5) / KNOT - j;
    for (let x = 0; x < TILE_PIXELS; x++) {
      const i = Math.floor(x / KNOT);
      const u = (x + 0.5) / KNOT - i;
      const [a, b, c, d] = [
        places[j * knots + i]!,
        places[j * knots + i + 1]!,
        places[(j + 1) * knots + i]!,
        places[(j + 1) * knots + i + 1]!,
      ];
      const mix = (k: 0 | 1): number => (a[k] * (1 - u) + b[k] * u) * (1 - v) + (c[k] * (1 - u) + d[k] * u) * v;
      sample(pixels, mix(0), mix(1), colour);
      out.set(colour, (y * TILE_PIXELS + x) * 4);
    }
  }
  return out;
}

function sample({ columns, rows, rgba }: Pixels, column: number, row: number, colour: number[]): void {
  colour.fill(0);
  // Half a pixel beyond the outermost middles is still the picture.
  if (!(column > -0.5 && row > -0.5 && column < columns - 0.5 && row < rows - 0.5)) return;
  const [x, y] = [Math.floor(column), Math.floor(row)];
  const [u, v] = [column - x, row - y];
  let opacity = 0;
  for (let k = 0; k < 4; k++) {
    const [dx, dy] = [k & 1, k >> 1];
    const at = (Math.min(rows - 1, Math.max(0, y + dy)) * columns + Math.min(columns - 1, Math.max(0, x + dx))) * 4;
    const weight = (dx === 1 ? u : 1 - u) * (dy === 1 ? v : 1 - v) * rgba[at + 3]!;
    colour[0]! += rgba[at]! * weight;
    colour[1]! += rgba[at + 1]! * weight;
    colour[2]! += rgba[at + 2]! * weight;
    opacity += weight;
  }
  if (opacity === 0) return;
  for (let k = 0; k < 3; k++) colour[k] = Math.round(colour[k]! / opacity);
  colour[3] = Math.round(opacity);
}

/** A tile's bytes. */
export async function tileWebp(rgba: Uint8Array): Promise<Uint8Array<ArrayBuffer>> {
  const webp = await sharp(rgba, { raw: { width: TILE_PIXELS, height: TILE_PIXELS, channels: 4 } })
    .webp({ quality: 72, alphaQuality: 50, effort: 4 })
    .toBuffer();
  return new Uint8Array(webp);
}
