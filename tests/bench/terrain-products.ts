/**
 * Reads a height file and makes everything the build makes of it, in a process of its own
 * so that the peak of memory is its own too. Prints one JSON object. Used by
 * terrain.bench.ts.
 */
import { frameAt } from "../../src/geo/frame.ts";
import { readHeights } from "../../src/read/heights.ts";
import { contoursOf } from "../../src/terrain/contours.ts";
import { hillshade } from "../../src/terrain/hillshade.ts";
import { slopePercents } from "../../src/terrain/slope.ts";

const [path, halfMetres] = process.argv.slice(2);
if (path === undefined || halfMetres === undefined)
  throw new Error("Give a height file and half the ground's side in metres.");
const half = Number(halfMetres);

/** Seconds of the fastest of a few runs: the first pays for the compiler. */
function fastest<T>(runs: number, work: () => T): { seconds: number; first: number; result: T } {
  let seconds = Infinity;
  let first = 0;
  let result!: T;
  for (let run = 0; run < runs; run++) {
    const started = performance.now();
    result = work();
    const took = (performance.now() - started) / 1000;
    if (run === 0) first = took;
    seconds = Math.min(seconds, took);
  }
  return { seconds, first, result };
}

const started = performance.now();
const { grid } = await readHeights(path, {
  file: path,
  frame: frameAt([-9, 56.5]),
  bounds: { west: -half, south: -half, east: half, north: half },
  marginMetres: 0,
});
const readSeconds = (performance.now() - started) / 1000;
const contours = fastest(1, () => contoursOf(grid, { intervalMetres: 1, toleranceMetres: 0.2 }));
const shades = fastest(3, () => hillshade(grid));
const slopes = fastest(3, () => slopePercents(grid));
const bare = fastest(2, () => contoursOf(grid, { intervalMetres: 1 }));

console.log(
  JSON.stringify({
    heights: grid.heights.length,
    readSeconds,
    contourSeconds: contours.first,
    contourBareSeconds: bare.seconds,
    contourLines: contours.result.length,
    contourPoints: contours.result.reduce((sum, { points }) => sum + points.length, 0),
    hillshadeSeconds: shades.first,
    hillshadeFastestSeconds: shades.seconds,
    slopeSeconds: slopes.first,
    peakMebibytes: process.resourceUsage().maxRSS / 1024,
    checksum: shades.result[shades.result.length >> 1]! + slopes.result[slopes.result.length >> 1]!,
  }),
);
