/** A flag as a picture for the map, from numbers: nothing is fetched. */
import type { MapColours } from "../map/colours.ts";
import { channels, type Pattern } from "../map/patterns.ts";

/** Pixels, drawn at twice the size they show. */
const WIDTH = 44;
const HEIGHT = 84;
const STICK = 4;
const CLOTH_HEIGHT = 32;

/** The stick's foot is the lower left corner. */
export function flagImage(colours: MapColours): Pattern {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4);
  const [ink, cloth, edge] = [channels(colours.ink), channels(colours.flag), channels(colours.paper)];
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      // A pennant: its height falls to nothing at the fly.
      const half = (CLOTH_HEIGHT / 2) * (1 - (x - STICK) / (WIDTH - STICK));
      const off = Math.abs(y + 0.5 - CLOTH_HEIGHT / 2);
      const colour = x < STICK ? ink : off < half - 3 ? cloth : off < half ? edge : undefined;
      if (colour !== undefined) data.set([...colour, 255], (y * WIDTH + x) * 4);
    }
  }
  return { width: WIDTH, height: HEIGHT, data };
}
