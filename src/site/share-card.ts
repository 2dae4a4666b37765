/**
 * The picture a link to a hole is shown with, 1200 by 630: the hole's plate in the
 * composition made for it. Lettering comes from the guide's own fonts and the drawing from
 * one renderer, so the bytes do not depend on what the machine has installed.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { renderAsync } from "@resvg/resvg-js";
import sharp from "sharp";
import { COMPOSITIONS } from "../draw/composition.ts";
import type { LengthUnit } from "../geo/units.ts";
import type { MeasuredCourse, MeasuredHole } from "../measure/types.ts";
import { cached, cacheKey, keep } from "./cache.ts";
import { keptPlate } from "./kept-drawings.ts";
import { plateGround, reliefPicture } from "./plate-ground.ts";
import { SHARE_HEIGHT, SHARE_WIDTH } from "./share-size.ts";
import { sfntFromWoff } from "./woff.ts";
import type { Words } from "./words.ts";

/** Stands for the renderer, the fonts and the encoder in the cache; raise it when one of them changes. */
const MAKER = "share card 1";

const FACES = ["latin-400-normal", "latin-600-normal", "latin-400-italic", "latin-ext-400-normal", "latin-ext-600-normal", "latin-ext-400-italic"];

let fonts: readonly string[] | undefined;

/** The fonts unpacked for the renderer, which reads them from files; gone when the process ends. */
function fontFiles(): string[] {
  if (fonts === undefined) {
    const { resolve } = createRequire(import.meta.url);
    const folder = mkdtempSync(join(tmpdir(), "marram-fonts-"));
    process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
    fonts = FACES.map((face) => {
      const file = join(folder, `${face}.ttf`);
      writeFileSync(file, sfntFromWoff(readFileSync(resolve(`@fontsource/besley/files/besley-${face}.woff`))));
      return file;
    });
  }
  return [...fonts];
}

/**
 * The drawing as the renderer wants it: the heavy face is a family of its own in the font
 * files, and rules that belong to pages are left out.
 */
const withFontNames = (svg: string): string =>
  svg.replace(/font-family="[^"]*"/, 'font-family="Besley"').replaceAll('font-weight="600"', 'font-family="Besley SemiBold" font-weight="600"');

/** Same hole, same bytes. */
export async function shareCard(unit: LengthUnit, course: MeasuredCourse, hole: MeasuredHole, words: Words): Promise<Uint8Array<ArrayBuffer>> {
  const composition = COMPOSITIONS.card;
  const relief = await reliefPicture(course, hole, [composition]);
  const href = relief ? `data:image/png;base64,${(await sharp(relief).png().toBuffer()).toString("base64")}` : "";
  const ground = relief && plateGround(course, hole, href, [composition]);
  const { svg } = keptPlate(hole, {
    composition,
    idPrefix: "share",
    unit,
    words: words.draw,
    ...(ground ? { ground } : {}),
  });
  const key = cacheKey(MAKER, svg);
  const known = await cached(key);
  if (known) return known;
  const image = await renderAsync(withFontNames(svg), {
    font: { loadSystemFonts: false, fontFiles: fontFiles(), defaultFontFamily: "Besley", serifFamily: "Besley" },
    fitTo: { mode: "width", value: SHARE_WIDTH },
  });
  const jpeg = await sharp(image.pixels, { raw: { width: image.width, height: image.height, channels: 4 } })
    .flatten()
    .resize(SHARE_WIDTH, SHARE_HEIGHT, { fit: "cover" })
    .jpeg({ quality: 80, mozjpeg: true })
    .toBuffer();
  const bytes = new Uint8Array(jpeg);
  await keep(key, bytes);
  return bytes;
}
