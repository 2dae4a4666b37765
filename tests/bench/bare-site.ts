/**
 * The bare page the live map is compared with: MapLibre behind a button, with a hole's
 * features, terrain tiles, layers and patterns taken from the built guide, all worked out
 * beforehand. Bundled by Vite as the guide's pages are.
 */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { build } from "vite";
import { PALETTE } from "../../src/draw/palette.ts";
import type { HoleData } from "../../src/contract/hole-data.ts";
import { hazardsFromTee } from "../../src/islands/map/ahead.ts";
import { mapColours } from "../../src/islands/map/colours.ts";
import { tilesFrom } from "../../src/islands/map/tiles.ts";
import { figuresIn, playDrawing } from "../../src/islands/map/hole-drawing.ts";
import { PATTERN_PIXEL_RATIO, patterns } from "../../src/islands/map/patterns.ts";
import { SOURCES } from "../../src/islands/map/sources.ts";
import { mapStyle } from "../../src/islands/map/style.ts";
import { words } from "../../src/site/language/words.ts";
import { islandWordsOf } from "../../src/words/island-words.ts";
import type { BareMap } from "./bare-map/page.ts";

/** What the guide's own map showed: its colours, font, size and camera. */
export interface Shown {
  /** The page's `--plate-*` properties by tint. */
  readonly tints: Readonly<Record<string, string>>;
  readonly font: string;
  readonly width: number;
  readonly height: number;
  readonly camera: { readonly center: [number, number]; readonly zoom: number; readonly bearing: number };
}

/** Tints the page may overrule. */
export const TINTS: readonly string[] = Object.keys(PALETTE.light);

/**
 * @param folder where the page goes
 * @param address where it will be served from
 * @param holeFile the hole's `hole.json` on disk, and its address
 */
export async function bareSite(
  folder: string,
  address: URL,
  holeFile: string,
  holeAddress: URL,
  shown: Shown,
): Promise<void> {
  await build({
    root: fileURLToPath(new URL("./bare-map/", import.meta.url)),
    base: address.pathname,
    configFile: false,
    publicDir: false,
    logLevel: "warn",
    build: {
      outDir: folder,
      assetsDir: "_astro",
      assetsInlineLimit: 0,
      emptyOutDir: true,
      chunkSizeWarningLimit: 2000,
    },
  });
  const data = JSON.parse(await readFile(holeFile, "utf8")) as HoleData;
  const colours = mapColours("light", (name) => shown.tints[name.replace("--plate-", "")] ?? "");
  const tee = data.tees.find(({ id }) => id === data.defaultTee) ?? data.tees[0]!;
  const style = mapStyle({
    colours,
    features: data.features,
    origin: data.origin,
    line: data.tees[0]?.line,
    fonts: [shown.font],
    bunkersFromZoom: 0,
    ground: tilesFrom(data.ground, holeAddress),
  });
  const { liveMap: say, units, thirds, locale } = islandWordsOf(words("en"));
  const play = { tee, cut: undefined, ahead: hazardsFromTee(data, tee), own: undefined };
  style.sources[SOURCES.play] = {
    type: "geojson",
    data: playDrawing(data, play, figuresIn(data.units, { say, units, thirds, locale }), say),
  };
  style.sprite = new URL("_astro/patterns", address).href;
  const map: BareMap = { width: shown.width, height: shown.height, options: { style, ...shown.camera } };
  await writeFile(join(folder, "map.json"), JSON.stringify(map));
  await writeSprite(join(folder, "_astro"), patterns(colours, data.bearingDegrees));
}

/** Patterns side by side in one picture, as MapLibre reads it. */
async function writeSprite(folder: string, all: ReturnType<typeof patterns>): Promise<void> {
  const entries = Object.entries(all);
  const width = entries.reduce((sum, [, pattern]) => sum + pattern.width, 0);
  const height = Math.max(...entries.map(([, pattern]) => pattern.height));
  const index: Record<string, { x: number; y: number; width: number; height: number; pixelRatio: number }> = {};
  const pixels = Buffer.alloc(width * height * 4);
  let x = 0;
  for (const [name, pattern] of entries) {
    index[name] = { x, y: 0, width: pattern.width, height: pattern.height, pixelRatio: PATTERN_PIXEL_RATIO };
    for (let row = 0; row < pattern.height; row++) {
      pixels.set(pattern.data.subarray(row * pattern.width * 4, (row + 1) * pattern.width * 4), (row * width + x) * 4);
    }
    x += pattern.width;
  }
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, "patterns.json"), JSON.stringify(index));
  await sharp(pixels, { raw: { width, height, channels: 4 } })
    .png()
    .toFile(join(folder, "patterns.png"));
}
