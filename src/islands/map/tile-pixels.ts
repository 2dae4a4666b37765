/** A height tile's pixels, read in the browser. */
import type { TilePixels } from "./heights.ts";
import { TILE_PIXELS } from "../../terrain/web-mercator.ts";

/** Undefined where a tile is missing or unreadable, and where the browser alters what a canvas gives back. */
export const tilePixels: TilePixels = async (address) => {
  if (altered()) return undefined;
  const response = await fetch(address);
  if (!response.ok) return undefined;
  const picture = await createImageBitmap(await response.blob(), {
    colorSpaceConversion: "none",
    premultiplyAlpha: "none",
  });
  const drawn = canvas(TILE_PIXELS);
  drawn.drawImage(picture, 0, 0);
  picture.close();
  return drawn.getImageData(0, 0, TILE_PIXELS, TILE_PIXELS).data;
};

function canvas(size: number): CanvasRenderingContext2D {
  const element = document.createElement("canvas");
  [element.width, element.height] = [size, size];
  const context = element.getContext("2d", { willReadFrequently: true });
  if (context === null) throw new Error("No drawing in two dimensions here.");
  return context;
}

let known: boolean | undefined;

/** Some browsers change pixels a little, against being recognised by them; a height would be 256 m out. */
function altered(): boolean {
  if (known !== undefined) return known;
  const size = 8;
  const drawn = canvas(size);
  for (let i = 0; i < size * size; i++) {
    drawn.fillStyle = `rgb(${i}, ${i + 64}, ${i + 128})`;
    drawn.fillRect(i % size, Math.floor(i / size), 1, 1);
  }
  const { data } = drawn.getImageData(0, 0, size, size);
  known = Array.from({ length: size * size }, (_, i) => i).some(
    (i) => data[4 * i] !== i || data[4 * i + 1] !== i + 64 || data[4 * i + 2] !== i + 128,
  );
  return known;
}
