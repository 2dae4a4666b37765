/**
 * Shaded relief: how brightly a lamp far away lights each height.
 *
 * The brightness is Lambert's cosine between the ground's normal (gradient by Horn's
 * method) and the direction of the lamp. The lamp is placed relative to the sheet, not to
 * north: relief is read with light from the upper left, and a hole's plate may have any
 * compass direction at its top.
 */
import { radians } from "../geo/units.ts";
import type { HeightGrid } from "./grid.ts";
import { eachGradient } from "./slope.ts";

export interface Light {
  /** Where the light comes from on the sheet, degrees clockwise from its top; 315 is the upper left. */
  readonly fromSheetDegrees: number;
  /** Height of the lamp above the horizon, degrees. */
  readonly altitudeDegrees: number;
  /** Compass direction at the top of the sheet, degrees; 0 when north is up. */
  readonly sheetTopDegrees: number;
  /** How often heights are counted: above 1 gentle links ground reads better. */
  readonly exaggeration: number;
}

export const UPPER_LEFT_LIGHT: Light = {
  fromSheetDegrees: 315,
  altitudeDegrees: 45,
  sheetTopDegrees: 0,
  exaggeration: 1,
};

/**
 * Brightness of every height, 1 (unlit) to 255 (facing the lamp), in the grid's order; 0
 * where unknown and along the edge, as GIS tools write it.
 */
export function hillshade(grid: HeightGrid, light: Partial<Light> = {}): Uint8Array {
  const { fromSheetDegrees, altitudeDegrees, sheetTopDegrees, exaggeration } = { ...UPPER_LEFT_LIGHT, ...light };
  const azimuth = radians(fromSheetDegrees + sheetTopDegrees);
  const altitude = radians(altitudeDegrees);
  const lampEast = Math.sin(azimuth) * Math.cos(altitude) * exaggeration;
  const lampNorth = Math.cos(azimuth) * Math.cos(altitude) * exaggeration;
  const lampUp = Math.sin(altitude);
  const squared = exaggeration * exaggeration;
  const shades = new Uint8Array(grid.heights.length);
  eachGradient(grid, (i, east, north) => {
    // The normal is (-east, -north, 1), not of unit length: hence the root.
    const cosine =
      (lampUp - east * lampEast - north * lampNorth) / Math.sqrt(1 + squared * (east * east + north * north));
    // A comparison with NaN is false, so unknown ground stays 0. Shades are rounded, not floored.
    if (cosine > 0) shades[i] = 1.5 + 254 * cosine;
    else if (cosine <= 0) shades[i] = 1;
  });
  return shades;
}
