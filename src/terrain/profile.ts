/** The ground along a line: what a section through a hole shows. */
import type { Line } from "../geo/line.ts";
import { pointAt } from "../geo/line.ts";
import type { Point } from "../geo/position.ts";
import type { HeightGrid } from "./grid.ts";
import { type Sampling, heightAt } from "./sample.ts";

export interface ProfilePoint {
  /** Metres along the line. */
  readonly stationMetres: number;
  readonly point: Point;
  /** Undefined where the ground is unknown. */
  readonly heightMetres: number | undefined;
}

/**
 * Heights along a line: at its start, its end, each turning point, and between them at
 * equal spacing no wider than asked.
 *
 * @throws RangeError when the spacing is not above 0.
 */
export function profileAlong(
  grid: HeightGrid,
  line: Line,
  spacingMetres: number,
  sampling: Sampling = "bilinear",
): ProfilePoint[] {
  if (!(spacingMetres > 0)) throw new RangeError(`A profile needs a spacing above 0 m, not ${spacingMetres}.`);
  const profile: ProfilePoint[] = [];
  const add = (stationMetres: number, point: Point): void => {
    profile.push({ stationMetres, point, heightMetres: heightAt(grid, point, sampling) });
  };
  add(0, line.points[0]!);
  for (let leg = 1; leg < line.points.length; leg++) {
    const start = line.stations[leg - 1]!;
    const length = line.stations[leg]! - start;
    const pieces = Math.max(1, Math.ceil(length / spacingMetres - 1e-9));
    for (let k = 1; k < pieces; k++) {
      const station = start + (length * k) / pieces;
      add(station, pointAt(line, station));
    }
    add(line.stations[leg]!, line.points[leg]!);
  }
  return profile;
}

export interface Climb {
  readonly upMetres: number;
  readonly downMetres: number;
}

/**
 * Metres gone up and down along a profile. Ups and downs smaller than the threshold are
 * passed over, or the noise of the survey would add up to a hill; unknown stretches count
 * by the difference across them.
 */
export function climbOf(profile: readonly ProfilePoint[], thresholdMetres = 0.5): Climb {
  let up = 0;
  let down = 0;
  let settled: number | undefined;
  // The extreme since the last settled turn, followed until the ground turns by the threshold.
  let extreme = 0;
  let rising: boolean | undefined;
  const settle = (height: number): void => {
    const change = height - settled!;
    if (change > 0) up += change;
    else down -= change;
    settled = height;
  };
  for (const { heightMetres } of profile) {
    if (heightMetres === undefined) continue;
    if (settled === undefined) {
      settled = extreme = heightMetres;
    } else if (rising === undefined) {
      if (Math.abs(heightMetres - settled) >= thresholdMetres) {
        rising = heightMetres > settled;
        extreme = heightMetres;
      }
    } else if (rising ? heightMetres >= extreme : heightMetres <= extreme) {
      extreme = heightMetres;
    } else if (Math.abs(heightMetres - extreme) >= thresholdMetres) {
      settle(extreme);
      rising = !rising;
      extreme = heightMetres;
    }
  }
  if (rising !== undefined) settle(extreme);
  return { upMetres: up, downMetres: down };
}
