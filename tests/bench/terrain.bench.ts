/**
 * Terrain products of a 2 km by 2 km height file at 1 m: seconds, peak memory, and the
 * ratio to GDAL's programs in the same run. GDAL's times include its own reading and
 * writing of files; ours are the computing alone, and the reading has its own line.
 */
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { frameAt } from "../../src/geo/frame.ts";
import { readHeights } from "../../src/read/heights.ts";
import { terrainTiles } from "../../src/read/terrain-tiles.ts";
import { gdal, scratch, writeGeoTiff } from "../support/gdal.ts";
import type { BenchLine } from "./line.ts";

const SIDE = 2000;
const MARGIN = 10;

interface Products {
  readonly heights: number;
  readonly readSeconds: number;
  readonly contourSeconds: number;
  readonly contourBareSeconds: number;
  readonly contourLines: number;
  readonly contourPoints: number;
  readonly hillshadeSeconds: number;
  readonly hillshadeFastestSeconds: number;
  readonly slopeSeconds: number;
  readonly peakMebibytes: number;
}

/** Links land: dunes, a scarp, a headland, and a survey's noise of some centimetres. */
function writeLinks(path: string): void {
  const samples = SIDE + 2 * MARGIN + 1;
  const heights = new Float64Array(samples * samples);
  let seed = 12345;
  for (let row = 0, i = 0; row < samples; row++) {
    for (let column = 0; column < samples; column++, i++) {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      const [x, y] = [column, row];
      heights[i] =
        8 +
        6 * Math.sin(x / 37) * Math.cos(y / 53) +
        2 * Math.sin((x + 2 * y) / 17) +
        16 / (1 + Math.exp((1300 - x) / 15)) +
        25 * Math.exp(-((x - 900) ** 2 + (y - 200) ** 2) / 90_000) +
        0.04 * (seed / 2147483648 - 0.5);
    }
  }
  const [x, y] = gdal(
    "gdaltransform",
    ["-s_srs", "+proj=longlat +datum=WGS84", "-t_srs", "EPSG:32629", "-output_xy"],
    "-9 56.5",
  )
    .trim()
    .split(" ")
    .map(Number) as [number, number];
  writeGeoTiff(path, {
    columns: samples,
    rows: samples,
    samples: heights,
    west: x - samples / 2,
    north: y + samples / 2,
    stepX: 1,
    stepY: 1,
    srs: "EPSG:32629",
    extra: ["-co", "TILED=YES", "-co", "COMPRESS=DEFLATE"],
  });
}

function fastest(runs: number, work: () => void): number {
  let seconds = Infinity;
  for (let run = 0; run < runs; run++) {
    const started = performance.now();
    work();
    seconds = Math.min(seconds, (performance.now() - started) / 1000);
  }
  return seconds;
}

/** Seconds, mebibytes and ratios; see each line's note. */
export async function terrainBench(): Promise<BenchLine[]> {
  const [folder, remove] = scratch();
  try {
    const path = join(folder, "links.tif");
    writeLinks(path);
    const program = fileURLToPath(new URL("./terrain-products.ts", import.meta.url));
    const ours = JSON.parse(
      execFileSync(process.execPath, [program, path, String(SIDE / 2)], { encoding: "utf8" }),
    ) as Products;
    const gdalShade = fastest(3, () => void gdal("gdaldem", ["hillshade", "-q", path, join(folder, "shade.tif")]));
    const gdalContour = fastest(2, () => {
      gdal("gdal_contour", ["-q", "-i", "1", "-a", "height", path, join(folder, `contours-${performance.now()}.shp`)]);
    });

    const { grid } = await readHeights(path, {
      file: path,
      frame: frameAt([-9, 56.5]),
      bounds: { west: -SIDE / 2, south: -SIDE / 2, east: SIDE / 2, north: SIDE / 2 },
      marginMetres: 0,
    });
    const started = performance.now();
    let tiles = 0;
    let bytes = 0;
    for await (const { webp } of terrainTiles(grid, frameAt([-9, 56.5]))) {
      tiles++;
      bytes += webp.length;
    }
    const tileSeconds = (performance.now() - started) / 1000;

    const all = ours.readSeconds + ours.contourSeconds + ours.hillshadeSeconds + ours.slopeSeconds;
    return [
      {
        name: "read, contours, relief, slopes",
        value: all,
        unit: "s",
        note: `${ours.heights} heights, first run in a fresh process`,
      },
      {
        name: "peak memory of that process",
        value: ours.peakMebibytes,
        unit: "MiB",
        note: "resident, Node itself with it",
      },
      {
        name: "read and lay into the plane",
        value: ours.readSeconds,
        unit: "s",
        note: "bicubic, UTM to the course's plane",
      },
      {
        name: "contours at 1 m",
        value: ours.contourSeconds,
        unit: "s",
        note: `${ours.contourLines} lines, ${ours.contourPoints} points left at 0.2 m tolerance`,
      },
      { name: "relief", value: ours.hillshadeSeconds, unit: "s", note: "first run" },
      { name: "slopes", value: ours.slopeSeconds, unit: "s", note: "first run" },
      {
        name: "terrain tiles, zoom 12 to 16",
        value: tileSeconds,
        unit: "s",
        note: `${tiles} tiles, ${Math.round(bytes / 1024)} KiB of lossless WebP`,
      },
      {
        name: "contours, ours / GDAL's",
        value: ours.contourBareSeconds / gdalContour,
        unit: "",
        note: `gdal_contour ${gdalContour.toFixed(2)} s with reading and writing; all points on both sides`,
      },
      {
        name: "relief, ours / GDAL's",
        value: ours.hillshadeFastestSeconds / gdalShade,
        unit: "",
        note: `gdaldem hillshade ${gdalShade.toFixed(2)} s with reading and writing`,
      },
    ];
  } finally {
    remove();
  }
}
