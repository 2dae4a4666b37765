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
import { COMPOSITIONS } from "../../draw/composition.ts";
import type { LengthUnit } from "../../geo/units.ts";
import type { MeasuredCourse, MeasuredHole } from "../../measure/types.ts";
import { cached, cacheKey, keep } from "../cache/cache.ts";
import { creditText, draftLine } from "../text/draft-line.ts";
import { keptPlate } from "../cache/kept-drawings.ts";
import { plateGround, reliefPicture } from "./plate-ground.ts";
import { SHARE_HEIGHT, SHARE_WIDTH } from "./share-size.ts";
import { sfntFromWoff } from "./woff.ts";
import type { Words } from "../language/words.ts";

/** Stands for the renderer, the fonts and the encoder in the cache; raise it when one of them changes. */
const MAKER = "share card 1";

const FACES = [
  "latin-400-normal",
  "latin-600-normal",
  "latin-400-italic",
  "latin-ext-400-normal",
  "latin-ext-600-normal",
  "latin-ext-400-italic",
];

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
  svg
    .replace(/font-family="[^"]*"/, 'font-family="Besley"')
    .replaceAll('font-weight="600"', 'font-family="Besley SemiBold" font-weight="600"');

/**
 * The drawing with what must stand on it wherever it goes: that it is a draft, across the top, and whose the
 * shapes are, below.
 */
function withNotes(svg: string, [draft, credit]: readonly (string | undefined)[]): string {
  const [, , width = 0, height = 0] = /viewBox="([^"]*)"/.exec(svg)?.[1]?.split(" ").map(Number) ?? [];
  const text = (said: string): string => said.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  const line = (said: string | undefined, y: number, size: number, fill: string, ground: string): string =>
    said === undefined
      ? ""
      : `<rect x="0" y="${y}" width="${width}" height="${size * 1.7}" fill="${ground}"/><text x="${width / 2}" y="${y + size * 1.2}" font-size="${size}" text-anchor="middle" font-weight="600" fill="${fill}">${text(said)}</text>`;
  // As large as the sheet is wide enough for: letters of this face are rather more than half as wide as high.
  const fitting = (said: string | undefined, most: number): number =>
    Math.min(most, (0.96 * width) / (0.56 * (said?.length ?? 1)));
  const [large, small] = [fitting(draft, height / 26), fitting(credit, height / 44)];
  return svg.replace(
    /<\/svg>\s*$/,
    `${line(draft, 0, large, "#ffffff", "#96330f")}${line(credit, height - small * 1.7, small, "#2a2118", "#f7f0df")}</svg>`,
  );
}

/** Same hole, same bytes. */
export async function shareCard(
  unit: LengthUnit,
  course: MeasuredCourse,
  hole: MeasuredHole,
  words: Words,
): Promise<Uint8Array<ArrayBuffer>> {
  const composition = COMPOSITIONS.card;
  const relief = await reliefPicture(course, hole, [composition]);
  const href = relief ? `data:image/png;base64,${(await sharp(relief).png().toBuffer()).toString("base64")}` : "";
  const ground = relief && plateGround(course, hole, href, [composition]);
  const { svg: plate } = keptPlate(hole, {
    composition,
    idPrefix: "share",
    unit,
    words: words.draw,
    ...(ground ? { ground } : {}),
  });
  const svg = withNotes(plate, [draftLine(course.course, words, [hole.hole]), creditText(course.course, words)]);
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
