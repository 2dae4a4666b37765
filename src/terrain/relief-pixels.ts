/** Shaded relief as a picture that can lie over any colour: shadows and lights by their opacity. */
import type { HeightGrid } from "./grid.ts";
import { hillshade, UPPER_LEFT_LIGHT, type Light } from "./hillshade.ts";
import { radians } from "../geo/units.ts";

export interface ReliefLook {
  /** Opacity of the deepest shadow and of the brightest light, 0 to 1. */
  readonly shadow: number;
  readonly light: number;
}

export const RELIEF_LOOK: ReliefLook = { shadow: 0.85, light: 0.7 };

/**
 * RGBA pixels, one per height: black where the ground turns from the lamp, white where it
 * faces it, clear where it is level or unknown. So one picture serves a light and a dark
 * sheet, and the tint under it stays itself.
 */
export function reliefPixels(grid: HeightGrid, light: Partial<Light>, look: ReliefLook = RELIEF_LOOK): Uint8Array {
  const shades = hillshade(grid, light);
  const level = 1 + 254 * Math.sin(radians(light.altitudeDegrees ?? UPPER_LEFT_LIGHT.altitudeDegrees));
  const pixels = new Uint8Array(shades.length * 4);
  shades.forEach((shade, i) => {
    if (shade === 0) return;
    const lit = shade > level;
    const share = lit ? (shade - level) / (255 - level) : (level - shade) / level;
    pixels.fill(lit ? 255 : 0, i * 4, i * 4 + 3);
    pixels[i * 4 + 3] = Math.round(255 * share * (lit ? look.light : look.shadow));
  });
  return pixels;
}
